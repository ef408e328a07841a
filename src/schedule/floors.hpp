// What no plan can be better than, level by level: each level by itself, whatever it costs the others.
#pragma once

#include "schedule/timeline.hpp"

namespace seambook {

using TaskSet = std::uint64_t;  // bit t: task t

/// Of two floors the higher one. Levels behind the first say nothing about plans that leave more undone, so they are
/// taken together only where both leave the same undone.
Levels higher_floor(const Levels&, const Levels&);
/// Under the levels of every plan that goes on from here, were there stations and people enough for all that is left.
/// `done`: placed or found impossible; empty when nothing is.
Levels floor_from(const ShopNet&, const Timeline&, const Finishes&, TaskSet done);
/// All ways of a task use it: a station, or a person.
bool only_there(const ShopTask&, std::optional<std::size_t> station, std::optional<std::size_t> person);
/// Tasks that can be done, were there stations and people enough.
std::vector<bool> possible_tasks(const ShopNet&);
/// The floors below hold for plans that leave only impossible tasks undone.
///
/// Under the lateness of every plan because of one station or person: work that only it can do goes through it one
/// after the other. Orders in the order of shortest remaining work first, with interruptions, end no later one by one
/// (Schrage 1968); which order ends when is left open (Chu 1992), by the assignment that costs least.
std::int64_t lateness_floor(const ShopProblem&, const ShopNet&, const std::vector<bool>& possible);
/// Under the lateness of every plan, each order by itself: all work that only one station or person can do for it, and
/// for what it follows, goes through that one before the order ends.
std::int64_t orders_floor(const ShopProblem&, const ShopNet&, const std::vector<bool>& possible);
/// Under the loads of every plan: each value that work needs and no station has mounted at the start.
std::int64_t loads_floor(const ShopProblem&, const std::vector<bool>& possible);
/// Under the seconds of set-up of every plan: each of those values, of any attribute, is changed to at least once, from
/// the value that takes least.
std::int64_t arrivals_floor(const ShopProblem&, const std::vector<bool>& possible);
/// Under the seconds from the start to the end of every plan, because of one station or person: what only it can do
/// goes through it one after the other. `change`: under the seconds of set-up of every plan.
std::int64_t finish_floor(const ShopProblem&, const ShopNet&, const std::vector<bool>& possible, std::int64_t change);

}  // namespace seambook
