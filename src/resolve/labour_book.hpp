// Labour of the rate book with every name resolved: elements and what each is counted by, work of a job as a whole, and
// by which of two methods floor time is found.
#pragma once

#include <bitset>
#include <optional>
#include <string>
#include <vector>

#include "resolve/source.hpp"

namespace seambook {

enum class WeldKind : std::uint8_t;

/// As element_words (read/labour_text.hpp).
enum class LabourKind : std::uint8_t {
  edge_preparation,
  cleaning,
  dressing,
  straightening,
  pickling,
  visual_inspection,
  penetrant,
  magnetic,
  ultrasonic,
  radiographic,
  repair,
  handling,
  waiting,
  papers,
  dimensional_inspection,
  packing
};
inline constexpr std::size_t labour_kinds = 16;

/// As driver_words. From `weldment` up they belong to a weldment as a whole.
enum class Driver : std::uint8_t {
  joint,
  metre,         // of joint line
  weld_metre,    // of weld, all sides
  edge_metre,    // of bevelled edge
  pass_metre,    // of weld, each pass
  weld_element,  // of intermittent welds; one on a continuous line
  start,
  tack,
  interpass,  // each time that a pass follows another
  share,      // of arc time, starts and interpass cleaning
  weldment,
  part,
  kg,
  turn
};
inline constexpr std::size_t driver_kinds = 14;
constexpr bool of_weldment(Driver driver) { return driver >= Driver::weldment; }

/// Absent numbers have no source. Empty lists admit all.
struct LabourElement {
  LabourKind kind = LabourKind::cleaning;
  Driver per = Driver::joint;
  bool attended = true;
  std::optional<std::size_t> grade;  // of labour; absent: that of the joint
  Known<dim::time> time;
  Known<dim::pace> pace;
  Known<dim::time_per_mass> mass_pace;
  Known<dim::ratio> share, multiple;
  std::vector<std::size_t> processes, finishes;
  std::vector<std::string> groups;
  std::vector<WeldKind> welds;
  std::optional<std::pair<Length<>, Length<>>> thickness;
};

enum class JobDriver : std::uint8_t { job, drawing, joint_line };
struct JobElement {
  std::string what;
  JobDriver per = JobDriver::job;
  bool once = true, attended = true;  // once, or for each lot
  Known<dim::time> time;
  std::size_t grade = 0;
};

/// What the floor time of a weld is made of beside the elements above; what an operating factor may cover.
enum class WorkKind : std::uint8_t {
  arc,
  starts,
  interpass_cleaning,
  tacking,
  fit_up,
  finish,
  turning,
  gouging,
  preheat,
  purging
};
inline constexpr std::string_view work_words[] = {
    "arc", "starts", "interpass_cleaning", "tacking", "fit_up", "finish", "turning", "gouging", "preheat", "purging"};
inline constexpr std::size_t work_kinds = 10;
static_assert(std::size(work_words) == work_kinds);

/// Floor time by elements, or arc time over an operating factor that covers some of them: never both for one element.
struct LabourMethod {
  bool by_factor = false;
  std::bitset<work_kinds> work;        // what the factor covers
  std::bitset<labour_kinds> elements;  // the same of the elements of the rate book
  std::string definition, covers;      // of the factor, in words
  bool covered(WorkKind kind) const { return work[static_cast<std::size_t>(kind)]; }
  bool covered(LabourKind kind) const { return elements[static_cast<std::size_t>(kind)]; }
};

}  // namespace seambook
