#include "text/sheet_xml.hpp"

#include <charconv>
#include <pugixml.hpp>

namespace seambook {
namespace {

std::string_view without_prefix(std::string_view name) {
  const std::size_t colon = name.find(':');
  return colon == name.npos ? name : name.substr(colon + 1);
}

void append_code_point(std::string& out, std::uint32_t code) {
  if (code < 0x80) {
    out += static_cast<char>(code);
  } else if (code < 0x800) {
    out += static_cast<char>(0xC0u | (code >> 6));
    out += static_cast<char>(0x80u | (code & 0x3Fu));
  } else {
    out += static_cast<char>(0xE0u | (code >> 12));
    out += static_cast<char>(0x80u | ((code >> 6) & 0x3Fu));
    out += static_cast<char>(0x80u | (code & 0x3Fu));
  }
}

/// `_x000D_` stands for a character that XML cannot hold, `_x005F_` for the underscore of such letters.
std::string decoded(std::string_view text) {
  constexpr std::size_t length = 7;
  std::string out;
  while (!text.empty()) {
    std::uint32_t code = 0;
    const bool form = text.size() >= length && text.starts_with("_x") && text[length - 1] == '_';
    if (form) {
      const auto [end, fault] = std::from_chars(text.data() + 2, text.data() + length - 1, code, 16);
      const bool good = fault == std::errc{} && end == text.data() + length - 1 && (code < 0xD800 || code > 0xDFFF);
      if (good) {
        append_code_point(out, code);
        text.remove_prefix(length);
        continue;
      }
    }
    out += text.front();
    text.remove_prefix(1);
  }
  return out;
}

}  // namespace

bool parse_part(pugi::xml_document& document, const std::string& text) {
  constexpr unsigned how = pugi::parse_cdata | pugi::parse_escapes | pugi::parse_eol | pugi::parse_ws_pcdata |
                           pugi::parse_wconv_attribute | pugi::parse_doctype;
  if (!document.load_buffer(text.data(), text.size(), how, pugi::encoding_auto)) return false;
  for (const pugi::xml_node node : document.children())
    if (node.type() == pugi::node_doctype) return false;
  return true;
}

std::string_view local_name(const pugi::xml_node& node) { return without_prefix(node.name()); }

pugi::xml_node child_named(const pugi::xml_node& parent, std::string_view name) {
  for (const pugi::xml_node node : parent.children())
    if (local_name(node) == name) return node;
  return {};
}

void each_child(const pugi::xml_node& parent, std::string_view name,
                const std::function<bool(const pugi::xml_node&)>& use) {
  for (const pugi::xml_node node : parent.children())
    if (local_name(node) == name && !use(node)) return;
}

std::string_view attribute_of(const pugi::xml_node& node, std::string_view name) {
  for (const pugi::xml_attribute attribute : node.attributes())
    if (without_prefix(attribute.name()) == name) return attribute.value();
  return {};
}

std::optional<std::uint32_t> whole_of(std::string_view digits) {
  std::uint32_t number = 0;
  const auto [end, fault] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
  if (digits.empty() || fault != std::errc{} || end != digits.data() + digits.size()) return std::nullopt;
  return number;
}

std::string string_item(const pugi::xml_node& item) {
  std::string text;
  for (const pugi::xml_node node : item.children()) {
    if (local_name(node) == "t") text += node.text().get();
    if (local_name(node) == "r") text += child_named(node, "t").text().get();
  }
  return decoded(text);
}

}  // namespace seambook
