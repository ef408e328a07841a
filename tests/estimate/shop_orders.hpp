// The orders of an example shop summed up for a test, and their findings held against a list.
// Sums are for all pieces of every order; gas is at set flow while the arc burns, without flow before and after or
// loss.
#pragma once

#include <map>
#include <span>
#include <string>

#include "shop_files.hpp"

namespace seambook::test {

struct Order {
  const char* file;  // in jobs/
  double pieces;
};

struct ShopSums {
  double rows = 0, joints_made = 0, weld_elements = 0, weld_length_m = 0;
  std::map<std::string, double> arc_min;    // by process number
  std::map<std::string, double> gas_l;      // by gas
  std::map<std::string, double> filler_kg;  // by filler
  std::map<std::string, double> floor_h;    // by file
  std::map<std::string, double> element_h;  // by labour element of the joints, before access and allowance
};
ShopSums sums_of(std::span<const Order>);
double all_floor_h(const ShopSums&);

/// A finding that stands, and why: `why` is for the reader.
struct Expected {
  const char* file;
  const char* joint;  // id; of findings on the whole job, empty
  const char* words;  // that the message holds
  const char* why;
};
/// Checks that the findings and complaints of the orders are those listed, each once and no other.
void check_findings(std::span<const Order>, std::span<const Expected>);

}  // namespace seambook::test
