// JSON written as text straight away: documents with a list too long to be held as values first.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace seambook {

/// Appends to a text, two columns further in at each level. Values of an object each follow their `key`.
class JsonText {
 public:
  /// `columns`: how far in the line stands on which the first value begins.
  JsonText(std::string& out, std::size_t columns) : out_(out), columns_(columns) {}

  /// `name` is one of the program's own and needs no escapes.
  JsonText& key(std::string_view name);
  /// A key of the author's words.
  JsonText& named(std::string_view words);
  /// Finite: the format knows no infinity.
  void number(double);
  /// A whole number without a point where `x` is one.
  void count(double x);
  void whole(std::int64_t);
  void flag(bool);
  /// Bytes that are no UTF-8 come out as U+FFFD.
  void text(std::string_view);
  /// What is JSON already, laid out on lines of its own.
  void ready(std::string_view json);
  template <class Members>
  void object(Members members) {
    open('{');
    members();
    close('}');
  }
  template <class Items>
  void list(Items items) {
    open('[');
    items();
    close(']');
  }

 private:
  void place();  // a value's, after its key or on a line of its own in a list
  void next_line();
  void open(char bracket);
  void close(char bracket);

  std::string& out_;
  std::size_t columns_;
  bool first_ = true, after_key_ = true;
};

/// `text` further in by so many columns but for its first line. JSON strings hold no bare line breaks, so every line is
/// one of the layout.
void append_indented(std::string& out, std::string_view text, std::size_t columns);

}  // namespace seambook
