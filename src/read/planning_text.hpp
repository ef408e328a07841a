// What jobs, weldments and joints say to the planner, as their author wrote it.
#pragma once

#include "read/written.hpp"

namespace seambook {

inline constexpr std::string_view hold_places[] = {"fit_up", "root", "complete"};  // as HoldAt
inline constexpr std::string_view hold_kinds[] = {"hold", "witness"};
inline constexpr std::string_view vessel_words[] = {"new", "closed", "used"};

/// `{what: root visual, at: root, kind: hold}`, or `root visual`.
struct HoldText {
  Place place;
  std::optional<Word> what;
  std::optional<Chosen> at, kind;  // in the words above
};

/// `{station: ST-1, start: 2026-05-12 06:30, welder: Q1}`, each optional.
struct PinText {
  Place place;
  std::optional<Word> station, welder;
  std::optional<WrittenMoment> start;
};

/// Whether work may begin.
struct ReadinessText {
  std::optional<WrittenDay> ready;
  std::optional<Word> blocked;  // why not
};

struct JointPlanText {
  ReadinessText readiness;
  std::vector<HoldText> holds;
  std::optional<PinText> pinned;
  Maybe<dim::length> tube;  // outside diameter, where the joint states a length
};

/// Work away from the shop: `{what: stress relief, after: [B01], out: 2026-09-15 08:00, back: 2026-09-16 16:00}`.
struct OutsideText {
  Place place;
  std::optional<Word> what;
  std::vector<Word> after, before;  // joints of the weldment
  std::optional<WrittenMoment> out, back;
  Maybe<dim::time> time;
};

struct WeldmentPlanText {
  ReadinessText readiness;
  std::vector<Word> after;  // weldments of the job
  std::optional<Whole> split, crew;
  Maybe<dim::length> largest;
  std::vector<OutsideText> outside;
  std::optional<Chosen> vessel;  // in vessel_words
  std::optional<Word> gas_free, attendant;
  std::optional<Flag> confined;
  std::vector<Word> lifted_on;  // joints of the weldment
};

struct JobPlanText {
  ReadinessText readiness;
  Maybe<dim::ratio> late_weight;
  std::vector<Word> after_jobs;
};

}  // namespace seambook
