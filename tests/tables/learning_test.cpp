// Learning curves: printed answers of both models.
#include "trade/learning.hpp"

#include "rows.hpp"
#include "trade/economics.hpp"

using namespace tables;

namespace {

Time<> hours(double x) { return {x * hour}; }
double in_hours(Time<> t) { return t.si / hour; }
Ratio<> exponent_at(double rate) { return learning_exponent(Ratio<>{rate}); }

// Source: operations-management problem set, unit model (Crawford), coursehero (teaching material). Some answers come
// from textbook factors of three digits, which the tolerance allows for. By hand, 95 %, 8th piece: 126 × 0.95³ = 108.
// Times in the unit of the source, hours or minutes.
struct PieceRow {
  double first, piece, rate, printed, tolerance;
};
constexpr PieceRow pieces[] = {
    {300, 5, 0.80, 178.7, 0.05},   // 300 × 5^-0.3219
    {9, 3, 0.70, 5.114, 5e-4},     // 9 × 3^-0.5146
    {9, 5, 0.70, 3.932, 5e-4},     //
    {75, 2, 0.85, 63.75, 5e-3},    // 75 × 0.85
    {75, 8, 0.85, 46.05, 0.0426},  // factor .614; exact 75 × 0.85³ = 46.06
    {75, 4, 0.85, 54.23, 0.0426},  // factor .723; exact 75 × 0.85² = 54.19
    {126, 8, 0.95, 108, 0.5},      //
    {126, 50, 0.95, 94.3, 0.05},   // 126 × 50^-0.0740
    {60, 3, 0.95, 55.32, 6e-3},    // 60 × 3^-0.0740
};
struct TotalRow {
  double first;
  int pieces;
  double rate, printed, tolerance;
};
constexpr TotalRow totals[] = {
    {300, 5, 0.80, 1121.4, 0.15},   // factor 3.738
    {300, 18, 0.80, 2914.8, 0.15},  // factor 9.716
    {15, 3, 0.70, 34.023, 5e-4},    // 15 × (1 + 0.7 + 0.5682)
};

}  // namespace

TEST_CASE("unit model: one piece") {
  Rows rows("learning, unit model");
  for (const PieceRow& row : pieces)
    rows.check("piece " + std::to_string(row.piece),
               in_hours(unit_model_piece(hours(row.first), Ratio<>{row.piece}, exponent_at(row.rate))), row.printed,
               row.tolerance);
  for (const TotalRow& row : totals)
    rows.check("pieces to " + std::to_string(row.pieces),
               in_hours(unit_model_total(hours(row.first), row.pieces, exponent_at(row.rate))), row.printed,
               row.tolerance);
  // The same problem set: 225 workers for the first, with the exponent rounded to -0.322: 225 × 11^-0.322 = 103.96;
  // printed 103.95 from a factor of three digits.
  rows.check("piece 11", in_hours(unit_model_piece(hours(225), Ratio<>{11}, Ratio<>{-0.322})), 103.95, 0.1125);
}

TEST_CASE("cumulative-average model") {
  Rows rows("learning, cumulative average");
  // Solved examination question, ACCA F5 June 2013 question 3, opentuition (teaching material): 45 h, b = -0.152, total
  // of 100: 45 × 100^0.848 = 2234.67 h.
  rows.check("100 in all", in_hours(average_model_total(hours(45), Ratio<>{100}, Ratio<>{-0.152})), 2234.6654, 2e-4);
  // The same site: 12.5 h for the first, 34.3 h for eight: (34.3 / 8 / 12.5)^(1/3) = 0.343^(1/3) = 70 %.
  rows.check("rate shown", learning_rate_shown(hours(12.5), hours(34.3), Ratio<>{8}).si * 100, 70, 0.05);
  // AAT study text (web copy, arithmetic only): 120 × 230^-0.322 = 20.83 h.
  rows.check("average of 230", in_hours(average_model_average(hours(120), Ratio<>{230}, Ratio<>{-0.322})), 20.83, 6e-3);
  // Tug boats, solved question (web page, arithmetic only): 125000 h, b = -0.234 (85 %).
  const Ratio<> b{-0.234};
  const Time<> first = hours(125000);
  rows.check("average of 3", in_hours(average_model_average(first, Ratio<>{3}, b)), 96663.75, 5e-3);
  rows.check("average of 4", in_hours(average_model_average(first, Ratio<>{4}, b)), 90370.77, 5e-3);
  // 125000 × (4^0.766 - 3^0.766) = 361483.07 - 289991.25.
  const Time<> fourth = average_model_piece(first, Ratio<>{4}, b);
  rows.check("4th boat", in_hours(fourth), 71491.83, 0.04);
  rows.check("4th boat, cost", (fourth * MoneyPerTime<>{40 / hour}).si, 2859673, 1);
}

TEST_CASE("learning, derived") {
  Rows rows("learning, derived");
  // Derived: the same boats in the unit model, 125000 × 0.85² × 40 = 3612500, 26 % above the answer of the other model.
  const Time<> fourth = unit_model_piece(hours(125000), Ratio<>{4}, exponent_at(0.85));
  rows.check("4th boat, unit model", (fourth * MoneyPerTime<>{40 / hour}).si, 3612500, 0.5);
  // Derived: average of 7 batches at 90 %, first 100 h: 100 × 7^-0.1520 = 74.39 h (question published in that problem
  // set, answer ours).
  rows.check("average of 7", in_hours(average_model_average(hours(100), Ratio<>{7}, exponent_at(0.9))), 74.3948, 5e-5);
}

TEST_CASE("laws of learning") {
  // A rate of 100 % changes nothing; the first piece takes its own time in both models; the pieces add up to the total.
  CHECK(within(in_hours(unit_model_piece(hours(7), Ratio<>{19}, exponent_at(1))), 7, 1e-12));
  for (const double rate : {0.7, 0.8, 0.95}) {
    CAPTURE(rate);
    const Ratio<> b = exponent_at(rate);
    CHECK(within(in_hours(unit_model_piece(hours(7), Ratio<>{1}, b)), 7, 1e-12));
    CHECK(within(in_hours(average_model_total(hours(7), Ratio<>{1}, b)), 7, 1e-12));
    Time<> added = hours(7);
    for (int n = 2; n <= 12; ++n) added = added + average_model_piece(hours(7), Ratio<>{double(n)}, b);
    CHECK(within(in_hours(added), in_hours(average_model_total(hours(7), Ratio<>{12}, b)), 1e-9));
    CHECK(within(learning_rate_shown(hours(7), average_model_total(hours(7), Ratio<>{12}, b), Ratio<>{12}).si, rate,
                 1e-12));
  }
}
