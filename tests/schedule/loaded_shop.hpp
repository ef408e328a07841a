// Jobs of one rate book turned into work and planned, for tests; and a small invented shop of two equal stations.
#pragma once

#include <functional>
#include <set>

#include "../estimate/shop_files.hpp"
#include "schedule/instants.hpp"
#include "schedule/past_plan.hpp"

namespace seambook::test {

struct LoadedShop {
  Diagnostics diagnostics;
  RateBook book;
  std::vector<Job> jobs;
  std::vector<Estimate> estimates;
  std::optional<Day> day;
  ShopWork work;
  Instant start{};

  WorkToPlan asked() const { return {book, jobs, estimates, day ? &*day : nullptr, start}; }
};

/// Jobs given as text and a day file's text or none, read and estimated; all of it must be sound. Its work is left
/// empty.
LoadedShop read_shop(const std::vector<std::string>& jobs, const std::vector<RateFile>& rates, Instant start,
                     const std::string& day = "");
/// The same with its work from `start` on.
LoadedShop load_shop(const std::vector<std::string>& jobs, const std::vector<RateFile>& rates, Instant start,
                     const std::string& day = "");
/// Example jobs by their files in jobs/; `edit` may change each text.
LoadedShop example_shop(const std::vector<std::string>& files, Instant start, const std::string& day = "",
                        const std::function<void(std::string&)>& edit = {});

/// Two equal stations S1 and S2 and two welders A and B for fillets, one shift from 6 to 14 on weekdays, overtime.
std::vector<RateFile> small_rates();
/// A job of one weldment `w`, with more keys of the job and its joints' lines.
std::string small_job(const std::string& name, const std::string& more, const std::string& joints);
/// A joint's line: an hour or two of work.
std::string small_joint(const std::string& id, const std::string& more = "");

/// 2026-05-11 is the Monday on which the small shop's plans begin.
Instant at(const char* date, int hour, int minute = 0);
/// A search that a debug build finishes in a second or two.
PlanBudget short_search();

/// The planned task of that name; fails where there is none.
const PlannedTask& step_of(const ShopWork&, const Plan&, const std::string& name);
bool is_planned(const ShopWork&, const Plan&, const std::string& name);
const Way& way_of_step(const ShopWork&, const PlannedTask&);
/// Stamp of the one who leads; name of the station.
std::string lead_of(const ShopWork&, const PlannedTask&);
std::string station_of(const ShopWork&, const PlannedTask&);
/// A plan as `plan --json` would print it and read it back.
PastPlan past_of(const ShopWork&, const Plan&);
/// Ids of joints of a job that are withheld, with or without a rule that forbids it.
std::set<std::string> withheld_joints(const LoadedShop&, const std::string& job, bool by_gate);
/// The reasons for which a joint is withheld.
std::string why_withheld(const LoadedShop&, const std::string& joint);

}  // namespace seambook::test
