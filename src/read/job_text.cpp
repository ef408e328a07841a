#include "read/job_text.hpp"

#include <algorithm>

#include "read/job_fields.hpp"
#include "read/opening.hpp"
#include "read/takeoff.hpp"
#include "text/number_words.hpp"

namespace seambook {
namespace {

/// A take-off once read; a second weldment may draw on the same table.
struct ReadTakeoff {
  std::string name, sheet;
  Takeoff takeoff;
};

/// The take-off's name as it is shown: beside the job that names it.
std::string name_beside(std::string_view job_file, const std::string& name) {
  const std::size_t slash = job_file.rfind('/');
  return name.starts_with('/') || slash == job_file.npos ? name : std::string(job_file.substr(0, slash + 1)) + name;
}

void add_takeoff(Reading& reading, WeldmentText& weldment, const FileFinder& find_file,
                 std::vector<ReadTakeoff>& known) {
  const Word& word = *weldment.joints_from;
  const Word* sheet = weldment.joints_sheet ? &*weldment.joints_sheet : nullptr;
  const std::string sheet_name = sheet ? sheet->text : std::string();
  const auto same = [&](const ReadTakeoff& t) { return t.name == word.text && t.sheet == sheet_name; };
  auto found = std::find_if(known.begin(), known.end(), same);
  if (found == known.end()) {
    std::optional<std::string> text = find_file ? find_file(word.text) : std::nullopt;
    if (!text) {
      reading.diagnostics.error(word.place, "no file " + quoted(word.text) + " to take joints from",
                                "its name counts from the folder of the job");
      return;
    }
    const std::string shown = name_beside(reading.diagnostics.files[word.place.file].name, word.text);
    known.push_back({word.text, sheet_name, read_takeoff(reading, shown, std::move(*text), sheet)});
    found = known.end() - 1;
  }
  weldment.joints.insert(weldment.joints.end(), found->takeoff.joints.begin(), found->takeoff.joints.end());
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
  for (WeldmentText& weldment : job.weldments) {
    if (weldment.joints_from)
      add_takeoff(reading, weldment, find_file, takeoffs);
    else if (weldment.joints_sheet)
      diagnostics.error(weldment.joints_sheet->place, "'joints_sheet' without a take-off",
                        "name its workbook with 'joints_from'");
  }
  for (const ReadTakeoff& read : takeoffs) job.takeoffs.push_back(read.takeoff.file);
  return job;
}

}  // namespace seambook
