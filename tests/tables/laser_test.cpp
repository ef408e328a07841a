// Laser welding: speeds, line energy, gaps, and what the trade knows of hand-held work.
#include "trade/laser.hpp"

#include "../trace/random_row.hpp"
#include "read_units.hpp"
#include "rows.hpp"

using namespace tables;

namespace {

constexpr double mm_per_s = 1e-3, mm_per_min = 1e-3 / minute, joule_per_mm = 1e3;
Speed<> in_per_min(double x) { return {x * inch / minute}; }

}  // namespace

TEST_CASE("speeds of a table in inches a minute and millimetres a second") {
  // "Advanced Automation for Space Missions", laser-weld table (after Nagler 1976), NASA, scan p. 304: both units are
  // printed. By hand: 45 × 25.4 / 60 = 19.05.
  Rows rows("speed in two units");
  rows.check("45", read<dim::speed>("45 in/min").si / mm_per_s, 19.0, 0.06);
  rows.check("27", read<dim::speed>("27 in/min").si / mm_per_s, 11.4, 0.06);
  rows.check("30", read<dim::speed>("30 in/min").si / mm_per_s, 12.7, 0.06);
  rows.check("24", read<dim::speed>("24 in/min").si / mm_per_s, 10.2, 0.06);
  rows.check("160", read<dim::speed>("160 in/min").si / mm_per_s, 67.7, 0.06);
}

TEST_CASE("line energy of a laser beam") {
  // Derived: powers and speeds published, the energies computed by hand: 10800 / (50 × 25.4 / 60) = 510.24.
  struct Row {
    const char* weld;
    double watts;
    Speed<> speed;
    double j_per_mm, tolerance;
  };
  const Row table[] = {
      // The same NASA table: CO2 laser.
      {"butt 9.5 mm", 10800, in_per_min(50), 510.2362205, 5e-7},
      {"butt 9.5 mm, slower", 10800, in_per_min(45), 567, 0.5},
      {"butt 12.7 mm", 12000, in_per_min(27), 1050, 0.5},
      {"butt 12.7 mm, faster", 12000, in_per_min(30), 945, 0.5},
      {"butt 15.9 mm", 12000, in_per_min(24), 1181.102362, 5e-6},
      {"tee 9.5 to 12.7 mm", 11000, in_per_min(90), 289, 0.5},
      {"tee", 7500, in_per_min(65), 273, 0.5},
      {"butt HY-130 6.4 mm", 5500, in_per_min(50), 260, 0.5},
      {"butt HY-180 1.6 mm", 5500, in_per_min(160), 81, 0.5},
      // "Diode laser welding of stainless steel 304L", J. Mater. Process. Technol. 240 (2017), abstract.
      {"butt 304L 10 mm", 12000, Speed<>{1500 * mm_per_min}, 480, 5e-7},
      // "Review of laser welding of sheet alloys", Advances in Materials Science and Engineering 2018, Table 2.
      {"304L sheet", 4000, Speed<>{3000 * mm_per_min}, 80, 5e-7},
      {"347 sheet", 5000, Speed<>{2000 * mm_per_min}, 150, 5e-7},
      {"lap, order of magnitude of hand-held work", 1500, Speed<>{1500 * mm_per_min}, 60, 5e-7},
      // Low-power lap weld of a 416 cap on a 310 body, teaching site.
      {"lap 416 on 310", 575, Speed<>{762 * mm_per_min}, 45.27559055, 5e-8},
  };
  Rows rows("laser line energy, derived");
  for (const Row& row : table)
    rows.check(row.weld, beam_line_energy(Power<>{row.watts}, row.speed).si / joule_per_mm, row.j_per_mm,
               row.tolerance);
}

TEST_CASE("gap without filler") {
  // Derived: rule of a tenth of the thinner sheet, "Gap tolerance during high-speed fiber laser welding of thin metal",
  // EWI; size ours: 2.0 mm × 10 % = 0.2 mm.
  Rows rows("laser gap, derived");
  rows.check("2 mm", gap_limit(mm(2), Ratio<>{0.1}).si * 1e3, 0.2, 1e-9);
  // With a beam of 0.3 mm the half of it, 0.15 mm, is the stricter rule ("Laser's Edge", part 3, Gear Solutions).
  rows.check("2 mm, beam 0.3 mm", gap_limit_with_beam(mm(2), Ratio<>{0.1}, mm(0.3), Ratio<>{0.5}).si * 1e3, 0.15, 1e-9);
}

