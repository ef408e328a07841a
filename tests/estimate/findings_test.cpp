// Each rule of the findings has a joint that fires and one close to it that does not. The rate book is the example
// shop's with odd_shop.yaml added.
#include <doctest/doctest.h>

#include "../read/complaints.hpp"
#include "shop_files.hpp"

using namespace seambook;

namespace {

struct FindingRow {
  const char* what;
  Level level;
  const char* words;  // of the message
  const char* fires;
  const char* sound;
  const char* quantities = "[10]";
};

const FindingRow rows[] = {
    {"leg against thinner member", Level::warning, "leg 5 mm on a member of 4 mm",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: [4 mm, 10 mm]",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: [5 mm, 10 mm]"},
    {"leg along a lapped edge", Level::warning, "leg 6 mm along the edge of a lapped plate of 6 mm",
     "base_metal: S235, procedure: CG-F6, weld: fillet, leg: 6 mm, thickness: [6 mm, 10 mm], lap: true",
     "base_metal: S235, procedure: CG-F4, weld: fillet, leg: 4 mm, thickness: [6 mm, 10 mm], lap: true"},
    {"least leg", Level::warning, "leg 4 mm on a thinner member of 10 mm; the usual least is 5 mm",
     "base_metal: S235, procedure: CG-F4, weld: fillet, leg: 4 mm, thickness: 10 mm",
     "base_metal: S235, procedure: CG-F4, weld: fillet, leg: 4 mm, thickness: [6 mm, 10 mm]"},
    {"oversized procedure", Level::warning, "procedure CG-F5 is set for a leg of 5 mm, the joint is drawn with 3.5 mm",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 3.5 mm, thickness: 5 mm",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 4 mm, thickness: 5 mm"},
    {"weld element against leg", Level::warning, "weld elements of 15 mm with a leg of 4 mm; the usual least is 16 mm",
     "base_metal: S235, procedure: CG-F4, weld: fillet, leg: 4 mm, thickness: 5 mm, element: 15 mm, pitch: 100 mm",
     "base_metal: S235, procedure: CG-F4, weld: fillet, leg: 4 mm, thickness: 5 mm, element: 40 mm, pitch: 100 mm"},
    {"short weld element in plate", Level::warning, "weld elements of 30 mm; the usual least is 40 mm",
     "base_metal: S235, procedure: CG-F4, weld: fillet, leg: 4 mm, thickness: 5 mm, element: 30 mm, pitch: 100 mm",
     "base_metal: S235, procedure: CG-F3, weld: fillet, leg: 3 mm, thickness: 3 mm, element: 30 mm, pitch: 100 mm"},
    {"thickness that is a slip", Level::warning, "thickness 250 mm is outside 0.3 mm to 200 mm",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: [250 mm, 20 mm]",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: [200 mm, 20 mm]"},
    {"leg that is a slip", Level::warning, "leg 30 mm is outside 0 mm to 25 mm",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 30 mm, thickness: 40 mm, passes: 20",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 25 mm, thickness: 40 mm, passes: 14"},
    {"mass balance", Level::warning, "procedure CG-F5 lays",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 6 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"counted passes far over the section", Level::error,
     "the passes counted lay 41.32 mm², the joint takes 13.75 mm²: more than 200 %",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 3",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 6 mm, thickness: 8 mm, passes: 2"},
    {"two sides without gouging", Level::warning,
     "a double V through 14 mm is welded from both sides, and the root is not",
     "base_metal: S235, procedure: CG-V15, weld: double_v, thickness: 14 mm",
     "base_metal: S235, procedure: CG-V15, weld: double_v, thickness: 14 mm, backgouge: true"},
    {"two sides that need not meet", Level::warning, "is welded from both sides, and the root is not",
     "base_metal: S235, procedure: CG-V15, weld: double_bevel, thickness: 14 mm",
     "base_metal: S235, procedure: CG-V15, weld: double_bevel, thickness: 14 mm, depth: [5 mm, 5 mm]"},
    {"bevel without time", Level::warning, "edges of 12 mm are bevelled, and neither minutes nor cutting",
     "base_metal: S235, procedure: CG-V15, weld: single_v, thickness: 12 mm",
     "base_metal: S235, procedure: CG-V8, weld: single_v, thickness: 9 mm"},
    {"no waiting between passes", Level::warning, "passes on 30 mm, and no waiting between them",
     "base_metal: S235, procedure: CG-V25, weld: single_v, thickness: 30 mm",
     "base_metal: S235, procedure: CG-V25, weld: single_v, thickness: 24 mm"},
    {"travel speed", Level::warning, "procedure fast: travel speed 1170 mm/min by process 135",
     "base_metal: S235, procedure: fast, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"travel speed in another unit", Level::error, "procedure slip: travel speed 585000 mm/min",
     "base_metal: S235, procedure: slip, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"deposition rate", Level::warning,
     "procedure heavy-stick: 3.391 kg/h laid in arc time; usual is 0.5 kg/h to 1.9 kg/h",
     "base_metal: S235, procedure: heavy-stick, weld: fillet, leg: 8.5 mm, thickness: 10 mm, passes: 1",
     "base_metal: S235, procedure: stick, weld: fillet, leg: 4 mm, thickness: 5 mm, passes: 1"},
    {"heat input", Level::warning, "procedure hot: heat input 1.987 kJ/mm on base-metal group 8.1",
     "base_metal: \"1.4301\", procedure: hot, weld: fillet, leg: 9.8 mm, thickness: 10 mm, passes: 1",
     "base_metal: \"1.4301\", procedure: SG-F4, weld: fillet, leg: 4 mm, thickness: 4 mm, passes: 1"},
    {"voltage", Level::warning, "procedure high-volts: 37 V at 250 A by process 135; usual is 26.5 V",
     "base_metal: S235, procedure: high-volts, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"leg of one pass", Level::warning, "leg 9 mm in one pass in position PB; usual is at most 8 mm",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 9 mm, thickness: 12 mm, passes: 1, position: PB",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 9 mm, thickness: 12 mm, passes: 1, position: PA"},
    {"size of a pass", Level::warning, "a pass; usual is 5 mm² to 60 mm²",
     "base_metal: S235, procedure: CG-F3, weld: fillet, leg: 3 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F3, weld: fillet, leg: 3 mm, thickness: 3 mm, passes: 1"},
    {"gas flow", Level::warning, "procedure little-gas: 3 L/min of gas by process 135; usual is 10 L/min to 25 L/min",
     "base_metal: S235, procedure: little-gas, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"duty cycle", Level::warning, "procedure high-amps: the arc burns",
     "base_metal: S235, procedure: high-amps, weld: fillet, leg: 8 mm, thickness: 12 mm, passes: 1",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 12 mm, passes: 1"},
    {"polarity of a wire", Level::error, "process 135, polarity DCEN: solid wire on DCEN",
     "base_metal: S235, procedure: wrong-pole, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"polarity of tungsten", Level::error, "the tungsten melts on DCEP",
     "base_metal: \"1.4301\", procedure: hot-tungsten, weld: fillet, leg: 2.5 mm, thickness: 2 mm, passes: 1",
     "base_metal: \"1.4301\", procedure: ST-TF2, weld: fillet, leg: 2.5 mm, thickness: 2 mm, passes: 1"},
    {"active gas on aluminium", Level::error, "gas M21 (group M21), base metal AW-5754 (group 22.3): carbon dioxide",
     "base_metal: AW-5754, procedure: al-active, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1",
     "base_metal: AW-5754, procedure: al, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1"},
    {"nitrogen on aluminium", Level::warning, "nitrogen on aluminium",
     "base_metal: AW-5754, procedure: al-nitrogen, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1",
     "base_metal: AW-5754, procedure: al, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1"},
    {"active gas on tungsten", Level::error, "gas C1 (group C1): an active gas burns the tungsten",
     "base_metal: \"1.4301\", procedure: active-tungsten, weld: fillet, leg: 2.5 mm, thickness: 2 mm, passes: 1",
     "base_metal: \"1.4301\", procedure: ST-TF2, weld: fillet, leg: 2.5 mm, thickness: 2 mm, passes: 1"},
    {"argon on carbon steel", Level::warning, "argon alone gives an unsteady arc",
     "base_metal: S235, procedure: argon, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1",
     "base_metal: S235, procedure: unknown-gas, weld: fillet, leg: 5 mm, thickness: 8 mm, passes: 1"},
    {"much carbon dioxide on stainless", Level::warning, "over 5 % carbon dioxide",
     "base_metal: \"1.4301\", procedure: much-carbon, weld: fillet, leg: 4 mm, thickness: 4 mm, passes: 1",
     "base_metal: \"1.4301\", procedure: SG-F4, weld: fillet, leg: 4 mm, thickness: 4 mm, passes: 1"},
    {"hydrogen off austenitic", Level::error, "gas R1 (group R1), base metal S235 (group 1.1): hydrogen",
     "base_metal: S235, procedure: hydrogen, weld: fillet, leg: 2.5 mm, thickness: 2 mm, passes: 1",
     "base_metal: \"1.4301\", procedure: hydrogen, weld: fillet, leg: 2.5 mm, thickness: 2 mm, passes: 1"},
    {"steel wire on aluminium", Level::error, "a steel filler does not weld aluminium",
     "base_metal: AW-5754, procedure: al-steel-wire, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1",
     "base_metal: AW-5754, procedure: al, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1"},
    {"silicon on magnesium", Level::note, "silicon filler on aluminium with over 2.5 % magnesium",
     "base_metal: AW-5754, procedure: al-silicon, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1",
     "base_metal: AW-5754, procedure: al, weld: fillet, leg: 5 mm, thickness: 6 mm, passes: 1"},
    {"stainless on carbon steel", Level::warning, "stainless weld metal thinned by carbon steel",
     "base_metal: S235, procedure: thin-alloy, weld: fillet, leg: 4 mm, thickness: 5 mm, passes: 1",
     "base_metal: S235, procedure: over-alloyed, weld: fillet, leg: 4 mm, thickness: 5 mm, passes: 1"},
    {"filler without molybdenum", Level::warning, "a filler without molybdenum",
     "base_metal: \"1.4404\", procedure: SG-F4, weld: fillet, leg: 4 mm, thickness: 4 mm, passes: 1",
     "base_metal: \"1.4301\", procedure: SG-F4, weld: fillet, leg: 4 mm, thickness: 4 mm, passes: 1"},
    {"electrode on thin sheet", Level::warning, "an electrode burns through",
     "base_metal: S235, procedure: stick, weld: fillet, leg: 2 mm, thickness: 1.5 mm, passes: 1",
     "base_metal: S235, procedure: stick, weld: fillet, leg: 4 mm, thickness: 5 mm, passes: 1"},
    {"wire arc on foil", Level::error, "a wire arc burns through",
     "base_metal: S235, procedure: CG-S2, weld: square, thickness: 0.5 mm, gap: 0.5 mm",
     "base_metal: S235, procedure: CG-S2, weld: square, thickness: 1 mm, gap: 0.5 mm"},
    {"price of base metal", Level::warning, "base metal Gold-plated costs 900 EUR/kg",
     "base_metal: Gold-plated, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm",
     "base_metal: S235, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm"},
    {"stainless tube without purge", Level::warning, "the butt of a stainless tube is welded without a purge",
     "base_metal: \"1.4404\", procedure: ST-PC, weld: single_v, thickness: 2.6 mm, outside_diameter: 48.3 mm",
     "base_metal: \"1.4404\", procedure: ST-PC, weld: single_v, thickness: 2.6 mm, outside_diameter: 48.3 mm, purge: "
     "true"},
    {"stainless tube on a backing", Level::warning, "the butt of a stainless tube is welded without a purge",
     "base_metal: \"1.4404\", procedure: ST-PC, weld: single_v, thickness: 2.6 mm, outside_diameter: 48.3 mm",
     "base_metal: \"1.4404\", procedure: ST-PC, weld: single_v, thickness: 2.6 mm, outside_diameter: 48.3 mm, "
     "backing: permanent"},
    {"beam through a root face", Level::warning, "a beam of 2000 W through 5 mm from one side; usual is at most 4.4 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: single_v, thickness: 8 mm, gap: 0 mm, root_face: 5 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: single_v, thickness: 8 mm, gap: 0 mm, root_face: 4 mm"},
    {"beam too weak", Level::warning, "a beam of 2000 W through 5 mm from one side; usual is at most 4.4 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: square, thickness: 5 mm, gap: 0 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: square, thickness: 4.4 mm, gap: 0 mm"},
    {"beam far too weak", Level::error, "a beam of 2000 W through 6.5 mm from one side",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: square, thickness: 6.5 mm, gap: 0 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: square, thickness: 4.4 mm, gap: 0 mm"},
    {"beam on aluminium", Level::warning, "a beam of 2000 W through 3.5 mm from one side; usual is at most 3 mm",
     "base_metal: AW-5754, procedure: beam-2kW, weld: square, thickness: 3.5 mm, gap: 0 mm",
     "base_metal: AW-5754, procedure: beam-2kW, weld: square, thickness: 3 mm, gap: 0 mm"},
    {"beam faster than its energy", Level::error,
     "2400 mm/min with a beam of 1500 W; its energy melts 6 mm² at 720 mm/min",
     "base_metal: \"1.4301\", procedure: beam-brochure, weld: square, thickness: 3 mm, gap: 0 mm",
     "base_metal: \"1.4301\", procedure: beam-sober, weld: square, thickness: 3 mm, gap: 0 mm"},
    {"gap without filler", Level::warning, "a gap of 0.4 mm welded by laser without filler; usual is at most 0.3 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: square, thickness: 3 mm, gap: 0 mm, gap_max: 0.4 mm",
     "base_metal: \"1.4301\", procedure: beam-2kW, weld: square, thickness: 3 mm, gap: 0 mm, gap_max: 0.3 mm"},
    {"gap with filler", Level::warning, "a gap of 1.8 mm welded by laser with filler; usual is at most 1.5 mm",
     "base_metal: \"1.4301\", procedure: beam-wire, weld: square, thickness: 3 mm, gap: 1.2 mm, gap_max: 1.8 mm",
     "base_metal: \"1.4301\", procedure: beam-wire, weld: square, thickness: 3 mm, gap: 1.2 mm, gap_max: 1.5 mm"},
    {"starts without time", Level::warning, "60 weld elements, and no time for starts",
     "base_metal: S235, procedure: stick, weld: fillet, leg: 4 mm, thickness: 5 mm, passes: 1, count: 60",
     "base_metal: S235, procedure: stick, weld: fillet, leg: 4 mm, thickness: 5 mm, passes: 1, count: 50"},
    {"thick plate without a word on preheat", Level::warning,
     "combined thickness 60 mm is more than 50 mm, and no preheat is stated",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 20 mm, passes: 1",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 20 mm, passes: 1, preheat: none"},
    {"thick plate that leads heat away in two runs", Level::warning, "and no preheat is stated",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 20 mm, passes: 1",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 20 mm, passes: 1, lap: true"},
    {"hard steel without a word on preheat", Level::warning, "CE 0.47 % is more than 0.45 %, and no preheat is stated",
     "base_metal: S355-hard, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm",
     "base_metal: S355-known, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm"},
    // CET 0.3145 %, 30 mm, 5 ml/100 g, 1.08 kJ/mm: 219.21 + 111.16 + 108.91 - 16.56 - 328 = 94.7 °C by hand.
    {"method B asks", Level::warning, "method B of EN 1011-2 asks for a preheat of 95 °C, none is stated",
     "base_metal: S355-known, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 30 mm, passes: 1",
     "base_metal: S355-known, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 30 mm, passes: 1, preheat: "
     "100 "
     "degC"},
    {"preheat below method B", Level::warning, "preheat 60 °C is stated, method B of EN 1011-2 asks for 95 °C",
     "base_metal: S355-known, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 30 mm, passes: 1, preheat: 60 "
     "degC",
     "base_metal: S355-known, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 30 mm, passes: 1, preheat: "
     "205 "
     "degF"},
    {"no preheat on purpose against method B", Level::warning,
     "preheat none is stated, method B of EN 1011-2 asks for 95 °C",
     "base_metal: S355-known, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 30 mm, passes: 1, preheat: "
     "none",
     "base_metal: S235, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 30 mm, passes: 1, preheat: none"},
    {"interpass temperature below preheat", Level::error,
     "the interpass temperature may be 80 °C at most, below the preheat of 120 °C",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 20 mm, preheat: 120 degC, interpass_max: "
     "80 "
     "degC",
     "base_metal: S235, procedure: CG-F8, weld: fillet, leg: 8 mm, thickness: 20 mm, preheat: 120 degC, interpass_max: "
     "250 degC"},
    {"heat input over the limit", Level::warning, "heat input 1.08 kJ/mm is more than the 1 kJ/mm stated",
     "base_metal: S235, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 10 mm, passes: 1, heat_input_max: 1 "
     "kJ/mm",
     "base_metal: S235, procedure: known-heat, weld: fillet, leg: 8 mm, thickness: 10 mm, passes: 1, heat_input_max: "
     "1.1 "
     "kJ/mm"},
    {"carbon equivalents that disagree", Level::warning,
     "base metal S355-slip: CE is stated as 0.48 %, the composition gives 0.426 %",
     "base_metal: S355-slip, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm",
     "base_metal: S355-known, procedure: CG-F5, weld: fillet, leg: 5 mm, thickness: 8 mm"},
};

test::LoadedJob load_odd(const std::string& job) {
  std::vector<test::RateFile> rates = test::plain_rate_texts();
  rates.push_back({"odd_shop.yaml", test::file_text(SEAMBOOK_ROOT "/tests/estimate/odd_shop.yaml")});
  test::LoadedJob loaded = test::load_text(job, rates);
  REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
  return loaded;
}

std::vector<Diagnostic> found_for(const std::string& joint, const std::string& quantities) {
  const std::string job = "format: 1\njob: test\nquantities: " + quantities +
                          "\nweldments:\n  - name: piece\n    parts: 2\n    base_metal: S235\n    bought: 0 EUR each\n"
                          "    joints:\n      - {id: J, " +
                          joint + (joint.find("outside_diameter") == joint.npos ? ", length: 400 mm" : "") +
                          ", finish: F0}\n";
  const test::LoadedJob loaded = load_odd(job);
  return findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job));
}

std::size_t count_of(const std::vector<Diagnostic>& list, const FindingRow& row) {
  std::size_t count = 0;
  for (const Diagnostic& d : list) count += d.message.find(row.words) != std::string::npos && d.level == row.level;
  return count;
}

std::string in_lines(const std::vector<Diagnostic>& list) {
  std::string text;
  for (const Diagnostic& d : list) text += std::string(level_word(d.level)) + ": " + d.message + "; " + d.hint + "\n";
  return text;
}

}  // namespace

TEST_CASE("each finding is made of a joint that asks for it and not of one close to it") {
  for (const FindingRow& row : rows) {
    CAPTURE(row.what);
    const std::vector<Diagnostic> fires = found_for(row.fires, row.quantities);
    CHECK_MESSAGE(count_of(fires, row) == 1, in_lines(fires));
    const std::vector<Diagnostic> sound = found_for(row.sound, row.quantities);
    CHECK_MESSAGE(count_of(sound, row) == 0, in_lines(sound));
  }
}

TEST_CASE("findings that rule a job out stand at the lines that ask for the impossible") {
  for (const auto& path : files_under_tests("refused/findings")) {
    CAPTURE(path.filename().string());
    const std::string text = whole_file_text(path);
    const test::LoadedJob loaded = load_odd(text);
    Diagnostics found;
    for (Diagnostic& d : findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job)))
      if (d.level == Level::error) found.list.push_back(std::move(d));
    const std::string wanted = complaints_wanted(text);
    CHECK(wanted != "");
    CHECK(complaints_given(found) == wanted);
  }
}

TEST_CASE("small lots with little fit-up are queried and larger ones are not") {
  const auto fit_up_found = [](const std::string& quantities, const std::string& length) {
    const test::LoadedJob loaded = load_odd(
        "format: 1\njob: lot\nquantities: " + quantities +
        "\nweldments:\n  - {name: piece, parts: 2, base_metal: S235, bought: 0 EUR each, finish: F0, joints: [{weld: "
        "fillet, leg: 16 mm, thickness: 20 mm, procedure: CG-F8, passes: 6, length: " +
        length + "}]}\n");
    std::size_t count = 0;
    for (const Diagnostic& d : findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job)))
      count += d.message.starts_with("weldment piece: fit-up and tacking take");
    return count;
  };
  CHECK(fit_up_found("[1]", "6000 mm") == 1);
  CHECK(fit_up_found("[6]", "6000 mm") == 0);
  CHECK(fit_up_found("[1]", "300 mm") == 0);
}
