#include "resolve/job.hpp"

namespace seambook {

std::string weld_in_words(const Joint& joint) {
  std::string words(weld_word(joint.weld));
  if (joint.weld == WeldKind::square && joint.sides.si.value == 2) words += " from both sides";
  if (joint.groove.backing == Backing::temporary) words += ", temporary backing";
  if (joint.groove.backing == Backing::permanent) words += ", permanent backing";
  if (joint.path.staggered) words += ", staggered";
  return words;
}

}  // namespace seambook
