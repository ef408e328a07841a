// What the commands' JSON documents say of a job beside its figures.
#pragma once

#include "commands/pipeline.hpp"
#include "report/estimate_json.hpp"
#include "report/json_document.hpp"

namespace seambook {

inline ReportedJob reported(const Batch& batch, const EstimatedJob& done) {
  const ShopRates& rates = batch.rates[done.rates];
  return {done.file, rates.shown, rates.hash, done.input_hash, {}, {}};
}

}  // namespace seambook
