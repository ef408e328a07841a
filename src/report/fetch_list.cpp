#include "report/fetch_list.hpp"

#include <algorithm>
#include <map>

#include "report/task_words.hpp"

namespace seambook {
namespace {

enum class FetchKind : std::uint8_t { filler, flux, gas, purge_gas, wear_part };
using FetchKey = std::tuple<std::size_t, std::size_t, FetchKind, std::size_t>;  // shift, station, kind, index
using Amounts = std::map<FetchKey, double>;

/// Where work takes place, and the share of the figures that it uses.
struct Use {
  const PlannedShop& shop;
  std::size_t shift, station;
  double share;
  Amounts& amounts;
};

void add_use(const Use& use, FetchKind kind, std::size_t index, double amount) {
  if (amount > 0) use.amounts[{use.shift, use.station, kind, index}] += use.share * amount;
}

bool known(const Sourced& number) { return number.source != no_source; }

/// Parts that wear out by arc time, metres or starts; one of the lives is given.
void add_wear(const Use& use, std::size_t process, const RowFigures<double>& row, const PassFigures<double>& pass) {
  const std::vector<WearPart>& parts = use.shop.book.wear_parts;
  for (std::size_t p = 0; p < parts.size(); ++p) {
    const WearPart& part = parts[p];
    if (std::find(part.processes.begin(), part.processes.end(), process) == part.processes.end()) continue;
    const double used = known(part.life.si) ? pass.arc.si / part.life.si.value
                        : known(part.life_length.si)
                            ? row.joint.weld_length.si * pass.passes.si / part.life_length.si.value
                            : pass.labour.starts.si / part.life_starts.si.value;
    add_use(use, FetchKind::wear_part, p, used);
  }
}

void add_pass_group(Use use, const Joint& joint, const TaskStep& step, const RowFigures<double>& row) {
  const RateBook& book = use.shop.book;
  const Procedure& by = book.procedures[joint.passes[step.group].procedure];
  const PassFigures<double>& pass = row.passes[step.group];
  if (pass.arc.si <= 0) return;
  // Figures are for a piece of the job; the arc time of the step says how much of them, and of how many pieces, it is.
  use.share *= step.arc.si / pass.arc.si;
  if (by.filler) add_use(use, FetchKind::filler, *by.filler, pass.filler.si);
  if (by.flux) add_use(use, FetchKind::flux, *by.flux, pass.flux.si);
  if (by.gas) add_use(use, FetchKind::gas, *by.gas, pass.gas.si);
  if (joint.purge && book.allowances.purge_gas)
    add_use(use, FetchKind::purge_gas, *book.allowances.purge_gas, pass.purge_gas.si);
  add_wear(use, by.process, row, pass);
}

void add_part(const PlannedShop& shop, const DispatchList& list, const TaskPart& part, Amounts& amounts) {
  const TaskRef& ref = ref_of(shop, shop.plan.tasks[part.at]);
  const Joint* joint = joint_of(shop, ref);
  if (joint == nullptr) return;
  for (const TaskStep& step : ref.steps)
    if (step.kind == StepKind::passes)
      add_pass_group({shop, list.shift, list.station, part.share, amounts}, *joint, step,
                     shop.estimates[ref.job].joints[*ref.joint]);
}

Fetched fetched(const RateBook& book, const FetchKey& key, double amount) {
  const auto& [shift, station, kind, index] = key;
  Fetched out{station, shift, {}, {}, unit::none, amount, 0};
  switch (kind) {
    case FetchKind::filler: {
      const Filler& filler = book.fillers[index];
      out.kind = "filler", out.name = filler.name, out.unit = unit::kg;
      out.pack = filler.pack ? filler.pack->si : 0;
      break;
    }
    case FetchKind::flux:
      out.kind = "flux", out.name = book.fluxes[index].name, out.unit = unit::kg;
      break;
    case FetchKind::gas:
      out.kind = "shielding gas", out.name = book.gases[index].name, out.unit = unit::l;
      break;
    case FetchKind::purge_gas:
      out.kind = "purge gas", out.name = book.gases[index].name, out.unit = unit::l;
      break;
    case FetchKind::wear_part:
      out.kind = "wear part", out.name = book.wear_parts[index].name;
      break;
  }
  return out;
}

}  // namespace

std::vector<Fetched> fetch_list(const PlannedShop& shop, const std::vector<DispatchList>& lists) {
  Amounts amounts;
  for (const DispatchList& list : lists)
    for (const DispatchRow& row : list.rows)
      for (const TaskPart& part : row.parts) add_part(shop, list, part, amounts);
  std::vector<Fetched> out;
  out.reserve(amounts.size());
  for (const auto& [key, amount] : amounts) out.push_back(fetched(shop.book, key, amount));
  return out;
}

}  // namespace seambook
