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

/// What bash proposes behind an option, or for the arguments.
std::string bash_words(const OptionInfo& info) {
  if (!info.choices.empty()) return fmt::format("compgen -W '{}' -- \"$word\"", fmt::join(info.choices, " "));
  if (info.type == "DIR" || info.name == "BOOK") return "compgen -d -- \"$word\"";
  if (info.type == "FILE" || info.name == "JOB") return "compgen -f -- \"$word\"";
  return {};
}

std::string bash_case(Verb verb) {
  const std::vector<OptionInfo> options = options_of(verb);
  std::string names, values, argument;
  for (const OptionInfo& info : options) {
    const std::string words = bash_words(info);
    if (info.argument) {
      if (argument.empty() || info.name == "JOB") argument += (argument.empty() ? "" : "; ") + words;
      continue;
    }
    names += " " + info.name;
    if (!info.type.empty())
      values += fmt::format("        {}) COMPREPLY=($({})); return ;;\n", info.name, words.empty() ? ":" : words);
  }
  std::string out = fmt::format("    {})\n", verb_info(verb).word);
  if (!values.empty()) out += "      case $before in\n" + values + "      esac\n";
  out += fmt::format("      if [[ $word == -* ]]; then COMPREPLY=($(compgen -W '{}' -- \"$word\"))\n", names.substr(1));
  return out + fmt::format("      else COMPREPLY=($({})); fi ;;\n", argument.empty() ? ":" : argument);
}

std::string bash_script() {
  std::string words, cases;
  for (std::size_t v = 0; v < verbs().size(); ++v) {
    words += (words.empty() ? "" : " ") + std::string(verbs()[v].word);
    cases += bash_case(static_cast<Verb>(v));
  }
  return fmt::format(R"(# completion of seambook for bash; made by 'seambook completion bash'
_seambook() {{
  local word=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD - 1]}}
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    COMPREPLY=($(compgen -W '{} --help --version' -- "$word"))
    return
  fi
  case ${{COMP_WORDS[1]}} in
{}  esac
}}
complete -o filenames -F _seambook seambook
)",
                     words, cases);
}

std::string zsh_value(const OptionInfo& info) {
  if (!info.choices.empty()) return fmt::format(":({})", fmt::join(info.choices, " "));
  if (info.type == "DIR" || info.name == "BOOK") return ":_files -/";
  if (info.type == "FILE" || info.name == "JOB") return ":_files";
  return ":";
}

std::string zsh_case(Verb verb) {
  std::string out = fmt::format("    {})\n      _arguments", verb_info(verb).word);
  for (const OptionInfo& info : options_of(verb)) {
    const std::string about = in_zsh_quotes(info.argument ? info.name : "[" + info.about + "]");
    out += " \\\n        ";
    if (info.argument)
      out += in_shell_quotes((info.name == "JOB" && verb != Verb::explain ? "*:" : ":") + info.name + zsh_value(info));
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
    _describe command commands
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
