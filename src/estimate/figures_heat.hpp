// Figures of hardening and preheat. The order is that of the columns of the heat page.
#pragma once

#include <array>

#include "trace/figure.hpp"

namespace seambook::fig {

// What steel and filler are made of; rate-book numbers.
inline constexpr std::array<Figure, 10> elements = {{{"carbon", "carbon", unit::percent, 3},
                                                     {"silicon", "silicon", unit::percent, 3},
                                                     {"manganese", "manganese", unit::percent, 3},
                                                     {"chromium", "chromium", unit::percent, 3},
                                                     {"molybdenum", "molybdenum", unit::percent, 3},
                                                     {"vanadium", "vanadium", unit::percent, 3},
                                                     {"nickel", "nickel", unit::percent, 3},
                                                     {"copper", "copper", unit::percent, 3},
                                                     {"niobium", "niobium", unit::percent, 3},
                                                     {"boron", "boron", unit::percent, 4}}};
inline constexpr Figure stated_equivalent{"stated_carbon_equivalent", "carbon equivalent stated", unit::percent, 3};
inline constexpr Figure stated_cet{"stated_cet", "CET stated", unit::percent, 3};
inline constexpr Figure hydrogen{"hydrogen", "diffusible hydrogen", unit::ml_per_100g, 1};

inline constexpr Figure carbon_equivalent{"carbon_equivalent", "CE (IIW)", unit::percent, 3,
                                          "EN 1011-2: C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15, or as stated"};
inline constexpr Figure cet{"cet", "CET", unit::percent, 3,
                            "EN 1011-2: C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40, or as stated"};
inline constexpr Figure crack_parameter{
    "crack_parameter", "Pcm", unit::percent, 3,
    "Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B (as quoted by engineering pages)"};
inline constexpr Figure combined_thickness{"combined_thickness", "combined thickness", unit::mm, 1,
                                           "EN 1011-2, method A: all runs of plate that lead heat away"};
inline constexpr Figure plate_thickness{"plate_thickness", "thicker member", unit::mm, 1, "the larger thickness"};
inline constexpr Figure preheat_asked{"preheat_asked", "preheat by method B", unit::celsius, 0,
                                      "EN 1011-2, method B: 697 CET + 160 tanh(d/35) + 62 HD^0.35 + (53 CET - 32) Q - "
                                      "328, with CET in %, d in mm, HD in ml/100 g, Q in kJ/mm"};
inline constexpr Figure preheat{"preheat", "preheat", unit::celsius, 0};
inline constexpr Figure interpass_max{"interpass_max", "highest interpass temperature", unit::celsius, 0};
inline constexpr Figure heat_input_max{"heat_input_max", "limit of heat input", unit::kJ_per_mm, 2};

// Preheating; rate-book numbers first.
inline constexpr Figure steel_density{"steel_density", "density of the base metal", unit::g_per_cm3, 2};
inline constexpr Figure soak_width{"soak_width", "soak width", unit::mm, 0};
inline constexpr Figure specific_heat{"specific_heat", "specific heat", unit::J_per_kgK, 0};
inline constexpr Figure room{"room_temperature", "room temperature", unit::celsius, 0};
inline constexpr Figure burner{"burner", "burner", unit::kW, 1};
inline constexpr Figure burner_efficiency{"burner_efficiency", "burner efficiency", unit::percent, 0};
inline constexpr Figure burner_attended{"burner_attended", "burner minutes attended", unit::percent, 0};
inline constexpr Figure fuel_price{"fuel_price", "fuel price", unit::money_per_kWh, 3};
inline constexpr Figure check_per_joint{"check_per_joint", "check of the temperature per joint", unit::min, 2};
inline constexpr Figure check_per_pass{"check_per_pass", "check of the temperature per pass", unit::min, 2};

inline constexpr Figure heated{"heated_mass", "mass heated", unit::kg, 1,
                               "density × combined thickness × soak width × line of all joints"};
inline constexpr Figure preheat_energy{"preheat_heat", "heat for preheat", unit::kWh, 2,
                                       "mass heated × specific heat × (preheat - room temperature)"};
inline constexpr Figure burner_min{"burner_time", "burner time", unit::min, 1,
                                   "heat / (burner × burner efficiency); cooling meanwhile is left out"};
inline constexpr Figure preheat_min{"preheat_time", "preheat", unit::min, 2,
                                    "attended part of the burner time, and checks per joint and per pass"};
inline constexpr Figure fuel_money{"fuel_cost", "fuel", unit::money, 2, "heat / burner efficiency × fuel price"};

}  // namespace seambook::fig
