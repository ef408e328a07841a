// The keys by which jobs, weldments and joints speak to the planner.
#pragma once

#include "read/field_table.hpp"

namespace seambook {

/// `Member`: what holds the ReadinessText.
template <auto... Member>
constexpr auto readiness_fields() {
  return std::to_array({
      field<Member..., &ReadinessText::ready>(
          "ready", "from when on material is there, maybe with a time: 2026-05-12, or 2026-05-12 06:30"),
      field<Member..., &ReadinessText::blocked>("blocked",
                                                "why it must not begin, in words: waiting for drawing rev D"),
  });
}

inline constexpr auto joint_plan_own = std::to_array<Field<JointText>>({
    field<&JointText::plan, &JointPlanText::holds>(
        "hold",
        "where somebody must look before it goes on: root visual, or {what: root visual, at: root, kind: hold}"),
    field<&JointText::plan, &JointPlanText::pinned>(
        "pinned", "where, when, by whom: {station: ST-1, start: 2026-05-12 06:30, welder: Q1}"),
    field<&JointText::plan, &JointPlanText::tube>(
        "tube", "outside diameter of the tube that is welded, where a length is stated: 42.4 mm"),
});
inline constexpr auto joint_plan =
    joined(joint_plan_own, readiness_fields<&JointText::plan, &JointPlanText::readiness>());

inline constexpr auto weldment_plan_own = std::to_array<Field<WeldmentText>>({
    field<&WeldmentText::plan, &WeldmentPlanText::after>(
        "after", "weldments of this job that must be welded before: frame, or a list"),
    field<&WeldmentText::plan, &WeldmentPlanText::split>(
        "split", "pieces of a lot that go through together; the whole lot when left out: 2"),
    at_most(20, field<&WeldmentText::plan, &WeldmentPlanText::crew>("crew", "persons who work on it at once: 2")),
    field<&WeldmentText::plan, &WeldmentPlanText::largest>("largest", "largest dimension of one: 4 m"),
    field<&WeldmentText::plan, &WeldmentPlanText::outside>(
        "outside", "a list of work away from the shop: {what: stress relief, after: [B01], time: 32 h}"),
    chosen_from(vessel_words,
                field<&WeldmentText::plan, &WeldmentPlanText::vessel>("vessel", "a hollow body: new, closed or used")),
    field<&WeldmentText::plan, &WeldmentPlanText::gas_free>("gas_free",
                                                            "by which note it is free of gas, in words: note 12/26"),
    field<&WeldmentText::plan, &WeldmentPlanText::confined>(
        "confined", "whether the welder works in a confined space: true or false"),
    field<&WeldmentText::plan, &WeldmentPlanText::attendant>("attendant",
                                                             "who stays outside a confined space: name or stamp"),
    field<&WeldmentText::plan, &WeldmentPlanText::lifted_on>("lifted_on", "joints that are its lifting lugs: [P15]"),
});
inline constexpr auto weldment_plan =
    joined(weldment_plan_own, readiness_fields<&WeldmentText::plan, &WeldmentPlanText::readiness>());

inline constexpr auto job_plan_own = std::to_array<Field<JobText>>({
    field<&JobText::plan, &JobPlanText::late_weight>("late_weight",
                                                     "how much a minute late counts; 1 when left out: 2"),
    field<&JobText::plan, &JobPlanText::after_jobs>("after_jobs",
                                                    "jobs that must be done before: hinge-set, or a list"),
});
inline constexpr auto job_plan = joined(job_plan_own, readiness_fields<&JobText::plan, &JobPlanText::readiness>());

}  // namespace seambook
