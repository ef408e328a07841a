#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

struct ResolvedBook {
  Diagnostics diagnostics;
  std::optional<RateBook> book;
};

/// The repository's rate book with one piece of one file replaced.
ResolvedBook book_with(const std::string& file_name, const std::string& from, const std::string& to) {
  ResolvedBook resolved;
  std::vector<std::uint32_t> files;
  for (const char* name : {"materials.yaml", "prices.yaml", "procedures-carbon.yaml", "procedures-stainless.yaml",
                           "shop.yaml", "stations.yaml"}) {
    std::string text = test::file_text(std::string(SEAMBOOK_ROOT "/rates/") + name);
    if (name == file_name) {
      const std::size_t at = text.find(from);
      REQUIRE(at != text.npos);
      text.replace(at, from.size(), to);
    }
    files.push_back(resolved.diagnostics.add_file(name, text));
  }
  resolved.book = resolve_rates(read_rates(files, resolved.diagnostics), resolved.diagnostics);
  return resolved;
}

/// The file's text from a place on; plain ASCII as far as these files go.
std::string text_from(const Diagnostics& diagnostics, Place place, std::size_t length) {
  const std::string& text = diagnostics.files[place.file].text;
  std::size_t at = 0;
  for (std::uint32_t line = 1; line < place.line; ++line) at = text.find('\n', at) + 1;
  return text.substr(at + place.column - 1, length);
}

const RateSource& source_named(const RateBook& book, const std::string& entry, const std::string& field) {
  const auto found = std::find_if(book.sources.begin(), book.sources.end(), [&](const RateSource& source) {
    return source.entry == entry && source.field == field;
  });
  REQUIRE(found != book.sources.end());
  return *found;
}

struct Refusal {
  std::string file, from, to;
  std::string at;  // the text at the complaint's place begins so
  std::string message;
};

const std::string rest_of_process =
    "grade: welder, start: 0.1 min, tack: 0.1 min, tack_pitch: 200 mm, gas_before_and_after: 1 s, interpass_cleaning: "
    "0.5 min/m, deposition_efficiency: 95 %, source_efficiency: 85 %, gas_loss: 110 %, thermal_efficiency: 80 %, "
    "auxiliary_power: 1 kW, wear: 1 EUR/h, equipment: 1 EUR/h, basis: assumption, source: invented}\n";

