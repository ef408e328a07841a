#include "report/overview_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "quote/piece_totals.hpp"
#include "report/edits_page.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t prices_heading = 4;
struct OverviewAt {
  enum Column : std::uint16_t { quantity, unit_price, total, cost, left, share, floor, setups, columns };
};
constexpr std::size_t shown_drivers = 3;

/// Rows of the hours, fixed before the price table refers to them. The hours of an order hold each piece's, its lot's.
struct HourRows {
  std::uint32_t heading = 0, floor = 0, arc = 0, fit_up = 0, setups = 0, work = 0, waiting = 0;
};

HourRows hour_rows(std::size_t quantities) {
  const std::uint32_t heading = prices_heading + static_cast<std::uint32_t>(quantities) + 2;
  return {heading, heading + 1, heading + 2, heading + 3, heading + 4, heading + 5, heading + 6};
}

/// Hours as the program has them, beside the formulas.
struct Hours {
  double floor = 0, arc = 0, fit_up = 0, setups = 0, work = 0, waiting = 0;
};

Hours hours_of(const Job& job, const Estimate& estimate, const Quote& quote) {
  Time<> fit_up, work;
  for (const RowFigures<double>& r : estimate.joints)
    fit_up = fit_up + r.joint.labour.fit_up + r.joint.labour.fit_up_extra + r.joint.labour.tack;
  for (const WeldmentFigures<double>& w : estimate.weldments) fit_up = fit_up + w.parts;
  for (const JobWork& line : job.work)
    if (line.attended) work = work + Time<>{line.time.si.value * line.count};
  const PieceTotals piece = piece_totals(job, estimate, quote);
  const auto h = [](Time<> t) { return t.si / unit::h.si; };
  return {h(piece.floor), h(piece.welding.arc), h(fit_up), h(quote.setup_time), h(work), h(piece.waiting)};
}

std::string in_hours(const std::string& minutes) { return fmt::format("({})/60", minutes); }

void put_hours(Sheet& sheet, const HourRows& rows, const Hours& hours, const ShopPages& pages) {
  put(sheet, rows.heading, 0, "Hours behind it", Look::heading);
  put(sheet, rows.heading, 1, "h", Look::heading);
  const auto line = [&](std::uint32_t row, const char* words, const std::string& minutes, double value) {
    put(sheet, row, 0, words);
    put_formula(sheet, row, 1, {in_hours(minutes), value}, 2);
  };
  line(rows.floor, "floor time of a piece",
       together({joint_sum(pages, fig::floor), weldment_sum(pages, fig::weldment_floor)}), hours.floor);
  line(rows.arc, "of it arc or beam time", together({joint_sum(pages, fig::arc)}), hours.arc);
  line(rows.fit_up, "of it fit-up and tacking, without rest",
       together({joint_sum(pages, fig::fit_up_min), joint_sum(pages, fig::fit_up_extra_min),
                 joint_sum(pages, fig::tack_min), weldment_sum(pages, fig::parts_min)}),
       hours.fit_up);
  line(rows.setups, "set-ups of a lot", together({setup_sum(pages, fig::change)}), hours.setups);
  line(rows.work, "work for the job as a whole", together({job_work_minutes(pages.work)}), hours.work);
  line(rows.waiting, "waiting of a piece, nobody is charged",
       together({joint_sum(pages, fig::waiting_min), weldment_sum(pages, fig::waiting_min)}), hours.waiting);
}

