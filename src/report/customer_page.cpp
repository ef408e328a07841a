#include "report/customer_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

namespace words = customer_words;

constexpr std::uint16_t last_column = 5;

/// The page while it grows.
struct Page {
  const RateBook& book;
  const std::vector<const CostPage*>& costs;  // none: plain numbers
  Sheet& sheet;
  std::uint32_t row = 0;
};

/// A label and its text over the rest of the line.
void put_line(Page& page, const std::string& label, const std::string& text) {
  if (text.empty()) return;
  put(page.sheet, page.row, 0, label, Look::label);
  put(page.sheet, page.row, 1, text, Look::wrapped);
  page.sheet.merges.push_back({page.row++, 1, last_column});
}

void put_section(Page& page, const char* heading) {
  ++page.row;
  put(page.sheet, page.row++, 0, heading, Look::label);
}

void put_note(Page& page, const std::string& text) {
  put(page.sheet, page.row, 0, text, Look::note);
  page.sheet.merges.push_back({page.row++, 0, last_column});
}

void put_list(Page& page, const char* heading, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  put_section(page, heading);
  for (const std::string& line : lines) {
    put(page.sheet, page.row, 0, fmt::format(words::bullet, line), Look::wrapped);
    page.sheet.merges.push_back({page.row++, 0, last_column});
  }
}

/// What a piece consists of, in words.
std::vector<std::string> scope(const Job& job, Terms terms) {
  std::vector<std::string> lines;
  for (const Weldment& weldment : job.weldments) {
    std::string line = fmt::format("{:.0f} × {}", weldment.count.si.value, weldment.name);
    if (weldment.parts.si.source != no_source) line += ", " + fmt::format(words::parts, weldment.parts.si.value);
    if (weldment.mass.si.source != no_source)
      line += ", " + fmt::format(words::net_each, shown(weldment.mass.si.value, shown_in(terms, unit::kg).unit));
    if (weldment.free_issue) line += std::string(", ") + words::free_issue;
    lines.push_back(std::move(line));
  }
  return lines;
}

/// A column of prices: its figure on the cost page, its words, what it shows.
struct PriceColumn {
  const Figure* figure;
  const char* words;
  Money<> PriceFigures<double>::*member;
};

std::vector<PriceColumn> main_columns(const QuoteInputs<double>& in) {
  std::vector<PriceColumn> columns = {{&fig::unit_price, words::unit_price, &PriceFigures<double>::unit_price},
                                      {&fig::pieces_price, words::pieces, &PriceFigures<double>::pieces},
                                      {&fig::order_total, words::total, &PriceFigures<double>::total}};
  if (in.order.taxed) {
    columns.push_back({&fig::tax, words::tax, &PriceFigures<double>::tax});
    columns.push_back({&fig::total_with_tax, words::total_with_tax, &PriceFigures<double>::total_with_tax});
  }
  return columns;
}

std::vector<PriceColumn> other_columns(const QuoteInputs<double>& in) {
  std::vector<PriceColumn> columns = {{&fig::one_off_price, words::one_offs, &PriceFigures<double>::one_offs}};
  const auto add = [&](bool wanted, PriceColumn column) {
    if (wanted) columns.push_back(column);
  };
  add(in.order.expedite_asked, {&fig::expedite_price, words::expedite, &PriceFigures<double>::expedite});
  add(in.order.has_freight, {&fig::freight_price, words::freight, &PriceFigures<double>::freight});
  add(in.has_minimum, {&fig::supplement, words::supplement, &PriceFigures<double>::supplement});
  add(in.order.list_rounded, {&fig::list_rounding, words::list_rounding, &PriceFigures<double>::list_rounding});
  return columns;
}

/// The price of one quantity, of the job (0) or an option (from 1 on); `figure` is what it is on the cost page.
struct PriceShown {
  std::size_t priced = 0, quantity = 0;
  const Figure* figure = nullptr;
  double value = 0;
};

