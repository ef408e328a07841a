// The three orders of the invented brewhouse shop. Expected figures are plain sums by hand (weld length × passes /
// travel speed; elements = floor((line - element)/pitch) + 1), computed outside the program from the joint lists.
#include <doctest/doctest.h>

#include <map>

#include "shop_files.hpp"

using namespace seambook;

namespace {

struct Order {
  const char* file;
  double pieces;
};
constexpr Order orders[] = {{"brewhouse-platform.yaml", 1}, {"wash-down-cabinet.yaml", 6}, {"pipe-set.yaml", 1}};

/// A finding that stands, and why.
struct Expected {
  const char* file;
  const char* joint;
  const char* words;  // that the message holds
};
const Expected expected_findings[] = {
    {"brewhouse-platform.yaml", "P08", "leg 5 mm on a member of 4 mm"},   // planted
    {"wash-down-cabinet.yaml", "C09", "leg 3 mm on a member of 1.5 mm"},  // planted
    {"wash-down-cabinet.yaml", "C09", "lays 2.19 mm² a pass"},            // planted: leg 3 asks for twice the metal
};

bool is_expected(const Order& order, const Diagnostic& finding) {
  for (const Expected& e : expected_findings) {
    if (std::string(e.file) == order.file && finding.message.starts_with(std::string("joint ") + e.joint + ":") &&
        finding.message.find(e.words) != std::string::npos)
      return true;
  }
  return false;
}

}  // namespace

TEST_CASE("the brewhouse orders come to their arc minutes and elements and length") {
  std::map<std::string, double> arc_min;
  double elements = 0, length = 0;
  for (const Order& order : orders) {
    const test::LoadedJob loaded = test::load_job(order.file);
    REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
    const Estimate estimated = estimate(*loaded.book, *loaded.job);
    for (std::size_t j = 0; j < loaded.job->joints.size(); ++j) {
      const RowFigures<double>& row = estimated.joints[j];
      elements += order.pieces * row.joint.weld_elements.si;
      length += order.pieces * row.joint.weld_length.si;
      for (std::size_t g = 0; g < row.passes.size(); ++g) {
        const Procedure& procedure = loaded.book->procedures[loaded.job->joints[j].passes[g].procedure];
        arc_min[loaded.book->processes[procedure.process].number] += order.pieces * row.passes[g].arc.si / 60;
      }
    }
  }
  CHECK(elements == 830);
  CHECK(length == doctest::Approx(97.475).epsilon(1e-9));
  CHECK(arc_min["135"] == doctest::Approx(59.8075).epsilon(1e-5));
  CHECK(arc_min["141"] == doctest::Approx(137.3522).epsilon(1e-5));
  CHECK(arc_min["521"] == doctest::Approx(81.6026).epsilon(1e-5));
  CHECK(arc_min.size() == 3);
}

TEST_CASE("the brewhouse orders are found to have their planted faults and the listed ones") {
  std::size_t found = 0;
  for (const Order& order : orders) {
    const test::LoadedJob loaded = test::load_job(order.file);
    REQUIRE(loaded.job.has_value());
    for (const Diagnostic& d : findings(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job))) {
      CAPTURE(order.file);
      CAPTURE(d.message);
      CHECK(is_expected(order, d));
      CHECK(d.level == Level::warning);
      ++found;
    }
  }
  CHECK(found == std::size(expected_findings));
}
