#include "commands/schema.hpp"

#include "commands/output.hpp"
#include "report/schema.hpp"

namespace seambook {
namespace {

struct FileKind {
  const char *word, *title, *about;
  std::vector<FieldInfo> (*table)();
};
constexpr FileKind file_kinds[] = {
    {"job", "A job", "Weldments with their joints, and what a quote and a plan have to know of them.", job_fields},
    {"rates", "A file of a rate book",
     "A rate book is a folder of such files; each section stands in one of them, lists may go on in the next.",
     rate_fields},
    {"day", "A day", "What the day brought, for 'seambook plan --day'.", day_fields},
};

}  // namespace

int run_schema(const Arguments& arguments) {
  for (const FileKind& kind : file_kinds) {
    if (arguments.topic != kind.word) continue;
    const auto make = arguments.reference ? key_reference : file_schema;
    write_result(make(kind.title, kind.about, kind.table()));
    return exit_code::done;
  }
  write_result(document_schema(arguments.topic));
  return exit_code::done;
}

}  // namespace seambook
