// JSON Schema (draft-07) of the files that are read, made from the tables of fields, for editors and other programs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "read/field_info.hpp"

namespace seambook {

/// JSON text with a line break at its end. `about` says what the file is.
std::string file_schema(const std::string& title, const std::string& about, const std::vector<FieldInfo>& table);
/// Of the document of a command with --json.
std::string document_schema(std::string_view command);
/// The keys of a file as tables of Markdown, one a section.
std::string key_reference(const std::string& title, const std::string& about, const std::vector<FieldInfo>& table);

}  // namespace seambook
