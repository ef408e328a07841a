// Every cell that may be changed stands among the edits, with its file, its line and the line to paste back.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "quoted.hpp"
#include "report/edits_page.hpp"
#include "report/quote_book.hpp"
#include "report/sheet_rows.hpp"

using namespace seambook;

namespace {

struct Book {
  test::LoadedJob loaded;
  Workbook workbook;
};

Book book_of(test::LoadedJob loaded) {
  test::Quoted q = test::quoted(std::move(loaded));
  Workbook workbook = quote_workbook(*q.loaded.book, *q.loaded.job, q.estimated, q.work, q.quote, q.loaded.diagnostics);
  hold_rows(workbook);  // what they are made from moves on
  return {std::move(q.loaded), std::move(workbook)};
}

const Sheet& edits_in(const Workbook& workbook) {
  return *std::find_if(workbook.sheets.begin(), workbook.sheets.end(),
                       [](const Sheet& sheet) { return sheet.name == edits_sheet; });
}

std::set<std::string> formulas_of(const Sheet& sheet) {
  std::set<std::string> out;
  for (const Cell& cell : sheet.cells)
    if (const auto* formula = std::get_if<Formula>(&cell.content)) out.insert(formula->text);
  return out;
}

bool some_holds(const std::set<std::string>& formulas, const std::string& text) {
  return std::any_of(formulas.begin(), formulas.end(),
                     [&](const std::string& formula) { return formula.find(text) != std::string::npos; });
}

}  // namespace

TEST_CASE("every input cell of the example quotes stands among the edits") {
  for (const char* file : {"bracket.yaml", "brewhouse-platform.yaml", "wash-down-cabinet.yaml",
                           "marlgannet/machine-base.yaml", "marlgannet/coolant-tank.yaml", "saltbriar/ramp.yaml"}) {
    CAPTURE(file);
    const Book made = book_of(test::load_job(file));
    const std::set<std::string> formulas = formulas_of(edits_in(made.workbook));
    std::size_t inputs = 0;
    for (const Sheet& sheet : made.workbook.sheets) {
      for (const Cell& cell : sheet.cells) {
        if (cell.look != Look::input) continue;
        ++inputs;
        const std::string reference = sheet_reference(sheet.name) + "!" + cell_name(cell.row, cell.column);
        CAPTURE(reference);
        CHECK(formulas.contains(reference));
      }
    }
    CHECK(inputs > 40);
  }
}

TEST_CASE("lines to paste back name the key, a point and the unit, and both numbers of a pair") {
  const std::string job =
      "format: 1\njob: pairs\nquantities: [2, 7]\nweldments:\n"
      "  - {name: frame, parts: 3, base_metal: S235, bought: [{what: plates, kind: base_metal, price: 38 EUR each}],\n"
      "     joints: [{weld: fillet, legs: [6 mm, 8 mm], thickness: 10 mm, length: 240 mm, procedure: CG-F6}]}\n";
  const Book made = book_of(test::load_text(job));
  const Sheet& sheet = edits_in(made.workbook);
  const std::set<std::string> formulas = formulas_of(sheet);
  CHECK(some_holds(formulas, "\"length: \"&SUBSTITUTE(D"));
  CHECK(some_holds(formulas, "\"legs: [\"&SUBSTITUTE(D"));
  CHECK(some_holds(formulas, "\"parts: \"&SUBSTITUTE(D"));
  CHECK(some_holds(formulas, "&\" EUR each\""));
  CHECK(some_holds(formulas, "\"quantities: [\"&SUBSTITUTE(D"));
  CHECK(some_holds(formulas, "\"rate: \"&SUBSTITUTE(D"));
  std::set<std::string> texts;
  for (const Cell& cell : sheet.cells)
    if (const auto* text = std::get_if<std::string>(&cell.content)) texts.insert(*text);
  CHECK(texts.contains("job.yaml:6"));
  CHECK(texts.contains("frame 1: joint line"));
  CHECK(texts.contains("frame plates: price"));
  CHECK(texts.contains("labour welder: rate"));
  // Nothing is changed yet.
  for (const Cell& cell : sheet.cells)
    if (cell.row == 2 && cell.column == 1)
      CHECK(std::get<std::string>(std::get<Formula>(cell.content).value) == edits_none);
}

TEST_CASE("an option's inputs go by their own place, and money has its currency") {
  const Book made =
      book_of(test::load_text("format: 1\njob: options\nbase_metal: S235\noptions: [{name: footed}]\nweldments:\n"
                              "  - {name: frame, mass: 9 kg, free_issue: true, free_issue_value: 64 EUR,\n"
                              "     joints: [{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}]}\n"
                              "  - {name: foot, option: footed, bought: 3 EUR each,\n"
                              "     joints: [{id: F1, weld: fillet, leg: 4 mm, thickness: 6 mm, length: 90 mm}]}\n"));
  const Sheet& sheet = edits_in(made.workbook);
  const auto text_at = [&](std::uint32_t row, std::uint16_t column) {
    for (const Cell& cell : sheet.cells) {
      if (cell.row != row || cell.column != column) continue;
      if (const auto* formula = std::get_if<Formula>(&cell.content)) return formula->text;
      if (const auto* text = std::get_if<std::string>(&cell.content)) return *text;
    }
    return std::string();
  };
  std::size_t found = 0;
  for (const Cell& cell : sheet.cells) {
    const auto* words = std::get_if<std::string>(&cell.content);
    if (words == nullptr || cell.column != 1 || *words != "foot F1: joint line") continue;
    ++found;
    CHECK(text_at(cell.row, 0) == "job.yaml:9");
    CHECK(text_at(cell.row, 4).find("\"length: \"&SUBSTITUTE") != std::string::npos);
  }
  CHECK(found == 1);
  const std::set<std::string> formulas = formulas_of(sheet);
  CHECK(std::any_of(formulas.begin(), formulas.end(), [](const std::string& formula) {
    return formula.find("\"free_issue_value: \"&SUBSTITUTE") != std::string::npos && formula.ends_with("&\" EUR\")");
  }));
}
