// The keys of a file as a page of Markdown.
#include <fmt/format.h>

#include <algorithm>

#include "report/schema.hpp"
#include "report/schema_values.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

struct ReferenceSection {
  std::string heading;
  std::vector<FieldInfo> table;
  std::vector<FieldInfo> (*inside)() = nullptr;
};

std::string shape_in_words(const FieldInfo& info) {
  const std::string of = std::string(dimension_name(info.dim));
  switch (info.shape) {
    case Shape::word:
      return "word";
    case Shape::words:
      return "word, or a list";
    case Shape::amount:
      return of;
    case Shape::span:
      return of + ", or two";
    case Shape::count:
      return "whole number";
    case Shape::counts:
      return "whole number, or a list";
    case Shape::count_or_list:
      return "whole number, or a list of sections";
    case Shape::flag:
      return "true or false";
    case Shape::flag_or_section:
      return "true, false or a section";
    case Shape::date:
      return "date";
    case Shape::dates:
      return "date, or a list";
    case Shape::clock:
      return "time of day";
    case Shape::moment:
      return "date with time";
    case Shape::day:
      return "date, with or without a time";
    case Shape::amount_or_section:
      return of + ", or a section";
    case Shape::section:
      return "section";
    case Shape::sections:
      return "list of sections";
    case Shape::word_or_sections:
      return "word, a section, or a list";
    case Shape::priced:
      return "money with its scaling";
    case Shape::priced_sections:
      return "money with its scaling, a section, or a list";
    case Shape::named_words:
      return "any keys, each a word";
  }
  return {};
}

/// A bar would end the cell.
std::string cell(std::string_view text) {
  std::string out;
  for (const char c : text) out += c == '|' ? std::string("\\|") : std::string(1, c);
  return out;
}

std::string row(const FieldInfo& info) {
  std::string words;
  const auto& listed = info.choices.empty() ? info.known : info.choices;
  for (const std::string_view word : listed) words += (words.empty() ? "one of " : ", ") + std::string(word);
  std::string examples;
  for (const std::string& example : schema_examples(info)) {
    const bool is_text = example.starts_with('"') && example.find('\\') == std::string::npos;
    examples +=
        fmt::format("{}`{}`", examples.empty() ? "" : ", ", is_text ? example.substr(1, example.size() - 2) : example);
  }
  std::string about(about_without_examples(info));
  if (!words.empty() && info.about.find(listed.front()) == std::string_view::npos) about += "; " + words;
  return fmt::format("| `{}`{} | {} | {} | {} |\n", info.key, info.required ? " (must)" : "", shape_in_words(info),
                     cell(about), cell(examples));
}

}  // namespace

std::string key_reference(const std::string& title, const std::string& about, const std::vector<FieldInfo>& table) {
  std::string page = fmt::format("# {}\n\n{}\n", title, about);
  std::vector<ReferenceSection> sections{{"The file", table, nullptr}};
  for (std::size_t s = 0; s < sections.size(); ++s) {
    page += fmt::format("\n## {}\n\n| Key | Value | What it is | Examples |\n|---|---|---|---|\n", sections[s].heading);
    for (const FieldInfo& info : std::vector<FieldInfo>(sections[s].table)) {
      page += row(info);
      const auto same = [&](const ReferenceSection& known) { return known.inside == info.inside; };
      if (info.inside && std::none_of(sections.begin(), sections.end(), same))
        sections.push_back({fmt::format("`{}`", info.key), info.inside(), info.inside});
    }
  }
  return page;
}

}  // namespace seambook
