// Writes the sample workbook of the report tests, for the office suite to recalculate and for people to look at.
#include <exception>
#include <iostream>

#include "../report/sample_book.hpp"
#include "report/xlsx.hpp"

int main(int count, char** arguments) {
  if (count != 2) {
    std::cerr << "usage: sample FILE.xlsx\n";
    return 2;
  }
  try {
    seambook::write_xlsx(seambook::sample_book(), arguments[1]);
  } catch (const std::exception& fault) {
    std::cerr << fault.what() << '\n';
    return 3;
  }
}
