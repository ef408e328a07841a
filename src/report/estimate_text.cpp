#include "report/estimate_text.hpp"

#include <fmt/format.h>

#include "basics/utf8.hpp"
#include "quote/piece_totals.hpp"
#include "report/number_text.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

std::string heading(const RateBook& book, const Job& job, const Quote& quote, const std::string& rates) {
  std::string text = job.name;
  if (!job.title.empty()) text += ": " + job.title;
  if (!job.drawings.empty()) text += fmt::format("; drawing {}", fmt::join(job.drawings, ", "));
  text += fmt::format("; {}; money in {}; rate book {}", iso(quote.date), book.currency, rates);
  std::string shown;
  append_printable(shown, text);
  return shown + "\n\n";
}

/// A number of the table in the shop's unit.
std::string in_shown(Terms terms, double si, const Unit& unit, int decimals) {
  const Shown as = shown_in(terms, unit, decimals);
  return figure(si / as.unit.si, as.decimals);
}

std::vector<std::string> row_of(const std::string& name, const PieceTotals& t, const RateBook& book) {
  return {name,
          in_shown(book.terms, t.welding.weld_length.si, unit::m, 2),
          figure(t.welding.weld_elements, 0),
          figure(t.welding.arc.si / unit::min.si, 1),
          figure(t.floor.si / unit::h.si, 2),
          in_shown(book.terms, t.welding.filler.si, unit::kg, 3),
          in_shown(book.terms, t.welding.gas.si, unit::l, 0),
          figure(t.welding.energy.si / unit::kWh.si, 2),
          figure(sum_of_kinds(t.cost), book.minor_digits)};
}

TextTable weldment_table(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote) {
  TextTable table;
  const auto with_unit = [&](const char* words, const Unit& unit) {
    return fmt::format("{} {}", words, shown_in(book.terms, unit).unit.word);
  };
  table.headings = {"weldment",
                    with_unit("weld", unit::m),
                    "elements",
                    "arc min",
                    "floor h",
                    with_unit("filler", unit::kg),
                    with_unit("gas", unit::l),
                    "energy kWh",
                    "cost " + book.currency};
  table.right_aligned.assign(table.headings.size(), true);
  table.right_aligned.front() = false;
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const double count = job.weldments[w].count.si.value;
    std::string name = job.weldments[w].name;
    if (count != 1) name += fmt::format(" × {}", figure(count, 0));
    table.rows.push_back(row_of(name, weldment_totals(job, estimate, w), book));
  }
  table.rule_before_row = table.rows.size();
  table.rows.push_back(row_of("a piece", piece_totals(job, estimate, quote), book));
  return table;
}

/// What intermittent welds leave of their lines; nothing when there are none.
std::string unwelded_text(const RateBook& book, const Totals& totals) {
  if (totals.unwelded.si <= 0) return {};
  return fmt::format("between weld elements {} {} are left unwelded\n",
                     in_shown(book.terms, totals.unwelded.si, unit::m, 2), shown_in(book.terms, unit::m).unit.word);
}

/// What waits while nobody works at it; empty when nothing does.
std::string waiting_text(const Job& job, const PieceTotals& totals) {
  std::string text;
  if (totals.waiting.si > 0)
    text += fmt::format("waiting of a piece, nobody is charged: {} min\n", figure(totals.waiting.si / unit::min.si, 1));
  double lot = 0;
  for (const JobWork& work : job.work)
    if (!work.attended) lot += work.time.si.value * work.count;
  if (lot > 0) text += fmt::format("waiting for the job as a whole: {} min\n", figure(lot / unit::min.si, 1));
  return text;
}

std::string method_text(const LabourMethod& method) {
  if (!method.by_factor) return {};
  std::string shown;
  append_printable(
      shown, fmt::format("labour by operating factor, which is {}; it covers {}", method.definition, method.covers));
  return shown + "\n";
}

