// The example rate books agree with themselves: what the filler brings is what the weld takes, voltages belong to
// currents, and no beam is faster than its energy allows. Thresholds are those at which an estimator looks again.
#include <doctest/doctest.h>

#include <cmath>

#include "shop_files.hpp"
#include "trade/laser.hpp"

using namespace seambook;

namespace {

constexpr double of_the_steel = 9e9, of_the_aluminium = 2.9e9;  // heat to melt, J/m3 (common practice, no source)

RateBook book_of(const std::string& folder) {
  Diagnostics diagnostics;
  std::vector<std::uint32_t> files;
  for (const test::RateFile& file : test::rate_texts(folder))
    files.push_back(diagnostics.add_file(file.name, file.text));
  std::optional<RateBook> book = resolve_rates(read_rates(files, diagnostics), diagnostics);
  REQUIRE_MESSAGE(book.has_value(), render(diagnostics));
  CHECK(render(diagnostics) == "");
  return *book;
}

/// Metal that one pass lays by the wire: section in m2.
double laid_by_wire(const RateBook& book, const Procedure& procedure) {
  const Filler& filler = book.fillers[*procedure.filler];
  const Process& process = book.processes[procedure.process];
  return deposition_volume_rate(Speed<>{procedure.wire_feed.si.value}, Length<>{filler.diameter.si.value},
                                Ratio<>{process.deposition_efficiency.si.value})
             .si /
         procedure.travel_speed.si.value;
}

void check_wire(const RateBook& book, const Procedure& procedure) {
  if (!procedure.filler || procedure.wire_feed.si.source == no_source) return;
  const double laid = laid_by_wire(book, procedure);
  if (procedure.area_per_pass.si.source != no_source) {
    CHECK(laid == doctest::Approx(procedure.area_per_pass.si.value).epsilon(0.05));
  } else if (procedure.welds == std::vector{WeldKind::fillet}) {
    const double section =
        fillet_section(Length<>{procedure.size.si.value}, Ratio<>{book.allowances.convexity.si.value}).si;
    const double passes = std::max(1.0, std::round(section / laid));
    CHECK(laid * passes == doctest::Approx(section).epsilon(0.12));
  }
}

/// Load lines of IEC 60974-1 (from memory).
void check_voltage(const std::string& process, const Procedure& procedure) {
  const double current = procedure.current.si.value;
  double expected = 0;
  if (process.starts_with("13") || process == "114") expected = 14 + 0.05 * current;
  if (process == "111") expected = 20 + 0.04 * current;
  if (process == "141") expected = 10 + 0.04 * current;
  if (expected > 0) CHECK(procedure.voltage.si.value == doctest::Approx(expected).epsilon(0.25));
}

void check_beam(const Procedure& procedure) {
  if (procedure.beam_power.si.source == no_source) return;
  const bool aluminium = procedure.groups.front().starts_with("2");
  const Area<> melted{procedure.size.si.value * procedure.scan_width.si.value};
  const Speed<> ceiling = speed_ceiling(Ratio<>{0.8}, Ratio<>{0.48}, Power<>{procedure.beam_power.si.value}, melted,
                                        EnergyPerVolume<double>{aluminium ? of_the_aluminium : of_the_steel});
  CHECK(procedure.travel_speed.si.value <= ceiling.si);
}

}  // namespace

TEST_CASE("the procedures of the example rate books agree with themselves") {
  for (const char* folder : {"rates", "jobs/saltbriar/rates"}) {
    CAPTURE(folder);
    const RateBook book = book_of(folder);
    for (const Procedure& procedure : book.procedures) {
      CAPTURE(procedure.name);
      check_wire(book, procedure);
      check_voltage(book.processes[procedure.process].number, procedure);
      check_beam(procedure);
      CHECK(procedure.travel_low.si.value < procedure.travel_speed.si.value);
      CHECK(procedure.travel_speed.si.value < procedure.travel_high.si.value);
    }
  }
}