const Refusal refusals[] = {
    {"shop.yaml", "currency: EUR", "currency: EUX", "EUX", "unknown currency 'EUX'"},
    {"shop.yaml", "wear: 0.60 EUR/h", "wear: 0.60 USD/h", "0.60 USD/h", "the rate book's currency is EUR, not USD"},
    {"shop.yaml", "margin: 18 %", "margin: 18 %\n  markup: 20 %", "20 %",
     "margin and markup are both given: choose one"},
    {"shop.yaml", "  margin: 18 %\n", "", "contingency", "prices has no margin or markup"},
    {"shop.yaml", "margin: 18 %", "margin: 95 %", "95 %", "margin is 95 %"},
    {"shop.yaml", "  tax: prices are without value-added tax\n", "  tax_rate: 19 %\n", "19 %",
     "a tax rate without a word for the tax"},
    {"shop.yaml", "margin: 18 %", "margin: 18 %\n  list_rounding: 0.125 EUR", "0.125 EUR",
     "totals cannot be raised to a multiple of that"},
    {"prices.yaml", "rate: 92 %", "rate: 40 %", "40 %", "rate is 40 %"},
    {"prices.yaml", "rate: 92 %", "rate: 108 %", "108 %", "rate is 108 %"},
    {"prices.yaml", "{risk: normal,", "{risk: repeat,", "repeat", "risk class 'repeat' is given twice"},
    {"prices.yaml", "up_to: 250 kg", "up_to: 25 kg", "25 kg", "freight does not rise: the one before reaches further"},
    {"prices.yaml", "{up_to: 250 kg, ", "{", "{price: 95", "freight without 'up_to' takes any mass, but more follow"},
    {"prices.yaml", "{price: 620 EUR}", "{up_to: 9 t, price: 620 EUR}", "9 t", "the last freight must take any mass"},
    {"prices.yaml", "price: 24 EUR", "price: 24 USD", "24 USD", "the rate book's currency is EUR, not USD"},
    {"shop.yaml", "  electricity: 0.19 EUR/kWh\n", "", "margin", "prices has no electricity"},
    {"shop.yaml", "finish: F0", "finish: F7", "F7", "unknown finish 'F7'"},
    {"shop.yaml", "in_rate: true", "in_rate: true\n  added: 35 %", "35 %",
     "overhead is in the rate and added: choose one"},
    {"shop.yaml", "in_rate: true", "in_rate: false", "in_rate", "overhead is neither in the rate nor added"},
    {"shop.yaml", "rate: 54 EUR/h", "rate: 54 EUR/h, wage: 30 EUR/h", "54 EUR/h",
     "labour welder has a loaded rate and a wage with burden: choose one"},
    {"shop.yaml", "rate: 54 EUR/h", "wage: 30 EUR/h", "{name: welder", "labour welder has no burden"},
    {"shop.yaml", "rate: 54 EUR/h, ", "", "{name: welder", "labour welder has no rate"},
    {"shop.yaml", "  convexity: 10 %\n", "", "fit_up_per_part", "allowances has no convexity"},
    {"shop.yaml", "purge_gas: I1", "purge_gas: I2", "I2", "unknown gas 'I2'"},
    {"shop.yaml", "{name: hoist, up_to: 250 kg", "{name: hoist, up_to: 20 kg", "{name: hoist",
     "handling hoist is never reached"},
    {"shop.yaml", "name: crane", "name: hoist", "hoist", "handling 'hoist' is given twice"},
    {"shop.yaml", "processes:\n", "processes:\n  - {process: 143, " + rest_of_process, "143", "unknown process '143'"},
    {"shop.yaml", "processes:\n", "processes:\n  - {process: GMAW, " + rest_of_process, "135",
     "process '135' is given twice"},
    {"shop.yaml", "grade: welder", "grade: weldor", "weldor", "unknown labour grade 'weldor'"},
    {"shop.yaml", "deposition_efficiency: 95 %", "deposition_efficiency: 105 %", "105 %",
     "deposition efficiency is 105 %"},
    {"shop.yaml", "gas_loss: 110 %", "gas_loss: 90 %", "90 %", "gas loss is 90 %"},
    {"shop.yaml", "    tack_pitch_thin: 60 mm\n", "", "process: 135", "process 135 has no tack pitch thin"},
    {"materials.yaml", "also: [S355J2", "also: [S235JR", "S235JR", "base metal 'S235JR' is given twice"},
    {"materials.yaml", "yield: 85 %", "yield: 120 %", "120 %", "yield is 120 %"},
    {"materials.yaml", "density: 7.85 g/cm3, price: 1.15", "price: 1.15", "{name: S235",
     "base metal S235 has no density"},
    {"materials.yaml", "form: rod", "form: rods", "rods", "unknown filler form 'rods'"},
    {"materials.yaml", "{weld: single_v", "{weld: stud", "stud", "weld 'stud' is not built yet"},
    {"procedures-carbon.yaml", "name: CG-F4", "name: CG-F3", "CG-F3", "procedure 'CG-F3' is given twice"},
    {"procedures-carbon.yaml", "filler: G3Si1-1.0", "filler: G3Si1-1.1", "G3Si1-1.1", "unknown filler 'G3Si1-1.1'"},
    {"procedures-carbon.yaml", "gas: M21", "gas: M22", "M22", "unknown gas 'M22'"},
    {"procedures-carbon.yaml", "process: 135", "process: 138", "138", "process 138 is not in the rate book"},
    {"procedures-carbon.yaml", "positions: [PA, PB]", "positions: [PA, 2G]", "2G", "unknown position '2G'"},
    {"procedures-carbon.yaml", "gas_flow: 12 L/min, ", "", "{name: CG-F3", "procedure CG-F3 has no gas flow"},
    {"procedures-carbon.yaml", "current: 115 A, ", "", "{name: CG-F3", "procedure CG-F3 has no current"},
    {"procedures-carbon.yaml", "voltage: 18.5 V, ", "beam_power: 1 kW, voltage: 18.5 V, ", "1 kW",
     "procedure CG-F3 is an arc process and has no beam"},
    {"procedures-carbon.yaml", "wire_feed: 4.5 m/min, ", "", "{name: CG-F3",
     "procedure CG-F3 has no wire feed, deposition rate or area per pass"},
    {"procedures-carbon.yaml", "travel_speed: 680", "travel_speed: 980", "980 mm/min",
     "travel speed 980 mm/min is outside its range"},
    {"procedures-stainless.yaml", "beam_power: 1100 W, ", "", "{name: SL-15A", "procedure SL-15A has no beam power"},
    {"procedures-stainless.yaml", "area_per_pass: 3 mm2, ", "", "{name: ST-TB2",
     "procedure ST-TB2 has no area per pass or deposition rate"},
    {"procedures-stainless.yaml", "area_per_pass: 3 mm2, ", "area_per_pass: 3 mm2, wire_feed: 1 m/min, ", "1 m/min",
     "procedure ST-TB2 has a wire feed, but its filler is no wire"},
    {"stations.yaml", "processes: [135, 141]", "processes: [135, 136]", "136", "process 136 is not in the rate book"},
    {"stations.yaml", "filler: 308LSi-1.0", "fillr: 308LSi-1.0", "fillr", "unknown set-up attribute 'fillr'"},
    {"stations.yaml", "gas: M12", "gas: M13", "M13", "unknown gas 'M13'"},
    {"stations.yaml", "cleanliness: carbon", "cleanliness: carbn", "carbn", "unknown cleanliness 'carbn'"},
    {"stations.yaml", "when: filler", "when: filer", "filer", "unknown set-up attribute 'filer'"},
    {"stations.yaml", "from: [carbon]", "from: [black]", "black", "unknown cleanliness 'black'"},
    {"procedures-carbon.yaml", "gas: M21", "flux: F1, gas: M21", "F1",
     "procedure CG-F3 has a flux, but process 135 welds without"},
    {"procedures-carbon.yaml", "wire_feed: 4.5 m/min", "wire_feed: 4.5 m/min, deposition_rate: 2 kg/h", "2 kg/h",
     "procedure CG-F3 has a deposition rate and a wire feed: choose one"},
    {"materials.yaml", "pack: 15 kg", "linear_mass: 7 g/m", "7 g/m",
     "'linear_mass' does not apply to filler G3Si1-1.0"},
    {"materials.yaml", "form: rod,", "form: covered_electrode, stub: 50 mm,", "{name: 308L-rod-1.6",
     "filler 308L-rod-1.6 has no length"},
    {"materials.yaml", "form: rod,", "form: covered_electrode, length: 300 mm, stub: 300 mm,", "300 mm, classification",
     "the stub 300 mm leaves nothing of 300 mm"},
    {"shop.yaml", "finishes:\n",
     "wear_parts:\n  - {name: tip, processes: [135], price: 1 EUR, basis: assumption, source: x}\nfinishes:\n",
     "{name: tip", "wear part tip has no life"},
    {"shop.yaml", "finishes:\n",
     "wear_parts:\n  - {name: tip, processes: [135], price: 1 EUR, life: 8 h, life_starts: 60, basis: assumption, "
     "source: x}\nfinishes:\n",
     "{name: tip", "wear part tip has more than one life: choose one"},
    {"shop.yaml", "finishes:\n",
     "wear_parts:\n  - {name: tip, processes: [136], price: 1 EUR, life: 8 h, basis: assumption, source: "
     "x}\nfinishes:\n",
     "136]", "process 136 is not in the rate book"},
    {"shop.yaml", "finishes:\n",
     "pass_limits:\n  - {process: 135, positions: [PF], basis: assumption, source: x}\nfinishes:\n", "{process: 135",
     "pass limit of process 135 PF has no leg or area"},
    {"shop.yaml", "finishes:\n",
     "pass_limits:\n  - {positions: [PF], leg: 8 mm, area: 40 mm2, basis: assumption, source: x}\nfinishes:\n",
     "40 mm2", "pass limit PF has a leg and an area: choose one"},
    {"materials.yaml", "carbon: 0.17 %, ", "", "{silicon", "the composition of base metal S460 has no carbon"},
    {"materials.yaml", "carbon: 0.17 %", "carbon: 17", "17", "carbon is 1700 %"},
    {"materials.yaml", "composition: {carbon", "carbon_equivalent: 43 %, composition: {carbon", "43 %",
     "carbon equivalent is 43 %"},
    {"materials.yaml", "density: 7.98 g/cm3", "cet: 0.3 %, density: 7.98 g/cm3", "0.3 %",
     "base metal 1.4404 does not harden: it has no CET"},
    {"shop.yaml", "burner_efficiency: 35 %", "burner_efficiency: 135 %", "135 %", "burner efficiency is 135 %"},
    {"shop.yaml", "attended: 50 %", "attended: 150 %", "150 %", "attended share is 150 %"},
    {"stations.yaml", "stamp: Q2", "stamp: Q1", "Q1", "welder 'Q1' is given twice"},
    {"stations.yaml", "positions: [PA, PB]", "positions: [PA, PX]", "PX", "unknown position 'PX'"},
};

}  // namespace

