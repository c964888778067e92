// The forecast of a routine against drawing it at random until the answer is as good. Prints one line of
// numbers, for tests/bench/run:
//
//   bench_forecast        # forecast s, draw s, bound, chance of the target, actual error, width of the bounds,
//                         # seconds on the finest grid, draws for the actual error, for the width
//
// As good means: the standard error of the drawn chance of the target, sqrt(p (1 - p) / draws), is the error
// of ours. Two errors: the actual one, against the finest grid, and the proven one, half the width between
// the bounds.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <stdexcept>

#include "engine/chances/forecast.h"
#include "engine/score/objections.h"
#include "tests/bench/demo_set.h"
#include "tests/outside/draws.h"

namespace landdrill {
namespace {

// Seven elements and three aspects, five judges each, slips, a day, sync errors and a penalty.
const char* const typical =
    "routine \"Typical\"\nevent duet-free\nvalues kingfisher-2026\nswimmers 2\nspread 0.35\nday 0.2\n"
    "element 1 lift\ndifficulty 2.15\nexpect 7.5\nslip 4%\n"
    "element 2 hybrid\ndifficulty 3.85\nexpect 7.25\nslip 12%\n"
    "element 3 hybrid\ndifficulty 3.15\nexpect 7.5\nslip 5%\n"
    "element 4 hybrid\ndifficulty 2.95\nexpect 7\nslip 8%\n"
    "element 5 hybrid\ndifficulty 2.4\nexpect 7.75\nslip 2%\n"
    "element 6 hybrid\ndifficulty 3.35\nexpect 7.25\nslip 10%\n"
    "element 7 hybrid\ndifficulty 2.7\nexpect 7.5\nslip 3%\n"
    "impression choreography 7.5, performance 7.75, transitions 7.25\n"
    "errors small 2.5, clear 0.4\nrisk overtime 5%\n";
constexpr std::size_t draws = 400'000;

template <class Work>
double seconds(Work work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

// The best of several: what else runs only ever adds.
template <class Work>
double best_seconds(int times, Work work) {
  double best = seconds(work);
  for (int i = 1; i < times; ++i) best = std::min(best, seconds(work));
  return best;
}

double draws_for(double chance, double error) {
  return chance * (1 - chance) / error / error;
}

int measure() {
  Sheet sheet = read_sheet({{"typical.sheet", std::string(typical)}});
  understand(sheet, bench::demo_set());
  if (!sheet.routine()) throw std::runtime_error(to_string(sheet.messages()));
  const Routine& routine = *sheet.routine();

  Forecast told, finest;
  const double ours = best_seconds(9, [&] { told = forecast(routine, {}, {}); });
  const double slow = seconds([&] { finest = forecast(routine, {}, {{}, {Decimal::from_units(100), 0}}); });
  Draws source_of_draws(routine, 1);
  std::int64_t sum = 0;
  const double draw = best_seconds(3,
                                   [&] {
                                     for (std::size_t i = 0; i < draws; ++i) sum += source_of_draws.next();
                                   }) /
                      draws;
  const Decimal target = finest.total->odds.quantile(0.75);
  const ChanceBounds reached = reaches(*told.total, target);
  const double chance = finest.total->odds.at_least(target);
  const double actual = std::abs(reached.chance - chance), proven = (reached.most - reached.least) / 2;
  std::printf("%.6f %.3e %s %.6f %.3e %.3e %.3f %.3e %.3e\n", ours, draw, told.total->bound.text().c_str(),
              chance, actual, proven, slow, draws_for(chance, actual), draws_for(chance, proven));
  return finest.total->bound.units() == 0 && sum != 0 ? 0 : 1;
}

}  // namespace
}  // namespace landdrill

int main() {
  return landdrill::measure();
}
