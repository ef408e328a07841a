// Options of a job: what belongs to each is resolved as a part by itself, so that nothing of it can stand in the job's
// own sums.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

bool has_something(const PartText& part, const OptionText& option) {
  return !part.weldments.empty() || !part.bought.empty() || !part.one_offs.empty() || !option.leaves_out.empty();
}

}  // namespace

JobParts parts_of(JobDraft& draft, const JobText& text) {
  JobParts parts{{text, text.bought, text.one_offs, {}}, {}};
  std::vector<std::string_view> names;
  NamesSeen seen;
  for (const OptionText& option : text.options) {
    if (option.name) first_of_its_name(draft.diagnostics, seen, *option.name, "option");
    names.push_back(option.name ? std::string_view(option.name->text) : std::string_view());
    parts.options.push_back({text, option.bought, option.one_offs, {}});
  }
  for (const WeldmentText& weldment : text.weldments) {
    if (!weldment.option) {
      parts.own.weldments.push_back(&weldment);
      continue;
    }
    const auto at = std::find(names.begin(), names.end(), weldment.option->text);
    if (at == names.end())
      refuse_unknown(draft.diagnostics, *weldment.option, "option", names);
    else
      parts.options[static_cast<std::size_t>(at - names.begin())].weldments.push_back(&weldment);
  }
  if (parts.own.weldments.empty() && !text.weldments.empty())
    refuse_lack(draft, text.place, "all weldments belong to options", "leave 'option' out of those always made");
  for (std::size_t i = 0; i < text.options.size(); ++i) {
    if (!has_something(parts.options[i], text.options[i]))
      refuse_lack(draft, text.options[i].place, "nothing belongs to this option",
                  "add 'bought', 'one_offs' or 'leaves_out', or mark weldments with its name");
  }
  return parts;
}

std::vector<std::size_t> resolve_left_out(JobDraft& draft, const OptionText& option, const Job& own) {
  std::vector<std::size_t> left_out;
  for (const Word& word : option.leaves_out) {
    const auto found = find_name(draft.diagnostics, own.weldments, &Weldment::name, word, "weldment of the job itself");
    if (!found) continue;
    if (std::find(left_out.begin(), left_out.end(), *found) != left_out.end())
      draft.diagnostics.error(word.place, fmt::format("{} is left out twice", word.text));
    left_out.push_back(*found);
  }
  return left_out;
}

}  // namespace seambook
