// What a person does with a printed expression: numbers, + - * / ^, brackets, and the few functions that working uses.
#pragma once

#include <cmath>
#include <cstdlib>
#include <stdexcept>
#include <string>
#include <vector>

/// Evaluates by the usual precedence; ROUNDUP, INT, IF and the like as office suites define them. Throws
/// std::runtime_error on anything else.
class Arithmetic {
 public:
  explicit Arithmetic(std::string text) : text_(std::move(text)) {}
  double result() {
    const double value = sum();
    if (at_ != text_.size()) fail();
    return value;
  }

 private:
  [[noreturn]] void fail() const { throw std::runtime_error("cannot read '" + text_.substr(at_) + "' of " + text_); }
  bool take(char c) {
    if (at_ >= text_.size() || text_[at_] != c) return false;
    ++at_;
    return true;
  }
  void need(char c) {
    if (!take(c)) fail();
  }
  double sum() {
    double value = product();
    for (;;) {
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
    double value = raised();
    for (;;) {
      if (take('*')) {
        value *= raised();
      } else if (take('/')) {
        value /= raised();
      } else {
        return value;
      }
    }
  }
  double raised() {
    const double value = atom();
    return take('^') ? std::pow(value, raised()) : value;
  }
  double atom() {
    if (take('-')) return -atom();
    if (take('(')) {
      const double value = sum();
      need(')');
      return value;
    }
    if (at_ < text_.size() && text_[at_] >= 'A' && text_[at_] <= 'Z') return function();
    const char* begin = text_.c_str() + at_;
    char* end = nullptr;
    const double value = std::strtod(begin, &end);
    if (end == begin) fail();
    at_ += static_cast<std::size_t>(end - begin);
    return value;
  }
  double function() {
    std::string word;
    while (at_ < text_.size() && text_[at_] >= 'A' && text_[at_] <= 'Z') word += text_[at_++];
    need('(');
    std::vector<double> a;
    bool less = false;
    do {
      a.push_back(sum());
      if (take('<')) less = a.back() < sum();
    } while (take(','));
    need(')');
    return applied(word, a, less);
  }
  double applied(const std::string& word, const std::vector<double>& a, bool less) const {
    const double x = a.front();
    if (word == "MIN") return std::min(x, a.at(1));
    if (word == "MAX") return std::max(x, a.at(1));
    if (word == "ROUNDUP" && a.at(1) == 0) return x < 0 ? std::floor(x) : std::ceil(x);
    if (word == "INT") return std::floor(x);
    if (word == "ROUND") return std::round(x * std::pow(10, a.at(1)) * (1 + 1e-14)) / std::pow(10, a.at(1));
    if (word == "SQRT") return std::sqrt(x);
    if (word == "TAN") return std::tan(x);
    if (word == "RADIANS") return x * 3.14159265358979323846 / 180;
    if (word == "IF") return less ? a.at(1) : a.at(2);
    fail();
  }

  std::string text_;
  std::size_t at_ = 0;
};
