#include "commands/manual.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/output.hpp"
#include "commands/verbs.hpp"

namespace seambook {
namespace {

constexpr std::string_view program_about = "quotes, plans and explains welding work from a job file and a rate book";
constexpr std::string_view program_notes =
    "seambook reads jobs of weld joints and the shop's rate book, both plain YAML, and works out what every weld "
    "takes.\n"
    "It writes quotes, plans and comparisons as spreadsheets, and shows where each figure comes from.\n"
    "\n"
    "Results go to standard output, messages to standard error; - is standard input. Files appear whole or not at "
    "all.\n"
    "\n"
    "seambook claims no conformity with any code. Local rules and qualified persons decide.";

/// Text as roff takes it: no character of it is a command. A line's end is a blank.
std::string roff(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if ((c == '.' || c == '\'') && (i == 0 || text[i - 1] == '\n')) out += "\\&";
    if (c == '\\')
      out += "\\e";
    else if (c == '-')
      out += "\\-";
    else
      out += c;
  }
  return out;
}

/// Paragraphs, an empty line between them.
std::string paragraphs(std::string_view text) {
  std::string out;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find("\n\n", begin), text.size());
    out += ".PP\n" + roff(text.substr(begin, end - begin)) + "\n";
    begin = end + 2;
  }
  return out;
}

std::string page_head(const std::string& name, std::string_view about) {
  std::string title = name;
  std::transform(title.begin(), title.end(), title.begin(),
                 [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  return fmt::format(".TH {} 1 \"\" \"seambook {}\" \"User commands\"\n.SH NAME\n{} \\- {}\n", roff(title),
                     SEAMBOOK_VERSION, roff(name), roff(about));
}

std::string shown_examples(std::string_view lines) { return ".SH EXAMPLES\n.nf\n" + roff(lines) + ".fi\n"; }

std::string common_sections() {
  return ".SH EXIT STATUS\n.TP\n0\ndone\n.TP\n1\na job has faults, or a verified plan breaks a rule; good jobs are "
         "done "
         "all the same\n.TP\n2\nwrong usage\n.TP\n3\nthe system refused: disk, rights, memory\n"
         ".SH FILES\nThe rate book is the folder given by "
         "\\-\\-rates; else a folder\n.I rates\nbeside the job or above it; else\n"
         ".IR ~/.config/seambook/rates ;\nelse the one that was installed with the program.\n"
         ".SH ENVIRONMENT\n.TP\nNO_COLOR\nwhen set, messages are not coloured unless \\-\\-color says so\n"
         ".TP\nXDG_CONFIG_HOME\nin place of ~/.config\n.TP\nCOLUMNS\nhow wide tables may be\n";
}

std::string synopsis(Verb verb, const std::vector<OptionInfo>& options) {
  std::string out = fmt::format(".SH SYNOPSIS\n.B seambook {}\n", verb_info(verb).word);
  for (const OptionInfo& info : options) {
    if (!info.argument) continue;
    const char* dots = info.name == "JOB" && verb != Verb::explain ? "..." : "";
    out += info.required ? fmt::format("\\fI{}\\fR{}\n", roff(info.name), dots)
                         : fmt::format("[\\fI{}\\fR{}]\n", roff(info.name), dots);
  }
  return out + "[\\fIoptions\\fR]\n";
}

std::string option_list(const std::vector<OptionInfo>& options, bool arguments) {
  std::string out;
  for (const OptionInfo& info : options) {
    if (info.argument != arguments) continue;
    out += fmt::format(".TP\n\\fB{}\\fR{}\n{}", roff(info.name),
                       info.type.empty() ? "" : fmt::format(" \\fI{}\\fR", roff(info.type)), roff(info.about));
    if (!info.preset.empty()) out += roff("; " + info.preset + " when left out");
    out += "\n";
  }
  return out;
}

std::string command_page(Verb verb) {
  const VerbInfo& info = verb_info(verb);
  const std::vector<OptionInfo> options = options_of(verb);
  std::string page = page_head("seambook-" + std::string(info.word), info.about) + synopsis(verb, options);
  page += ".SH DESCRIPTION\n" + paragraphs(info.notes);
  page += ".SH ARGUMENTS\n" + option_list(options, true) + ".SH OPTIONS\n" + option_list(options, false);
  return page + shown_examples(info.examples) + common_sections() + ".SH SEE ALSO\n.BR seambook (1)\n";
}

std::string program_page() {
  std::string page = page_head("seambook", program_about);
  page += ".SH SYNOPSIS\n.B seambook\n\\fICOMMAND\\fR [\\fIarguments\\fR] [\\fIoptions\\fR]\n.SH DESCRIPTION\n" +
          paragraphs(program_notes) + ".SH COMMANDS\n";
  std::string examples, also;
  for (const VerbInfo& info : verbs()) {
    page += fmt::format(".TP\n\\fB{}\\fR\n{}\n", roff(info.word), roff(info.about));
    examples += info.examples;
    also += fmt::format("{}.BR seambook\\-{} (1)", also.empty() ? "" : ",\n", info.word);
  }
  return page + shown_examples(examples) + common_sections() + ".SH SEE ALSO\n" + also + "\n";
}

}  // namespace

int run_manual(const Arguments& arguments) {
  const auto found =
      std::find_if(verbs().begin(), verbs().end(), [&](const VerbInfo& info) { return info.word == arguments.topic; });
  write_result(found == verbs().end() ? program_page() : command_page(static_cast<Verb>(found - verbs().begin())));
  return exit_code::done;
}

}  // namespace seambook
