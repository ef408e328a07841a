// A file appears whole or not at all: written beside its target under a temporary name, flushed, renamed.
// A signal that ends the program removes the temporary first; temporaries of runs that were killed outright are
// swept by the next run in the same folder, which calls sweep_temporaries once.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>

namespace seambook {

enum class Overwrite : bool { no, yes };

/// Calls `write` with a path that opens a temporary file in the target's folder, then moves that to `target`. The
/// folder is made when missing. A symbolic link at `target` is replaced, never followed. The old file's permissions are
/// kept. `write` must write to the file it is given, not put another one in its place. Threads may call it for
/// different targets. Throws std::system_error when the system refuses, also (errc::file_exists) when `target` exists
/// and may not be overwritten.
void write_whole(const std::filesystem::path& target, Overwrite,
                 const std::function<void(const std::filesystem::path&)>& write);
/// A job's name as a file name: no separators, no leading dots, no control characters, at most 100 bytes of UTF-8 cut
/// at a character.
std::string safe_file_name(std::string_view job);
/// The same text for names that differ in upper and lower case only, which some file systems take for one.
std::u32string folded_file_name(std::string_view name);

}  // namespace seambook
