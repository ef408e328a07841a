// Weld metal of single-V butts, without root face and cap.
// Source: electrode consumption tables, ESAB India (Philips handbook lineage), single-V in the flat position
// (manufacturer's handbook; some copies have lost digits).
#include "rows.hpp"

using namespace tables;

namespace {

// Theoretical volume in cm³ a metre, which is the section in mm². By hand, 8 mm, gap 1.5 mm, 60°: 8² × tan 30° + 1.5 ×
// 8 = 48.95. The tables are rounded to 0.5 or 1 cm³ and scatter by 2.5 %: weak rows.
struct VolumeRow {
  double thickness_mm, gap_mm, groove_deg, cm3_per_m;
};
constexpr double spread = 0.025;
constexpr VolumeRow volumes[] = {
    {4, 1, 50, 11.5},   {4, 1, 70, 15},     {4, 1, 80, 17.5},  {5, 1, 50, 16.5},   {5, 1, 60, 19.5}, {5, 1, 80, 26},
    {6, 1, 50, 23},     {6, 1, 80, 36},     {7, 1.5, 60, 39},  {7, 1.5, 80, 51.5}, {8, 1.5, 60, 49}, {8, 1.5, 70, 57},
    {9, 1.5, 60, 60.5}, {9, 1.5, 80, 81.5}, {10, 2, 50, 66.5}, {10, 2, 60, 77.5},  {10, 2, 70, 90},  {11, 2, 50, 78.5},
    {12, 2, 50, 91},    {12, 2, 60, 107},   {12, 2, 70, 125},  {12, 2, 80, 145},   {14, 2, 50, 120}, {14, 2, 60, 141},
    {15, 2, 60, 160},   {15, 2, 70, 188},   {16, 2, 50, 151},  {16, 2, 60, 180},   {16, 2, 70, 211}, {16, 2, 80, 247},
    {18, 2, 50, 189},   {18, 2, 60, 223},   {18, 2, 70, 263},  {20, 2, 50, 227},   {20, 2, 70, 320}, {20, 2, 80, 376},
    {25, 2, 50, 341},   {25, 2, 80, 577},
};
// The rows that agree to their own rounding.
struct CloseRow {
  VolumeRow row;
  double tolerance;
};
constexpr CloseRow close_rows[] = {
    {{6, 1, 60, 27}, 0.25}, {{8, 1.5, 60, 49}, 0.25}, {{10, 2, 50, 66.5}, 0.25}, {{20, 2, 60, 271}, 0.5}};

// Volume laid to its mass at 7.85 g/cm³. By hand, 72 cm³: 72 × 7.85 / 1000 = 0.565. Printed to 0.01 kg, the volume to
// 0.5 cm³. Misprints left out: 5 mm at 70° 24.5 cm³ printed 0.16 (0.19), 14 mm at 60° 159 cm³ printed 1.17 (1.25).
struct MassRow {
  double thickness_mm, groove_deg, cm3_per_m, kg_per_m;
};
constexpr MassRow masses[] = {
    {4, 60, 12.5, 0.1},  {4, 70, 16.5, 0.13},  {4, 80, 18, 0.14},    {5, 50, 16, 0.13},    {5, 60, 19, 0.15},
    {5, 80, 28, 0.22},   {6, 50, 21.5, 0.17},  {6, 60, 25.5, 0.2},   {6, 70, 37, 0.29},    {6, 80, 38.5, 0.3},
    {7, 50, 32.5, 0.26}, {7, 60, 38, 0.3},     {7, 70, 49, 0.38},    {7, 80, 56, 0.44},    {8, 50, 40, 0.31},
    {8, 60, 46.5, 0.37}, {8, 70, 59.5, 0.47},  {9, 50, 48, 0.38},    {9, 70, 75.5, 0.59},  {9, 80, 87.5, 0.69},
    {10, 50, 62, 0.49},  {10, 70, 96.5, 0.76}, {10, 80, 109, 0.86},  {11, 50, 71.5, 0.56}, {11, 60, 83.5, 0.66},
    {11, 80, 130, 1.02}, {12, 50, 83, 0.65},   {12, 60, 97.5, 0.77}, {12, 80, 157, 1.23},  {14, 60, 130, 1.02},
    {14, 80, 204, 1.6},  {15, 50, 123, 0.97},  {15, 60, 146, 1.15},  {15, 70, 197, 1.55},  {15, 80, 231, 1.81},
    {16, 50, 132, 1.04}, {16, 60, 157, 1.23},  {16, 70, 223, 1.75},  {18, 70, 276, 2.17},  {18, 80, 320, 2.51},
    {20, 70, 334, 2.62}, {20, 80, 396, 3.11},  {25, 50, 313, 2.46},  {25, 80, 606, 4.76},  {10, 60, 72, 0.57},
    {20, 60, 247, 1.94}, {25, 70, 510, 4},
};

double volume(const VolumeRow& row) {
  return single_v_section(mm(row.thickness_mm), mm(row.gap_mm), Length<>{0}, degrees(row.groove_deg)).si * 1e6;
}

}  // namespace

