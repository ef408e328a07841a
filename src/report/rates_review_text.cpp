#include "report/rates_review_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "report/terminal.hpp"

namespace seambook {
namespace {

/// Findings that say the same of several entries.
struct SharedFinding {
  const ReviewFinding* first;
  std::vector<std::string> entries;
};

bool says_the_same(const ReviewFinding& a, const ReviewFinding& b) {
  return a.kind == b.kind && a.list == b.list && a.message == b.message;
}

std::vector<SharedFinding> shared_findings(std::span<const ReviewFinding> findings) {
  std::vector<SharedFinding> shared;
  for (const ReviewFinding& finding : findings) {
    auto same = shared.begin();
    while (same != shared.end() && !says_the_same(*same->first, finding)) ++same;
    if (same == shared.end()) same = shared.insert(same, {&finding, {}});
    if (!finding.entry.empty()) same->entries.push_back(finding.entry);
  }
  return shared;
}

/// Names after each other, four columns in, broken before the width.
std::string wrapped_names(const std::vector<std::string>& names, std::size_t width) {
  std::string out, line;
  for (std::size_t n = 0; n < names.size(); ++n) {
    const std::string piece = names[n] + (n + 1 < names.size() ? "," : "");
    if (!line.empty() && 5 + display_width(line) + display_width(piece) > width) {
      out += "    " + line + "\n";
      line.clear();
    }
    line += (line.empty() ? "" : " ") + piece;
  }
  return line.empty() ? out : out + "    " + line + "\n";
}

}  // namespace

std::string review_text(std::span<const ReviewFinding> findings, std::size_t width) {
  constexpr std::size_t readable = 120;
  width = std::min(width, readable);
  std::string out;
  const char* heading = "";
  for (const SharedFinding& shared : shared_findings(findings)) {
    const ReviewFinding& first = *shared.first;
    const char* kind = review_kinds[static_cast<std::size_t>(first.kind)];
    if (heading != kind) out += fmt::format("{}{}\n", out.empty() ? "" : "\n", kind);
    heading = kind;
    out += fmt::format("  {}{}: {}\n", first.list,
                       shared.entries.size() > 1 ? fmt::format(" ({})", shared.entries.size()) : "", first.message);
    out += wrapped_names(shared.entries, width);
  }
  return out.empty() ? "nothing to look at again\n" : out;
}

std::string review_json(std::span<const ReviewFinding> findings, const Diagnostics& places) {
  using ReviewJson = nlohmann::ordered_json;
  ReviewJson list = ReviewJson::array();
  for (const ReviewFinding& finding : findings) {
    const bool placed = finding.place.file > 0 && finding.place.file < places.files.size();
    list.push_back({{"kind", review_kinds[static_cast<std::size_t>(finding.kind)]},
                    {"list", finding.list},
                    {"entry", finding.entry},
                    {"file", placed ? ReviewJson(places.files[finding.place.file].name) : ReviewJson(nullptr)},
                    {"line", placed ? ReviewJson(finding.place.line) : ReviewJson(nullptr)},
                    {"message", finding.message}});
  }
  return list.dump(2, ' ', false, ReviewJson::error_handler_t::replace);
}

}  // namespace seambook
