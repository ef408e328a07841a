#include "read/job_text.hpp"

#include <algorithm>

#include "read/job_fields.hpp"
#include "read/opening.hpp"
#include "read/takeoff.hpp"
#include "text/number_words.hpp"

namespace seambook {
namespace {

/// A take-off once read; a second weldment may draw on the same file.
struct ReadTakeoff {
  std::string name;
  std::vector<JointText> joints;
};

/// The take-off's name as it is shown: beside the job that names it.
std::string name_beside(std::string_view job_file, const std::string& name) {
  const std::size_t slash = job_file.rfind('/');
  return name.starts_with('/') || slash == job_file.npos ? name : std::string(job_file.substr(0, slash + 1)) + name;
}

void add_takeoff(Reading& reading, WeldmentText& weldment, const FileFinder& find_file,
                 std::vector<ReadTakeoff>& known) {
  const Word& word = *weldment.joints_from;
  const auto same = [&](const ReadTakeoff& takeoff) { return takeoff.name == word.text; };
  auto found = std::find_if(known.begin(), known.end(), same);
  if (found == known.end()) {
    std::optional<std::string> text = find_file ? find_file(word.text) : std::nullopt;
    if (!text) {
      reading.diagnostics.error(word.place, "no file " + quoted(word.text) + " to take joints from",
                                "its name counts from the folder of the job");
      return;
    }
    const std::string shown = name_beside(reading.diagnostics.files[word.place.file].name, word.text);
    const std::uint32_t file = reading.diagnostics.add_file(shown, std::move(*text));
    known.push_back({word.text, read_takeoff(reading, file)});
    found = known.end() - 1;
  }
  weldment.joints.insert(weldment.joints.end(), found->joints.begin(), found->joints.end());
}

}  // namespace

JobText read_job(std::uint32_t file, const FileFinder& find_file, Diagnostics& diagnostics) {
  JobText job;
  job.place = {file, 0, 0};
  const std::optional<Tree> tree = parse_yaml(file, diagnostics);
  if (!tree) return job;
  Reading reading{diagnostics, {}};
  const Value root(*tree, 0);
  if (!read_opening(reading, root)) return job;
  read_fields(reading, root, job);
  std::vector<ReadTakeoff> takeoffs;
  for (WeldmentText& weldment : job.weldments)
    if (weldment.joints_from) add_takeoff(reading, weldment, find_file, takeoffs);
  return job;
}

}  // namespace seambook
