// Every figure of a joint's estimate: its name, unit and source. The order here is the order of the columns.
#pragma once

#include "trace/figure.hpp"

namespace seambook::fig {

// What the job says of a joint.
inline constexpr Figure weldments{"weldments", "weldments per piece", unit::none, 0};
inline constexpr Figure count{"count", "joints per weldment", unit::none, 0};
inline constexpr Figure sides{"sides", "sides", unit::none, 0};
inline constexpr Figure outside_diameter{"outside_diameter", "outside diameter", unit::mm, 1};
inline constexpr Figure line{"line", "joint line", unit::mm, 1,
                             "by the form of the line, or as given; a plug's is its depth"};
inline constexpr Figure element{"element", "weld element", unit::mm, 1};
inline constexpr Figure pitch{"pitch", "pitch, centre to centre", unit::mm, 1, "weld element + gap e, or as given"};
inline constexpr Figure throat{"throat", "throat a", unit::mm, 2};
inline constexpr Figure leg{"leg", "leg z", unit::mm, 2, "leg from throat, z = a √2, or as given"};
inline constexpr Figure convexity{"convexity", "convexity", unit::percent, 0};
inline constexpr Figure thickness{"thickness", "thickness", unit::mm, 2};
inline constexpr Figure thickness_second{"thickness_second", "thickness, second member", unit::mm, 2};
inline constexpr Figure gap{"gap", "root gap", unit::mm, 2};
inline constexpr Figure root_face{"root_face", "root face", unit::mm, 2};
inline constexpr Figure groove_angle{"groove_angle", "groove angle", unit::degree, 0};
inline constexpr Figure excess_overlap{"excess_overlap", "cap over the groove edge", unit::mm, 2};
inline constexpr Figure excess_height{"excess_height", "cap height", unit::mm, 2};
inline constexpr Figure given_passes{"given_passes", "passes given", unit::none, 0};

// Weld.
inline constexpr Figure elements_on_line{"elements_on_line", "elements on a line", unit::none, 0,
                                         "floor((line - element)/pitch) + 1"};
inline constexpr Figure joints_made{"joints_made", "joints", unit::none, 0, "weldments × joints per weldment"};
inline constexpr Figure weld_elements{"weld_elements", "weld elements", unit::none, 0, "elements × joints × sides"};
inline constexpr Figure weld_length{"weld_length", "weld length", unit::m, 3,
                                    "elements × element length × joints × sides"};
inline constexpr Figure excess_width{"excess_width", "cap width", unit::mm, 2,
                                     "groove face + twice the overlap, or as given"};
inline constexpr Figure section{"section", "section of weld metal", unit::mm2, 2,
                                "plane geometry; Welding Filler Metals Data Handbook, section 8, parts A to C"};
inline constexpr Figure volume_rate{
    "volume_rate", "deposition", unit::cm3_per_min, 2,
    "wire feed × wire section (or mass of a metre) × deposition efficiency, or pass area "
    "× travel speed, or deposition rate / density"};
inline constexpr Figure group_section{"group_section", "section of these passes", unit::mm2, 2,
                                      "section shared by what each procedure lays"};
inline constexpr Figure passes{"passes", "passes", unit::none, 0,
                               "section over the largest pass, rounded up, or as given"};
inline constexpr Figure travel{"travel", "travel speed", unit::mm_per_min, 0,
                               "deposition over the pass section, within the procedure's limits, or as given"};
inline constexpr Figure arc{"arc", "arc time", unit::min, 2, "weld length × passes / travel speed"};
inline constexpr Figure arc_by_deposition{"arc_by_deposition", "arc time by deposition", unit::min, 2,
                                          "section × weld length / deposition"};
inline constexpr Figure deposition_difference{"deposition_difference", "deposition against speed", unit::percent, 0,
                                              "arc time by deposition over arc time, less one"};
inline constexpr Figure line_energy{"line_energy", "arc or line energy", unit::kJ_per_mm, 3, "ISO/TR 18491"};
inline constexpr Figure heat_input{"heat_input", "heat input", unit::kJ_per_mm, 3,
                                   "EN 1011-1: arc energy × thermal efficiency"};

// Labour.
inline constexpr Figure fit_up_min{"fit_up_time", "fit-up", unit::min, 2, "per joint and per metre of line"};
inline constexpr Figure fit_up_extra_min{"fit_up_extra_time", "close fit-up", unit::min, 2,
                                         "line × the process's extra minutes per metre"};
inline constexpr Figure tacks{"tacks", "tacks", unit::none, 0, "line over tack pitch, rounded up, and one"};
inline constexpr Figure tack_min{"tack_time", "tacking", unit::min, 2, "tacks × time per tack"};
inline constexpr Figure starts{"starts", "starts", unit::none, 0, "weld elements × passes"};
inline constexpr Figure start_min{"start_time", "starts and stops", unit::min, 2, "starts × time per start"};
inline constexpr Figure interpass_min{"interpass_time", "interpass cleaning", unit::min, 2,
                                      "weld length × passes that another follows"};
inline constexpr Figure finish_min{"finish_time", "finish", unit::min, 2,
                                   "weld length × minutes per metre of the finish class"};
inline constexpr Figure purge_min{"purge_time", "purging", unit::min, 2, "joints × purge time"};
inline constexpr Figure attended{"attended", "attended", unit::min, 2, "sum of the labour elements, times access"};
inline constexpr Figure floor{"floor", "floor time", unit::min, 2, "attended × (1 + personal allowance)"};

// Materials and money.
inline constexpr Figure deposit{"deposit", "weld metal", unit::g, 1, "section × weld length × density"};
inline constexpr Figure filler{"filler", "filler", unit::g, 1, "weld metal / deposition efficiency, stubs taken off"};
inline constexpr Figure gas{"gas", "shielding gas", unit::l, 1,
                            "flow × (arc time + before and after each start) × loss"};
inline constexpr Figure purge_gas{"purge_gas", "purge gas", unit::l, 1, "purge flow × (purge time + arc time) × loss"};
inline constexpr Figure energy{"energy", "electricity", unit::kWh, 3,
                               "(arc or beam power / source efficiency + auxiliaries) × arc time"};
inline constexpr Figure labour_cost{"labour_cost", "labour", unit::money, 2, "floor time × labour rate"};
inline constexpr Figure filler_cost{"filler_cost", "filler", unit::money, 2, "filler × price"};
inline constexpr Figure gas_cost{"gas_cost", "gas", unit::money, 2, "gas × price"};
inline constexpr Figure power_cost{"power_cost", "power", unit::money, 2,
                                   "electricity × price, and the fuel of preheating"};
inline constexpr Figure wear_cost{"wear_cost", "wear parts", unit::money, 2,
                                  "arc time × wear rate, each part's price by its life, carbons by the metre"};
inline constexpr Figure equipment_cost{"equipment_cost", "equipment", unit::money, 2,
                                       "floor time × equipment rate: the station is occupied"};
inline constexpr Figure joint_cost{"joint_cost", "cost", unit::money, 2, "sum"};
inline constexpr Figure difference_cost{"difference_cost", "difference in money", unit::money, 2,
                                        "arc-time difference × (labour with allowance + equipment)"};

// Numbers of the rate book that a joint uses; they stand on the rates page.
inline constexpr Figure density{"density", "density", unit::g_per_cm3, 2};
inline constexpr Figure wire_feed{"wire_feed", "wire feed", unit::m_per_min, 2};
inline constexpr Figure wire_diameter{"wire_diameter", "wire diameter", unit::mm, 2};
inline constexpr Figure area_per_pass{"area_per_pass", "area per pass", unit::mm2, 2};
inline constexpr Figure deposition_efficiency{"deposition_efficiency", "deposition efficiency", unit::percent, 1};
inline constexpr Figure book_travel{"book_travel", "travel speed of the procedure", unit::mm_per_min, 0};
inline constexpr Figure travel_low{"travel_low", "lowest travel speed", unit::mm_per_min, 0};
inline constexpr Figure travel_high{"travel_high", "highest travel speed", unit::mm_per_min, 0};
inline constexpr Figure current{"current", "current", unit::A, 0};
inline constexpr Figure voltage{"voltage", "voltage", unit::V, 1};
inline constexpr Figure beam_power{"beam_power", "beam power", unit::W, 0};
inline constexpr Figure source_efficiency{"source_efficiency", "source efficiency", unit::percent, 0};
inline constexpr Figure thermal_efficiency{"thermal_efficiency", "thermal efficiency", unit::percent, 0};
inline constexpr Figure auxiliary_power{"auxiliary_power", "auxiliary power", unit::kW, 2};
inline constexpr Figure gas_flow{"gas_flow", "gas flow", unit::l_per_min, 1};
inline constexpr Figure gas_before_and_after{"gas_before_and_after", "gas before and after", unit::s, 1};
inline constexpr Figure gas_loss{"gas_loss", "gas loss factor", unit::percent, 0};
inline constexpr Figure start_time{"time_per_start", "time per start", unit::min, 2};
inline constexpr Figure tack_time{"time_per_tack", "time per tack", unit::min, 2};
inline constexpr Figure tack_pitch{"tack_pitch", "tack pitch", unit::mm, 0};
inline constexpr Figure interpass_pace{"interpass_pace", "interpass cleaning", unit::min_per_m, 2};
inline constexpr Figure finish_pace{"finish_pace", "finish", unit::min_per_m, 2};
inline constexpr Figure fit_up_per_joint{"fit_up_per_joint", "fit-up per joint", unit::min, 2};
inline constexpr Figure fit_up_per_metre{"fit_up_per_metre", "fit-up per metre", unit::min_per_m, 2};
inline constexpr Figure fit_up_extra{"fit_up_extra", "close fit-up per metre", unit::min_per_m, 2};
inline constexpr Figure purge_per_joint{"purge_per_joint", "purge time per joint", unit::min, 2};
inline constexpr Figure purge_flow{"purge_flow", "purge flow", unit::l_per_min, 1};
inline constexpr Figure purge_gas_price{"purge_gas_price", "purge gas price", unit::money_per_m3, 2};
inline constexpr Figure access{"access", "access", unit::percent, 0};
inline constexpr Figure personal{"personal", "personal allowance", unit::percent, 0};
inline constexpr Figure labour_rate{"labour_rate", "labour rate", unit::money_per_h, 2};
inline constexpr Figure wage{"wage", "wage", unit::money_per_h, 2};
inline constexpr Figure burden{"burden", "burden", unit::percent, 0};
inline constexpr Figure equipment_rate{"equipment_rate", "equipment rate", unit::money_per_h, 2};
inline constexpr Figure wear_rate{"wear_rate", "wear rate", unit::money_per_h, 2};
inline constexpr Figure filler_price{"filler_price", "filler price", unit::money_per_kg, 2};
inline constexpr Figure gas_price{"gas_price", "gas price", unit::money_per_m3, 2};
inline constexpr Figure electricity{"electricity", "electricity price", unit::money_per_kWh, 3};

// Weldments.
inline constexpr Figure parts{"parts", "parts", unit::none, 0};
inline constexpr Figure mass{"mass", "net mass", unit::kg, 1};
inline constexpr Figure turns{"turns", "turns", unit::none, 0};
inline constexpr Figure fit_up_per_part{"fit_up_per_part", "fit-up per part", unit::min, 2};
inline constexpr Figure time_per_turn{"time_per_turn", "time per turn", unit::min, 2};
inline constexpr Figure metal_price{"metal_price", "base metal price", unit::money_per_kg, 2};
inline constexpr Figure yield{"yield", "yield", unit::percent, 0};
inline constexpr Figure parts_min{"parts_time", "fit-up of parts", unit::min, 2, "weldments × parts × time per part"};
inline constexpr Figure turns_min{"turns_time", "turning", unit::min, 2, "weldments × turns × time per turn"};
inline constexpr Figure weldment_floor{"weldment_floor", "floor time", unit::min, 2,
                                       "(fit-up of parts + turning) × (1 + personal allowance)"};
inline constexpr Figure weldment_labour{"weldment_labour", "labour", unit::money, 2, "floor time × labour rate"};
inline constexpr Figure weldment_equipment{"weldment_equipment", "equipment", unit::money, 2,
                                           "floor time × equipment rate"};
inline constexpr Figure metal_cost{"metal_cost", "base metal", unit::money, 2, "weldments × net mass / yield × price"};
inline constexpr Figure free_issue_share{"free_issue_handling", "handling of free-issue material", unit::percent, 1};
inline constexpr Figure free_issue_value{"free_issue_value", "value of free-issue material", unit::money, 2};
inline constexpr Figure free_issue_cost{"free_issue_cost", "free-issue handling", unit::money, 2,
                                        "weldments × value of free-issue material × share"};
inline constexpr Figure weldment_mass{"weldment_mass", "mass of all", unit::kg, 1, "weldments × net mass"};
inline constexpr Figure bought_price{"bought_price", "price", unit::money, 2};
inline constexpr Figure bought_cost{"bought_cost", "cost", unit::money, 2, "weldments × price"};

}  // namespace seambook::fig
