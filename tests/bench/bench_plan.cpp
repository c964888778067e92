// How long a plan takes, beside glpsol on the same model, and how it grows.
//
//   bench_plan beside FOLDER     // models of 12 x 8 and 20 x 12; for each: medians and the slowest, in milliseconds
//   bench_plan grows             // elements, options, limits, milliseconds
//   bench_plan odds              // the same for a quantile and a target, in seconds of the processor, with gaps
//
// Over many models: one says little, the next may be ten times as hard.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "engine/choosing/plan.h"
#include "engine/score/objections.h"
#include "tests/bench/demo_set.h"
#include "tests/outside/plan_model.h"

namespace {

using namespace landdrill;
using Clock = std::chrono::steady_clock;

double passed(Clock::time_point start) {
  return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

double share_of(std::vector<double> times, double share) {
  std::sort(times.begin(), times.end());
  return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

struct Times {
  std::vector<double> best, whole, process, solve;
  std::size_t proved = 0;
};

// The best programme alone, and the whole plan: the next five, and each limit moved by one, solved again.
void time_ours(const std::string& text, Times& times) {
  Sheet sheet = read_sheet({{"made up", text}});
  understand(sheet, bench::demo_set());
  PlanWish how;
  how.event_limits = false;
  // Told to stop after two seconds; then the answer has a gap.
  auto start = Clock::now();
  how.go_on = [&start](std::uint64_t) { return passed(start) < 2'000; };
  const Plan whole = plan(*sheet.routine(), {}, how);
  times.whole.push_back(passed(start));
  times.proved += whole.proved ? 1 : 0;
  how.how_many = 1;
  how.limits_worth = false;
  start = Clock::now();
  (void)plan(*sheet.routine(), {}, how);
  times.best.push_back(passed(start));
}

std::string text_of(const std::string& file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return text.str();
}

// The process by the clock, and "Time used: 0.1 secs", which glpsol counts in tenths.
void time_glpsol(const std::string& lp, const std::string& folder, Times& times) {
  std::ofstream(folder + "/model.lp") << lp;
  const std::string command = "glpsol --lp " + folder + "/model.lp --tmlim 300 > " + folder + "/told";
  const auto start = Clock::now();
  if (std::system(command.c_str()) != 0) std::exit(3);
  times.process.push_back(passed(start));
  const std::string told = text_of(folder + "/told");
  const std::size_t at = told.find("Time used:");
  times.solve.push_back(at == std::string::npos ? 0 : 1e3 * std::atof(told.c_str() + at + 10));
}

void beside(const std::string& folder) {
  for (const PlanShape shape : {PlanShape{12, 8, 4, false}, PlanShape{20, 12, 4, false}}) {
    Times times;
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
      const PlanModel model(seed, shape);
      time_ours(model.sheet, times);
      time_glpsol(model.lp, folder, times);
    }
    std::printf("%d %d %.3f %.3f %.3f %.3f %.3f %.3f %.3f\n", shape.elements, shape.options,
                share_of(times.best, 0.5), share_of(times.best, 1), share_of(times.whole, 0.5),
                share_of(times.whole, 1), share_of(times.process, 0.5), share_of(times.process, 1),
                share_of(times.solve, 0.5));
  }
}

// Up to 15 models of a shape, or as many as five seconds see.
void grow(const PlanShape& shape) {
  Times times;
  const auto start = Clock::now();
  for (std::uint64_t seed = 0; seed < 15 && (seed == 0 || passed(start) < 5'000); ++seed) {
    time_ours(PlanModel(seed, shape).sheet, times);
  }
  std::printf("  %8d %7d %6d %14.2f %8.2f %20.2f %8.2f %7zu of %zu\n", shape.elements, shape.options,
              shape.limits, share_of(times.best, 0.5), share_of(times.best, 1), share_of(times.whole, 0.5),
              share_of(times.whole, 1), times.proved, times.whole.size());
}

void grows() {
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  std::puts("  elements options limits   best, median  slowest   whole plan, median  slowest (ms)   proved");
  for (const int elements : {6, 12, 24, 48}) grow({elements, 8, 4, false});
  for (const int options : {4, 16, 32}) grow({12, options, 4, false});
  for (const int limits : {1, 2, 3, 5, 6}) grow({12, 8, limits, false});
  grow({60, 20, 6, false});
}

double processor_seconds() {
  return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

// One plan by odds that stops after ten seconds of the processor: other work on the machine is no part of it.
struct OddsTimes {
  std::vector<double> proved, gaps;  // seconds; points, or chance in per cent
};
void time_odds(const Routine& routine, PlanWish how, OddsTimes& times) {
  const double start = processor_seconds();
  how.go_on = [start](std::uint64_t) { return processor_seconds() - start < 10; };
  const Plan told = plan(routine, {}, how);
  if (told.proved) times.proved.push_back(processor_seconds() - start);
  if (!told.proved && told.gap) times.gaps.push_back(static_cast<double>(told.gap->units()) / Decimal::one);
}

std::string told(std::vector<double> numbers) {
  if (numbers.empty()) return "-";
  char text[40];
  std::snprintf(text, sizeof text, "%.2f, %.2f", share_of(numbers, 0.5), share_of(numbers, 1));
  return text;
}

void odds_of(const PlanShape& shape, std::uint64_t models, bool whole) {
  OddsTimes quantile, target;
  for (std::uint64_t seed = 0; seed < models; ++seed) {
    const PlanModel model(seed, shape);
    Sheet sheet = read_sheet({{"made up", model.sheet}});
    understand(sheet, bench::demo_set());
    PlanWish how;
    how.event_limits = false;
    how.how_many = whole ? 6 : 1;
    how.limits_worth = whole;
    how.aim = PlanWish::For::quantile;
    time_odds(*sheet.routine(), how, quantile);
    // The highest expected total: reached about every other time.
    PlanWish expected = how;
    expected.aim = PlanWish::For::expected;
    expected.limits_worth = false;
    how.target = plan(*sheet.routine(), {}, expected).choices.front().total.value();
    how.aim = PlanWish::For::target;
    time_odds(*sheet.routine(), how, target);
  }
  for (const bool of_quantile : {true, false}) {
    const OddsTimes& times = of_quantile ? quantile : target;
    std::printf("  %8d %7d %6d  %-8s %-5s %3zu of %-3zu %14s %18s\n", shape.elements, shape.options,
                shape.limits, of_quantile ? "quantile" : "target", whole ? "whole" : "best",
                times.proved.size(), static_cast<std::size_t>(models), told(times.proved).c_str(),
                told(times.gaps).c_str());
  }
}

void odds() {
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  std::puts(
      "  elements options limits  aim      plan     proved  median, slowest s  gap of the rest: median, "
      "widest");
  const auto shape = [](int elements, int options, int limits) {
    return PlanShape{elements, options, limits, false, true};
  };
  for (const int elements : {7, 9, 11}) odds_of(shape(elements, 2, 2), 10, true);
  odds_of(shape(9, 3, 4), 10, false);
  odds_of(shape(12, 8, 4), 4, false);
}

}  // namespace

int main(int count, char** words) {
  const std::string what = count > 1 ? words[1] : "";
  if (what == "beside" && count == 3) {
    beside(words[2]);
  } else if (what == "grows") {
    grows();
  } else if (what == "odds") {
    odds();
  } else {
    std::fputs("usage: bench_plan beside FOLDER | grows | odds\n", stderr);
    return 2;
  }
}
