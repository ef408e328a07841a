// A changed example job through all stages to the workbook: what is not refused is finite, its printed lines add up to
// the printed total, and its plan breaks no rule. The first byte chooses the job, the second what is done with it.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "mutated_job.hpp"
#include "quote/quote.hpp"
#include "read/job_text.hpp"
#include "read/rate_text.hpp"
#include "report/quote_book.hpp"
#include "report/sheet_rows.hpp"
#include "schedule/instants.hpp"
#include "schedule/shop_work.hpp"

namespace {

using namespace seambook;
namespace fs = std::filesystem;

void require(bool holds) {
  if (!holds) std::abort();
}

std::string file_text(const fs::path& path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<fs::path> yaml_files(const fs::path& folder) {
  std::vector<fs::path> paths;
  for (const auto& entry : fs::directory_iterator(folder))
    if (entry.path().extension() == ".yaml") paths.push_back(entry.path());
  std::sort(paths.begin(), paths.end());
  return paths;
}

struct Shop {
  std::vector<SourceFile> files;  // of its rates: places point into them
  RateBook book;
  std::vector<fuzz::Part> jobs;
};

Shop load_shop(const fs::path& jobs, const fs::path& rates) {
  Diagnostics diagnostics;
  std::vector<std::uint32_t> files;
  for (const fs::path& path : yaml_files(rates)) files.push_back(diagnostics.add_file(path.string(), file_text(path)));
  auto book = resolve_rates(read_rates(files, diagnostics), diagnostics);
  require(book.has_value());
  Shop shop{diagnostics.files, std::move(*book), {}};
  for (const fs::path& path : yaml_files(jobs)) {
    const auto tree = parse_yaml(diagnostics.add_file(path.string(), file_text(path)), diagnostics);
    require(tree.has_value());
    shop.jobs.push_back(fuzz::owned(Value(*tree, 0)));
  }
  return shop;
}

const std::vector<Shop>& shops() {
  const fs::path root = SEAMBOOK_ROOT;
  static const std::vector<Shop> all = {load_shop(root / "jobs", root / "rates"),
                                        load_shop(root / "jobs/saltbriar", root / "jobs/saltbriar/rates"),
                                        load_shop(root / "jobs/marlgannet", root / "jobs/marlgannet/rates")};
  return all;
}

/// The parts of a total are sums of rounded money: they differ from it by what doubles lose, if at all.
bool foots(double sum, double total) { return std::fabs(sum - total) <= 1e-9 * std::max(1.0, std::fabs(total)); }

void check_price(const Quote& quote) {
  for (const QuotePrice& price : quote.prices) {
    const PriceFigures<double>& f = price.figures;
    require(std::isfinite(f.total_with_tax.si) && std::isfinite(f.cost.si) && std::isfinite(f.left.si));
    require(foots(f.unit_price.si * static_cast<double>(price.quantity), f.pieces.si));
    require(foots(f.pieces.si + f.one_offs.si + f.expedite.si + f.supplement.si + f.freight.si + f.list_rounding.si,
                  f.total.si));
    require(foots(f.total.si + f.tax.si, f.total_with_tax.si));
    require(foots(f.total.si - f.cost.si, f.left.si) || std::fabs(f.total.si) > 1e6 * std::fabs(f.left.si));
  }
}

void check_workbook(const Workbook& workbook) {
  for (const Sheet& sheet : workbook.sheets) {
    each_row(sheet, [](RowCells cells) {
      for (const Cell* cell : cells) {
        if (const auto* number = std::get_if<double>(&cell->content)) require(std::isfinite(*number));
        if (const auto* formula = std::get_if<Formula>(&cell->content))
          if (const auto* shown = std::get_if<double>(&formula->value)) require(std::isfinite(*shown));
      }
    });
  }
}

bool faulty(const std::vector<Diagnostic>& found) {
  return std::any_of(found.begin(), found.end(), [](const Diagnostic& d) { return d.level == Level::error; });
}

void check_quote(const RateBook& book, const Job& job, const Estimate& made, bool with_doubt,
                 Diagnostics& diagnostics) {
  const SearchBudget little{500, 500};
  auto work = sequence_jobs(book, std::span(&job, 1), diagnostics, little);
  if (!work) return require(diagnostics.has_errors());
  Quote quote = make_quote(book, job, made, *work, {2026, 5, 4});
  std::vector<std::vector<StationWork>> of_options;
  for (const JobOption& option : job.options) {
    auto own = sequence_jobs(book, std::span(&option.part, 1), diagnostics, little);
    if (!own) return require(diagnostics.has_errors());
    of_options.push_back(std::move(*own));
  }
  price_options(book, job, made, std::move(of_options), quote);
  if (faulty(price_findings(book, job, quote))) return;
  check_price(quote);
  for (const PricedOption& option : quote.options) check_price(option.quote);
  if (with_doubt) quote.doubt = find_doubt(book, job, made, quote);
  check_workbook(quote_workbook(book, job, made, *work, quote, diagnostics));
}

void check_plan(const RateBook& book, const Job& job, const Estimate& made, Diagnostics& diagnostics) {
  const WorkToPlan asked{book, std::span(&job, 1), std::span(&made, 1), nullptr, midnight({2026, 5, 11})};
  const auto work = shop_work(asked, diagnostics);
  if (!work || work->problem.tasks.size() > 60) return;
  PlanBudget budget;
  budget.placements = 5000, budget.states = 500, budget.stations = {500, 500};
  require(plan_violations(work->problem, plan(work->problem, budget)).empty());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size < 4) return 0;
  fuzz::Bytes bytes{{data, size}};
  const Shop& shop = shops()[bytes.next() % shops().size()];
  const std::uint8_t way = bytes.next();
  const std::string text = fuzz::mutated(shop.jobs[bytes.below(shop.jobs.size())], bytes);
  if (std::getenv("SEAMBOOK_SHOW_JOB") != nullptr) std::ofstream("/dev/stdout") << text << '\n';
  Diagnostics diagnostics{shop.files, {}};
  const std::uint32_t file = diagnostics.add_file("jobs/job.yaml", text);
  const auto none = [](const std::string&) -> std::optional<std::string> { return std::nullopt; };
  const auto job = resolve_job(read_job(file, none, diagnostics), shop.book, diagnostics);
  require(job.has_value() || diagnostics.has_errors());
  if (!job) return 0;
  const Estimate made = estimate(shop.book, *job);
  if (faulty(findings(shop.book, *job, made))) return 0;
  check_quote(shop.book, *job, made, way % 32 == 0, diagnostics);
  if (way % 8 == 1) check_plan(shop.book, *job, made, diagnostics);
  return 0;
}
