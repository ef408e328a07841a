// The YAML parser's terse complaints in words that an author understands.
#pragma once

#include <string>
#include <string_view>

namespace seambook {

struct SyntaxWords {
  std::string message, hint;
};

/// `complaint` as the parser words it, without its position.
SyntaxWords syntax_words(std::string_view complaint);

}  // namespace seambook
