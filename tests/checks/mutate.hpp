// Included into every file of a mutated copy: each mutant is a number, and one program holds them all. A mutated place
// reads `a +seambook_mutant::Plus<17>{}+ b`; with 17 chosen it subtracts. What is reached is noted, so that mutants are
// only run against tests that reach them.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <type_traits>
#include <vector>

namespace seambook_mutant {

struct Book {
  int chosen = std::getenv("MUTANT") != nullptr ? std::atoi(std::getenv("MUTANT")) : 0;
  std::vector<char> reached = std::vector<char>(20000);
  ~Book() {
    const char* path = std::getenv("MUTANTS_REACHED");
    if (path == nullptr) return;
    std::FILE* file = std::fopen(path, "w");
    for (std::size_t at = 0; at < reached.size(); ++at)
      if (reached[at] != 0) std::fprintf(file, "%zu\n", at);
    std::fclose(file);
  }
};
inline Book& book() {
  static Book all;
  return all;
}

template <int I>
constexpr bool on() {
  if (std::is_constant_evaluated()) return false;
  book().reached[I] = 1;
  return book().chosen == I;
}

// One unit of the same dimension.
template <class T>
constexpr auto one_like(const T& value) {
  if constexpr (std::is_arithmetic_v<T>)
    return T(1);
  else
    return std::decay_t<T>{decltype(value.si)(1)};
}

#define SEAMBOOK_MUTANT(Name, token, normal, mutated)                \
  template <int I>                                                   \
  struct Name {};                                                    \
  template <class A, int I>                                          \
  struct Name##Left {                                                \
    const A& a;                                                      \
  };                                                                 \
  template <class A, int I>                                          \
  constexpr Name##Left<A, I> operator token(const A& a, Name<I>) {   \
    return {a};                                                      \
  }                                                                  \
  template <class A, int I, class B>                                 \
  constexpr auto operator token(Name##Left<A, I> left, const B& b) { \
    const A& a = left.a;                                             \
    using Result = std::decay_t<decltype(normal)>;                   \
    if constexpr (requires { static_cast<Result>(mutated); })        \
      if (on<I>()) return static_cast<Result>(mutated);              \
    return static_cast<Result>(normal);                              \
  }

SEAMBOOK_MUTANT(Plus, +, a + b, a - b)
SEAMBOOK_MUTANT(Minus, -, a - b, a + b)
SEAMBOOK_MUTANT(Times, *, a* b, a* one_like(b))
SEAMBOOK_MUTANT(Over, /, a / b, a / one_like(b))
SEAMBOOK_MUTANT(Less, <, a < b, a <= b)
SEAMBOOK_MUTANT(LessEqual, <=, a <= b, a < b)
SEAMBOOK_MUTANT(Greater, >, a > b, a >= b)
SEAMBOOK_MUTANT(GreaterEqual, >=, a >= b, a > b)
SEAMBOOK_MUTANT(Equal, ==, a == b, a != b)
SEAMBOOK_MUTANT(Unequal, !=, a != b, a == b)

template <int I>
constexpr bool flipped(bool condition) {
  return on<I>() != condition;
}
template <int I, class T>
constexpr T constant(T value) {
  return on<I>() ? static_cast<T>(value + 1) : value;
}
template <int I, class A, class B>
constexpr auto least_of(const A& a, const B& b) {
  using std::max, std::min;
  return on<I>() ? max(a, b) : min(a, b);
}
template <int I, class A, class B>
constexpr auto most_of(const A& a, const B& b) {
  using std::max, std::min;
  return on<I>() ? min(a, b) : max(a, b);
}

}  // namespace seambook_mutant
