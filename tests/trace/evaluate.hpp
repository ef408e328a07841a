// A spreadsheet formula computed from the numbers in its cells, to check rendered formulas without an office suite.
// The subset: + - * / ^ and unary minus (which binds tighter than ^, as in spreadsheets), brackets, cells such as
// `Rates!$B$2`, and the functions that trace/formula.cpp writes. Anything else throws.
#pragma once

#include <algorithm>
#include <cctype>
#include <cmath>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "trace/vocabulary.hpp"

namespace evaluate {

using Cells = std::map<std::string, double>;

class Reader {
 public:
  Reader(const std::string& text, const Cells& cells) : text_(text), cells_(cells) {}

  double whole() {
    const double value = sum();
    if (at_ != text_.size()) fail("something is left over");
    return value;
  }

 private:
  [[noreturn]] void fail(const std::string& why) const {
    throw std::runtime_error(why + " at " + std::to_string(at_) + " of " + text_);
  }
  char next() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  bool take(char c) {
    if (next() != c) return false;
    ++at_;
    return true;
  }
  void expect(char c) {
    if (!take(c)) fail(std::string("no ") + c);
  }

  double sum() {
    double value = product();
    while (true) {
      if (take('+')) {
        value += product();
      } else if (take('-')) {
        value -= product();
      } else {
        return value;
      }
    }
  }
  double product() {
    double value = power();
    while (true) {
      if (take('*')) {
        value *= power();
      } else if (take('/')) {
        value /= power();
      } else {
        return value;
      }
    }
  }
  double power() {
    double value = signed_atom();
    while (take('^')) value = std::pow(value, signed_atom());
    return value;
  }
  double signed_atom() { return take('-') ? -signed_atom() : atom(); }
  double atom() {
    if (take('(')) {
      const double value = sum();
      expect(')');
      return value;
    }
    if (std::isdigit(static_cast<unsigned char>(next())) != 0) return number();
    const std::size_t start = at_;
    while (std::isalnum(static_cast<unsigned char>(next())) != 0 || next() == '$' || next() == '!') ++at_;
    const std::string word = text_.substr(start, at_ - start);
    if (take('(')) return word == "IF" ? chosen() : function(word, arguments());
    const auto cell = cells_.find(word);
    if (cell == cells_.end()) fail("no cell '" + word + "'");
    return cell->second;
  }
  double number() {
    std::size_t used = 0;
    const double value = std::stod(text_.substr(at_), &used);
    at_ += used;
    return value;
  }
  std::vector<double> arguments() {
    std::vector<double> found{sum()};
    while (take(',')) found.push_back(sum());
    expect(')');
    return found;
  }
  double chosen() {
    const double a = sum();
    expect('<');
    const double b = sum();
    expect(',');
    const double then = sum();
    expect(',');
    const double otherwise = sum();
    expect(')');
    return a < b ? then : otherwise;
  }
  double function(const std::string& name, const std::vector<double>& x) const {
    const auto named = [&](const char* wanted, std::size_t count) { return name == wanted && x.size() == count; };
    if (named("MIN", 2)) return std::min(x[0], x[1]);
    if (named("MAX", 2)) return std::max(x[0], x[1]);
    if (named("ROUNDUP", 2) && x[1] == 0) return std::copysign(std::ceil(std::fabs(x[0])), x[0]);
    if (named("INT", 1)) return std::floor(x[0]);
    if (named("ROUND", 2)) return seambook::round_decimal(x[0], static_cast<int>(x[1]));
    if (named("SQRT", 1)) return std::sqrt(x[0]);
    if (named("SIN", 1)) return std::sin(x[0]);
    if (named("COS", 1)) return std::cos(x[0]);
    if (named("TAN", 1)) return std::tan(x[0]);
    if (named("RADIANS", 1)) return x[0] * 3.14159265358979323846 / 180;
    if (named("EXP", 1)) return std::exp(x[0]);
    if (named("LN", 1)) return std::log(x[0]);
    if (named("ASIN", 1)) return std::asin(x[0]);
    if (named("TANH", 1)) return std::tanh(x[0]);
    fail("no function " + name);
  }

  const std::string& text_;
  const Cells& cells_;
  std::size_t at_ = 0;
};

inline double formula(const std::string& text, const Cells& cells) { return Reader(text, cells).whole(); }

}  // namespace evaluate
