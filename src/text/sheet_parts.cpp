#include "text/sheet_parts.hpp"

#include <map>
#include <pugixml.hpp>

#include "text/input_table.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_sheets = 1000;

struct Relation {
  std::string kind, part;
};

/// A target as its part is named: from the archive's root, or from the folder of the part that names it.
std::string part_name(std::string_view folder, std::string_view target) {
  std::string name =
      target.starts_with('/') ? std::string(target.substr(1)) : std::string(folder) + std::string(target);
  for (std::size_t up = name.find("/../"); up != name.npos; up = name.find("/../")) {
    const std::size_t before = up == 0 ? name.npos : name.rfind('/', up - 1);
    name.erase(before == name.npos ? 0 : before + 1, up + 4 - (before == name.npos ? 0 : before + 1));
  }
  return name;
}

/// The relations of a part by their id; their kind is the last word of its address.
std::map<std::string, Relation> relations_of(const PartFinder& find, const std::string& folder,
                                             const std::string& file) {
  std::map<std::string, Relation> relations;
  const std::optional<std::string> text = find(folder + "_rels/" + file + ".rels");
  pugi::xml_document document;
  if (!text || !parse_part(document, *text)) return relations;
  each_child(child_named(document, "Relationships"), "Relationship", [&](const pugi::xml_node& node) {
    const std::string_view type = attribute_of(node, "Type");
    const std::string kind(type.substr(type.rfind('/') + 1));
    relations[std::string(attribute_of(node, "Id"))] = {kind, part_name(folder, attribute_of(node, "Target"))};
    return relations.size() < most_sheets;
  });
  return relations;
}

std::string part_of_kind(const std::map<std::string, Relation>& relations, std::string_view kind) {
  for (const auto& [id, relation] : relations)
    if (relation.kind == kind) return relation.part;
  return {};
}

bool is_true(std::string_view word) { return word == "1" || word == "true"; }

}  // namespace

WorkbookParts workbook_parts(const PartFinder& find) {
  WorkbookParts parts;
  const std::string book = part_of_kind(relations_of(find, "", ""), "officeDocument");
  const std::string folder = book.substr(0, book.rfind('/') + 1);
  const std::optional<std::string> text = book.empty() ? std::nullopt : find(book);
  pugi::xml_document document;
  if (!text || !parse_part(document, *text)) return parts;
  const auto relations = relations_of(find, folder, book.substr(folder.size()));
  const pugi::xml_node root = child_named(document, "workbook");
  parts.from_1904 = is_true(attribute_of(child_named(root, "workbookPr"), "date1904"));
  parts.strings = part_of_kind(relations, "sharedStrings");
  parts.styles = part_of_kind(relations, "styles");
  each_child(child_named(root, "sheets"), "sheet", [&](const pugi::xml_node& sheet) {
    std::string_view id;
    for (const pugi::xml_attribute attribute : sheet.attributes())
      if (std::string_view(attribute.name()).ends_with(":id")) id = attribute.value();
    const auto found = relations.find(std::string(id));
    const std::string_view state = attribute_of(sheet, "state");
    if (found != relations.end() && found->second.kind == "worksheet")
      parts.sheets.push_back(
          {std::string(attribute_of(sheet, "name")), found->second.part, state == "hidden" || state == "veryHidden"});
    return parts.sheets.size() < most_sheets;
  });
  return parts;
}

std::optional<std::vector<std::string>> shared_strings(const std::string& part) {
  pugi::xml_document document;
  if (!parse_part(document, part)) return std::nullopt;
  std::vector<std::string> strings;
  each_child(child_named(document, "sst"), "si", [&](const pugi::xml_node& item) {
    strings.push_back(string_item(item));
    return strings.size() < most_fields;
  });
  return strings;
}

}  // namespace seambook
