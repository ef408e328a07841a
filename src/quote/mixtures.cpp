#include "quote/mixtures.hpp"

#include <algorithm>
#include <span>

namespace seambook {
namespace {

FileFinder finder_in(const std::vector<NamedText>& files) {
  return [&files](const std::string& name) -> std::optional<std::string> {
    const auto found = std::find_if(files.begin(), files.end(), [&](const NamedText& f) { return f.name == name; });
    return found != files.end() ? std::optional(found->text) : std::nullopt;
  };
}

std::string first_error(const Diagnostics& diagnostics) {
  for (const Diagnostic& d : diagnostics.list)
    if (d.level == Level::error) return d.message;
  return {};
}

/// A joint or weldment of the same name in the other list; by position where it has none.
template <class Text>
const Text* same_one(const std::vector<Text>& others, const std::optional<Word>& name, std::size_t position,
                     std::optional<Word> Text::*named) {
  if (!name) return position < others.size() && !(others[position].*named) ? &others[position] : nullptr;
  const auto found = std::find_if(others.begin(), others.end(), [&](const Text& other) {
    return other.*named && (other.*named)->text == name->text;
  });
  return found != others.end() ? &*found : nullptr;
}

void take_procedures(JointDefaults& into, const JointDefaults& from) {
  into.process = from.process;
  into.procedure = from.procedure;
  into.position = from.position;
}

void take_procedures(JointText& into, const JointText& from) {
  take_procedures(into.defaults, from.defaults);
  into.pass_count = from.pass_count;
  into.passes = from.passes;
  into.backgouge = from.backgouge;
  into.purge = from.purge;
}

}  // namespace

ReadInputs read_inputs(const WrittenInputs& inputs, Diagnostics& diagnostics) {
  ReadInputs out;
  diagnostics.list.clear();
  std::vector<std::uint32_t> files;
  for (const NamedText& file : inputs.rates) files.push_back(diagnostics.add_file(file.name, file.text));
  out.rates = read_rates(files, diagnostics);
  out.job = read_job(diagnostics.add_file(inputs.job.name, inputs.job.text), finder_in(inputs.takeoffs), diagnostics);
  out.sound = !diagnostics.has_errors();
  diagnostics.list.clear();
  return out;
}

RateText with_ways_of(RateText rates, const RateText& ways) {
  rates.procedures = ways.procedures;
  rates.preparations = ways.preparations;
  rates.pass_limits = ways.pass_limits;
  rates.gouging = ways.gouging;
  rates.files.insert(rates.files.end(), ways.files.begin(), ways.files.end());
  return rates;
}

JobText with_procedures_of(JobText job, const JobText& procedures) {
  take_procedures(job.defaults, procedures.defaults);
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    WeldmentText& weldment = job.weldments[w];
    const WeldmentText* other = same_one(procedures.weldments, weldment.name, w, &WeldmentText::name);
    if (other == nullptr) continue;
    take_procedures(weldment.defaults, other->defaults);
    for (std::size_t j = 0; j < weldment.joints.size(); ++j) {
      const JointText* joint = same_one(other->joints, weldment.joints[j].id, j, &JointText::id);
      if (joint != nullptr) take_procedures(weldment.joints[j], *joint);
    }
  }
  return job;
}

std::optional<ResolvedQuote> resolve_quote(const JobText& job, const RateText& rates, Date date,
                                           Diagnostics& diagnostics, std::string& reason) {
  diagnostics.list.clear();
  ResolvedQuote out;
  auto book = resolve_rates(rates, diagnostics);
  auto resolved = book ? resolve_job(job, *book, diagnostics) : std::nullopt;
  const auto work = resolved ? sequence_jobs(*book, std::span(&*resolved, 1), diagnostics) : std::nullopt;
  reason = first_error(diagnostics);
  diagnostics.list.clear();
  if (!work) return std::nullopt;
  out.book = std::move(*book);
  out.job = std::move(*resolved);
  out.quote = make_quote(out.book, out.job, estimate(out.book, out.job), *work, date);
  return out;
}

}  // namespace seambook
