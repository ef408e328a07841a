// The procedure table of the example rate book, walked by an invented job: every process on every group of base metal
// that it is for, over the thicknesses from 0.8 to 40 mm. Each joint finds a procedure, nothing is found in it, what
// the procedure brings is what the weld takes, and no pass is larger than the limits.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "shop_files.hpp"

using namespace seambook;

namespace {

constexpr double thicknesses[] = {0.8, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40};  // mm

/// A process on a base metal: its least leg, over which thicknesses it lays fillets and butts; butts are square up to
/// `square_to`, then V. 0: none.
struct Use {
  const char *process, *metal;
  double least_leg, fillet_from, fillet_to, butt_from, square_to, butt_to;  // mm
};
constexpr Use uses[] = {
    {"111", "S235", 3, 3, 40, 3, 3, 40},       {"111", "\"1.4301\"", 3, 3, 40, 3, 3, 40},
    {"114", "S235", 3, 4, 40, 4, 4, 40},       {"121", "S235", 5, 5, 40, 5, 0, 40},
    {"121", "\"1.4301\"", 5, 5, 40, 5, 0, 40}, {"131", "EN AW-5754", 3, 2.5, 40, 2.5, 4, 40},
    {"135", "S235", 2, 1.5, 40, 0.8, 3, 40},   {"135", "\"1.4301\"", 2, 1.5, 40, 1.5, 3, 40},
    {"136", "S235", 4, 4, 40, 4, 4, 40},       {"136", "\"1.4301\"", 4, 4, 40, 4, 4, 40},
    {"138", "S235", 3, 2.5, 40, 2.5, 3, 40},   {"141", "S235", 0, 0.8, 5, 0.8, 3, 8},
    {"141", "\"1.4301\"", 0, 1, 5, 0.8, 3, 6}, {"141", "EN AW-5754", 2, 1.5, 5, 1, 3, 8},
    {"15", "S235", 0, 0, 0, 3, 8, 8},          {"15", "\"1.4301\"", 0, 0, 0, 3, 8, 8},
    {"521", "S235", 0, 1, 3, 0.8, 2, 2},       {"521", "\"1.4301\"", 0, 1, 3, 0.8, 2, 2},
    {"521", "EN AW-5754", 0, 1, 2, 1, 2, 2},
};

/// The welds beside fillet, square and V, where each is usual.
struct Other {
  const char *process, *metal, *weld;
};
constexpr Other others[] = {
    {"135", "S235", "double_bevel, thickness: 40 mm, backgouge: true"},
    {"136", "S235", "single_u, thickness: 40 mm"},
    {"138", "S235", "double_u, thickness: 40 mm, backgouge: true"},
    {"111", "S235", "single_j, thickness: 40 mm"},
    {"121", "S235", "double_u, thickness: 40 mm, backgouge: true"},
    {"136", "\"1.4301\"", "double_j, thickness: 40 mm, backgouge: true"},
    {"131", "EN AW-5754", "double_bevel, thickness: 40 mm, backgouge: true"},
    {"138", "S235", "single_bevel, thickness: 12 mm"},
    {"135", "S235", "flare_bevel, radius: 12 mm, thickness: 8 mm"},
    {"136", "S235", "flare_v, radius: 12 mm, thickness: 8 mm"},
    {"111", "S235", "gouged, depth: 6 mm, width: 10 mm, thickness: 12 mm"},
    {"136", "S235", "gouged, depth: 6 mm, width: 10 mm, thickness: 12 mm"},
    {"135", "S235", "plug, diameter: 16 mm, thickness: 8 mm"},
    {"135", "\"1.4301\"", "plug, diameter: 12 mm, thickness: 6 mm"},
    {"138", "S235", "slot, width: 14 mm, thickness: 8 mm"},
    {"111", "S235", "slot, width: 14 mm, thickness: 8 mm"},
    {"121", "S235", "overlay, width: 200 mm, layers: 2, layer_height: 3 mm, thickness: 20 mm"},
    {"136", "\"1.4301\"", "overlay, width: 200 mm, layers: 2, layer_height: 3 mm, thickness: 20 mm"},
    {"141", "S235", "edge, thickness: 1 mm"},
    {"521", "\"1.4301\"", "edge, thickness: 1 mm"},
};

/// About the leg that the thickness carries, and not less than the process lays well.
double leg_for(const Use& use, double thickness) {
  constexpr std::pair<double, double> legs[] = {{0.8, 1.2}, {1.5, 1.5}, {2.5, 2}, {4, 3},   {5, 4},
                                                {8, 5},     {10, 6},    {25, 8},  {30, 10}, {40, 12}};
  const auto* row = std::find_if(std::begin(legs), std::end(legs), [&](auto& leg) { return thickness <= leg.first; });
  return std::max(row->second, use.least_leg);
}

std::string joint(const char* process, const std::string& position, const std::string& weld,
                  const std::string& length) {
  return fmt::format("      - {{process: {}, position: {}, weld: {}{}}}\n", process, position, weld, length);
}

std::string joints_of(const Use& use) {
  std::string text;
  const std::string metre = ", length: 1000 mm";
  for (const double t : thicknesses) {
    if (t >= use.fillet_from && t <= use.fillet_to)
      text += joint(use.process, "PB", fmt::format("fillet, leg: {} mm, thickness: {} mm", leg_for(use, t), t), metre);
    if (t < use.butt_from || t > use.butt_to) continue;
    const char* weld = t <= use.square_to ? "square" : t <= 20 ? "single_v" : "double_v";
    text += joint(use.process, "PA", fmt::format("{}, thickness: {} mm{}", weld, t, t > 20 ? ", backgouge: true" : ""),
                  metre);
  }
  return text;
}

std::string job_over_the_table() {
  std::string text =
      "format: 1\njob: table\nquantities: [10]\nbought: [{what: bevelled edges, kind: cutting, price: 1 "
      "EUR each}]\nweldments:\n";
  int number = 0;
  const auto weldment = [&](const char* metal, const std::string& joints) {
    // Thick carbon steel is asked about unless it is said that nothing is preheated.
    const char* preheat = std::string_view(metal) == "S235" ? "    preheat: none\n" : "";
    text += fmt::format("  - name: w{}\n    parts: 80\n    base_metal: {}\n{}    bought: 1 EUR each\n    joints:\n{}",
                        ++number, metal, preheat, joints);
  };
  for (const Use& use : uses) weldment(use.metal, joints_of(use));
  for (const Other& other : others) {
    const std::string weld = other.weld;
    const char* length = weld.starts_with("plug")   ? ""
                         : weld.starts_with("slot") ? ", length: 60 mm"
                                                    : ", length: 1000 mm";
    weldment(other.metal, joint(other.process, "PA", weld, length));
  }
  return text;
}

/// The most that one pass may take by the rate book, over all limits that hold.
double limit_of(const RateBook& book, const Joint& joint, const Procedure& procedure) {
  double limit = 1;
  for (const PassLimit& l : book.pass_limits) {
    const bool here = l.positions.empty() || std::count(l.positions.begin(), l.positions.end(), joint.position) > 0;
    if (!here || (l.process && *l.process != procedure.process)) continue;
    if (l.area.si.source != no_source) limit = std::min(limit, l.area.si.value);
    if (l.leg.si.source != no_source && joint.weld == WeldKind::fillet)
      limit = std::min(limit, fillet_section(Length<>{l.leg.si.value}, Ratio<>{joint.convexity.si.value}).si);
  }
  return limit;
}

}  // namespace

