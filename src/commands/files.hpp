// Files of the author, read whole and within bounds.
#pragma once

#include <filesystem>
#include <string>

#include "read/job_text.hpp"

namespace seambook {

/// The text of a file, or why it is none that we read.
struct FileText {
  std::string text;
  std::string refusal;  // `is a folder`; empty when the text was read
};

/// Reads a file, at most limit::file_bytes of it; `-` is standard input. Folders, devices, pipes and larger files are
/// refused. Throws std::system_error when the system refuses, also when there is no such file.
FileText read_file(const std::string& path);
/// The name that a job or its messages go by: `<stdin>` for `-`.
std::string shown_name(const std::string& path);
/// The folder that a job's take-offs and rate book are looked for from: its own, or for `-` the working folder.
std::filesystem::path folder_of(const std::string& job);
/// Finds take-offs in the job's folder and below it; absolute names and names with `..` find nothing.
FileFinder files_beside(const std::string& job);

}  // namespace seambook
