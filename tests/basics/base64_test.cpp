#include "basics/base64.hpp"

#include <doctest/doctest.h>

using namespace seambook;

TEST_CASE("bytes become the letters that the standard gives, and come back") {
  const std::pair<std::string, std::string> rows[] = {{"", ""},
                                                      {"f", "Zg=="},
                                                      {"fo", "Zm8="},
                                                      {"foo", "Zm9v"},
                                                      {"foob", "Zm9vYg=="},
                                                      {"fooba", "Zm9vYmE="},
                                                      {"foobar", "Zm9vYmFy"}};  // RFC 4648, section 10
  for (const auto& [bytes, letters] : rows) {
    CHECK(base64_of(bytes) == letters);
    CHECK(bytes_of_base64(letters) == bytes);
  }
  std::string all;
  for (int i = 0; i < 256; ++i) all += static_cast<char>(i);
  CHECK(bytes_of_base64(base64_of(all)) == all);
}

TEST_CASE("letters that no bytes give are refused") {
  for (const char* letters : {"Z", "Zg", "Zg=", "Zg===", "Zh==", "Zm9=", "Zm9v=", "Zm 9v", "====", "Z-9v"}) {
    CAPTURE(letters);
    CHECK(!bytes_of_base64(letters));
  }
}
