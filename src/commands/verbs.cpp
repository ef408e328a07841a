#include "commands/verbs.hpp"

#include <array>

namespace seambook {
namespace {

constexpr VerbInfo verb_table[] = {
    {"check", "read jobs and the rate book, and tell of every fault; writes nothing",
     "Every fault is shown at its line, all in one run. What an estimator would query is told as a warning; --strict\n"
     "makes warnings count as faults.",
     "seambook check jobs/*.yaml\n"
     "seambook check - < bracket.yaml\n"},
    {"estimate", "times, materials and cost by weldment and kind",
     "Figures are for one piece. Beside the elements of labour stand fillers, gases, energy and cost by kind.",
     "seambook estimate jobs/bracket.yaml\n"
     "seambook estimate jobs/bracket.yaml --json > bracket.json\n"},
    {"explain", "where each figure of a job comes from",
     "Each formula is shown with its numbers, each number with the line of the file that it comes from, or with the\n"
     "assumption that it rests on. Without JOINT the whole job is explained, with what moves its price most.",
     "seambook explain jobs/bracket.yaml bracket/1\n"},
    {"quote", "write a quote workbook for each job",
     "The workbook is <job>-quote.xlsx. Every figure on its sheets is a formula over the values that may be changed.\n"
     "A workbook that is there already is not overwritten without --force.",
     "seambook quote jobs/bracket.yaml --date 2026-05-18 --out quotes\n"
     "seambook quote jobs/bracket.yaml --against last-week.json\n"
     "seambook quote jobs/bracket.yaml --customer-only\n"
     "seambook quote --jobs 4 --shard 2/8 jobs/*.yaml\n"},
    {"plan", "plan the work of all jobs: who does what, where and when, least late and with least set-up",
     "The workbook is plan-<date>.xlsx: the day, bars, a list for each station and shift, set-ups, travellers. The "
     "same\n"
     "files give the same plan. With --verify the exit code is 1 when the plan breaks a rule.",
     "seambook plan jobs/*.yaml --date 2026-05-11\n"
     "seambook plan jobs/*.yaml --day today.yaml --from monday.json --now 2026-05-12T09:00\n"
     "seambook plan jobs/*.yaml --verify monday.json\n"},
    {"compare", "each family of seams by every process that suits, and whether the rate book's investment pays",
     "The workbook is <job>-compare.xlsx. Jobs say how often a year they come (per_year); the rate book holds the\n"
     "investment.",
     "seambook compare jobs/wash-down-cabinet.yaml\n"},
    {"rates", "look a rate book over: entries that nothing uses, prices that are old, figures in doubt",
     "Entries count as used when a job that is named, or another used entry, names them; without jobs nothing is said\n"
     "of use. A price is old when the latest date in its 'source' is further back than --older-than months; one\n"
     "without a date is told of once for each list. In doubt are figures that rest on assumptions alone, and those\n"
     "outside what the book's own checks call usual. The exit code is 0 whatever is found.",
     "seambook rates check\n"
     "seambook rates check rates jobs/*.yaml\n"
     "seambook rates check rates --older-than 6 --date 2026-05-18\n"},
    {"schema", "JSON Schema (draft-07) of a file that is read, or of what --json prints",
     "job, rates and day are the files of the author; their schemas come from the tables by which they are read. The\n"
     "names of commands stand for the documents that these print with --json. An editor with a YAML language server\n"
     "reads the schema that a comment in the file names: # yaml-language-server: $schema=job.schema.json",
     "seambook schema job > job.schema.json\n"
     "seambook schema rates --reference > KEYS.md\n"
     "seambook schema quote\n"},
    {"completion", "completion of commands and options for a shell",
     "The script is printed; installed packages bring both.",
     "source <(seambook completion bash)\n"
     "seambook completion zsh > ~/.zfunc/_seambook\n"},
    {"manual", "the manual page of the program or of one command",
     "The page is printed in the language of man pages (roff).", "seambook manual quote | man -l -\n"},
    {"new", "write something to begin with: a job with a rate book, a take-off to fill in, a job around a take-off",
     "DIR gets first-job.yaml and a rate book of an invented shop, both with remarks, that run as they are. --takeoff\n"
     "writes a workbook with a row for each joint; --from-takeoff a job that draws its joints from such a table, "
     "beside\n"
     "it or in DIR, and a rate book where there is none. Nothing that exists is overwritten.",
     "seambook new shop\n"
     "seambook new --takeoff joints.xlsx\n"
     "seambook new --from-takeoff joints.xlsx\n"},
};

}  // namespace

std::span<const VerbInfo> verbs() { return verb_table; }

}  // namespace seambook
