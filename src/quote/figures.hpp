// Figures of the price: what a piece, a lot and the order cost, and the price for each quantity.
#pragma once

#include "trace/figure.hpp"

namespace seambook::fig {

// Rows are kinds of cost.
inline constexpr Figure kind_each{"cost_each", "each piece", unit::money, 2, "sum over the pages"};
inline constexpr Figure kind_lot{"cost_per_lot", "each lot", unit::money, 2, "sum over the pages"};
inline constexpr Figure kind_once{"cost_once", "once", unit::money, 2, "sum over the pages"};
// Set-up steps.
inline constexpr Figure change{"change", "set-up", unit::min, 1, "sum of the change tasks called, each once"};
inline constexpr Figure change_task{"change_task", "change task", unit::min, 1};
inline constexpr Figure change_labour{"change_labour", "labour", unit::money, 2, "set-up × labour rate"};
inline constexpr Figure change_equipment{"change_equipment", "equipment", unit::money, 2, "set-up × equipment rate"};
// One each.
inline constexpr Figure overhead{"overhead", "overhead", unit::percent, 0};
inline constexpr Figure contingency{"contingency", "contingency", unit::percent, 1};
inline constexpr Figure margin{"margin", "margin on the price", unit::percent, 1};
inline constexpr Figure markup{"markup", "mark-up on the cost", unit::percent, 1};
inline constexpr Figure minimum_charge{"minimum_charge", "minimum charge", unit::money, 2};
inline constexpr Figure overhead_each{"overhead_each", "overhead, each piece", unit::money, 2, "labour × overhead"};
inline constexpr Figure overhead_lot{"overhead_lot", "overhead, each lot", unit::money, 2, "labour × overhead"};
inline constexpr Figure overhead_once{"overhead_once", "overhead, once", unit::money, 2, "labour × overhead"};
inline constexpr Figure total_each{"total_each", "each piece", unit::money, 2, "sum"};
inline constexpr Figure total_lot{"total_lot", "each lot", unit::money, 2, "sum"};
inline constexpr Figure total_once{"total_once", "once", unit::money, 2, "sum"};
// What a job asks of the policy.
inline constexpr Figure learning_rate{"learning_rate", "learning rate", unit::percent, 1};
inline constexpr Figure learning_holds_at{"learning_holds_at", "pieces at which the times hold", unit::none, 0};
inline constexpr Figure expedite{"expedite", "haste, share of labour", unit::percent, 1};
inline constexpr Figure freight_rate{"freight_rate", "freight as stated", unit::money, 2};
inline constexpr Figure freight_up_to{"freight_up_to", "freight up to a mass", unit::kg, 0};
inline constexpr Figure freight_class{"freight_class", "freight by mass", unit::money, 2};
inline constexpr Figure mass_of_piece{"mass_of_piece", "net mass of a piece", unit::kg, 1, "sum over the weldments"};
inline constexpr Figure list_step{"list_rounding", "totals are multiples of", unit::money, 2};
inline constexpr Figure tax_rate{"tax_rate", "tax", unit::percent, 1};
// Rows are quantities.
inline constexpr Figure quantity{"quantity", "quantity", unit::none, 0};
inline constexpr Figure lot_share{"lot_share", "share of the lot", unit::money, 2, "cost of a lot / quantity"};
inline constexpr Figure learning_factor{"learning_factor", "labour of a piece against the book's", unit::percent, 1,
                                        "(quantity / pieces at which the times hold) ^ (log rate / log 2)"};
inline constexpr Figure learning_effect{"learning_effect", "learning", unit::money, 2,
                                        "labour, its overhead and equipment of a piece × (share - 1)"};
inline constexpr Figure unit_cost{"unit_cost", "cost of a piece", unit::money, 2,
                                  "each piece + share of the lot + learning"};
inline constexpr Figure contingency_cost{"contingency_cost", "contingency", unit::money, 2,
                                         "cost of a piece × contingency"};
inline constexpr Figure exact_price{"exact_price", "price before rounding", unit::money, 4,
                                    "cost with contingency / (1 - margin), or × (1 + mark-up)"};
inline constexpr Figure unit_price{"unit_price", "unit price", unit::money, 2, "rounded once, half away from zero"};
inline constexpr Figure pieces_price{"pieces_price", "pieces", unit::money, 2, "unit price × quantity"};
inline constexpr Figure one_off_price{"one_off_price", "one-offs", unit::money, 2,
                                      "once, with contingency and margin, rounded"};
inline constexpr Figure order_labour{"order_labour", "labour of the order", unit::money, 2,
                                     "of pieces, lot and once, without overhead"};
inline constexpr Figure expedite_cost{"expedite_cost", "what haste costs", unit::money, 2,
                                      "labour of the order × share"};
inline constexpr Figure expedite_price{"expedite_price", "expedite", unit::money, 2, "with margin, rounded"};
inline constexpr Figure order_mass{"order_mass", "net mass of the order", unit::kg, 1, "mass of a piece × quantity"};
inline constexpr Figure freight_cost{"freight_cost", "what freight costs", unit::money, 2,
                                     "as stated, or of the first mass that takes the order"};
inline constexpr Figure freight_price{"freight_price", "freight", unit::money, 2, "rounded"};
inline constexpr Figure list_rounding{"list_rounding_line", "up to the price list's step", unit::money, 2,
                                      "up to the next multiple, rounded"};
inline constexpr Figure tax{"tax_line", "tax", unit::money, 2, "total × rate, rounded"};
inline constexpr Figure total_with_tax{"total_with_tax", "total with tax", unit::money, 2, "total + tax"};
inline constexpr Figure supplement{"supplement", "up to the minimum charge", unit::money, 2,
                                   "minimum charge less the above, when positive"};
inline constexpr Figure order_total{"order_total", "total", unit::money, 2, "sum of the printed lines"};
inline constexpr Figure order_cost{"order_cost", "cost of the order", unit::money, 2,
                                   "cost of a piece × quantity + once + haste + freight"};
inline constexpr Figure order_margin{"order_margin", "left over cost", unit::money, 2, "total - cost of the order"};

}  // namespace seambook::fig
