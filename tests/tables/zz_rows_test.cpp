// The last file of its folder by name, and so the last to run: holds the rows that ran against what the publications
// show. A table counts its printed cells, less the misprints named beside it; "derived" means that inputs or formula
// are published and the answer is ours.
//
// Left out, since nothing of ours computes them:
// - misprints, each named beside its table with what it should say; further ones: a saw bench of 400 over 20 years with
//   a depreciation of 40 a year (20), machine costs of 92150 added up to 99150 (studyx), a laser source of 12 kW said
//   to draw 15 to 18 kW, which would be a wall-plug efficiency of 67 to 80 % (vendor blog), the deposition
//   constant 12.1 for 13.1 (trade article), aluminium wire labelled 3/64 in with the length of 0.045 in wire;
// - tables of rules that are data of a rate book and no arithmetic: thickness without preheat by method A (EN 1011-2,
//   table C.1), lens shades (29 CFR 1910.133; AS/NZS 1338.1), arc-air gouging ("Book of Welding");
// - ranges of efficiency, operating factor, flow and the like, which are defaults or thresholds;
// - common practice without numbers: settings from the next thicker step, time to learn, cautions for the laser.
#include "rows.hpp"

using namespace tables;

namespace {

struct Table {
  const char* name;
  int rows;
};
constexpr Table published[] = {
    // "Welding Filler Metals Data Handbook", ESAB North America: p. 8-9 (63 gaps less 3 misprints and one single row;
    // 68
    // bevels less 4 and one single row; 15 caps and one single row; 7 fillets and the worked one of pp. 8-1, 8-2), p.
    // 8-10 (49 gaps less 3 and two single rows; 41 bevels less 2; 3 caps and 4 fillets), p. 8-6.
    {"gap, lb/ft", 61},
    {"bevel triangle, lb/ft", 65},
    {"cap, lb/ft", 16},
    {"fillet, lb/ft", 8},
    {"gap, kg/m", 48},
    {"bevel triangle, kg/m", 39},
    {"cap and fillet, kg/m", 7},
    {"filler used", 1},
    // ESAB India: 37 volumes and one single row (weak), 4 that agree closely; 45 masses less one misprint, and three.
    {"single-V, volume", 42},
    {"single-V, mass", 47},
    // Kobe Steel: 24 less one misprint, and three single rows.
    {"filler for fillets", 26},
    // "MIG Welding Handbook", ESAB North America; Lincoln Electric; CIGWELD; class note.
    {"wire, length of a pound", 6},
    {"metal-cored wire, efficiency", 10},
    {"metal-cored wire, melt-off", 7},
    {"deposition rate", 4},
    // "Basic Welding Filler Metal Technology", ESAB Group: 41 cells and three single ones.
    {"stub loss", 44},
    // Cost examples, every printed step.
    {"flux-cored, cost of a pound", 5},
    {"flux-cored, payback", 2},
    {"gas-shielded, payback", 3},
    {"covered electrode, cost of a metre", 8},
    {"job of four joints", 6},
    {"arc energy", 2},
    {"electricity", 3},
    {"carbon equivalents", 6},
    {"speed in two units", 5},
    {"learning, unit model", 13},
    {"learning, cumulative average", 7},
    {"machine hour rate", 3},
    {"break-even", 2},
    {"interest and present value", 5},
    {"net present value", 3},
    {"hand-held laser, common practice", 11},
};
constexpr Table derived[] = {
    {"grooves, derived", 6},
    {"deposition rate, derived", 2},
    {"stub loss, derived", 2},
    {"travel speed and deposition, derived", 3},
    {"electricity of a pound, derived", 1},
    {"share of electricity, derived", 2},
    {"heat input, derived", 4},
    {"electricity, derived", 3},
    {"gas, derived", 3},
    {"preheat by method B", 5},
    {"combined thickness", 3},
    {"preheating", 5},
    {"laser line energy, derived", 14},
    {"laser gap, derived", 2},
    {"learning, derived", 2},
    {"machine hour rate, derived", 4},
};

}  // namespace

TEST_CASE("every row of the published tables ran") {
  int expected = 0, ran = 0;
  const auto compare = [&](const Table& table) {
    CHECK_MESSAGE(rows_run()[table.name] == table.rows, table.name);
    expected += table.rows;
  };
  for (const Table& table : published) compare(table);
  for (const Table& table : derived) compare(table);
  for (const auto& [name, count] : rows_run()) ran += count;
  CHECK(ran == expected);  // a table that is not listed above shows here
  CHECK(rows_run().size() == std::size(published) + std::size(derived));
  MESSAGE(ran << " rows in " << rows_run().size() << " tables");
}
