// What an operation needs mounted at a station, from the job and the rate book, as words and then as numbers.
#pragma once

#include <array>
#include <map>

#include "resolve/job.hpp"
#include "resolve/set_up_names.hpp"
#include "sequence/sequence.hpp"

namespace seambook {

/// A word for each attribute; empty: not stated, whatever is mounted stays.
using NeedWords = std::array<std::string, set_up_attributes.size()>;

/// What a pass group of a joint needs.
NeedWords needs_in_words(const RateBook&, const Job&, std::size_t joint, std::size_t group);
/// What work on the surface of a joint needs: clean surroundings.
NeedWords needs_of_finish(const RateBook&, const Job&, std::size_t joint);
/// Attribute and value as stations state them.
NeedWords stated_words(const std::vector<std::pair<std::string, std::string>>& mounted);

/// Gives each attribute's words their numbers, in order of first use, and keeps them in a model.
class NeedNumbers {
 public:
  explicit NeedNumbers(SetupModel&);
  Attributes numbers(const NeedWords&);
  /// A change of the rate book; its duration is `time`.
  ChangeTask task(const std::string& name, const std::string& attribute, const std::vector<std::string>& from,
                  const std::vector<std::string>& to, Time<> time, bool cold);

 private:
  std::uint32_t number(std::size_t attribute, const std::string& word);
  SetupModel& model_;
  std::array<std::map<std::string, std::uint32_t>, set_up_attributes.size()> known_;
};

}  // namespace seambook
