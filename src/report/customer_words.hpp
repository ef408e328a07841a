// Every word of the customer's page that is not the author's: a translation of the page is a translation of this file.
// In braces stands what the page fills in.
#pragma once

namespace seambook::customer_words {

inline constexpr const char* sheet = "Quote";
inline constexpr const char* title = "Quote {}";
inline constexpr const char* footer = "{}, quote {}";

inline constexpr const char* number = "number";
inline constexpr const char* revision = "revision";
inline constexpr const char* date = "date";
inline constexpr const char* valid_until = "valid until";
inline constexpr const char* drawings = "drawings";
inline constexpr const char* no_drawing = "none named";
inline constexpr const char* from = "from";
inline constexpr const char* customer = "for";
inline constexpr const char* work = "work";
inline constexpr const char* piece = "a piece is";
inline constexpr const char* parts = "{:.0f} parts";
inline constexpr const char* net_each = "{} net each";
inline constexpr const char* free_issue = "material supplied by the customer";

inline constexpr const char* money = "{} ({})";  // a heading and the currency
inline constexpr const char* quantity = "quantity";
inline constexpr const char* unit_price = "unit price";
inline constexpr const char* pieces = "pieces";
inline constexpr const char* total = "total";
inline constexpr const char* tax = "tax";
inline constexpr const char* total_with_tax = "total with tax";
inline constexpr const char* lead_time = "lead time";
inline constexpr const char* no_lead_time = "to be agreed on order";
inline constexpr const char* wanted_by = "wanted by";

inline constexpr const char* in_the_total = "In the total, beside the pieces";
inline constexpr const char* one_offs = "one-offs";
inline constexpr const char* expedite = "expedite";
inline constexpr const char* freight = "freight";
inline constexpr const char* supplement = "to the minimum";
inline constexpr const char* list_rounding = "rounding";
inline constexpr const char* minimum_note = "Totals below the minimum charge ({}) are raised to it.";
inline constexpr const char* rounding_note = "Totals are raised to a multiple of the price list's step.";

inline constexpr const char* options = "Options, priced apart: none of them stands in the totals above";
inline constexpr const char* option_unit = "each";
inline constexpr const char* option_pieces = "pieces";
inline constexpr const char* option_once = "once";
inline constexpr const char* option_total = "more or less";
inline constexpr const char* left_out = "without {}";

inline constexpr const char* included = "Included";
inline constexpr const char* not_included = "Not included";
inline constexpr const char* assumptions = "Assumptions and qualifications";
inline constexpr const char* bullet = "– {}";

inline constexpr const char* terms = "Terms";
inline constexpr const char* untaxed = "no tax is added: {}";
inline constexpr const char* taxed = "{}, {}";  // rate, which tax
inline constexpr const char* delivery = "delivery";
inline constexpr const char* payment = "payment";
inline constexpr const char* validity = "validity";
inline constexpr const char* days = "{} days from the date of this quote, until {}";
inline constexpr const char* rounding = "rounding";
inline constexpr const char* how_rounded =
    "each unit price is rounded once, then multiplied; every other line is rounded once";
inline constexpr const char* standards = "standards";
inline constexpr const char* no_conformity =
    "no conformity with a code is claimed unless agreed in writing; qualified procedures and persons decide";

}  // namespace seambook::customer_words
