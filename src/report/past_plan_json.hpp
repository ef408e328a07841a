// Reads back what plan_members wrote, or what somebody wrote in the same form.
#pragma once

#include <optional>

#include "basics/diagnostics.hpp"
#include "schedule/past_plan.hpp"

namespace seambook {

/// Reads a registered file, a document of `plan --json`: of its stations the steps with `operation`, `welder`, `start`
/// and `finish`; `with` and `set_up` may be left out. `away`, `done`, `under_way` and `undone` are read where they are.
/// Nothing, and the reasons at the file, when it is none.
std::optional<PastPlan> read_past_plan(std::uint32_t file, Diagnostics& diagnostics);

}  // namespace seambook
