#include "resolve/qualified.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr double length_tolerance = 1e-9;  // of lengths that were converted from other units

/// What a qualification is held against.
struct Asked {
  const RateBook& book;
  const Joint& joint;
  std::size_t process = 0;
  std::optional<Date> date;
};

std::string length_in_words(const Asked& asked, Length<> length) { return shown(length, unit::mm, asked.book.terms); }

/// With the ISO 4063 number: AWS has one word for what differs here.
std::string process_in_words(const Asked& asked) {
  const std::string& number = asked.book.processes[asked.process].number;
  const std::string word = process_word(number, asked.book.terms);
  return word == number ? number : fmt::format("{} ({})", word, number);
}

/// Why a length is outside; empty when it is inside. An absent end is open.
std::string outside(const Asked& asked, std::string_view what, Length<> value, std::optional<Length<>> from,
                    std::optional<Length<>> to) {
  if (from && value.si < from->si * (1 - length_tolerance))
    return fmt::format("{} {} below {}", what, length_in_words(asked, value), length_in_words(asked, *from));
  if (to && value.si > to->si * (1 + length_tolerance))
    return fmt::format("{} {} above {}", what, length_in_words(asked, value), length_in_words(asked, *to));
  return {};
}

std::string group_refused(const Asked& asked, const Qualification& qualification) {
  const std::string& group = asked.book.base_metals[asked.joint.base_metal].group;
  const auto admits = [&](const std::string& admitted) { return group_admits(admitted, group); };
  if (std::any_of(qualification.groups.begin(), qualification.groups.end(), admits)) return {};
  return fmt::format("base-metal group {} not covered", group);
}

std::string weld_refused(const Asked& asked, const Qualification& qualification) {
  const bool fillet = asked.joint.weld == WeldKind::fillet;
  if (fillet ? qualification.fillets : qualification.grooves) return {};
  return fillet ? "fillet welds not covered" : "groove welds not covered";
}

std::string form_refused(const Asked& asked, const Qualification& qualification) {
  const std::optional<Length<>> tube = tube_of(asked.joint);
  if (!tube) return qualification.plates ? "" : "plate not covered";
  if (!qualification.tubes) return "tube not covered";
  return outside(asked, "outside diameter", *tube, qualification.diameter_from, qualification.diameter_to);
}

std::string position_refused(const Asked& asked, const Qualification& qualification) {
  const auto& positions = qualification.positions;
  if (std::find(positions.begin(), positions.end(), asked.joint.position) != positions.end()) return {};
  return fmt::format("{} not covered", position_word(asked.joint.position, asked.joint.weld, asked.book.terms));
}

std::string thickness_refused(const Asked& asked, const Qualification& qualification) {
  if (!qualification.thickness) return {};
  return outside(asked, "thickness", thinner_member(asked.joint), qualification.thickness->first,
                 qualification.thickness->second);
}

/// The day so many months later; the month's last where it has no such day.
Date months_later(const Date& date, int months) {
  const int month = date.month - 1 + months;
  Date later{date.year + month / 12, month % 12 + 1, 1};
  const Date next{later.year + later.month / 12, later.month % 12 + 1, 1};
  later.day = std::min(date.day, plus_days(next, -1).day);
  return later;
}

std::optional<Date> lapse_day(const RateBook& book, const Qualification& qualification) {
  if (!book.qualification_lapses || !qualification.last_used) return std::nullopt;
  return months_later(*qualification.last_used, *book.qualification_lapses);
}

std::string date_refused(const Asked& asked, const Qualification& qualification) {
  if (!asked.date) return {};
  if (qualification.until && *asked.date > *qualification.until)
    return fmt::format("expired {}", iso(*qualification.until));
  const std::optional<Date> lapse = lapse_day(asked.book, qualification);
  if (lapse && *asked.date > *lapse) return fmt::format("lapsed: not used since {}", iso(*qualification.last_used));
  return {};
}

using Rule = std::string (*)(const Asked&, const Qualification&);
constexpr Rule rules[] = {group_refused, weld_refused, form_refused, position_refused, thickness_refused, date_refused};

/// Of a welder's qualifications for the process the one that comes furthest through the rules; of those that pass all,
/// the one that ends last.
WelderFit fit_of(const Asked& asked, const Welder& welder) {
  WelderFit best{false, {}, fmt::format("no qualification for process {}", process_in_words(asked)), {}};
  std::ptrdiff_t furthest = -1;
  for (const Qualification& qualification : welder.qualifications) {
    if (qualification.process != asked.process) continue;
    std::string reason;
    const auto refused = std::find_if(std::begin(rules), std::end(rules), [&](Rule rule) {
      reason = rule(asked, qualification);
      return !reason.empty();
    });
    const std::ptrdiff_t passed = refused - std::begin(rules);
    const std::optional<Date> until = last_day(asked.book, qualification);
    const bool lasts_longer = best.qualified && best.until && (!until || *until > *best.until);
    if (passed < furthest || (passed == furthest && !lasts_longer)) continue;
    furthest = passed;
    best = {reason.empty(), until, reason, qualification.basis_note};
  }
  if (!best.qualified) best.until.reset();
  return best;
}

}  // namespace

std::optional<Date> last_day(const RateBook& book, const Qualification& qualification) {
  const std::optional<Date> lapse = lapse_day(book, qualification);
  if (!lapse) return qualification.until;
  return qualification.until ? std::min(*lapse, *qualification.until) : *lapse;
}

std::optional<Length<>> tube_of(const Joint& joint) {
  if (joint.outside_diameter.si.source != no_source) return Length<>{joint.outside_diameter.si.value};
  return joint.plan.tube;
}

std::vector<WelderFit> welders_for(const RateBook& book, const Joint& joint, std::size_t process,
                                   std::optional<Date> date) {
  const Asked asked{book, joint, process, date};
  std::vector<WelderFit> fits;
  fits.reserve(book.welders.size());
  for (const Welder& welder : book.welders) fits.push_back(fit_of(asked, welder));
  return fits;
}

std::vector<WelderFit> welders_for(const RateBook& book, const Joint& joint, std::optional<Date> date) {
  std::vector<WelderFit> all(book.welders.size(), WelderFit{true, {}, {}, {}});
  std::vector<std::size_t> seen;
  for (const PassGroup& pass : joint.passes) {
    const std::size_t process = book.procedures[pass.procedure].process;
    if (std::find(seen.begin(), seen.end(), process) != seen.end()) continue;
    seen.push_back(process);
    const std::vector<WelderFit> fits = welders_for(book, joint, process, date);
    for (std::size_t w = 0; w < all.size(); ++w) {
      WelderFit& whole = all[w];
      if (!whole.qualified) continue;
      if (!fits[w].qualified) {
        whole = fits[w];
        continue;
      }
      if (fits[w].until && (!whole.until || *fits[w].until < *whole.until)) whole.until = fits[w].until;
      if (whole.note.empty()) whole.note = fits[w].note;
    }
  }
  return all;
}

bool somebody_qualified(const RateBook& book, const Joint& joint, std::size_t process) {
  const std::vector<WelderFit> fits = welders_for(book, joint, process, std::nullopt);
  return std::any_of(fits.begin(), fits.end(), [](const WelderFit& fit) { return fit.qualified; });
}

}  // namespace seambook
