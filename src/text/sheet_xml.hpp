// Elements of a workbook's parts, found by their names without the prefix: producers choose their prefixes freely.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace pugi {
class xml_document;
class xml_node;
}  // namespace pugi

namespace seambook {

/// Gives a part of a workbook by its name; nothing when there is none.
using PartFinder = std::function<std::optional<std::string>(const std::string& name)>;

/// False when the text is no XML that we read. Entities of its own are not expanded, a document type is refused.
bool parse_part(pugi::xml_document&, const std::string& text);
std::string_view local_name(const pugi::xml_node&);
/// The first element of that name below; an empty node when there is none.
pugi::xml_node child_named(const pugi::xml_node&, std::string_view name);
/// Calls `use` with each element of that name directly below, in order, until it gives false.
void each_child(const pugi::xml_node&, std::string_view name, const std::function<bool(const pugi::xml_node&)>& use);
/// An attribute by its name without the prefix; empty when there is none.
std::string_view attribute_of(const pugi::xml_node&, std::string_view name);
/// The whole of a small number, as in indices; nothing for anything else.
std::optional<std::uint32_t> whole_of(std::string_view digits);
/// The text of a `si` or `is`: its runs one after the other, without what is read aloud; `_x000D_` decoded.
std::string string_item(const pugi::xml_node&);

}  // namespace seambook
