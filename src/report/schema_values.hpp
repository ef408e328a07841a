// What may stand behind a key, as JSON Schema (draft-07): types, and patterns for what YAML takes for plain text.
// What is returned is JSON text, but for names and descriptions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "read/field_info.hpp"

namespace seambook {

/// Any scalar of a word's field, or the words that it may be.
std::string word_schema(const FieldInfo&);
/// A whole number, or text where a word must stand behind it.
std::string count_schema(const FieldInfo&);
/// A date, a time of day, a date with a time, and a date with or without.
std::string day_schema(Shape);
/// An amount of the field's dimension with its unit.
std::string amount_schema(const FieldInfo&);
/// Money with `each`, `per lot` or `once`.
std::string priced_schema(const FieldInfo&);
/// Under which name amounts like this one stand among the definitions: `length`, `ratio_or_zero`.
std::string amount_name(const FieldInfo&);

/// What the description of a field gives as examples, behind its colon: `of both members: 8 mm, or [3 mm, 10 mm]`.
std::vector<std::string> schema_examples(const FieldInfo&);
/// The description without its examples.
std::string_view about_without_examples(const FieldInfo&);

}  // namespace seambook
