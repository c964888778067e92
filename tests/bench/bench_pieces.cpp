// The time of every step of a score, each alone, on 200 made-up sheets (the time shown is of all 200).
#include <benchmark/benchmark.h>

#include <deque>

#include "engine/routine/difficulty.h"
#include "engine/score/account.h"
#include "engine/score/build_up.h"
#include "engine/score/objections.h"
#include "grammar/blocks.h"
#include "tests/bench/demo_set.h"

namespace landdrill::bench {
namespace {

constexpr std::size_t count = 200;

// Every sheet in every stage, made once: what a step starts from is not part of its time.
struct Stages {
  std::vector<std::string> texts = made_texts(count);
  std::deque<Source> sources;
  std::vector<Assembled> assembled;
  std::vector<Routine> routines;

  Stages() {
    for (const std::string& text : texts) {
      const Source& source = sources.emplace_back(Source{"made.sheet", text});
      assemble(source, assembled.emplace_back());
      Resolved resolved = understood(assembled.back().sheets.front(), demo_set());
      if (!resolved.routine) throw std::runtime_error(to_string(resolved.diagnostics));
      routines.push_back(std::move(*resolved.routine));
    }
  }
};

const Stages& stages() {
  static const Stages all;
  return all;
}

std::optional<std::size_t> last_panel(const Routine& routine) {
  if (routine.panels.empty()) return std::nullopt;
  return routine.panels.size() - 1;
}

void assemble_sheets(benchmark::State& state) {
  for (auto _ : state) {
    for (const Source& source : stages().sources) {
      Assembled assembled;
      assemble(source, assembled);
      benchmark::DoNotOptimize(assembled);
    }
  }
}
BENCHMARK(assemble_sheets);

void resolve_sheets(benchmark::State& state) {
  for (auto _ : state)
    for (const Assembled& one : stages().assembled)
      benchmark::DoNotOptimize(understood(one.sheets.front(), demo_set()));
}
BENCHMARK(resolve_sheets);

// Part of resolving in the program; the sums of other programs have it in them.
void work_out_difficulties(benchmark::State& state) {
  for (auto _ : state)
    for (const Routine& routine : stages().routines)
      for (const Element& element : routine.elements)
        benchmark::DoNotOptimize(declared(element.options.front(), *element.kind));
}
BENCHMARK(work_out_difficulties);

void score_estimates(benchmark::State& state) {
  for (auto _ : state)
    for (const Routine& routine : stages().routines)
      benchmark::DoNotOptimize(score(routine, expected(routine, {})));
}
BENCHMARK(score_estimates);

void score_panels(benchmark::State& state) {
  for (auto _ : state)
    for (const Routine& routine : stages().routines)
      for (const RecordedPanel& panel : routine.panels)
        benchmark::DoNotOptimize(score(routine, recorded(routine, panel, {})));
}
BENCHMARK(score_panels);

void build_up_estimates(benchmark::State& state) {
  for (auto _ : state) {
    for (const Routine& routine : stages().routines) {
      const Showing showing = expected(routine, {});
      benchmark::DoNotOptimize(build_up(routine, {}, showing, score(routine, showing)));
    }
  }
}
BENCHMARK(build_up_estimates);

void account_for_sheets(benchmark::State& state) {
  for (auto _ : state)
    for (const Routine& routine : stages().routines)
      benchmark::DoNotOptimize(account(routine, {}, last_panel(routine)));
}
BENCHMARK(account_for_sheets);

void keep_one_panels_marks(benchmark::State& state) {
  const PanelRule& rule = *demo_set().element_panel("duet-free", "hybrid");
  JudgeMarks marks;
  for (const char* typed : {"7.25", "7.50", "7.25", "7.00", "7.75"})
    marks.push_back(Mark(*Decimal::parse(typed)));
  const Difficulty difficulty(*Decimal::parse("3.85"));
  for (auto _ : state) {
    benchmark::DoNotOptimize(marks.data());
    benchmark::DoNotOptimize(element_points(rule, keep(rule, marks), difficulty));
  }
}
BENCHMARK(keep_one_panels_marks);

void load_the_set(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(load(demo_tables()));
}
BENCHMARK(load_the_set);

}  // namespace
}  // namespace landdrill::bench

BENCHMARK_MAIN();
