// A file inside a zip archive that is held in memory. The only user of libzip.
// Nobody vouches for an archive: what it says of its sizes is not believed, what it inflates to is counted.
#pragma once

#include <string>
#include <string_view>

namespace seambook {

namespace zip_limit {
inline constexpr std::size_t entries = 2000;
inline constexpr std::size_t part_bytes = 32u << 20;
inline constexpr std::size_t free_bytes = 1u << 20;  // below this any ratio is harmless
inline constexpr std::size_t ratio = 250;            // inflated to packed bytes
}  // namespace zip_limit

/// `found` is false when the archive has no such part, or there is a problem: then it says which, with a hint.
struct ZipPart {
  bool found = false;
  std::string text, problem, hint;
};

/// The bytes of one part by its whole name: `xl/workbook.xml`.
ZipPart zip_part(std::string_view archive, const std::string& name);

}  // namespace seambook
