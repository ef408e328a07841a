#include "report/joint_columns.hpp"

#include <set>

#include "estimate/row.hpp"
#include "report/heat_page.hpp"

namespace seambook {
namespace {

std::vector<const Figure*> labour_columns() {
  std::vector<const Figure*> columns = {&fig::fit_up_min, &fig::fit_up_extra_min, &fig::tacks,      &fig::tack_min,
                                        &fig::factor_min, &fig::starts,           &fig::start_min,  &fig::interpass_min,
                                        &fig::change_min, &fig::gouge_min,        &fig::finish_min, &fig::purge_min,
                                        &fig::preheat_min};
  for (const Figure& extent : fig::extents) columns.push_back(&extent);
  for (const Figure& minutes : fig::element_min) columns.push_back(&minutes);
  for (const Figure* figure : {&fig::attended, &fig::floor, &fig::waiting_min}) columns.push_back(figure);
  return columns;
}

std::vector<const Figure*> pass_columns() {
  return {&fig::elements_on_line,
          &fig::elements_second,
          &fig::joints_made,
          &fig::weld_elements,
          &fig::weld_length,
          &fig::unwelded,
          &fig::arc_depth,
          &fig::cut_depth,
          &fig::groove_section,
          &fig::share_section,
          &fig::caps_section,
          &fig::section,
          &fig::gouged,
          &fig::section_laid,
          &fig::volume_rate,
          &fig::lays,
          &fig::group_section,
          &fig::passes,
          &fig::travel,
          &fig::arc,
          &fig::arc_by_deposition,
          &fig::deposition_difference,
          &fig::difference_cost,
          &fig::heat_input};
}

}  // namespace

std::vector<const Figure*> joint_columns(std::size_t page) {
  switch (page) {
    case 0:
      return {&fig::weldments,
              &fig::count,
              &fig::sides,
              &fig::outside_diameter,
              &fig::line,
              &fig::element,
              &fig::gap_e,
              &fig::pitch,
              &fig::throat,
              &fig::leg,
              &fig::convexity,
              &fig::thickness,
              &fig::thickness_second,
              &fig::gap,
              &fig::root_face,
              &fig::groove_angle,
              &fig::excess_width,
              &fig::excess_height,
              &fig::leg_second,
              &fig::deep_throat,
              &fig::depth,
              &fig::depth_second,
              &fig::radius,
              &fig::reinforce,
              &fig::excess_share,
              &fig::back_width,
              &fig::back_height,
              &fig::diameter,
              &fig::width,
              &fig::slot,
              &fig::layers,
              &fig::layer_height,
              &fig::branch_on,
              &fig::branch_angle,
              &fig::side,
              &fig::side_second,
              &fig::corner_radius,
              &fig::gouge_depth,
              &fig::gouge_width,
              &fig::access,
              &fig::given_passes};
    case 1:
      return pass_columns();
    case 2:
      return labour_columns();
    case heat_page_number:
      return heat_columns();
    default:
      return {&fig::deposit,   &fig::filler,     &fig::pieces,      &fig::flux,           &fig::gas,
              &fig::purge_gas, &fig::energy,     &fig::labour_cost, &fig::filler_cost,    &fig::flux_cost,
              &fig::gas_cost,  &fig::power_cost, &fig::wear_cost,   &fig::equipment_cost, &fig::joint_cost};
  }
}

bool adds_up(const Figure* figure) {
  static const std::set<const Figure*> sums = {&fig::joints_made,
                                               &fig::weld_elements,
                                               &fig::weld_length,
                                               &fig::unwelded,
                                               &fig::arc,
                                               &fig::arc_by_deposition,
                                               &fig::fit_up_min,
                                               &fig::fit_up_extra_min,
                                               &fig::tacks,
                                               &fig::tack_min,
                                               &fig::starts,
                                               &fig::start_min,
                                               &fig::interpass_min,
                                               &fig::finish_min,
                                               &fig::purge_min,
                                               &fig::attended,
                                               &fig::floor,
                                               &fig::deposit,
                                               &fig::filler,
                                               &fig::pieces,
                                               &fig::flux,
                                               &fig::change_min,
                                               &fig::gouge_min,
                                               &fig::gas,
                                               &fig::purge_gas,
                                               &fig::energy,
                                               &fig::labour_cost,
                                               &fig::filler_cost,
                                               &fig::flux_cost,
                                               &fig::gas_cost,
                                               &fig::power_cost,
                                               &fig::wear_cost,
                                               &fig::equipment_cost,
                                               &fig::joint_cost,
                                               &fig::factor_min,
                                               &fig::waiting_min,
                                               &fig::preheat_min,
                                               &fig::heated,
                                               &fig::preheat_energy,
                                               &fig::burner_min,
                                               &fig::fuel_money};
  for (const Figure& minutes : fig::element_min)
    if (figure == &minutes) return true;
  return sums.contains(figure);
}

}  // namespace seambook
