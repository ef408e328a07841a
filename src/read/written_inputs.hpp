// The files that a quote is made from, word for word, so that it can be made again later.
#pragma once

#include <string>
#include <vector>

#include "basics/hash.hpp"

namespace seambook {

struct NamedText {
  std::string name, text;
};

struct WrittenInputs {
  NamedText job;
  std::vector<NamedText> takeoffs;  // by the names that the job uses, in the order of their first use
  std::vector<NamedText> rates;     // by file name, in the order they are read
};

inline std::string hash_of_rates(const std::vector<NamedText>& rates) {
  Hash hash;
  for (const NamedText& file : rates) hash.add(file.name), hash.add(file.text);
  return hex(hash);
}

inline std::string hash_of_inputs(const WrittenInputs& inputs) {
  Hash hash;
  for (const NamedText& takeoff : inputs.takeoffs) hash.add(takeoff.text);
  hash.add(inputs.job.text + hash_of_rates(inputs.rates));
  return hex(hash);
}

}  // namespace seambook
