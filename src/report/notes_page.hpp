// Assumptions with what they rest on, how procedures were chosen, and the cautions for the processes used.
#pragma once

#include "quote/notes.hpp"
#include "report/cells.hpp"

namespace seambook {

Sheet notes_page(const Job&, const QuoteNotes&);

/// Sections of lines under their headings; empty ones are left out.
struct NoteSection {
  std::string heading;
  std::vector<std::string> lines;
};
Sheet notes_page(const std::string& below_title, const std::vector<NoteSection>&);

}  // namespace seambook
