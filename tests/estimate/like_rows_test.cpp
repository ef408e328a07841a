// Joints gathered by kind give what all joints one by one give, whatever moves.
#include "estimate/like_rows.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "../estimate/shop_files.hpp"
#include "quote/moved_order.hpp"

using namespace seambook;

namespace {

constexpr const char* repeating_job = R"(format: 1
job: repeating
base_metal: S235
weldments:
  - name: frame
    free_issue: true
    joints:
      - {id: A, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, note: left}
      - {id: B, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, note: right}
      - {id: C, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 250 mm}
      - {id: D, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}
)";

test::LoadedJob loaded(const std::string& job) {
  test::LoadedJob out = test::load_text(job, test::rate_texts());
  REQUIRE_MESSAGE(out.job.has_value(), render(out.diagnostics));
  return out;
}

/// Every second number of book and job, by a factor of its own.
Factors every_second(const RateBook& book, const Job& job, std::vector<SourceId>& moving) {
  Factors factors;
  for (SourceId id = 1; id < book.sources.size(); id += 2) moving.push_back(id);
  for (std::size_t i = 0; i < job.sources.size(); i += 2) moving.push_back(first_job_source + static_cast<SourceId>(i));
  for (const SourceId id : moving) move_to(factors, id, 1 + 0.001 * (id % 97));
  return factors;
}

double cost_of(const Row<Sourced>& row, const Factors& factors) {
  return welding_cost(joint_totals(row_figures(lift_row<double>(row, Lifting(&factors))))).si;
}

}  // namespace

TEST_CASE("joints with the same numbers are of one kind, unless a number that moves is written apart") {
  const test::LoadedJob shop = loaded(repeating_job);
  const std::vector<LikeRows> still = like_rows(*shop.book, *shop.job, {});
  REQUIRE(still.size() == 2);
  CHECK(still[0].count == 3);
  CHECK(still[1].count == 1);
  const SourceId length_of_b = shop.job->joints[1].line.si.source;
  const std::vector<LikeRows> moving = like_rows(*shop.book, *shop.job, {length_of_b});
  REQUIRE(moving.size() == 3);
  CHECK(moving[0].count == 2);
  CHECK(moving[1].count == 1);
}

TEST_CASE("kinds of joints cost what their joints cost one by one, whatever moves") {
  for (const char* name : {"bracket", "brewhouse-platform", "pipe-set", "wash-down-cabinet"}) {
    CAPTURE(name);
    const test::LoadedJob shop = loaded(test::file_text(std::string(SEAMBOOK_ROOT "/jobs/") + name + ".yaml"));
    std::vector<SourceId> moving;
    const Factors factors = every_second(*shop.book, *shop.job, moving);
    double by_kind = 0, one_by_one = 0, joints = 0;
    for (const LikeRows& like : like_rows(*shop.book, *shop.job, moving)) {
      by_kind += like.count * cost_of(like.row, factors);
      joints += like.count;
    }
    for (const Joint& joint : shop.job->joints)
      one_by_one += cost_of(gather_row(*shop.book, *shop.job, joint), factors);
    CHECK(joints == static_cast<double>(shop.job->joints.size()));
    CHECK(by_kind == doctest::Approx(one_by_one).epsilon(1e-12));
  }
}
