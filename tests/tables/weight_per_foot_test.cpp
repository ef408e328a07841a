// Weld metal in pounds a foot, steel of 0.283 lb/in³.
// Source of all rows: "Welding Filler Metals Data Handbook", section 8, p. 8-9, weight per foot of fillet and common
// butt welds, ESAB North America (manufacturer's handbook). The table mixes rounding and truncation, so that a row may
// be off by one unit of its last place, 0.001 lb/ft.
#include "rows.hpp"

using namespace tables;

namespace {

constexpr double last_place = 0.00105;
Density<> steel() { return lb_per_in3(0.283); }

// By hand, 1/4 in plate, 1/8 in gap: 0.25 × 0.125 × 12 × 0.283 = 0.106.
// Misprints left out: 5/16 × 3/8 printed 0.390 (0.398), 7/16 × 1/16 printed 0.091 (0.093), 3/4 × 3/8 printed 0.995
// (0.955, digits swapped); the neighbours of each reproduce.
struct GapRow {
  double thickness_in, gap_in, lb_per_ft;
};
constexpr GapRow gaps[] = {
    {0.125, 0.0625, 0.027},  {0.125, 0.1875, 0.08},  {0.125, 0.25, 0.106},    {0.125, 0.375, 0.159},
    {0.125, 0.5, 0.212},     {0.1875, 0.0625, 0.04}, {0.1875, 0.125, 0.08},   {0.1875, 0.1875, 0.119},
    {0.1875, 0.25, 0.159},   {0.1875, 0.375, 0.239}, {0.1875, 0.5, 0.318},    {0.25, 0.0625, 0.053},
    {0.25, 0.125, 0.106},    {0.25, 0.1875, 0.159},  {0.25, 0.25, 0.212},     {0.3125, 0.0625, 0.066},
    {0.3125, 0.1875, 0.199}, {0.3125, 0.5, 0.531},   {0.375, 0.1875, 0.239},  {0.375, 0.375, 0.478},
    {0.375, 0.5, 0.637},     {0.4375, 0.125, 0.186}, {0.4375, 0.25, 0.371},   {0.4375, 0.375, 0.557},
    {0.4375, 0.5, 0.743},    {0.5, 0.0625, 0.106},   {0.5, 0.125, 0.212},     {0.5, 0.25, 0.425},
    {0.5, 0.375, 0.637},     {0.5, 0.5, 0.849},      {0.5625, 0.125, 0.239},  {0.5625, 0.1875, 0.358},
    {0.5625, 0.375, 0.716},  {0.5625, 0.5, 0.955},   {0.625, 0.0625, 0.133},  {0.625, 0.125, 0.265},
    {0.625, 0.1875, 0.398},  {0.625, 0.375, 0.796},  {0.6875, 0.0625, 0.146}, {0.6875, 0.125, 0.292},
    {0.6875, 0.25, 0.584},   {0.6875, 0.375, 0.876}, {0.75, 0.0625, 0.159},   {0.75, 0.125, 0.318},
    {0.75, 0.1875, 0.478},   {0.75, 0.25, 0.637},    {0.8125, 0.0625, 0.172}, {0.8125, 0.125, 0.345},
    {0.8125, 0.1875, 0.517}, {0.8125, 0.25, 0.69},   {0.8125, 0.375, 1.035},  {0.875, 0.0625, 0.186},
    {0.875, 0.125, 0.371},   {0.875, 0.25, 0.743},   {0.9375, 0.0625, 0.199}, {0.9375, 0.125, 0.398},
    {0.9375, 0.5, 1.592},    {1, 0.125, 0.425},      {1, 0.25, 0.849},        {1, 0.375, 1.274},
    {1, 0.5, 1.698},
};

// By hand, 1/2 in plate, bevel 22.5°: 0.5² × tan 22.5° / 2 × 12 × 0.283 = 0.176. The 45° column is the equal-leg
// fillet. Misprints left out: 7/16 in at 22.5° printed 0.129 (0.135), 9/16 in at 45° printed 0.451 (0.537: 16 % low,
// and a usual fillet), 11/16 in at 45° printed 0.804 (0.803), 15/16 in at 30° printed 0.863 (0.862).
struct BevelRow {
  double depth_in, bevel_deg, lb_per_ft;
};
constexpr BevelRow bevels[] = {
    {0.125, 5, 0.002},     {0.125, 30, 0.015},   {0.125, 45, 0.027},    {0.1875, 15, 0.016}, {0.1875, 22.5, 0.025},
    {0.1875, 30, 0.035},   {0.1875, 45, 0.06},   {0.25, 5, 0.009},      {0.25, 10, 0.019},   {0.25, 15, 0.028},
    {0.25, 22.5, 0.044},   {0.25, 30, 0.061},    {0.3125, 5, 0.015},    {0.3125, 10, 0.029}, {0.3125, 15, 0.044},
    {0.3125, 22.5, 0.069}, {0.3125, 30, 0.096},  {0.375, 5, 0.021},     {0.375, 10, 0.042},  {0.375, 15, 0.064},
    {0.375, 22.5, 0.099},  {0.375, 30, 0.138},   {0.375, 45, 0.239},    {0.4375, 10, 0.057}, {0.4375, 15, 0.087},
    {0.4375, 45, 0.325},   {0.5, 5, 0.037},      {0.5, 15, 0.114},      {0.5, 22.5, 0.176},  {0.5, 45, 0.425},
    {0.5625, 5, 0.047},    {0.5625, 10, 0.095},  {0.5625, 15, 0.144},   {0.5625, 30, 0.311}, {0.625, 5, 0.058},
    {0.625, 15, 0.178},    {0.625, 22.5, 0.275}, {0.625, 30, 0.383},    {0.625, 45, 0.664},  {0.6875, 5, 0.07},
    {0.6875, 10, 0.142},   {0.6875, 15, 0.215},  {0.6875, 22.5, 0.332}, {0.6875, 30, 0.464}, {0.75, 15, 0.256},
    {0.75, 22.5, 0.396},   {0.75, 30, 0.552},    {0.75, 45, 0.956},     {0.8125, 5, 0.098},  {0.8125, 15, 0.301},
    {0.8125, 22.5, 0.464}, {0.8125, 30, 0.648},  {0.8125, 45, 1.121},   {0.875, 5, 0.114},   {0.875, 10, 0.23},
    {0.875, 15, 0.349},    {0.875, 22.5, 0.538}, {0.875, 45, 1.3},      {0.9375, 10, 0.263}, {0.9375, 22.5, 0.618},
    {0.9375, 45, 1.493},   {1, 5, 0.149},        {1, 10, 0.3},          {1, 22.5, 0.703},    {0.5, 10, 0.075},
};

// By hand, 3/4 in wide, 1/4 in high: 2/3 × 0.75 × 0.25 × 12 × 0.283 = 0.4245.
struct CapRow {
  double width_in, height_in, lb_per_ft;
};
constexpr CapRow caps[] = {
    {0.5625, 0.0625, 0.08}, {0.625, 0.0625, 0.088},  {0.75, 0.0625, 0.106},   {0.5625, 0.125, 0.159},
    {0.625, 0.125, 0.177},  {0.5625, 0.1875, 0.239}, {0.625, 0.1875, 0.265},  {0.6875, 0.1875, 0.292},
    {0.625, 0.25, 0.354},   {0.75, 0.25, 0.424},     {0.8125, 0.0625, 0.115}, {0.875, 0.0625, 0.124},
    {1, 0.0625, 0.141},     {1, 0.125, 0.283},       {1, 0.1875, 0.424},      {1, 0.25, 0.566},
};

}  // namespace

