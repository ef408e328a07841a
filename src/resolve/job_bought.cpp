// What is bought for the job, and in which of three ways the base metal is priced.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

constexpr std::string_view bought_words[] = {"base metal", "cutting", "outside work", "other"};  // as BoughtKind

struct MetalWay {
  std::string words;
  Place place;
};

bool is_base_metal(const BoughtText& text) { return text.kind == BoughtKind::base_metal; }

std::vector<MetalWay> metal_ways(const WeldmentText& text) {
  std::vector<MetalWay> ways;
  if (const auto line = std::find_if(text.bought.begin(), text.bought.end(), is_base_metal); line != text.bought.end())
    ways.push_back({"bought", line->place});
  if (text.free_issue && text.free_issue->value) ways.push_back({"free issue", text.free_issue->place});
  if (text.base_metal_by) ways.push_back({"priced by mass", text.base_metal_by->place});
  return ways;
}

void check_metal_by_mass(JobDraft& draft, const WeldmentText& text, const Weldment& weldment) {
  const Place place = text.base_metal_by->place;
  if (!text.mass) refuse_lack(draft, text.place, "base metal by mass needs the mass", "add for example 'mass: 18 kg'");
  if (weldment.base_metal >= draft.book.base_metals.size()) return;
  const BaseMetal& metal = draft.book.base_metals[weldment.base_metal];
  if (!given(metal.price))
    draft.diagnostics.error(place, fmt::format("the rate book has no price for base metal {}", metal.name));
  if (!given(metal.yield))
    draft.diagnostics.error(place, fmt::format("the rate book has no yield for base metal {}", metal.name));
}

/// What the customer supplies may be valued: its handling is a share of that.
void take_free_issue_value(JobDraft& draft, const WeldmentText& text, Weldment& weldment) {
  if (!text.free_issue_value) {
    if (weldment.free_issue && given(draft.book.prices.free_issue_handling))
      assume(draft,
             fmt::format("{}: the value of what the customer supplies is not stated: its handling is not charged",
                         weldment.name));
    return;
  }
  const Written<dim::money>& value = *text.free_issue_value;
  if (value.currency != draft.book.currency)
    draft.diagnostics.error(value.place, fmt::format("prices are in {}, not {}", draft.book.currency, value.currency),
                            "the rate book states the currency");
  if (!weldment.free_issue)
    draft.diagnostics.error(value.place, "a value of free-issue material, but the customer supplies none",
                            "add 'free_issue: true', or leave the value out");
  if (!given(draft.book.prices.free_issue_handling))
    draft.diagnostics.error(value.place, "the rate book does not say what handling of free-issue material costs",
                            "add 'free_issue_handling' to its prices; 0 % when it is free");
  weldment.free_issue_value = stated(draft, text.free_issue_value);
}

}  // namespace

std::vector<Bought> resolve_bought(JobDraft& draft, const std::vector<BoughtText>& texts) {
  std::vector<Bought> bought;
  for (const BoughtText& text : texts) {
    const std::string& ours = draft.book.currency;
    if (text.price.currency != ours)
      draft.diagnostics.error(text.price.place, fmt::format("prices are in {}, not {}", ours, text.price.currency),
                              "the rate book states the currency");
    std::string what = text.what ? text.what->text : std::string(bought_words[static_cast<std::size_t>(text.kind)]);
    bought.push_back({std::move(what), text.kind, text.scaling, stated(draft, Maybe<dim::money>(text.price))});
  }
  return bought;
}

void resolve_metal_price(JobDraft& draft, const PartText& part, const WeldmentText& text, Weldment& weldment) {
  const std::vector<MetalWay> ways = metal_ways(text);
  weldment.free_issue = text.free_issue && text.free_issue->value;
  weldment.metal_by_mass = text.base_metal_by.has_value();
  if (ways.size() > 1) {
    draft.diagnostics.error(std::max(ways[0].place, ways[1].place),
                            fmt::format("base metal is {} and {}: choose one", ways[0].words, ways[1].words));
  } else if (ways.empty() && std::none_of(part.bought.begin(), part.bought.end(), is_base_metal)) {
    refuse_lack(draft, text.place, "no base metal is priced",
                "add a bought line (a price of 0 will do), 'free_issue: true', or 'base_metal_by: mass'");
  } else if (weldment.metal_by_mass) {
    check_metal_by_mass(draft, text, weldment);
  }
  take_free_issue_value(draft, text, weldment);
}

}  // namespace seambook
