#include "text/tree_words.hpp"

namespace seambook {
namespace {

struct WordingRow {
  std::string_view begins;  // of the parser's complaint
  const char *message, *hint;
};

constexpr const char* one_key_a_line =
    "check the indentation; write one 'key: value' a line, and quotes round a text that holds ': '";
constexpr const char* quote_such_a_text = "put a text that begins with such a character in quotes";
constexpr const char* check_indentation = "check the indentation: the keys of one map stand below each other";

constexpr WordingRow wordings[] = {
    {"illegal map value", "a ':' cannot stand here", one_key_a_line},
    {"illegal map key", "a '?' cannot stand here", quote_such_a_text},
    {"illegal block entry", "a list entry '- ' cannot stand here",
     "begin each entry on a line of its own, below the others"},
    {"illegal flow end", "a ']' or '}' that closes nothing", "delete it, or put the text in quotes"},
    {"end of map not found", "this line does not fit the keys above it", check_indentation},
    {"end of sequence not found", "this line does not fit the list above it",
     "check the indentation: the '-' of one list stand below each other"},
    {"illegal tab", "a tab in the indentation", "indent with spaces"},
    {"unknown token", "no text may begin with this character", quote_such_a_text},
    {"illegal document indicator", "a quoted text runs into a '---' or '...' line", "close the quote"},
    {"illegal EOF", "a quote is not closed before the end of the file", "close the quote"},
    {"unknown escape", "an unknown escape after '\\' in double quotes",
     "write '\\\\' for a backslash, or use single quotes"},
    {"bad character found while scanning hex", "an unfinished '\\x' or '\\u' escape in double quotes",
     "write '\\\\' for a backslash, or use single quotes"},
    {"invalid unicode", "an escape in double quotes that is no character", "write the character itself"},
    {"bad file", "too many lists and maps inside each other", "at most 32 levels are read"},
    {"the referenced anchor", "a text that begins with '*' is an alias in YAML, and aliases are not read",
     quote_such_a_text},
    {"alias", "a text that begins with '*' is an alias in YAML, and aliases are not read", quote_such_a_text},
    {"illegal character found while scanning alias",
     "a text that begins with '*' is an alias in YAML, and aliases are not read", quote_such_a_text},
    {"anchor", "a text that begins with '&' is an anchor in YAML, and anchors are not read", quote_such_a_text},
    {"illegal character found while scanning anchor",
     "a text that begins with '&' is an anchor in YAML, and anchors are not read", quote_such_a_text},
    {"illegal character found while scanning tag",
     "a text that begins with '!' is a tag in YAML, and tags are not read", quote_such_a_text},
    {"tag handle", "a text that begins with '!' is a tag in YAML, and tags are not read", quote_such_a_text},
    {"end of verbatim tag", "a text that begins with '!' is a tag in YAML, and tags are not read", quote_such_a_text},
    {"cannot assign multiple", "two tags, anchors or aliases before one value", quote_such_a_text},
    {"cannot set zero indentation", "a text block cannot be indented by 0", "leave out the number after '|' or '>'"},
    {"unexpected character in block", "something follows the '|' or '>' of a text block",
     "begin the text on the next line"},
};

}  // namespace

SyntaxWords syntax_words(std::string_view complaint) {
  for (const WordingRow& row : wordings)
    if (complaint.starts_with(row.begins)) return {row.message, row.hint};
  return {"no YAML: " + std::string(complaint), check_indentation};
}

}  // namespace seambook