/// One row a quantity: links to the cost page, and the hours of the order.
void put_prices(Sheet& sheet, const RateBook& book, const Quote& quote, const CostPage& cost, const HourRows& rows,
                const Hours& hours) {
  const auto money = [&](const char* words) { return fmt::format("{} ({})", words, book.currency); };
  const std::array<std::string, OverviewAt::columns> headings = {
      "quantity", money("unit price"),     money("total"), money("cost"), money("left over cost"),
      "of total", "floor and set-ups (h)", "set-ups (h)"};
  for (std::uint16_t c = 0; c < OverviewAt::columns; ++c) put(sheet, prices_heading, c, headings[c], Look::heading);
  for (std::uint32_t q = 0; q < quote.prices.size(); ++q) {
    const std::uint32_t row = prices_heading + 1 + q;
    const auto column = static_cast<std::uint16_t>(cost.first_quantity_column + q);
    const auto link = [&](std::uint32_t from) { return fmt::format("{}!{}", cost_sheet, cell_name(from, column)); };
    const PriceFigures<double>& f = quote.prices[q].figures;
    const double quantity = static_cast<double>(quote.prices[q].quantity);
    put_formula(sheet, row, OverviewAt::quantity, {link(cost.quantity_row), quantity}, 0);
    put_formula(sheet, row, OverviewAt::unit_price, {link(cost.unit_price_row), f.unit_price.si}, 2);
    put_formula(sheet, row, OverviewAt::total, {link(cost.total_row), f.total.si}, 2);
    put_formula(sheet, row, OverviewAt::cost, {link(cost.order_cost_row), f.cost.si}, 2);
    put_formula(sheet, row, OverviewAt::left, {link(cost.left_row), f.left.si}, 2);
    const std::string total = cell_name(row, OverviewAt::total), left = cell_name(row, OverviewAt::left);
    put_share(sheet, row, OverviewAt::share,
              {fmt::format("IF({0}>0,{1}/{0}*100,0)", total, left), f.total.si > 0 ? f.left.si / f.total.si * 100 : 0});
    put_formula(sheet, row, OverviewAt::floor,
                {fmt::format("{}*{}+{}+{}", cell_name(row, OverviewAt::quantity), cell_name(rows.floor, 1, true),
                             cell_name(rows.setups, 1, true), cell_name(rows.work, 1, true)),
                 quantity * hours.floor + hours.setups + hours.work},
                2);
    put_formula(sheet, row, OverviewAt::setups, {cell_name(rows.setups, 1, true), hours.setups}, 2);
  }
}

/// Ratios in which an experienced eye sees whether an estimate is of this world. A ratio to nothing shows as 0.
std::uint32_t put_reality(Sheet& sheet, const RateBook& book, const Estimate& estimate, const Quote& quote,
                          const HourRows& rows, const Hours& hours, const ShopPages& pages) {
  std::uint32_t row = rows.waiting + 2;
  put(sheet, row, 0, "What that says", Look::heading);
  put(sheet, row, 1, "", Look::heading);
  const auto ratio = [&](const std::string& words, const std::string& over, const std::string& under, double a,
                         double b, int decimals) {
    put(sheet, ++row, 0, words);
    put_formula(sheet, row, 1, {fmt::format("IF({0}>0,{1}/{0},0)", under, over), b > 0 ? a / b : 0}, decimals);
  };
  const std::string floor = cell_name(rows.floor, 1), arc = cell_name(rows.arc, 1);
  ratio("arc or beam time, share of floor time (%)", arc + "*100", floor, hours.arc * 100, hours.floor, 1);
  ratio("fit-up and tacking for an hour of arc (h)", cell_name(rows.fit_up, 1), arc, hours.fit_up, hours.arc, 2);
  double mass = 0;
  for (const WeldmentFigures<double>& w : estimate.weldments) mass += w.mass.si;
  if (mass <= 0) return row + 2;
  const Unit shown = shown_in(book.terms, unit::kg).unit;
  mass /= shown.si;
  put(sheet, ++row, 0, fmt::format("net mass of a piece ({})", shown.word));
  put_formula(sheet, row, 1, {together({weldment_sum(pages, fig::weldment_mass)}), mass}, 1);
  const std::string mass_cell = cell_name(row, 1);
  ratio(book.terms == Terms::aws ? "floor hours per 1000 lb" : "floor hours a tonne", floor + "*1000", mass_cell,
        hours.floor * 1000, mass, 1);
  ratio(fmt::format("unit price by net mass ({}/{})", book.currency, shown.word),
        cell_name(prices_heading + 1, OverviewAt::unit_price), mass_cell, quote.prices.front().figures.unit_price.si,
        mass, 2);
  return row + 2;
}

