#include "report/xlsx.hpp"

#include <fcntl.h>
#include <unistd.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <new>
#include <stdexcept>
#include <system_error>
#include <utility>

#include "report/xlsx_checks.hpp"
#include "report/xlsx_errors.hpp"
#include "report/xlsx_looks.hpp"
#include "report/xlsx_sheet.hpp"

namespace seambook {
namespace {

struct FreeBook {
  void operator()(lxw_workbook* book) const { lxw_workbook_free(book); }
};
using BookPointer = std::unique_ptr<lxw_workbook, FreeBook>;

// Noon, so that no time zone moves the day. Without a date the library would write the clock's.
time_t creation_time(const Workbook& workbook) {
  const std::chrono::year_month_day date{std::chrono::year(workbook.year),
                                         std::chrono::month(static_cast<unsigned>(workbook.month)),
                                         std::chrono::day(static_cast<unsigned>(workbook.day))};
  const auto noon = std::chrono::sys_days(date) + std::chrono::hours(12);
  return std::chrono::duration_cast<std::chrono::seconds>(noon.time_since_epoch()).count();
}

void set_properties(lxw_workbook* book, const Workbook& workbook) {
  std::string title = property_text(workbook.title), author = property_text(workbook.author),
              subject = property_text(workbook.subject);
  lxw_doc_properties properties{};
  properties.title = title.data();
  properties.author = author.data();
  properties.subject = subject.data();
  properties.created = creation_time(workbook);
  must(workbook_set_properties(book, &properties));
}

void define_names(lxw_workbook* book, const Workbook& workbook) {
  for (const DefinedName& name : workbook.names) {
    must(workbook_define_name(book, name.name.c_str(), ("=" + name.target).c_str()));
  }
}

// Columns are measured in digits of the workbook's first font. The library's own is missing on many systems, where its
// stand-in is a third wider: pages would be cut that fit elsewhere.
void measure_columns_in_page_font(lxw_workbook* book) {
  lxw_format* first = STAILQ_FIRST(book->formats);
  format_set_font_name(first, "Arial");
  format_set_font_size(first, 10);
}

// The system's own answer to "may this be written?"; the library would only say that it failed.
void require_writable(const std::string& path) {
  const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0666);
  if (file < 0) throw std::system_error(errno, std::generic_category(), path);
  ::close(file);
}

// While the library closes a book it prints its troubles to standard error; the program reports them itself. Other
// threads print meanwhile, so this thread's words alone are dropped.
thread_local bool silenced = false;

ssize_t write_unless_silenced(void*, const char* text, std::size_t size) {
  return silenced ? static_cast<ssize_t>(size) : ::write(STDERR_FILENO, text, size);
}

// The C library lets the stream be replaced; done before main, while there is one thread.
const bool standard_error_replaced = [] {
  FILE* stream = ::fopencookie(nullptr, "w", {nullptr, write_unless_silenced, nullptr, nullptr});
  if (stream == nullptr) return false;
  std::setvbuf(stream, nullptr, _IONBF, 0);
  stderr = stream;
  return true;
}();

// The library does not look whether what it writes to its parts arrives. So the rows of a page, which it has written by
// now, are looked at,
void require_rows_written(const lxw_worksheet* page, const std::string& folder) {
  FILE* rows = page->optimize_tmpfile;
  if (rows == nullptr || (std::fflush(rows) == 0 && std::ferror(rows) == 0)) return;
  throw std::system_error(errno != 0 ? errno : EIO, std::generic_category(), folder);
}

// and there must be room for the largest whole page, which it makes of them while it packs.
std::uint64_t room_for(const lxw_worksheet* page, const Sheet& sheet) {
  constexpr std::size_t around_rows = 32768, a_merge = 64, a_rule = 1024, most_rules = 255;
  const long rows = page->optimize_tmpfile != nullptr ? std::ftell(page->optimize_tmpfile) : 0;
  return static_cast<std::uint64_t>(std::max(rows, 0L)) + around_rows + a_merge * sheet.merges.size() +
         a_rule * (std::min(sheet.validations.size(), most_rules) + sheet.highlights.size());
}

void require_room(std::uint64_t bytes, const std::string& folder) {
  std::string name = folder + "/seambook-room-XXXXXX";
  const int file = ::mkstemp(name.data());
  if (file < 0) throw std::system_error(errno, std::generic_category(), folder);
  ::unlink(name.c_str());
  const int code = ::posix_fallocate(file, 0, static_cast<off_t>(bytes));
  ::close(file);
  if (code != 0) throw std::system_error(code, std::generic_category(), folder);
}

void close_book(BookPointer book, const std::string& path) {
  silenced = true;
  errno = 0;
  const lxw_error code = workbook_close(book.release());  // frees the book whether or not it succeeds
  const int system_code = errno;
  silenced = false;
  if (code == LXW_NO_ERROR) return;
  if (code == LXW_ERROR_MEMORY_MALLOC_FAILED) throw std::bad_alloc();
  if (code >= LXW_ERROR_FEATURE_NOT_SUPPORTED) must(code);
  throw std::system_error(system_code != 0 ? system_code : EIO, std::generic_category(), path);
}

}  // namespace

void must(int code) {
  if (code == LXW_NO_ERROR) return;
  if (code == LXW_ERROR_MEMORY_MALLOC_FAILED) throw std::bad_alloc();
  throw std::invalid_argument(std::string("spreadsheet library: ") + lxw_strerror(static_cast<lxw_error>(code)));
}

void write_xlsx(const Workbook& workbook, const std::filesystem::path& path, const std::filesystem::path& folder) {
  check_writable(workbook);
  require_writable(path.string());
  std::string parts = folder.empty() ? "." : folder.string();
  lxw_workbook_options options{};
  options.tmpdir = parts.data();
  options.constant_memory = LXW_TRUE;  // a row is written as soon as the next one begins
  BookPointer book(workbook_new_opt(path.c_str(), &options));
  if (book == nullptr) throw std::bad_alloc();
  measure_columns_in_page_font(book.get());
  set_properties(book.get(), workbook);
  Looks looks{book.get(), {}, nullptr};
  std::uint64_t room = 0;
  for (const Sheet& sheet : workbook.sheets) {
    lxw_worksheet* page = workbook_add_worksheet(book.get(), sheet.name.c_str());
    if (page == nullptr) throw std::bad_alloc();
    write_sheet(looks, page, sheet, workbook.letter_paper);
    require_rows_written(page, parts);
    room = std::max(room, room_for(page, sheet));
  }
  define_names(book.get(), workbook);
  require_room(room, parts);
  close_book(std::move(book), path.string());
}

}  // namespace seambook
