// Which welders may weld a joint on a day, and why the others may not. Ranges are data of the rate book, no code's
// rules; the thickness judged is that of the thinner member.
#pragma once

#include "resolve/job.hpp"

namespace seambook {

/// A welder looked at for a joint.
struct WelderFit {
  bool qualified = false;
  std::optional<Date> until;  // last day of the qualification, where it has one
  std::string reason;         // why not: `thickness 16 mm above 10 mm`, `expired 2026-05-13`
  std::string note;           // what the qualification rests on, where the book says: `in-house test`
};

/// Each welder of the rate book for one process of the joint, in the book's order. Without a date, as if all were
/// valid.
std::vector<WelderFit> welders_for(const RateBook&, const Joint&, std::size_t process, std::optional<Date>);
/// The same for all processes of the joint's passes: `until` is the earliest, the first reason is told.
std::vector<WelderFit> welders_for(const RateBook&, const Joint&, std::optional<Date>);
/// Whether a welder of the rate book is qualified for the joint by this process. Dates are not looked at.
bool somebody_qualified(const RateBook&, const Joint&, std::size_t process);
/// Last day on which a qualification that covers a joint may be used; absent: no end is known.
std::optional<Date> last_day(const RateBook&, const Qualification&);
/// Outside diameter of the tube that a joint welds; absent: it is plate.
std::optional<Length<>> tube_of(const Joint&);

}  // namespace seambook
