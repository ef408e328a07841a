// Weld metal in kilograms a metre, steel of 7.833 g/cm³ (0.283 lb/in³).
// Source of all rows: "Welding Filler Metals Data Handbook", section 8, p. 8-10, weight per metre of weld metal, ESAB
// North America (manufacturer's handbook). It was converted from the table in inches: a row may be off by one unit of
// its last place and by the rounding of the pounds, 0.002 kg/m together. Sizes are those inches in millimetres.
#include "rows.hpp"

using namespace tables;

namespace {

constexpr double last_place = 0.0021;
Density<> steel() { return g_per_cm3(7.833); }

// By hand, 12.7 mm plate, 3.175 mm gap: 12.7 × 3.175 × 7.833 / 1000 = 0.316.
// Misprints left out: 7.94 × 9.53 mm printed 0.580 (0.592), 11.11 × 1.59 mm printed 0.135 (0.138), 19.05 × 9.53 mm
// printed 1.481 (1.421); they come with the conversion.
struct GapRow {
  double thickness_mm, gap_mm, kg_per_m;
};
constexpr GapRow gaps[] = {
    {3.175, 3.175, 0.079},   {3.175, 9.525, 0.237},    {3.175, 12.7, 0.315},     {4.7625, 1.5875, 0.06},
    {4.7625, 3.175, 0.119},  {4.7625, 4.7625, 0.177},  {4.7625, 6.35, 0.237},    {4.7625, 9.525, 0.356},
    {6.35, 1.5875, 0.079},   {6.35, 3.175, 0.158},     {6.35, 4.7625, 0.237},    {6.35, 6.35, 0.315},
    {6.35, 12.7, 0.632},     {7.9375, 1.5875, 0.098},  {7.9375, 3.175, 0.198},   {7.9375, 4.7625, 0.296},
    {7.9375, 6.35, 0.394},   {7.9375, 12.7, 0.79},     {9.525, 4.7625, 0.356},   {9.525, 9.525, 0.711},
    {11.1125, 3.175, 0.277}, {11.1125, 4.7625, 0.415}, {11.1125, 6.35, 0.552},   {11.1125, 9.525, 0.829},
    {12.7, 1.5875, 0.158},   {12.7, 3.175, 0.315},     {12.7, 4.7625, 0.473},    {12.7, 9.525, 0.948},
    {12.7, 12.7, 1.263},     {14.2875, 1.5875, 0.177}, {14.2875, 3.175, 0.356},  {14.2875, 4.7625, 0.533},
    {14.2875, 9.525, 1.065}, {14.2875, 12.7, 1.421},   {15.875, 3.175, 0.394},   {15.875, 4.7625, 0.592},
    {15.875, 6.35, 0.79},    {15.875, 9.525, 1.184},   {17.4625, 1.5875, 0.217}, {17.4625, 6.35, 0.869},
    {17.4625, 9.525, 1.303}, {17.4625, 12.7, 1.736},   {19.05, 1.5875, 0.237},   {19.05, 3.175, 0.473},
    {19.05, 4.7625, 0.711},  {19.05, 6.35, 0.948},     {3.175, 6.35, 0.158},     {12.7, 6.35, 0.632},
};

// By hand, 12.7 mm at 30°: 12.7² × tan 30° / 2 × 7.833 / 1000 = 0.365. The 45° column is the equal-leg fillet.
// Misprints left out: 11.11 mm at 22.5° printed 0.192 (0.200), 14.29 mm at 45° printed 0.671 (0.800).
struct BevelRow {
  double depth_mm, bevel_deg, kg_per_m;
};
constexpr BevelRow bevels[] = {
    {3.175, 10, 0.007},    {3.175, 15, 0.01},    {3.175, 22.5, 0.016},   {3.175, 30, 0.022},   {3.175, 45, 0.04},
    {4.7625, 5, 0.007},    {4.7625, 15, 0.024},  {4.7625, 22.5, 0.037},  {4.7625, 45, 0.089},  {6.35, 10, 0.028},
    {6.35, 30, 0.091},     {6.35, 45, 0.158},    {7.9375, 5, 0.022},     {7.9375, 10, 0.043},  {7.9375, 15, 0.065},
    {7.9375, 22.5, 0.102}, {7.9375, 45, 0.247},  {9.525, 30, 0.205},     {9.525, 45, 0.356},   {11.1125, 5, 0.042},
    {11.1125, 30, 0.28},   {11.1125, 45, 0.484}, {12.7, 10, 0.112},      {12.7, 15, 0.17},     {12.7, 22.5, 0.262},
    {12.7, 30, 0.365},     {12.7, 45, 0.632},    {14.2875, 5, 0.07},     {14.2875, 15, 0.214}, {14.2875, 22.5, 0.332},
    {14.2875, 30, 0.463},  {15.875, 5, 0.086},   {15.875, 10, 0.174},    {15.875, 15, 0.265},  {15.875, 30, 0.57},
    {15.875, 45, 0.988},   {17.4625, 5, 0.104},  {17.4625, 22.5, 0.494}, {17.4625, 30, 0.69},
};

// By hand, 12.7 × 1.5875 mm: 2/3 × 12.7 × 1.5875 × 7.833 / 1000 = 0.105.
// Misprint left out: 7.94 × 3.18 mm printed 1.315 (0.132, the decimal point slipped).
struct CapRow {
  double width_mm, height_mm, kg_per_m;
};
constexpr CapRow caps[] = {{12.7, 1.5875, 0.106}, {12.7, 3.175, 0.21}, {4.7625, 1.5875, 0.04}};

struct FilletRow {
  double leg_mm, kg_per_m;
};
constexpr FilletRow fillets[] = {{6.35, 0.158}, {12.7, 0.632}, {15.875, 0.988}, {17.4625, 1.196}};

}  // namespace

TEST_CASE("metal in the gap of square edges in kilograms a metre") {
  Rows rows("gap, kg/m");
  for (const GapRow& row : gaps)
    rows.check(std::to_string(row.thickness_mm) + " mm, gap " + std::to_string(row.gap_mm),
               kg_per_m(gap_section(mm(row.thickness_mm), mm(row.gap_mm)), steel()), row.kg_per_m, last_place);
}

TEST_CASE("metal of a bevel triangle in kilograms a metre") {
  Rows rows("bevel triangle, kg/m");
  for (const BevelRow& row : bevels)
    rows.check(std::to_string(row.depth_mm) + " mm, bevel " + std::to_string(row.bevel_deg),
               kg_per_m(bevel_triangle(mm(row.depth_mm), degrees(row.bevel_deg)), steel()), row.kg_per_m, last_place);
}

TEST_CASE("metal of caps and fillets in kilograms a metre") {
  Rows rows("cap and fillet, kg/m");
  for (const CapRow& row : caps)
    rows.check("cap " + std::to_string(row.width_mm) + " mm wide",
               kg_per_m(cap_section(mm(row.width_mm), mm(row.height_mm)), steel()), row.kg_per_m, last_place);
  for (const FilletRow& row : fillets)
    rows.check("leg " + std::to_string(row.leg_mm) + " mm",
               kg_per_m(fillet_section(mm(row.leg_mm), Ratio<>{0}), steel()), row.kg_per_m, last_place);
}