TEST_CASE("hand-held laser on aluminium sheet") {
  // Common practice, no source: 1/8 in sheet, tight square butt, one run, 2 kW source at 87 % (1740 W); a seam of 4 in
  // takes 8 to 10 s: 101.6 / 10 = 10.2 to 101.6 / 8 = 12.7 mm/s, 1740 / 12.7 = 137 to 1740 / 10.16 = 171 J/mm.
  Rows rows("hand-held laser, common practice");
  const Length<> seam = inches(4);
  const Speed<> slow = seam / Time<>{10}, fast = seam / Time<>{8};
  rows.check("slowest", slow.si / mm_per_s, 10.2, 0.05);
  rows.check("fastest", fast.si / mm_per_s, 12.7, 0.05);
  rows.check("beam time", arc_time(seam, Ratio<>{1}, fast).si, 8, 1e-9);
  rows.check("least line energy", beam_line_energy(Power<>{1740}, fast).si / joule_per_mm, 137, 0.5);
  rows.check("largest line energy", beam_line_energy(Power<>{1740}, slow).si / joule_per_mm, 171, 0.5);
  // Common practice, no source: 0.045 in (1.143 mm) wire at 80 cm/min: 800 / 60 × 8 = 107 to 133 mm of wire; section
  // π/4 × 1.143² × 13.33 / 12.7 = 1.08 to 1.35 mm².
  const Speed<> feed = read<dim::speed>("80 cm/min");
  rows.check("least wire", (feed * Time<>{8}).si * 1e3, 107, 0.5);
  rows.check("most wire", (feed * Time<>{10}).si * 1e3, 133, 0.5);
  const Flow<> laid = deposition_volume_rate(feed, inches(0.045), Ratio<>{1});
  rows.check("least section", area_per_pass(laid, fast).si * 1e6, 1.08, 0.005);
  rows.check("largest section", area_per_pass(laid, slow).si * 1e6, 1.35, 0.005);
  // Common practice, no source: 1/8 in is 3.175 mm; shops call it 3.2.
  rows.check("1/8 in", read<dim::length>("1/8 in").si * 1e3, 3.175, 1e-12);
}

TEST_CASE("build-up by laser") {
  // Common practice, no source: runs of a laser build-up on an outside corner follow each other uncleaned. A pace of
  // nothing gives no minutes, however many runs there are.
  random_row::Dice dice(5);
  Row<Sourced> row = random_row::any(dice);
  for (PassInputs<Sourced>& pass : row.passes) pass.labour.interpass_pace.si.value = 0;
  Time<> cleaning{0};
  for (const PassFigures<double>& pass : row_figures(lift_row<double>(row)).passes)
    cleaning = cleaning + pass.labour.interpass;
  Rows rows("hand-held laser, common practice");
  rows.check("cleaning between runs", cleaning.si, 0, 0);
}

TEST_CASE("speed ceilings of the beam's energy") {
  // Common practice, no source: 2 kW, 60 to 80 % absorbed, 35 to 48 % of that melting, about 9 J/mm³ for stainless
  // steel. A seam of 6 mm² may go 0.6 × 0.35 × 2000 / (6 × 9) = 7.78 mm/s at most by the low shares, 0.8 × 0.48 × 2000
  // / 54 = 14.2 mm/s by the high ones.
  const auto ceiling = [](double absorbed, double melting) {
    return speed_ceiling(Ratio<>{absorbed}, Ratio<>{melting}, Power<>{2000}, mm2(6), EnergyPerVolume<>{9e9}).si /
           mm_per_s;
  };
  CHECK(within(ceiling(0.6, 0.35), 7.78, 0.005));
  CHECK(within(ceiling(0.8, 0.48), 14.22, 0.005));
  // Common practice, no source: about 2 mm a kilowatt in steel at hand speed: 1.5 kW reaches 3 mm.
  CHECK(within(thickness_within_reach(Power<>{1500}, mm(2) / Power<>{1000}).si, 0.003, 1e-12));
}
