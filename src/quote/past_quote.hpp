// A job of a quote that this program wrote as JSON some time ago.
#pragma once

#include <cstdint>

#include "read/written_inputs.hpp"
#include "text/unit_words.hpp"

namespace seambook {

struct PastQuote {
  std::string version;  // of the program that wrote it
  std::string job, currency;
  Date date;
  std::int64_t quantity = 1;  // the first
  double total = 0;           // of it, as printed
  WrittenInputs inputs;
};

}  // namespace seambook
