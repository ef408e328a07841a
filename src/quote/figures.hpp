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
// Rows are quantities.
inline constexpr Figure quantity{"quantity", "quantity", unit::none, 0};
inline constexpr Figure lot_share{"lot_share", "share of the lot", unit::money, 2, "cost of a lot / quantity"};
inline constexpr Figure unit_cost{"unit_cost", "cost of a piece", unit::money, 2, "each piece + share of the lot"};
inline constexpr Figure contingency_cost{"contingency_cost", "contingency", unit::money, 2,
                                         "cost of a piece × contingency"};
inline constexpr Figure exact_price{"exact_price", "price before rounding", unit::money, 4,
                                    "cost with contingency / (1 - margin), or × (1 + mark-up)"};
inline constexpr Figure unit_price{"unit_price", "unit price", unit::money, 2, "rounded once, half away from zero"};
inline constexpr Figure pieces_price{"pieces_price", "pieces", unit::money, 2, "unit price × quantity"};
inline constexpr Figure one_off_price{"one_off_price", "one-offs", unit::money, 2,
                                      "once, with contingency and margin, rounded"};
inline constexpr Figure supplement{"supplement", "up to the minimum charge", unit::money, 2,
                                   "minimum charge less the above, when positive"};
inline constexpr Figure order_total{"order_total", "total", unit::money, 2, "sum of the printed lines"};
inline constexpr Figure order_cost{"order_cost", "cost of the order", unit::money, 2,
                                   "cost of a piece × quantity + once"};
inline constexpr Figure order_margin{"order_margin", "left over cost", unit::money, 2, "total - cost of the order"};

}  // namespace seambook::fig
