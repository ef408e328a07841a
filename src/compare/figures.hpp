// Figures of a comparison: what a family of seams saves, what the investment costs a year, where the two meet.
#pragma once

#include "trace/figure.hpp"

namespace seambook::fig {

// Rows are families; sums over the pages of the joints, for one piece.
inline constexpr Figure family_metres{"family_metres", "seam a piece", unit::m, 2, "sum of weld lengths"};
inline constexpr Figure now_floor{"now_floor", "floor time as it is", unit::min, 2, "sum"};
inline constexpr Figure now_labour{"now_labour", "labour as it is", unit::money, 2, "sum"};
inline constexpr Figure now_other{"now_other", "filler, gas, power, wear as it is", unit::money, 2, "sum"};
inline constexpr Figure now_equipment{"now_equipment", "equipment as it is", unit::money, 2, "sum"};
inline constexpr Figure next_floor{"next_floor", "floor time with it", unit::min, 2, "sum"};
inline constexpr Figure next_burning{"next_burning", "arc or beam time with it", unit::min, 2, "sum"};
inline constexpr Figure next_labour{"next_labour", "labour with it", unit::money, 2, "sum"};
inline constexpr Figure next_other{"next_other", "filler, gas, power, wear with it", unit::money, 2, "sum"};
inline constexpr Figure fit_up_extra_cost{"fit_up_extra_cost", "extra fit-up with it", unit::money, 2,
                                          "its minutes at the labour cost of an attended minute"};
inline constexpr Figure finish_saved{"finish_saved", "finishing saved", unit::money, 2,
                                     "its minutes at the labour cost of an attended minute"};
// Rows are families.
inline constexpr Figure metres_year{"metres_year", "seam a year", unit::m, 0, "seam a piece × pieces a year"};
inline constexpr Figure minutes_saved{"minutes_saved", "floor time saved a metre", Unit{"min/m", 60}, 2,
                                      "(as it is - with it) / seam"};
inline constexpr Figure saved_loaded{"saved_loaded", "saved a metre, hours resold", Unit{"¤/m", 1}, 2,
                                     "labour at its full rate, equipment of the arc, materials; its own equipment is "
                                     "in the yearly cost"};
inline constexpr Figure saved_avoidable{"saved_avoidable", "saved a metre, hours not resold", Unit{"¤/m", 1}, 2,
                                        "floor time saved at wage and burden, and materials"};
inline constexpr Figure saved_metre{"saved_metre", "saved a metre, as judged", Unit{"¤/m", 1}, 2,
                                    "the lower of the two, unless the rate book says which"};
inline constexpr Figure saved_year{"saved_year", "saved a year", unit::money, 0, "saved a metre × seam a year"};
inline constexpr Figure worth_year{"worth_year", "worth a year", unit::money, 0,
                                   "saved a year; nothing where it loses: such seams stay as they are"};
inline constexpr Figure suited_year{"suited_year", "seam it is used for", unit::m, 0, "seam a year where it saves"};
inline constexpr Figure burning_year{"burning_year", "arc or beam time a year", unit::h, 1,
                                     "time a piece × pieces a year where it saves"};
// Once, or rows are scenarios.
inline constexpr Figure pieces_year{"pieces_year", "pieces a year", unit::none, 0, "orders a year × pieces an order"};
inline constexpr Figure orders_year{"orders_year", "orders a year", unit::none, 0};
inline constexpr Figure order_pieces{"order_pieces", "pieces an order", unit::none, 0};
inline constexpr Figure capital_line{"capital_line", "paid at once", unit::money, 0};
inline constexpr Figure yearly_line{"yearly_line", "paid each year", unit::money, 0};
inline constexpr Figure life_years{"life_years", "life in years", unit::none, 1};
inline constexpr Figure residual{"residual", "worth at the end", unit::percent, 0};
inline constexpr Figure interest{"interest", "interest", unit::percent, 1};
inline constexpr Figure upkeep{"upkeep", "upkeep", unit::percent, 1};
inline constexpr Figure first_year{"first_year", "saving in the first year", unit::percent, 0};
inline constexpr Figure avoidable_rate{"avoidable_rate", "avoidable rate", unit::money_per_h, 2};
inline constexpr Figure capital_factor{"capital_factor", "capital, of what is stated", unit::percent, 0};
inline constexpr Figure fit_up_factor{"fit_up_factor", "extra fit-up, of what is stated", unit::percent, 0};
inline constexpr Figure finish_factor{"finish_factor", "finishing saved, of what is stated", unit::percent, 0};
inline constexpr Figure metres_factor{"metres_factor", "metres, of what is stated", unit::percent, 0};
inline constexpr Figure capital{"capital", "capital", unit::money, 0, "sum of what is paid at once"};
inline constexpr Figure depreciation{"depreciation", "depreciation a year", unit::money, 0,
                                     "(capital - worth at the end) / life, straight line"};
inline constexpr Figure interest_year{"interest_year", "interest a year", unit::money, 0,
                                      "on the mean of capital and worth at the end"};
inline constexpr Figure running_year{"running_year", "upkeep and running a year", unit::money, 0,
                                     "upkeep of the capital + what is paid each year"};
inline constexpr Figure fixed_year{"fixed_year", "fixed cost a year", unit::money, 0,
                                   "depreciation + interest + upkeep and running"};
inline constexpr Figure all_worth{"all_worth", "saved a year, all families", unit::money, 0, "sum"};
inline constexpr Figure all_suited{"all_suited", "seam it is used for, all families", unit::m, 0, "sum"};
inline constexpr Figure left_year{"left_year", "left a year after fixed cost", unit::money, 0,
                                  "saved a year - fixed cost a year"};
inline constexpr Figure cash_year{"cash_year", "cash a year", unit::money, 0,
                                  "saved a year - upkeep and running; depreciation and interest are no cash"};
inline constexpr Figure learning_cost{"learning_cost", "not saved in the first year", unit::money, 0,
                                      "saved a year × (1 - share of the first year)"};
inline constexpr Figure present_value{
    "present_value", "net present value over the life", unit::money, 0,
    "cash a year × annuity factor + discounted worth at the end - capital - what the first year does not "
    "save, discounted a year"};

}  // namespace seambook::fig