/// Where the total lies and what moves it, from the page of what is in doubt; gives the row after.
std::uint32_t put_doubt(Sheet& sheet, std::uint32_t row, const RateBook& book, const Doubt& doubt) {
  const auto line = [&](const std::string& words, double low, double high) {
    put(sheet, ++row, 0, words, Look::wrapped);
    put_number(sheet, row, 1, std::min(low, high), book.minor_digits, Look::frozen);
    put_number(sheet, row, 2, std::max(low, high), book.minor_digits, Look::frozen);
  };
  put(sheet, row, 0, fmt::format("What moves the total for {} most", doubt.quantity), Look::heading);
  put(sheet, row, 1, fmt::format("from ({})", book.currency), Look::heading);
  put(sheet, row, 2, fmt::format("to ({})", book.currency), Look::heading);
  for (std::size_t i = 0; i < doubt.drivers.size() && i < shown_drivers; ++i)
    line(doubt.drivers[i].words, doubt.drivers[i].total_low.si, doubt.drivers[i].total_high.si);
  if (doubt.samples > 0) line("all in doubt at once, P10 to P90", doubt.totals.p10, doubt.totals.p90);
  put(sheet, ++row, 0, "as calculated, see the page Doubt; run again after a change", Look::note);
  return row + 2;
}

void put_findings(Sheet& sheet, std::uint32_t row, const std::vector<Diagnostic>& findings) {
  put(sheet, row, 0, "Look again", Look::heading);
  if (findings.empty()) put(sheet, row + 1, 0, "nothing was found", Look::note);
  for (const Diagnostic& d : findings) {
    ++row;
    sheet.merges.push_back({row, 0, OverviewAt::columns - 1});
    put(sheet, row, 0, d.message + (d.hint.empty() ? "" : "; " + d.hint), Look::warning);
  }
}

void put_chart(Sheet& sheet, std::uint32_t row) {
  const auto range = [&](std::uint16_t column) {
    return fmt::format("{}!{}:{}", cost_sheet, cell_name(cost_at::first_kind, column, true),
                       cell_name(cost_at::first_kind + cost_kinds - 1, column, true));
  };
  sheet.charts.push_back({ChartKind::bar,
                          row,
                          3,
                          "Where the cost of a piece goes",
                          "",
                          {{"each piece", range(cost_at::words), range(cost_at::each)}},
                          460,
                          330});
}

}  // namespace

Sheet overview_page(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote,
                    const std::vector<Diagnostic>& findings, const CostPage& cost, const ShopPages& pages) {
  const HourRows rows = hour_rows(quote.prices.size());
  const Hours hours = hours_of(job, estimate, quote);
  Sheet sheet;
  sheet.name = overview_sheet;
  put_title(sheet, fmt::format("Overview of {}", job.title.empty() ? job.name : job.title),
            "For the shop only: hours and margin stand here. Print the Quote page for the customer.");
  put(sheet, 2, 0, "these sheets are", Look::label);
  put_formula(sheet, 2, 1, {edits_state_cell, std::string(edits_none)}, 0, Look::label);
  put_prices(sheet, book, quote, cost, rows, hours);
  put_hours(sheet, rows, hours, pages);
  std::uint32_t row = put_reality(sheet, book, estimate, quote, rows, hours, pages);
  if (quote.doubt) row = put_doubt(sheet, row, book, *quote.doubt);
  put_findings(sheet, row, findings);
  put_chart(sheet, rows.heading);
  sheet.column_widths = {42, 15, 15, 15, 15, 12, 14, 12};
  sheet.frozen_rows = 3;
  sheet.landscape = true, sheet.one_page = true;
  return sheet;
}

}  // namespace seambook
