#include "commands/new_job.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/files.hpp"
#include "commands/output.hpp"
#include "read/takeoff.hpp"
#include "report/json_document.hpp"

namespace seambook {
namespace {

namespace fs = std::filesystem;

/// A text of the author's as a YAML value: as it is when nothing in it could mean something else.
std::string yaml_text(const std::string& text) {
  const auto plain = [](char c) {
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '-' || c == '_' ||
           c == '.';
  };
  const bool letter_first = !text.empty() && plain(text.front()) && text.front() != '-' && text.front() != '.';
  return letter_first && std::all_of(text.begin(), text.end(), plain) ? text : json_string(text);
}

/// The folder's own rate book: in it or above it. The installed one and the user's stand at the end of the list.
std::optional<fs::path> own_rates(const fs::path& folder) {
  std::vector<fs::path> folders = rate_folders(std::nullopt, folder);
  const fs::path root = fs::absolute(folder).root_path() / "rates";
  folders.erase(std::find(folders.begin(), folders.end(), root), folders.end());
  return find_rates(folders);
}

/// Whether a name leads from `folder` to the file without leaving it.
std::optional<fs::path> path_below(const fs::path& file, const fs::path& folder) {
  const fs::path below = fs::weakly_canonical(file).lexically_relative(fs::weakly_canonical(folder));
  if (below.empty() || *below.begin() == ".." || below == ".") return std::nullopt;
  return below;
}

/// What the job takes from the rate book that it will find.
struct BookWords {
  std::string base_metal, currency;  // no base metal when every joint names its own, or the book has faults
};

BookWords words_of_book(const Arguments& arguments, Batch& batch, const std::vector<JointText>& joints,
                        const std::optional<fs::path>& rates) {
  BookWords words{arguments.us ? "A36" : "S235", arguments.us ? "USD" : "EUR"};  // of the starter
  if (rates) {
    const ShopRates shop = load_rates(*rates, batch.diagnostics);
    words = {};
    if (shop.book) words.currency = shop.book->currency;
    if (shop.book && !shop.book->base_metals.empty()) words.base_metal = shop.book->base_metals.front().name;
  }
  const auto names_metal = [](const JointText& joint) { return joint.defaults.base_metal.has_value(); };
  if (!joints.empty() && std::all_of(joints.begin(), joints.end(), names_metal)) words.base_metal.clear();
  return words;
}

std::string job_text(const std::string& name, const std::string& takeoff, const BookWords& words) {
  std::string text = fmt::format(
      "# A job whose joints stand in {0}: change them there. What follows a # is a remark.\n"
      "format: 1\n"
      "job: {1}\n"
      "quantities: [1]             # each is priced: [1, 10, 50]\n"
      "\n"
      "weldments:\n"
      "  - name: {1}\n"
      "    joints_from: {2}\n",
      printable_text(takeoff), yaml_text(name), yaml_text(takeoff));
  if (!words.base_metal.empty())
    text += fmt::format("    base_metal: {}            # of joints that name none\n", yaml_text(words.base_metal));
  text += fmt::format(
      "    bought: 0 {0} each         # put the price of plates and sections for one; 0 leaves them out\n"
      "    # What else a take-off does not say. Take away the marks and put your own figures:\n"
      "    # parts: 5                # pieces that are fitted together\n"
      "    # mass: {1}             # of one\n"
      "    # process: 135            # ISO 4063 number or AWS letters, for joints that name none\n",
      words.currency.empty() ? "EUR" : words.currency, words.currency == "USD" ? "31 lb" : "14 kg");
  return text;
}

}  // namespace

std::optional<NewJob> job_around_takeoff(const Arguments& arguments, Batch& batch, const std::string& takeoff) {
  FileText read = read_file(takeoff);
  if (!read.refusal.empty()) {
    batch.diagnostics.error({}, takeoff + " " + read.refusal);
    return std::nullopt;
  }
  NewJob made;
  made.takeoff = std::move(read.text);
  const fs::path file = takeoff, folder = arguments.folder ? fs::path(*arguments.folder) : folder_of(takeoff);
  std::optional<fs::path> below = path_below(file, folder);
  if (!below) {
    below = file.filename();
    made.copy = folder / *below;
  }
  Reading reading{batch.diagnostics, {}};
  const Takeoff found = read_takeoff(reading, takeoff, made.takeoff, nullptr);
  const std::optional<fs::path> rates = own_rates(folder);
  made.wants_rates = !rates;
  const std::string name = file.stem().string();
  made.path = (folder / (name + ".yaml")).lexically_normal();
  made.text = job_text(name, below->string(), words_of_book(arguments, batch, found.joints, rates));
  return made;
}

}  // namespace seambook