TEST_CASE("each faulty rate book is refused at its place with one complaint") {
  for (const Refusal& row : refusals) {
    CAPTURE(row.to);
    CAPTURE(row.message);
    const ResolvedBook resolved = book_with(row.file, row.from, row.to);
    CAPTURE(render(resolved.diagnostics));
    CHECK_FALSE(resolved.book);
    REQUIRE_FALSE(resolved.diagnostics.list.empty());
    const Diagnostic& d = resolved.diagnostics.list.front();
    CHECK(resolved.diagnostics.list.size() == 1);
    CHECK(d.message == row.message);
    CHECK(text_from(resolved.diagnostics, d.place, row.at.size()) == row.at);
  }
}

TEST_CASE("numbers of the rate book know entry field unit and what they rest on") {
  const ResolvedBook resolved = book_with("", "", "");
  REQUIRE(resolved.book);
  CHECK(resolved.diagnostics.list.empty());
  const RateBook& book = *resolved.book;
  const RateSource& travel = source_named(book, "procedure CG-F5", "travel speed");
  CHECK(travel.value == doctest::Approx(0.585 / 60));
  CHECK(std::string(travel.unit.word) == "mm/min");
  CHECK(travel.basis == Basis::assumption);
  CHECK(travel.words == "invented shop");
  CHECK(text_from(resolved.diagnostics, travel.place, 10) == "585 mm/min");
  CHECK_FALSE(travel.frozen);
  CHECK(source_named(book, "procedure CG-F5", "size").frozen);
  CHECK(source_named(book, "change task clean down for stainless", "time").frozen);
  CHECK(source_named(book, "prices", "margin").value == doctest::Approx(0.18));
  CHECK(source_named(book, "preparation single V 2 mm to 20 mm", "groove angle").basis == Basis::common_practice);
  CHECK(book.minor_digits == 2);
  CHECK_FALSE(book.overhead_added);
  for (std::size_t i = 1; i < book.sources.size(); ++i) CHECK(book.sources[i].place.line > 0);
}

