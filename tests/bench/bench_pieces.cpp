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
  std::vector<Sheet> sheets;
  std::vector<Routine> routines;

  Stages() {
    for (const std::string& text : texts) {
      sources.push_back({"made.sheet", text});
      Sheet& sheet = sheets.emplace_back(read_sheet({{"made.sheet", text}}));
      understand(sheet, demo_set());
      if (!sheet.routine()) throw std::runtime_error(to_string(sheet.messages()));
      routines.push_back(*sheet.routine());
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
    for (const Sheet& one : stages().sheets) benchmark::DoNotOptimize(understood(*one.tree(), demo_set()));
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
  const ValueSet& set = demo_set();
  const PanelRule& rule = *set.element_panel(*set.events.find("duet-free"), *set.kinds.find("hybrid"));
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
