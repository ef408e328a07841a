#include "commands/new.hpp"

#include <fmt/format.h>

#include <fstream>
#include <system_error>

#include "commands/new_job.hpp"
#include "commands/output.hpp"
#include "commands/starter.hpp"
#include "commands/workbook_file.hpp"
#include "report/takeoff_book.hpp"

namespace seambook {
namespace {

namespace fs = std::filesystem;

struct NewFile {
  fs::path path;
  std::string text;
};

/// Writes all of them, or none when one is there already.
bool write_new(Batch& batch, const std::vector<NewFile>& files) {
  for (const NewFile& file : files) {
    if (!fs::exists(fs::symlink_status(file.path))) continue;
    batch.diagnostics.error({}, file.path.string() + " exists and was left as it is; nothing was written",
                            "name another folder, or move it away");
    return false;
  }
  for (const NewFile& file : files) {
    write_whole(file.path, Overwrite::no, [&](const fs::path& temporary) {
      std::ofstream out(temporary, std::ios::binary);
      out << file.text << std::flush;
      if (!out) throw std::system_error(errno, std::generic_category(), file.path.string());
    });
    write_result(printable_text(file.path.string()) + "\n");
  }
  return true;
}

void append_starter(std::vector<NewFile>& files, const fs::path& folder, std::string_view below) {
  for (const StarterFile& starter : starter_files()) {
    if (!starter.name.starts_with(below)) continue;
    const std::string_view name = starter.name.substr(starter.name.find('/') + 1);
    files.push_back({folder / name, std::string(starter.text)});
  }
}

std::string_view starter_of(const Arguments& arguments) { return arguments.us ? "us/" : "metric/"; }

/// A book that stands there would be mixed with the new one.
bool has_other_book(Batch& batch, const fs::path& folder) {
  if (rate_files(folder / "rates").empty()) return false;
  batch.diagnostics.error({}, (folder / "rates").string() + " holds a rate book already; nothing was written",
                          "name another folder");
  return true;
}

void write_starter(const Arguments& arguments, Batch& batch, const fs::path& folder) {
  if (has_other_book(batch, folder)) return;
  std::vector<NewFile> files;
  append_starter(files, folder, starter_of(arguments));
  if (!write_new(batch, files)) return;
  write_result(fmt::format("\nNext: seambook check {0}\n      seambook quote {0}\n",
                           printable_text((folder / "first-job.yaml").string())));
}

void write_template(const Arguments& arguments, Batch& batch, const fs::path& path) {
  if (path.extension() != ".xlsx") {
    batch.diagnostics.error({}, "a workbook's name ends in .xlsx, not as " + path.string() + " does");
    return;
  }
  Arguments careful = arguments;
  careful.force = false;
  if (!write_workbook(careful, batch, takeoff_book(arguments.us ? Terms::aws : Terms::iso, date_of(arguments)), path))
    return;
  write_result(fmt::format("{0}\n\nNext: fill in the sheet Joints, then\n      seambook new --from-takeoff {0}\n",
                           printable_text(path.string())));
}

/// A job around the take-off, and a rate book where the job would find none of its own.
void write_around_takeoff(const Arguments& arguments, Batch& batch, const std::string& path) {
  const std::optional<NewJob> made = job_around_takeoff(arguments, batch, path);
  if (!made) return;
  std::vector<NewFile> files{{made->path, made->text}};
  if (made->copy) files.push_back({*made->copy, made->takeoff});
  if (made->wants_rates) append_starter(files, made->path.parent_path(), std::string(starter_of(arguments)) + "rates/");
  if (!write_new(batch, files)) return;
  write_result(fmt::format("\nNext: seambook check {}\n", printable_text(made->path.string())));
}

}  // namespace

int run_new(const Arguments& arguments) {
  SharedInputs shared;
  Batch batch{shared};
  guarded(batch, [&] {
    if (arguments.takeoff)
      write_template(arguments, batch, *arguments.takeoff);
    else if (arguments.from_takeoff)
      write_around_takeoff(arguments, batch, *arguments.from_takeoff);
    else
      write_starter(arguments, batch, arguments.folder.value_or("."));
  });
  tell(arguments, batch);
  return batch.code;
}

}  // namespace seambook