TextTable cost_table(const RateBook& book, const Quote& quote) {
  TextTable table;
  table.headings = {"cost " + book.currency, "each piece", "each lot", "once"};
  table.right_aligned = {false, true, true, true};
  const auto money = [&](double x) { return x == 0 ? std::string() : figure(x, book.minor_digits); };
  for (std::size_t k = 0; k < cost_kinds; ++k) {
    const double each = quote.inputs.each[k].si, lot = quote.inputs.lot[k].si, once = quote.inputs.once[k].si;
    if (each == 0 && lot == 0 && once == 0) continue;
    table.rows.push_back({cost_kind_words[k], money(each), money(lot), money(once)});
  }
  if (quote.inputs.overhead_added) {
    const double each = quote.cost.each.si - sum_of_kinds(plain_money(quote.inputs.each));
    const double lot = quote.cost.lot.si - sum_of_kinds(plain_money(quote.inputs.lot));
    const double once = quote.cost.once.si - sum_of_kinds(plain_money(quote.inputs.once));
    table.rows.push_back({"overhead", money(each), money(lot), money(once)});
  }
  table.rule_before_row = table.rows.size();
  table.rows.push_back({"together", figure(quote.cost.each.si, book.minor_digits),
                        figure(quote.cost.lot.si, book.minor_digits), figure(quote.cost.once.si, book.minor_digits)});
  return table;
}

}  // namespace

std::string price_text(const RateBook& book, const Quote& quote, std::size_t width) {
  struct Column {
    std::string heading;
    Money<> PriceFigures<double>::*figure;
    bool shown;
  };
  using F = PriceFigures<double>;
  const OrderTerms<double>& order = quote.inputs.order;
  const Column columns[] = {{"cost of a piece", &F::unit_cost, true},
                            {"unit price", &F::unit_price, true},
                            {"pieces", &F::pieces, true},
                            {"one-offs", &F::one_offs, true},
                            {"expedite", &F::expedite, order.expedite_asked},
                            {"to the minimum", &F::supplement, true},
                            {"freight", &F::freight, order.has_freight},
                            {"rounding", &F::list_rounding, order.list_rounded},
                            {"total " + book.currency, &F::total, true},
                            {"tax", &F::tax, order.taxed},
                            {"with tax", &F::total_with_tax, order.taxed}};
  TextTable table;
  table.headings = {"quantity"};
  for (const Column& column : columns)
    if (column.shown) table.headings.push_back(column.heading);
  table.right_aligned.assign(table.headings.size(), true);
  for (const QuotePrice& price : quote.prices) {
    std::vector<std::string> row{std::to_string(price.quantity)};
    for (const Column& column : columns)
      if (column.shown) row.push_back(figure((price.figures.*column.figure).si, book.minor_digits));
    table.rows.push_back(std::move(row));
  }
  std::string text = render(table, width);
  for (const PricedOption& option : quote.options) {
    text += "\noption ";
    append_printable(text, option.name);
    text += ", apart from the above\n" + price_text(book, option.quote, width);
  }
  return text;
}

std::string doubt_text(const RateBook& book, const Doubt& doubt) {
  const auto money = [&](double x) { return figure(x, book.minor_digits); };
  std::string text;
  if (doubt.samples > 0)
    text += fmt::format(
        "in doubt, total for {}: P10 {}, P50 {}, P90 {}; contingency of {} % covers the cost of 80 in 100\n",
        doubt.quantity, money(doubt.totals.p10), money(doubt.totals.p50), money(doubt.totals.p90),
        figure(doubt.contingency_p80.si / unit::percent.si, 1));
  constexpr std::size_t shown_drivers = 3;
  for (std::size_t i = 0; i < doubt.drivers.size() && i < shown_drivers; ++i) {
    const DoubtDriver& driver = doubt.drivers[i];
    text += i == 0 ? "moves it most: " : "; ";
    append_printable(
        text, fmt::format("{} ({} to {})", driver.words, money(driver.total_low.si), money(driver.total_high.si)));
  }
  return doubt.drivers.empty() ? text : text + "\n";
}

std::string estimate_text(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote,
                          const std::string& rates, std::size_t width) {
  return heading(book, job, quote, rates) + render(weldment_table(book, job, estimate, quote), width) +
         unwelded_text(book, piece_totals(job, estimate, quote).welding) + "\n" +
         render(cost_table(book, quote), width) +
         fmt::format("\nset-ups of a lot: {} min\n", figure(quote.setup_time.si / unit::min.si, 1)) +
         waiting_text(job, piece_totals(job, estimate, quote)) + method_text(book.method) + "\n" +
         price_text(book, quote, width);
}

}  // namespace seambook
