#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "complaints.hpp"
#include "read/job_text.hpp"
#include "read/rate_text.hpp"

using namespace seambook;

namespace {

JobText read_clean_job(const std::string& text) {
  Diagnostics diagnostics;
  JobText job = read_job(diagnostics.add_file("job.yaml", text), {}, diagnostics);
  CHECK(render(diagnostics) == "");
  return job;
}

JobText example_job(const std::string& name) { return read_clean_job(whole_file_text(SEAMBOOK_ROOT "/jobs/" + name)); }

}  // namespace

TEST_CASE("the example jobs are read without complaint") {
  std::size_t jobs = 0;
  const std::filesystem::path folder = SEAMBOOK_ROOT "/jobs";
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (entry.path().extension() != ".yaml" || entry.path().parent_path().filename() == "rates") continue;
    const std::string name = entry.path().lexically_relative(folder).string();
    CAPTURE(name);
    const JobText job = example_job(name);
    CHECK(job.job);
    CHECK(!job.weldments.empty());
    ++jobs;
  }
  CHECK(jobs >= 8);
}

TEST_CASE("the rate books of the example shops are read without complaint") {
  for (const std::string folder : {"/rates", "/jobs/saltbriar/rates", "/jobs/marlgannet/rates"}) {
    CAPTURE(folder);
    Diagnostics diagnostics;
    std::vector<std::uint32_t> files;
    for (const auto& entry : std::filesystem::directory_iterator(SEAMBOOK_ROOT + folder))
      if (entry.path().extension() == ".yaml")
        files.push_back(diagnostics.add_file(entry.path().filename().string(), whole_file_text(entry.path().string())));
    CHECK(files.size() >= 4);
    CHECK(!read_rates(files, diagnostics).procedures.empty());
    CHECK(render(diagnostics) == "");
  }
}

TEST_CASE("the example rate book is read without complaint from its files") {
  Diagnostics diagnostics;
  std::vector<std::uint32_t> files;
  std::set<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(SEAMBOOK_ROOT "/rates"))
    if (entry.path().extension() == ".yaml") names.insert(entry.path().filename().string());
  for (const std::string& name : names)
    files.push_back(diagnostics.add_file(name, whole_file_text(SEAMBOOK_ROOT "/rates/" + name)));
  const RateText rates = read_rates(files, diagnostics);
  CHECK(render(diagnostics) == "");
  CHECK(rates.currency->text == "EUR");
  CHECK(rates.overhead->in_rate->value);
  CHECK(rates.labour.at(0).rate->value.si == doctest::Approx(54.0 / 3600));
  CHECK(rates.labour.at(0).rate->currency == "EUR");
  CHECK(rates.prices->margin->value.si == doctest::Approx(0.18));
  CHECK(*rates.checks->evidence.basis == Basis::common_practice);
  CHECK(rates.procedures.size() >= 90);
  const auto carbon_3 = std::find_if(rates.procedures.begin(), rates.procedures.end(),
                                     [](const ProcedureText& procedure) { return procedure.name->text == "CG-F3"; });
  REQUIRE(carbon_3 != rates.procedures.end());
  CHECK(carbon_3->travel_range->high.value.si == doctest::Approx(0.9 / 60));
  CHECK(rates.stations.at(0).mounted.size() == 5);
  CHECK(rates.stations.at(0).mounted.at(1).attribute.text == "filler");
  CHECK(rates.stations.at(0).mounted.at(1).value.text == "308LSi-1.0");
  CHECK(rates.change_tasks.back().from.at(0).text == "carbon");
  CHECK(iso(rates.welders.at(1).qualifications.at(0).until->value) == "2026-05-13");
}

TEST_CASE("values come typed in SI with the places where they stand") {
  const JobText job = example_job("bracket.yaml");
  CHECK(job.drawings.at(0).text == "4711 rev B");
  CHECK(job.quantities.at(2).value == 50);
  const WeldmentText& bracket = job.weldments.at(0);
  CHECK(bracket.parts->value == 7);
  CHECK(bracket.mass->value.si == doctest::Approx(18));
  CHECK(bracket.defaults.process->text == "135");
  CHECK(bracket.bought.at(0).price.value.si == doctest::Approx(38));
  CHECK(bracket.bought.at(0).price.currency == "EUR");
  CHECK(bracket.bought.at(0).scaling == Scaling::each);
  CHECK(bracket.bought.at(0).kind == BoughtKind::base_metal);
  const JointText& first = bracket.joints.at(0);
  CHECK(first.leg->value.si == doctest::Approx(0.005));
  CHECK(first.leg->unit == "mm");
  CHECK(first.leg->place == Place{1, 14, 29});
  CHECK(first.place == Place{1, 14, 9});
  CHECK(first.thickness->low.value.si == doctest::Approx(0.008));
  CHECK(first.thickness->high.value.si == doctest::Approx(0.008));
  CHECK(first.count->value == 4);
  CHECK(!first.sides);
  CHECK(!first.id);
}

TEST_CASE("single and listed values of one key are both read") {
  const JobText platform = example_job("brewhouse-platform.yaml");
  const JointText& leg = platform.weldments.at(0).joints.at(0);
  CHECK(leg.thickness->high.value.si == doctest::Approx(0.010));
  CHECK(leg.pass_count->value == 1);
  CHECK(platform.weldments.at(0).bought.at(1).scaling == Scaling::once);
  CHECK(platform.weldments.at(0).bought.at(1).kind == BoughtKind::cutting);
  const JobText pipe_set = example_job("pipe-set.yaml");
  const JointText& pipe = pipe_set.weldments.at(0).joints.at(0);
  CHECK(!pipe.pass_count);
  CHECK(pipe.passes.at(1).procedure.text == "ST-PC");
  CHECK(pipe.excess->height->value.si == doctest::Approx(0.0008));
  CHECK(pipe.purge->value);
  const JobText job = read_clean_job(
      "format: 1\njob: 1.4301\ndrawings: [A, B]\nbought: [5 EUR per lot, {what: paint, kind: outside, price: 2 USD "
      "each}]\n"
      "weldments: [{joints: [{weld: edge, after: J1}, {weld: edge, after: [J1, \"J2\"]}]}]\n");
  CHECK(job.job->text == "1.4301");
  CHECK(job.drawings.size() == 2);
  CHECK(job.bought.at(0).scaling == Scaling::per_lot);
  CHECK(job.bought.at(1).price.currency == "USD");
  CHECK(job.weldments.at(0).joints.at(0).after.at(0).text == "J1");
  CHECK(job.weldments.at(0).joints.at(1).after.at(1).text == "J2");
}

TEST_CASE("bare numbers take the units that the file states") {
  const JobText job = read_clean_job(
      "format: 1\nunits: {length: in, mass: lb, angle: deg}\njob: a\n"
      "weldments:\n  - mass: 10\n    joints:\n      - {weld: single_v, thickness: [1/4, 6 mm], length: 2, "
      "groove_angle: 60, "
      "convexity: 0.1}\n");
  const JointText& joint = job.weldments.at(0).joints.at(0);
  CHECK(job.weldments.at(0).mass->value.si == doctest::Approx(4.5359237));
  CHECK(joint.length->value.si == doctest::Approx(0.0508));
  CHECK(joint.length->unit == "");
  CHECK(joint.thickness->low.value.si == doctest::Approx(0.00635));
  CHECK(joint.thickness->high.value.si == doctest::Approx(0.006));
  CHECK(joint.groove_angle->value.si == doctest::Approx(1.0471975512));
  CHECK(joint.convexity->value.si == doctest::Approx(0.1));
}
