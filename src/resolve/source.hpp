// Where a number of the estimate was written, and what it rests on.
// A Sourced number carries a SourceId: 1 .. rate sources are rows of RateBook::sources; the job's own numbers follow
// from `first_job_source` up, as rows of Job::sources.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "read/written.hpp"
#include "trace/traced.hpp"

namespace seambook {

template <Dim D>
using Known = Quantity<D, Sourced>;

/// The values a number may take; an end that is not allowed itself is open. In SI.
struct Limits {
  double low = 0, high = 1e9;
  bool low_open = true, high_open = false;
};

/// One number of the rate book.
struct RateSource {
  std::string entry, field;  // `procedure CG-F5`, `travel speed`
  double value = 0;          // SI
  Unit unit;                 // shown in
  Place place;
  Basis basis = Basis::assumption;
  std::string words;     // what it rests on
  bool frozen = false;   // changing it can choose another procedure or order: shown locked
  Limits limits;         // what resolving again would accept
  double range = 0;      // how far it may lie off, either way, as a share of itself; 0: not in doubt
  bool decided = false;  // the shop's own choice, such as the margin or a wire's diameter: never in doubt
  std::string_view key;  // that it stands behind in the file
};

/// One number of the job.
struct JobSource {
  Place place;
  bool frozen = false;  // see RateSource
  Limits limits;
  double value = 0;  // SI
  double range = 0;  // see RateSource
  std::string_view key;
};

/// The source of a number that the program worked out where no cell can: a rerun is needed to change it.
inline constexpr SourceId worked_out = summed + 1;

}  // namespace seambook