TEST_CASE("volume of a single-V without root face") {
  Rows rows("single-V, volume");
  for (const VolumeRow& row : volumes)
    rows.check(std::to_string(row.thickness_mm) + " mm, " + std::to_string(row.groove_deg) + " deg", volume(row),
               row.cm3_per_m, spread * row.cm3_per_m);
  for (const CloseRow& row : close_rows)
    rows.check(std::to_string(row.row.thickness_mm) + " mm", volume(row.row), row.row.cm3_per_m, row.tolerance);
}

TEST_CASE("mass of the metal of a single-V") {
  Rows rows("single-V, mass");
  for (const MassRow& row : masses)
    rows.check(std::to_string(row.thickness_mm) + " mm, " + std::to_string(row.groove_deg) + " deg",
               kg_per_m(mm2(row.cm3_per_m), g_per_cm3(7.85)), row.kg_per_m, 0.011);
}

TEST_CASE("grooves put together from their parts") {
  // Derived, no published result: the handbook's parts A to C ("Welding Filler Metals Data Handbook", section 8, ESAB
  // North America) added up by hand, at 7.85 g/cm³.
  const Density<> steel = g_per_cm3(7.85);
  // Single-V 60°, 12 mm, gap 3, root face 2, cap 14 × 2: 3 × 12 + 10² × tan 30° + 2/3 × 14 × 2 = 112.40 mm².
  const Area<> single_v = single_v_section(mm(12), mm(3), mm(2), degrees(60)) + cap_section(mm(14), mm(2));
  Rows rows("grooves, derived");
  rows.check("single-V", kg_per_m(single_v, steel), 0.882353, 5e-7);
  // Its face: 3 + 2 × 10 × tan 30° = 14.547 mm.
  CHECK(within(single_v_face(mm(12), mm(3), mm(2), degrees(60)).si * 1e3, 14.547, 5e-4));
  // Single bevel 45°, 12 mm, gap 3: 3 × 12 + 12² / 2 = 108 mm²; face 3 + 12 = 15 mm.
  rows.check("single bevel", kg_per_m(single_bevel_section(mm(12), mm(3), mm(0), degrees(45)), steel), 0.8478, 5e-7);
  CHECK(within(single_bevel_face(mm(12), mm(3), mm(0), degrees(45)).si * 1e3, 15, 1e-9));
  // Double-V 60°, 20 mm, gap 2, root face 2: 2 × 20 + 2 × 9² × tan 30° = 133.53 mm², half the V metal of the single-V.
  rows.check("double-V", kg_per_m(double_v_section(mm(20), mm(2), mm(2), degrees(60)), steel), 1.048216, 5e-7);
  // Single-J, 30 mm, gap 2, root face 3, radius 6, flank at 10° (plane geometry, no published J or U was found): arc
  // 6²/2 × (80° in radians - sin 10° cos 10°) = 22.05; above it 30 - 3 - 6 + 6 sin 10° = 22.042 mm: 22.042 × 6 cos 10°
  // + 22.042²/2 × tan 10° = 173.08; with the gap 60 + 195.13 = 255.13 mm². The U has two flanks: 450.26 mm².
  rows.check("single-J", kg_per_m(single_j_section(mm(30), mm(2), mm(3), degrees(10), mm(6)), steel), 2.002774, 5e-7);
  rows.check("single-U", kg_per_m(single_u_section(mm(30), mm(2), mm(3), degrees(20), mm(6)), steel), 3.534549, 5e-7);
  // Square from both sides, 6 mm, gap 3, two caps 8 × 1.5: 18 + 2 × 8 = 34 mm².
  rows.check("square", kg_per_m(gap_section(mm(6), mm(3)) + 2 * cap_section(mm(8), mm(1.5)), steel), 0.2669, 5e-7);
  // Throat 3.5 mm is leg 4.95 mm; the section is the throat squared, 12.25 mm².
  CHECK(within(leg_of_throat(mm(3.5)).si * 1e3, 4.9497, 5e-5));
  CHECK(within(fillet_section(leg_of_throat(mm(3.5)), Ratio<>{0}).si * 1e6, 12.25, 1e-9));
}
