// Counts: a share that is whole in decimals counts as whole, though its binary quotient may fall a hair short.
#include <doctest/doctest.h>

#include "trade/length.hpp"
#include "trade/passes.hpp"

using namespace seambook;

TEST_CASE("k steps hold exactly k steps") {
  const double steps[] = {1e-3, 2e-3, 5e-3, 7e-3, 0.01,     0.025,  0.03,    0.04, 0.05, 0.06,
                          0.07, 0.15, 0.1,  0.3,  5 * 1e-3, 0.0254, 1.0 / 3, 0.7,  1.1};
  int bare_floor_wrong = 0, bare_ceil_wrong = 0, counted = 0;
  for (const double step : steps) {
    for (int k = 1; k <= 20000; ++k) {
      const double share = k * step / step;
      const double summed = (k * 1e-3 * step) / (1e-3 * step);
      CHECK(whole_down(share) == k);
      CHECK(whole_up(share) == k);
      CHECK(whole_down(summed) == k);
      CHECK(whole_up(summed) == k);
      bare_floor_wrong += std::floor(share) != k || std::floor(summed) != k ? 1 : 0;
      bare_ceil_wrong += std::ceil(share) != k || std::ceil(summed) != k ? 1 : 0;
      ++counted;
    }
  }
  CHECK(bare_floor_wrong > 0);
  CHECK(bare_ceil_wrong > 0);
  MESSAGE("of " << counted << " counts a bare floor misses " << bare_floor_wrong << ", a bare ceiling "
                << bare_ceil_wrong);
}

TEST_CASE("300 mm hold six times 50 mm where a bare floor says five") {
  CHECK(std::floor(0.3 / 0.05) == 5);
  CHECK(whole_down(0.3 / 0.05) == 6);
  CHECK(whole_up(0.3 / 0.05) == 6);
}

TEST_CASE("a millionth of a step is more than nothing") {
  CHECK(whole_up(6.000001) == 7);
  CHECK(whole_down(5.999999) == 5);
  CHECK(whole_up(0.25) == 1);
  CHECK(whole_down(0.75) == 0);
}

TEST_CASE("elements on a line do not depend on the unit of its sizes") {
  // Millimetres as someone writes them in mm, cm or m, read as number times size of the unit.
  const auto read = [](int mm, int in_one) { return Length<>{mm / static_cast<double>(in_one) * (in_one * 1e-3)}; };
  int counted = 0;
  for (int element = 10; element <= 60; element += 3) {
    for (int pitch = element + 1; pitch <= 160; pitch += 7) {
      for (int line = element; line <= 1500; line += line < element + 3 * pitch ? 1 : 37) {
        for (const int line_unit : {1, 10, 1000}) {
          for (const int element_unit : {1, 10, 1000}) {
            CAPTURE(line);
            CAPTURE(element);
            CAPTURE(pitch);
            CAPTURE(line_unit);
            CAPTURE(element_unit);
            const double count =
                elements_on_line(read(line, line_unit), read(element, element_unit), read(pitch, 1)).si;
            CHECK(count == (line - element) / pitch + 1);
            ++counted;
          }
        }
      }
    }
  }
  MESSAGE(counted << " lines");
}

TEST_CASE("tacks stand at both ends and never further apart than the pitch") {
  for (int pitch = 50; pitch <= 400; pitch += 10) {
    for (int line = 20; line <= 5000; line += 10) {
      CAPTURE(pitch);
      CAPTURE(line);
      const double tacks = tacks_on_line(Length<>{line * 1e-3}, Length<>{pitch * 1e-3}).si;
      CHECK(tacks == (line + pitch - 1) / pitch + 1);
    }
  }
}

TEST_CASE("no pass is larger than the largest and none is missing") {
  for (int largest = 30; largest <= 250; largest += 5) {
    for (int section = 5; section <= 4000; section += 5) {
      CAPTURE(largest);
      CAPTURE(section);
      // In tenths of a square millimetre.
      CHECK(passes_for(Area<>{section * 1e-7}, Area<>{largest * 1e-7}).si == (section + largest - 1) / largest);
    }
  }
}
