#include "report/notes_page.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

void put_section(Sheet& sheet, std::uint32_t& row, const std::string& heading, const std::vector<std::string>& lines,
                 Look look) {
  if (lines.empty()) return;
  put(sheet, row++, 0, heading, Look::heading);
  for (const std::string& line : lines) put(sheet, row++, 0, line, look);
  ++row;
}

std::vector<std::string> choices(const Job& job) {
  std::vector<std::string> lines;
  for (const Joint& joint : job.joints) {
    if (joint.choice.words.empty()) continue;
    lines.push_back(fmt::format("{}/{}: {}", job.weldments[joint.weldment].name, joint.id, joint.choice.words));
  }
  return lines;
}

/// What looks implausible, with why.
std::vector<std::string> findings_in_words(const QuoteNotes& notes) {
  std::vector<std::string> lines;
  for (const Diagnostic& d : notes.findings) {
    const std::string hint = d.hint.empty() ? "" : "; " + d.hint;
    lines.push_back(fmt::format("{}: {}{}", level_word(d.level), d.message, hint));
  }
  return lines;
}

}  // namespace

Sheet notes_page(const Job& job, const QuoteNotes& notes) {
  Sheet sheet;
  sheet.name = "Notes";
  put(sheet, 0, 0, "Cautions, assumptions, choices", Look::title);
  put(sheet, 1, 0, "What this quote takes for granted; read before it goes out.", Look::note);
  std::uint32_t row = 3;
  put_section(sheet, row, "Cautions", notes.cautions, Look::wrapped);
  put_section(sheet, row, "What to look at again", findings_in_words(notes), Look::wrapped);
  put_section(sheet, row, "Procedures chosen by the program", choices(job), Look::wrapped);
  put_section(sheet, row, "Assumptions and what they rest on", notes.assumptions, Look::wrapped);
  sheet.column_widths = {100};
  return sheet;
}

Sheet notes_page(const std::string& below_title, const std::vector<NoteSection>& sections) {
  Sheet sheet;
  sheet.name = "Notes";
  put(sheet, 0, 0, "Cautions and assumptions", Look::title);
  put(sheet, 1, 0, below_title, Look::note);
  std::uint32_t row = 3;
  for (const NoteSection& section : sections) put_section(sheet, row, section.heading, section.lines, Look::wrapped);
  sheet.column_widths = {100};
  return sheet;
}

}  // namespace seambook