void put_price(Page& page, std::uint16_t column, const PriceShown& price, int decimals, Look look) {
  if (page.costs.empty()) {
    const double rounded = round_decimal(price.value, decimals);
    page.sheet.cells.push_back({page.row, column, rounded, look, number_format(decimals)});
    return;
  }
  const CostPage& cost = *page.costs[price.priced];
  const auto from = static_cast<std::uint16_t>(cost.first_quantity_column + price.quantity);
  put_formula(
      page.sheet, page.row, column,
      {fmt::format("{}!{}", sheet_reference(cost.sheet.name), cell_name(cost.price_rows.at(price.figure), from)),
       price.value},
      decimals, look);
}

void put_headings(Page& page, const std::vector<PriceColumn>& columns) {
  put(page.sheet, page.row, 0, words::quantity, Look::heading);
  for (std::size_t c = 0; c < columns.size(); ++c)
    put(page.sheet, page.row, static_cast<std::uint16_t>(c + 1),
        fmt::format(words::money, columns[c].words, page.book.currency), Look::heading);
  ++page.row;
}

/// One row a quantity.
void put_rows(Page& page, const Quote& quote, std::size_t priced, const std::vector<PriceColumn>& columns) {
  for (std::size_t q = 0; q < quote.prices.size(); ++q, ++page.row) {
    const QuotePrice& price = quote.prices[q];
    put_price(page, 0, {priced, q, &fig::quantity, static_cast<double>(price.quantity)}, 0, Look::figure);
    for (std::size_t c = 0; c < columns.size(); ++c) {
      const bool total = columns[c].figure == &fig::order_total || columns[c].figure == &fig::total_with_tax;
      put_price(page, static_cast<std::uint16_t>(c + 1),
                {priced, q, columns[c].figure, (price.figures.*columns[c].member).si}, page.book.minor_digits,
                total ? Look::subtotal : Look::figure);
    }
  }
}

void put_table(Page& page, const Quote& quote, const std::vector<PriceColumn>& columns) {
  put_headings(page, columns);
  put_rows(page, quote, 0, columns);
}

/// What an option is: its own words, what it brings, what it leaves out.
std::string option_words(const Job& job, const JobOption& option, Terms terms) {
  std::vector<std::string> parts;
  if (!option.text.empty()) parts.push_back(option.text);
  for (std::string& line : scope(option.part, terms)) parts.push_back(std::move(line));
  for (const std::size_t w : option.leaves_out) parts.push_back(fmt::format(words::left_out, job.weldments[w].name));
  return fmt::format("{}", fmt::join(parts, "; "));
}

/// Each option's price for each quantity, more or less than the job's own.
void put_options(Page& page, const Job& job, const Quote& quote) {
  if (job.options.empty()) return;
  using F = PriceFigures<double>;
  std::vector<PriceColumn> columns = {{&fig::unit_price, words::option_unit, &F::unit_price},
                                      {&fig::pieces_price, words::option_pieces, &F::pieces},
                                      {&fig::one_off_price, words::option_once, &F::one_offs}};
  if (quote.inputs.order.expedite_asked) columns.push_back({&fig::expedite_price, words::expedite, &F::expedite});
  columns.push_back({&fig::order_total, words::option_total, &F::total});
  put_section(page, words::options);
  for (std::size_t i = 0; i < job.options.size(); ++i) {
    put_line(page, job.options[i].name, option_words(job, job.options[i], page.book.terms));
    put_headings(page, columns);
    put_rows(page, quote.options[i].quote, i + 1, columns);
  }
}

/// Says that the minimum charge was reached, where it was.
void put_minimum_note(Page& page, const Quote& quote) {
  const auto raised = [](const QuotePrice& price) { return price.figures.supplement.si > 0; };
  const bool any = std::any_of(quote.prices.begin(), quote.prices.end(), raised);
  const std::string text = fmt::format(words::minimum_note, page.book.currency);
  if (page.costs.empty()) {
    if (any) put_note(page, text);
    return;
  }
  const std::uint32_t from = page.costs.front()->price_rows.at(&fig::supplement);
  const std::uint16_t first = page.costs.front()->first_quantity_column;
  const auto last = static_cast<std::uint16_t>(first + quote.prices.size() - 1);
  put_formula(
      page.sheet, page.row++, 0,
      {fmt::format("IF(SUM({}!{}:{})>0,\"{}\",\"\")", cost_sheet, cell_name(from, first), cell_name(from, last), text),
       any ? text : std::string()},
      0, Look::note);
}