TEST_CASE("metal in the gap of square edges in pounds a foot") {
  Rows rows("gap, lb/ft");
  for (const GapRow& row : gaps)
    rows.check(std::to_string(row.thickness_in) + " in, gap " + std::to_string(row.gap_in),
               lb_per_ft(gap_section(inches(row.thickness_in), inches(row.gap_in)), steel()), row.lb_per_ft,
               last_place);
}

TEST_CASE("metal of a bevel triangle in pounds a foot") {
  Rows rows("bevel triangle, lb/ft");
  for (const BevelRow& row : bevels)
    rows.check(std::to_string(row.depth_in) + " in, bevel " + std::to_string(row.bevel_deg),
               lb_per_ft(bevel_triangle(inches(row.depth_in), degrees(row.bevel_deg)), steel()), row.lb_per_ft,
               last_place);
}

TEST_CASE("metal of a parabolic cap in pounds a foot") {
  Rows rows("cap, lb/ft");
  for (const CapRow& row : caps)
    rows.check(std::to_string(row.width_in) + " in wide, height " + std::to_string(row.height_in),
               lb_per_ft(cap_section(inches(row.width_in), inches(row.height_in)), steel()), row.lb_per_ft, last_place);
}

TEST_CASE("metal of an equal-leg fillet in pounds a foot") {
  // By hand, leg 3/8 in: 0.375² / 2 × 12 × 0.283 = 0.2388.
  struct Row {
    double leg_in, lb_per_ft, tolerance;
  };
  const Row table[] = {
      {0.1875, 0.060, last_place}, {0.375, 0.239, last_place}, {0.4375, 0.325, last_place},
      {0.5, 0.425, last_place},    {0.75, 0.956, last_place},  {0.875, 1.300, last_place},
      {1, 1.698, last_place},      {0.5, 0.424, 0.0006},  // the worked fillet of pp. 8-1 and 8-2, printed truncated
                                                          // (0.4245)
  };
  Rows rows("fillet, lb/ft");
  for (const Row& row : table)
    rows.check("leg " + std::to_string(row.leg_in) + " in",
               lb_per_ft(fillet_section(inches(row.leg_in), Ratio<>{0}), steel()), row.lb_per_ft, row.tolerance);
}
