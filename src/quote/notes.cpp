#include "quote/notes.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace seambook {
namespace {

bool has(const std::vector<std::string>& lines, const std::string& line) {
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

/// Of the job or of one of its options, by itself; without what is judged of cost and price.
QuoteNotes own_notes(const RateBook& book, const Job& job, const Estimate& estimate) {
  return {assumptions(book, job), cautions(book, job), findings(book, job, estimate)};
}

/// What is not there yet; assumptions and findings with the option's name before them.
void add_option(const std::string& name, QuoteNotes option, QuoteNotes& notes) {
  for (const std::string& line : option.assumptions)
    if (!has(notes.assumptions, line)) notes.assumptions.push_back(fmt::format("option {}: {}", name, line));
  for (const std::string& caution : option.cautions)
    if (!has(notes.cautions, caution)) notes.cautions.push_back(caution);
  for (Diagnostic& finding : option.findings) {
    finding.message = fmt::format("option {}: {}", name, finding.message);
    notes.findings.push_back(std::move(finding));
  }
}

}  // namespace

QuoteNotes quote_notes(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote) {
  QuoteNotes notes = own_notes(book, job, estimate);
  for (Diagnostic& finding : price_findings(book, job, quote)) notes.findings.push_back(std::move(finding));
  for (std::size_t i = 0; i < job.options.size(); ++i)
    add_option(job.options[i].name, own_notes(book, job.options[i].part, quote.options[i].estimate), notes);
  if (job.options.empty()) return notes;
  notes.assumptions.emplace_back(
      "Options: each is priced apart, as if it were made alone, with set-ups of its own from the stations' stated "
      "state; what it leaves out is credited at its cost of a piece. Minimum charge, freight, the price list's step "
      "and tax are the order's and not in them.");
  return notes;
}

}  // namespace seambook
