#include "report/json_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>

#include "report/json_document.hpp"

namespace seambook {
namespace {

bool needs_no_escapes(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c <= '~' && c != '"' && c != '\\'; });
}

}  // namespace

void append_indented(std::string& out, std::string_view text, std::size_t columns) {
  std::size_t begin = 0;
  for (std::size_t end = 0; (end = text.find('\n', begin)) != std::string_view::npos; begin = end + 1) {
    out.append(text, begin, end + 1 - begin);
    out.append(columns, ' ');
  }
  out.append(text, begin);
}

void JsonText::next_line() {
  out_ += '\n';
  out_.append(columns_, ' ');
}

void JsonText::place() {
  if (!after_key_) {
    if (!first_) out_ += ',';
    next_line();
  }
  first_ = after_key_ = false;
}

void JsonText::open(char bracket) {
  place();
  out_ += bracket;
  columns_ += 2;
  first_ = true;
}

void JsonText::close(char bracket) {
  columns_ -= 2;
  if (!first_) next_line();
  out_ += bracket;
  first_ = false;
}

JsonText& JsonText::key(std::string_view name) {
  assert(needs_no_escapes(name));
  place();
  out_ += '"';
  out_ += name;
  out_ += "\": ";
  after_key_ = true;
  return *this;
}

JsonText& JsonText::named(std::string_view words) {
  text(words);
  out_ += ": ";
  after_key_ = true;
  return *this;
}

void JsonText::number(double x) {
  assert(std::isfinite(x));
  place();
  const std::size_t begin = out_.size();
  fmt::format_to(std::back_inserter(out_), "{}", x);  // the shortest text that reads back as x
  if (out_.find_first_of(".e", begin) == std::string::npos) out_ += ".0";
}

void JsonText::count(double x) {
  constexpr double held_exactly = 9e15;
  if (x == std::floor(x) && std::fabs(x) < held_exactly)
    whole(static_cast<std::int64_t>(x));
  else
    number(x);
}

void JsonText::whole(std::int64_t x) {
  place();
  fmt::format_to(std::back_inserter(out_), "{}", x);
}

void JsonText::flag(bool x) {
  place();
  out_ += x ? "true" : "false";
}

void JsonText::text(std::string_view x) {
  if (!needs_no_escapes(x)) return ready(json_string(std::string(x)));
  place();
  out_ += '"';
  out_ += x;
  out_ += '"';
}

void JsonText::ready(std::string_view json) {
  place();
  append_indented(out_, json, columns_);
}

}  // namespace seambook
