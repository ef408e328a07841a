// A job quoted for a test, with its options.
#pragma once

#include "../estimate/shop_files.hpp"
#include "quote/quote.hpp"

namespace seambook::test {

struct Quoted {
  LoadedJob loaded;
  Estimate estimated;
  std::vector<StationWork> work;
  Quote quote;
};

/// Dated 2026-05-04. Fails the test when the job was refused.
Quoted quoted(LoadedJob loaded);

}  // namespace seambook::test
