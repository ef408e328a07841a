#include "basics/hash.hpp"

#include <doctest/doctest.h>

using namespace seambook;

namespace {

std::string hash_of(std::string_view a, std::string_view b) {
  Hash hash;
  hash.add(a);
  hash.add(b);
  return hex(hash);
}

}  // namespace

TEST_CASE("the hash is FNV-1a of each text with a zero byte after it") {
  // Published test vectors for the strings `foobar` and `a` with their ending zero.
  Hash foobar, letter;
  foobar.add("foobar");
  letter.add("a");
  CHECK(hex(foobar) == "34531ca7168b8f38");
  CHECK(hex(letter) == "089be207b544f1e4");
}

TEST_CASE("where one text ends and the next begins counts") {
  CHECK(hash_of("ab", "c") != hash_of("a", "bc"));
  CHECK(hash_of("ab", "c") == hash_of("ab", "c"));
  CHECK(hash_of("", "") != hex(Hash{}));
}
