// What the commands' JSON documents say of a job beside its figures.
#pragma once

#include "commands/pipeline.hpp"
#include "report/estimate_json.hpp"
#include "report/json_document.hpp"

namespace seambook {

inline ReportedJob reported(const EstimatedJob& done) {
  return {done.file, done.rates->shown, done.rates->hash, done.input_hash, {}, {}};
}

}  // namespace seambook
