#include "commands/completion.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "commands/output.hpp"
#include "commands/verbs.hpp"

namespace seambook {
namespace {

/// Between single quotes of a shell.
std::string in_shell_quotes(std::string_view text) {
  std::string out = "'";
  for (const char c : text) out += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return out + "'";
}

/// The same where zsh ends a description at a bracket, and a word at a colon.
std::string in_zsh_quotes(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '[' || c == ']' || c == ':') out += '\\';
    out += c;
  }
  return in_shell_quotes(out);
}

bool is_folder(const OptionInfo& info) { return info.type == "DIR" || info.name == "BOOK" || info.name == "DIR"; }

/// What bash proposes behind an option, or for the arguments: a command that sets the replies.
std::string bash_words(const OptionInfo& info) {
  if (!info.choices.empty()) return fmt::format("_seambook_words '{}'", fmt::join(info.choices, " "));
  if (is_folder(info)) return "_seambook_files '*'";
  if (info.name == "JOB") return "_seambook_files '!*.y*ml'";
  if (info.type == "FILE") return "_seambook_files ''";
  return ":";
}

std::string bash_case(Verb verb) {
  std::string names, values, arguments;
  for (const OptionInfo& info : options_of(verb)) {
    if (info.argument) {
      arguments += (arguments.empty() ? "" : "; ") + bash_words(info);
      continue;
    }
    names += " " + info.name;
    if (!info.type.empty()) values += fmt::format("        {}) {}; return ;;\n", info.name, bash_words(info));
  }
  std::string out = fmt::format("    {})\n", verb_info(verb).word);
  if (!values.empty()) out += "      case $before in\n" + values + "      esac\n";
  out += fmt::format("      if [[ $word == -* ]]; then _seambook_words '{}'\n", names.substr(1));
  return out + fmt::format("      else {}; fi ;;\n", arguments.empty() ? ":" : arguments);
}

std::string bash_script() {
  std::string words, cases;
  for (std::size_t v = 0; v < verbs().size(); ++v) {
    words += std::string(verbs()[v].word) + " ";
    cases += bash_case(static_cast<Verb>(v));
  }
  // Replies are taken by lines, because names of files may hold blanks; bash marks those, and folders, only where it is
  // told that they are names of files.
  return fmt::format(R"(# completion of seambook for bash; made by 'seambook completion bash'
_seambook_words() {{
  local found
  mapfile -t found < <(compgen -W "$1" -- "$word")
  COMPREPLY+=("${{found[@]}}")
}}
_seambook_files() {{  # folders, and files that do not match
  local found
  mapfile -t found < <({{ compgen -d -- "$word" || :; compgen -f -X "$1" -- "$word"; }} | sort -u)
  COMPREPLY+=("${{found[@]}}")
  compopt -o filenames
}}
_seambook() {{
  local word=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD - 1]}}
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    _seambook_words '{}--help --version'
    return
  fi
  case ${{COMP_WORDS[1]}} in
{}  esac
}}
complete -F _seambook seambook
)",
                     words, cases);
}

std::string zsh_value(const OptionInfo& info) {
  if (!info.choices.empty()) return fmt::format(":({})", fmt::join(info.choices, " "));
  if (is_folder(info)) return ":_files -/";
  if (info.name == "JOB") return ":_files -g \"*.(yaml|yml)\"";
  if (info.type == "FILE") return ":_files";
  return info.argument ? ":()" : ": ";
}

std::string zsh_case(Verb verb) {
  std::string out = fmt::format("    {})\n      _arguments", verb_info(verb).word);
  for (const OptionInfo& info : options_of(verb)) {
    out += " \\\n        ";
    if (info.argument)
      out += in_shell_quotes((info.name == "JOB" && verb != Verb::explain ? "*:"
                              : info.required                             ? ":"
                                                                          : "::") +
                             info.name + zsh_value(info));
    else if (info.type.empty())
      out += info.name + "'['" + in_zsh_quotes(info.about) + "']'";
    else
      out += info.name + "'['" + in_zsh_quotes(info.about) + "']'" + in_shell_quotes(":" + info.type + zsh_value(info));
  }
  return out + " ;;\n";
}

std::string zsh_script() {
  std::string words, cases;
  for (std::size_t v = 0; v < verbs().size(); ++v) {
    words += fmt::format("      {}\n", in_shell_quotes(fmt::format("{}:{}", verbs()[v].word, verbs()[v].about)));
    cases += zsh_case(static_cast<Verb>(v));
  }
  return fmt::format(R"(#compdef seambook
# completion of seambook for zsh; made by 'seambook completion zsh'
_seambook() {{
  if ((CURRENT == 2)); then
    local commands=(
{}    )
    local options=('--help:how it is used' '--version:of the program')
    _describe command commands -- options
    return
  fi
  local command=$words[2]
  shift words
  ((CURRENT--))
  case $command in
{}  esac
}}
if [[ $funcstack[1] == _seambook ]]; then _seambook "$@"; else compdef _seambook seambook; fi
)",
                     words, cases);
}

}  // namespace

int run_completion(const Arguments& arguments) {
  write_result(arguments.topic == "zsh" ? zsh_script() : bash_script());
  return exit_code::done;
}

}  // namespace seambook