TEST_CASE("every process of the example rate book has procedures for its thicknesses, and they are sound") {
  std::vector<test::RateFile> rates = test::rate_texts();
  rates.push_back(
      {"waiting.yaml",
       "format: 1\nlabour_elements:\n  - {element: waiting, per: interpass, time: 5 min, basis: assumption, "
       "source: thick joints wait}\n"});
  const test::LoadedJob loaded = test::load_text(job_over_the_table(), rates);
  INFO(render(loaded.diagnostics));
  REQUIRE(loaded.job);
  for (const Diagnostic& d : loaded.diagnostics.list) CHECK_MESSAGE(d.level == Level::note, d.message);
  const Estimate estimated = estimate(*loaded.book, *loaded.job);
  for (const Diagnostic& d : findings(*loaded.book, *loaded.job, estimated))
    CHECK_MESSAGE(d.level == Level::note, fmt::format("line {}: {}", d.place.line, d.message));
  CHECK(loaded.job->joints.size() > 300);
  std::vector<bool> used(loaded.book->processes.size());
  for (std::size_t j = 0; j < loaded.job->joints.size(); ++j) {
    const Joint& joint = loaded.job->joints[j];
    const Procedure& procedure = loaded.book->procedures[joint.passes.at(0).procedure];
    const PassFigures<double>& pass = estimated.joints[j].passes.at(0);
    CAPTURE(procedure.name);
    CAPTURE(joint.place.line);
    used[procedure.process] = true;
    CHECK(joint.choice.made_by_program);
    if (!procedure.filler) continue;
    CHECK(std::fabs(pass.deposition_difference.si) <= loaded.book->checks.mass_balance.si);
    // What is laid in arc time at travel speed is the weld's metal.
    const double laid = pass.volume_rate.si * pass.arc.si;
    const double metal = pass.section.si * estimated.joints[j].joint.weld_length.si;
    CHECK(laid == doctest::Approx(metal).epsilon(loaded.book->checks.mass_balance.si));
    CHECK(pass.section.si / pass.passes.si <= limit_of(*loaded.book, joint, procedure) * (1 + 1e-9));
  }
  for (std::size_t p = 0; p < used.size(); ++p) CHECK_MESSAGE(used[p], loaded.book->processes[p].number);
}