void put_heading(Page& page, const Job& job, const Quote& quote) {
  put(page.sheet, 0, 0, fmt::format(words::title, job.name), Look::title);
  page.row = 1;
  put_line(page, words::number, job.name);
  put_line(page, words::revision, job.revision.empty() ? "0" : job.revision);
  put_line(page, words::date, iso(quote.date));
  put_line(page, words::valid_until, iso(quote.valid_until));
  put_line(page, words::drawings,
           job.drawings.empty() ? words::no_drawing : fmt::format("{}", fmt::join(job.drawings, "; ")));
  put_line(page, words::from, page.book.shop);
  put_line(page, words::customer, job.customer);
  put_line(page, words::work, job.title);
  put_line(page, words::piece, fmt::format("{}", fmt::join(scope(job, page.book.terms), "; ")));
}

std::string tax_basis(const RateBook& book, const Job& job, const QuoteInputs<double>& in) {
  if (!job.order.untaxed.empty()) return fmt::format(words::untaxed, job.order.untaxed);
  if (!in.order.taxed) return book.prices.tax;
  return fmt::format(words::taxed, shown(in.order.tax_rate.si, unit::percent), book.prices.tax);
}

void put_terms(Page& page, const Job& job, const Quote& quote) {
  put_section(page, words::terms);
  put_line(page, words::tax, tax_basis(page.book, job, quote.inputs));
  put_line(page, words::delivery, job.delivery.empty() ? page.book.prices.delivery : job.delivery);
  put_line(page, words::payment, page.book.prices.payment);
  put_line(page, words::validity, fmt::format(words::days, page.book.prices.valid_days, iso(quote.valid_until)));
  put_line(page, words::rounding, words::how_rounded);
  put_line(page, words::standards, words::no_conformity);
}

}  // namespace

Sheet customer_page(const RateBook& book, const Job& job, const Quote& quote,
                    const std::vector<const CostPage*>& costs) {
  Sheet sheet;
  sheet.name = quote_sheet;
  Page page{book, costs, sheet};
  put_heading(page, job, quote);
  ++page.row;
  put_table(page, quote, main_columns(quote.inputs));
  put_line(page, words::lead_time, job.lead_time.empty() ? words::no_lead_time : job.lead_time);
  if (job.due) put_line(page, words::wanted_by, iso(*job.due));
  put_section(page, words::in_the_total);
  put_table(page, quote, other_columns(quote.inputs));
  if (quote.inputs.has_minimum) put_minimum_note(page, quote);
  if (quote.inputs.order.list_rounded) put_note(page, words::rounding_note);
  put_options(page, job, quote);
  put_list(page, words::included, job.inclusions);
  put_list(page, words::not_included, job.exclusions);
  std::vector<std::string> assumed = job.stated_assumptions;
  assumed.insert(assumed.end(), job.qualifications.begin(), job.qualifications.end());
  put_list(page, words::assumptions, assumed);
  put_terms(page, job, quote);
  sheet.column_widths = {16, 16, 16, 16, 16, 16};
  sheet.repeat_rows = {0, 0};
  sheet.footer = fmt::format(words::footer, book.shop, job.name);
  return sheet;
}

Workbook customer_workbook(const RateBook& book, const Job& job, const Quote& quote) {
  Workbook workbook;
  workbook.title = fmt::format(words::title, job.name);
  workbook.author = book.shop;
  workbook.letter_paper = book.letter_paper;
  workbook.year = quote.date.year, workbook.month = quote.date.month, workbook.day = quote.date.day;
  workbook.sheets.push_back(customer_page(book, job, quote, {}));
  return workbook;
}

}  // namespace seambook
