// A workbook through the reader of sheets: any bytes as an archive, or, where they begin with the letter P and a line
// end, its parts one after the other, parted by record separators (0x1E): workbook, shared strings, styles, sheet. No
// crash or hang; a table has as many fields in each row as headings, and no control character in them.
#include <cstdint>
#include <cstdlib>
#include <map>

#include "text/sheet_table.hpp"

namespace {

constexpr const char* relations =
    "<Relationships><Relationship Id='1' Type='x/officeDocument' Target='book'/></Relationships>";
constexpr const char* book_relations =
    "<Relationships><Relationship Id='1' Type='x/worksheet' Target='sheet'/>"
    "<Relationship Id='2' Type='x/sharedStrings' Target='strings'/>"
    "<Relationship Id='3' Type='x/styles' Target='styles'/></Relationships>";

std::optional<seambook::InputTable> table_of_parts(std::string_view text, std::uint32_t file,
                                                   seambook::Diagnostics& diagnostics) {
  std::map<std::string, std::string> parts{{"_rels/.rels", relations}, {"_rels/book.rels", book_relations}};
  for (const char* name : {"book", "strings", "styles", "sheet"}) {
    const std::size_t end = std::min(text.find('\x1E'), text.size());
    parts[name] = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  const auto find = [&](const std::string& name) -> std::optional<std::string> {
    const auto found = parts.find(name);
    return found == parts.end() ? std::nullopt : std::optional(found->second);
  };
  return seambook::parse_workbook_parts(file, find, {}, diagnostics);
}

void check_row(const seambook::InputRow& row, std::size_t fields) {
  if (row.size() != fields) std::abort();
  for (const seambook::InputField& field : row)
    for (const char c : field.text)
      if (static_cast<unsigned char>(c) < 0x20) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  seambook::Diagnostics diagnostics;
  const auto file = diagnostics.add_file("fuzz.xlsx", "");
  const bool parts = text.starts_with("P\n");
  const auto table = parts ? table_of_parts(std::string_view(text).substr(2), file, diagnostics)
                           : seambook::parse_workbook(file, text, {}, diagnostics);
  if (!table && !diagnostics.has_errors()) std::abort();
  if (table) {
    check_row(table->headings, table->headings.size());
    for (const seambook::InputRow& row : table->rows) check_row(row, table->headings.size());
  }
  for (const char c : seambook::render(diagnostics))
    if (c != '\n' && static_cast<unsigned char>(c) < 0x20) std::abort();
  return 0;
}
