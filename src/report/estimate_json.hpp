// A job's estimate as one JSON object. Keys carry their unit; figures are unrounded but for money that was printed.
#pragma once

#include <string>

#include "quote/changes.hpp"

namespace seambook {

/// What a document says of a job beside its figures.
struct ReportedJob {
  std::string file;                     // the job's, as messages name it
  std::string rates, rates_hash;        // the rate book's folder, and the print of its bytes
  std::string input_hash;               // of the job's files and the rate book
  std::string workbook;                 // empty: none was written
  std::optional<WrittenInputs> inputs;  // for a later quote to be compared with this one
};

/// An item of a list (json_list_item). Figures of joints, weldments and totals are for one piece; cost of a lot and
/// cost once stand apart.
std::string estimate_json(const RateBook&, const Job&, const Estimate&, const Quote&, const ReportedJob&,
                          const Changes* = nullptr);
/// Name, file and hashes only.
std::string job_json(const Job&, const ReportedJob&);

}  // namespace seambook
