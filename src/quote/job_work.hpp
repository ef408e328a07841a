// Work that a job takes as a whole: reviews, take-off, tests, fixtures, papers. Minutes times a labour rate, once or
// for each lot; its times hold their own rest, and no station is occupied. What nobody attends costs nothing.
#pragma once

#include "estimate/figures.hpp"
#include "resolve/job.hpp"
#include "trade/labour.hpp"

namespace seambook {

namespace fig {
inline constexpr Figure job_work_time{"job_work_time", "time of one", unit::min, 1};
inline constexpr Figure job_work_min{"job_work", "time", unit::min, 1, "time of one × how often"};
inline constexpr Figure job_work_labour{"job_work_labour", "labour", unit::money, 2, "time × labour rate"};
}  // namespace fig

template <class N>
struct JobWorkInputs {
  Time<N> time;
  MoneyPerTime<N> labour_rate, wage;
  Ratio<N> burden;
  double count = 1;
  bool loaded_rate = true, attended = true;
};
template <class N>
struct JobWorkFigures {
  Time<N> minutes;
  Money<N> labour_cost;
};

template <class N>
JobWorkInputs<N> lift_job_work(const JobWorkInputs<Sourced>& a, std::uint32_t row, const Lifting& by = {}) {
  return {lift<N>(a.time, fig::job_work_time, row, by),
          lift<N>(a.labour_rate, fig::labour_rate, row, by),
          lift<N>(a.wage, fig::wage, row, by),
          lift<N>(a.burden, fig::burden, row, by),
          a.count,
          a.loaded_rate,
          a.attended};
}

template <class N>
JobWorkFigures<N> job_work_figures(const JobWorkInputs<N>& in, std::uint32_t row) {
  JobWorkFigures<N> out;
  out.minutes = name(in.time * in.count, fig::job_work_min, row);
  if (!in.attended) return out;
  const MoneyPerTime<N> labour = in.loaded_rate ? in.labour_rate : loaded_rate(in.wage, in.burden);
  out.labour_cost = name(out.minutes * labour, fig::job_work_labour, row);
  return out;
}

inline JobWorkInputs<Sourced> gather_job_work(const RateBook& book, const JobWork& work) {
  const Labour& labour = book.labour[work.grade];
  return {work.time, labour.rate, labour.wage, labour.burden, work.count, labour.loaded, work.attended};
}

}  // namespace seambook
