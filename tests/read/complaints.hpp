// What a refused file should make the reader say: its comments `# error: message; hint` on the faulty lines.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

std::string whole_file_text(const std::filesystem::path&);
/// The files of a folder under tests/, by name.
std::vector<std::filesystem::path> files_under_tests(const std::string& folder);
/// `line message` for each comment.
std::string complaints_wanted(const std::string& text);
/// The same for what was said, by place.
std::string complaints_given(Diagnostics);

}  // namespace seambook
