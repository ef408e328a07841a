// A job's joints become families of like seams, and for each family the ways to weld it: as the job says, by the
// procedures it names beside, by the one that the rate book's table chooses for each other process.
// Holds afterwards: a joint is in one family; a way that suits has a row for each joint of its family, one after the
// other, in `rows`; a way that does not suit says why.
#pragma once

#include "resolve/job.hpp"

namespace seambook {

/// One process for the joints of a family.
struct FamilyWay {
  std::size_t process = 0;        // index into RateBook::processes
  std::vector<std::size_t> rows;  // joints of Ways::job, parallel to Family::joints; empty when it does not suit
  bool as_the_job_says = false;
  std::string words;                    // the choice in words, or the reason against
  std::vector<std::string> look_again;  // warnings about the way, when it suits
};

struct Family {
  std::string words;                // `square 1.5 mm, base-metal group 8.1, finish F4, position PA`
  std::vector<std::size_t> joints;  // of the job
  std::vector<FamilyWay> ways;      // by process, in the rate book's order
};

struct Ways {
  Job job;  // the job's joints, each once for every way that suits; weldments without their joints
  std::vector<Family> families;
};

/// Every joint, by every process of the book that has a procedure for its base metal.
Ways ways_to_weld(const RateBook&, const Job&);

}  // namespace seambook
