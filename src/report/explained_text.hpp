// The working of a job for a terminal and as JSON.
#pragma once

#include <string>

#include "report/explain_job.hpp"

namespace seambook {

struct ExplainedOption {
  std::string name;
  std::vector<ExplainedPart> parts;
};
/// What was asked for of a job.
struct Explained {
  std::string date, currency;
  std::vector<ExplainedPart> parts;
  std::vector<PriceMover> movers;
  std::vector<ExplainedOption> options;
};

/// Heading, notes and working, in lines of at most `columns`; control characters of the author's words as spaces.
std::string explained_text(const ExplainedPart&, std::size_t columns);
/// All parts, what moves the price, then each option.
std::string explained_text(const Explained&, std::size_t columns);
/// A JSON object; `heading` says which job (`job_json`).
std::string explained_json(const Explained&, const std::string& heading);

}  // namespace seambook
