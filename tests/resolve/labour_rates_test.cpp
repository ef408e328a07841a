// Labour of the rate book: what is refused, at its place, and the method by operating factor.
#include <doctest/doctest.h>

#include <algorithm>

#include "../estimate/shop_files.hpp"
#include "estimate/element_sums.hpp"
#include "estimate/gather_labour.hpp"

using namespace seambook;

namespace {

struct LabourRates {
  Diagnostics diagnostics;
  std::optional<RateBook> book;
};

using Changes = std::vector<std::pair<std::string, std::string>>;

void replace_all(std::string& text, const std::string& from, const std::string& to) {
  std::size_t at = text.find(from);
  REQUIRE(at != text.npos);
  for (; at != text.npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
}

void erase_lines(std::string& text, const std::string& begin) {
  for (std::size_t at; (at = text.find("\n" + begin)) != text.npos;) text.erase(at, text.find('\n', at + 1) - at);
}

/// The repository's plain rate book with changes of shop.yaml.
LabourRates labour_rates(const Changes& changes, const std::vector<std::string>& lines_out = {}) {
  LabourRates rates;
  std::vector<std::uint32_t> files;
  for (test::RateFile file : test::plain_rate_texts()) {
    if (file.name == "shop.yaml")
      for (const auto& [from, to] : changes) replace_all(file.text, from, to);
    if (file.name == "shop.yaml")
      for (const std::string& begin : lines_out) erase_lines(file.text, begin);
    files.push_back(rates.diagnostics.add_file(file.name, file.text));
  }
  rates.book = resolve_rates(read_rates(files, rates.diagnostics), rates.diagnostics);
  return rates;
}

const std::string element_end = ", basis: assumption, source: invented}\n";

Changes with_elements(const std::string& entries) {
  return {{"currency: EUR\n", "currency: EUR\nlabour_elements:\n" + entries}};
}

/// A factor that covers what the process states in minutes; these stay out then.
Changes by_factor(const std::string& covers) {
  return {
      {"currency: EUR\n", "currency: EUR\nlabour_method: operating_factor\nfactor_covers: " + covers +
                              "\nfactor_definition: the share of clocked hours in which an arc burns\n"},
      {"  personal: 12 %\n  personal_covers: rest, fetching tools and gas, talk; breaks are not covered, they stand "
       "in the calendar\n",
       ""},
      {"    gas_loss: 110 %\n", "    gas_loss: 110 %\n    operating_factor: 35 %\n"}};
}

Changes and_also(Changes changes, const Changes& more) {
  changes.insert(changes.end(), more.begin(), more.end());
  return changes;
}

struct Refused {
  Changes changes;
  std::string at;  // the line of the complaint holds this
  std::string message;
};

const std::vector<Refused> refused = {
    {with_elements("  - {element: cleaning, per: metre, time: 3 min" + element_end), "3 min",
     "cleaning per metre takes minutes per metre"},
    {with_elements("  - {element: cleaning, per: joint, time: 3 min/m" + element_end), "3 min/m",
     "cleaning per joint takes minutes"},
    {with_elements("  - {element: packing, per: kg, time: 3 min" + element_end), "3 min",
     "packing per kg takes minutes per mass"},
    {with_elements("  - {element: cleaning, per: metre" + element_end), "element: cleaning",
     "cleaning per metre has no time"},
    {with_elements("  - {element: straightening, per: share, time: 3 min" + element_end), "3 min",
     "straightening per share takes a share"},
    {with_elements("  - {element: repair, per: share, share: 2 %" + element_end), "element: repair",
     "repair per share has no multiple"},
    {with_elements("  - {element: repair, per: joint, time: 2 min, multiple: 3" + element_end), "per: joint",
     "repair per joint is a share of the minutes of welding"},
    {with_elements("  - {element: ultrasonic, per: part, time: 2 min" + element_end), "per: part",
     "ultrasonic per part belongs to the joints that ask for it"},
    {with_elements("  - {element: papers, per: weldment, time: 2 min, welds: [fillet]" + element_end), "fillet",
     "papers per weldment has welds"},
    {with_elements("  - {element: cleaning, per: joint, time: 2 min, processes: [136]" + element_end), "136",
     "process 136 is not in the rate book"},
    {with_elements("  - {element: cleaning, per: joint, time: 2 min, grade: fitter" + element_end), "fitter",
     "unknown labour grade 'fitter'"},
    {with_elements("  - {element: waiting, per: joint, time: 2 min, grade: welder" + element_end), "welder",
     "waiting per joint has a grade, but nobody attends it"},
    {with_elements("  - {element: cleaning, per: joint, time: 2 min, finishes: [F9]" + element_end), "F9",
     "unknown finish 'F9'"},
    {{{"currency: EUR\n", "currency: EUR\nfactor_covers: [arc]\n"}},
     "factor_covers",
     "labour is by elements, yet it is said what an operating factor covers"},
    {{{"currency: EUR\n", "currency: EUR\nfactor_definition: arc time of clocked time\n"}},
     "factor_definition",
     "labour is by elements, yet an operating factor is defined"},
    {{{"    gas_loss: 110 %\n    thermal_efficiency: 60 %\n",
       "    gas_loss: 110 %\n    thermal_efficiency: 60 %\n    operating_factor: 35 %\n"}},
     "operating_factor: 35 %",
     "process 141 has an operating factor, but labour is by elements"},
};

const std::vector<Refused> refused_by_factor = {
    {{}, "start: 0.15 min", "minutes are stated for start, but the operating factor covers it"},
    {{}, "start: 0.4 min", "minutes are stated for start, but the operating factor covers it"},
    {{},
     "interpass_cleaning: 0.5 min/m",
     "minutes are stated for interpass cleaning, but the operating factor covers it"},
    {{{"  turns_two_sided: 1\n", "  turns_two_sided: 1\n  personal: 10 %\n"}},
     "personal: 10 %",
     "a personal allowance is stated, but the operating factor covers rest and delays"},
    {{{"  fit_up_per_part: 2 min\n", ""}}, "fit_up_per_joint", "allowances has no fit-up per part"},
    {{{"    operating_factor: 35 %\n    thermal_efficiency: 60 %\n", "    thermal_efficiency: 60 %\n"}},
     "process: 141",
     "process 141 has no operating factor"},
    {{{"operating_factor: 35 %", "operating_factor: 120 %"}}, "120 %", "operating factor is 120 %"},
    {{{"[arc, starts", "[starts, startz"}}, "[starts", "the operating factor does not say that it covers the arc"},
    {{{"[arc, starts", "[arc, startz"}}, "startz", "unknown labour element 'startz'"},
    {{{"factor_definition: the share of clocked hours in which an arc burns\n", ""}},
     "labour_method",
     "the operating factor is not defined"},
    {with_elements("  - {element: dressing, per: weld_metre, time: 1 min/m" + element_end), "element: dressing",
     "minutes are stated for dressing, but the operating factor covers it"},
    {{{"[arc, starts", "[arc, preheat, starts"}},
     "check_per_joint",
     "minutes are stated for check per joint, but the operating factor covers it"},
};

void check_refused(const Refused& r, const LabourRates& rates) {
  CAPTURE(r.message);
  const auto said = std::any_of(rates.diagnostics.list.begin(), rates.diagnostics.list.end(), [&](const auto& d) {
    if (d.message != r.message) return false;
    std::string text = rates.diagnostics.files[d.place.file].text;
    for (std::uint32_t line = 1; line < d.place.line; ++line) text.erase(0, text.find('\n') + 1);
    return text.substr(0, text.find('\n')).find(r.at) != text.npos;
  });
  INFO(render(rates.diagnostics));
  CHECK(said);
  CHECK(!rates.book);
}

}  // namespace

TEST_CASE("faults of labour elements and of the method are told at their place") {
  for (const Refused& r : refused) check_refused(r, labour_rates(r.changes));
}

TEST_CASE("what an operating factor covers must not stand in minutes, what it does not cover must") {
  for (const Refused& r : refused_by_factor)
    check_refused(r, labour_rates(and_also(by_factor("[arc, starts, interpass_cleaning, dressing]"), r.changes)));
}

TEST_CASE("an operating factor may cover purging, and gas flows meanwhile all the same") {
  const auto purged = [](const std::string& covers) {
    LabourRates rates = labour_rates(by_factor(covers));
    INFO(render(rates.diagnostics));
    REQUIRE(rates.book);
    const std::uint32_t file =
        rates.diagnostics.add_file("pipe-set.yaml", test::file_text(SEAMBOOK_ROOT "/jobs/pipe-set.yaml"));
    const auto job =
        resolve_job(read_job(
                        file, [](const std::string&) { return std::optional<std::string>(); }, rates.diagnostics),
                    *rates.book, rates.diagnostics);
    REQUIRE(job);
    return joint_totals(estimate(*rates.book, *job).joints.front());
  };
  const Totals charged = purged("[arc]"), covered = purged("[arc, purging]");
  CHECK((charged.floor - covered.floor).si / 60 == doctest::Approx(7 * 4));  // seven joints at 4 min
  CHECK(charged.gas.si == covered.gas.si);
}

TEST_CASE("by operating factor floor time is arc time over the factor and what is not covered") {
  const LabourRates rates =
      labour_rates(by_factor("[arc, starts, interpass_cleaning]"), {"    start:", "    interpass_cleaning:"});
  INFO(render(rates.diagnostics));
  REQUIRE(rates.book);
  CHECK(rates.book->method.covers == "arc, starts and interpass cleaning");
  Diagnostics diagnostics = rates.diagnostics;
  const std::uint32_t file = diagnostics.add_file("bracket.yaml", test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml"));
  const auto job = resolve_job(read_job(
                                   file, [](const std::string&) { return std::optional<std::string>(); }, diagnostics),
                               *rates.book, diagnostics);
  REQUIRE(job);
  const Estimate estimated = estimate(*rates.book, *job);
  for (std::size_t j = 0; j < job->joints.size(); ++j) {
    const RowFigures<double>& row = estimated.joints[j];
    const JointLabour<double>& whole = row.joint.labour;
    const double stated = (whole.fit_up + whole.tack + whole.finish).si;
    const Totals totals = joint_totals(row);
    CHECK(totals.floor.si == doctest::Approx(totals.arc.si / 0.35 + stated));
  }
  // Seven parts at 2 min, one turn by hand at 0.5 min; the factor holds the allowance.
  CHECK(estimated.weldments[0].floor.si / 60 == doctest::Approx(7 * 2 + 0.5));
}