TEST_CASE("a procedure without a travel range keeps its speed") {
  const ResolvedBook resolved = book_with("procedures-carbon.yaml", "travel_range: [450 mm/min, 900 mm/min], ", "");
  REQUIRE(resolved.book);
  const Procedure& procedure = resolved.book->procedures[0];
  CHECK(procedure.travel_low.si.source == procedure.travel_speed.si.source);
  CHECK(procedure.travel_high.si.value == procedure.travel_speed.si.value);
}

TEST_CASE("the currency decides the digits of money") {
  const std::pair<const char*, int> currencies[] = {{"JPY", 0}, {"KWD", 3}, {"CHF", 2}, {"USD", 2}, {"KRW", 0}};
  for (const auto& [code, digits] : currencies) {
    CAPTURE(code);
    Diagnostics diagnostics;
    std::vector<std::uint32_t> files;
    for (const auto& name : {"materials.yaml", "prices.yaml", "procedures-carbon.yaml", "procedures-stainless.yaml",
                             "shop.yaml", "stations.yaml"}) {
      std::string text = test::file_text(std::string(SEAMBOOK_ROOT "/rates/") + name);
      for (std::size_t at = text.find("EUR"); at != text.npos; at = text.find("EUR", at + 1)) text.replace(at, 3, code);
      files.push_back(diagnostics.add_file(name, text));
    }
    const std::optional<RateBook> book = resolve_rates(read_rates(files, diagnostics), diagnostics);
    CAPTURE(render(diagnostics));
    REQUIRE(book);
    CHECK(book->minor_digits == digits);
  }
}

TEST_CASE("a job that purges needs a rate book that says what purging takes") {
  ResolvedBook resolved = book_with("shop.yaml", "  purge_flow: 10 L/min\n", "");
  REQUIRE(resolved.book);
  const std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/pipe-set.yaml");
  const std::uint32_t file = resolved.diagnostics.add_file("pipe-set.yaml", text);
  const JobText job = read_job(
      file, [](const std::string&) { return std::optional<std::string>(); }, resolved.diagnostics);
  CHECK_FALSE(resolve_job(job, *resolved.book, resolved.diagnostics));
  CHECK(resolved.diagnostics.list.size() == 3);
  for (const Diagnostic& d : resolved.diagnostics.list) {
    CHECK(d.message == "the rate book does not say what purging takes");
    CHECK(text_from(resolved.diagnostics, d.place, 4) == "true");
  }
}

TEST_CASE("faults of a job do not spoil the rate book and lost sections are not missed twice") {
  Diagnostics diagnostics;
  const std::uint32_t job = diagnostics.add_file("job.yaml", "format: 1\n");
  diagnostics.error({job, 1, 1}, "a fault of the job");
  std::vector<std::uint32_t> files;
  for (const char* name : {"materials.yaml", "prices.yaml", "procedures-carbon.yaml", "procedures-stainless.yaml",
                           "shop.yaml", "stations.yaml"})
    files.push_back(diagnostics.add_file(name, test::file_text(std::string(SEAMBOOK_ROOT "/rates/") + name)));
  CHECK(resolve_rates(read_rates(files, diagnostics), diagnostics));

  Diagnostics lost;
  const std::uint32_t broken = lost.add_file("shop.yaml", "format: 1\n- x\n");
  CHECK_FALSE(resolve_rates(read_rates(std::vector{broken}, lost), lost));
  CHECK(lost.list.size() == 1);
}
