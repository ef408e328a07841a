#include "text/json_bounds.hpp"

#include <doctest/doctest.h>

#include <string>

#include "text/tree.hpp"

using namespace seambook;

namespace {

std::string nested(std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); }

}  // namespace

TEST_CASE("JSON is bounded in depth and in values, strings aside") {
  CHECK(json_within_bounds(""));
  CHECK(json_within_bounds(R"({"a": [1, 2, {"b": null}]})"));
  CHECK(json_within_bounds(nested(limit::depth)));
  CHECK(!json_within_bounds(nested(limit::depth + 1)));
  CHECK(json_within_bounds("]]]" + nested(limit::depth)));  // no JSON, and the reader's to refuse
  CHECK(json_within_bounds("[\"" + std::string(100, '[') + "\"]"));
  CHECK(json_within_bounds("[\"\\\"" + std::string(100, '[') + "\"]"));
  CHECK(!json_within_bounds("[\"\\\\\"," + std::string(100, '[') + "]"));
  CHECK(json_within_bounds("[" + std::string(limit::json_values - 1, ',')));
  CHECK(!json_within_bounds("[" + std::string(limit::json_values, ',')));
}
