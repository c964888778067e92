// parse() beside the hand-written parser, on the same texts, one after the other in one process.
//
//   bench_parse --benchmark_enable_random_interleaving=true --benchmark_repetitions=20
//
// The text that is read is counted; making it is not. Taking the tree apart again is part of the time of both.
#include <benchmark/benchmark.h>

#include "grammar/parse.h"
#include "tests/bench/demo_set.h"
#include "tests/bench/hand_parser.h"

namespace landdrill::bench {
namespace {

const std::vector<std::string>& texts(bool made) {
  static const std::vector<std::string> demo = {demo_sheet()};
  static const std::vector<std::string> many = made_texts(200);
  return made ? many : demo;
}

template <class Parse>
void parse_all(benchmark::State& state, bool made, Parse parse_one) {
  const auto& all = texts(made);
  std::size_t bytes = 0;
  for (const std::string& text : all) bytes += text.size();
  for (auto _ : state)
    for (const std::string& text : all) benchmark::DoNotOptimize(parse_one(text));
  state.SetBytesProcessed(static_cast<std::int64_t>(bytes) * state.iterations());
}

void with_grammar(benchmark::State& state, bool made) {
  const std::string name = "a.sheet";
  parse_all(state, made, [&](const std::string& text) { return parse(Source{name, text}); });
}
void by_hand(benchmark::State& state, bool made) {
  parse_all(state, made, [](const std::string& text) { return hand_parse(text); });
}

BENCHMARK_CAPTURE(with_grammar, demo, false);
BENCHMARK_CAPTURE(by_hand, demo, false);
BENCHMARK_CAPTURE(with_grammar, made, true);
BENCHMARK_CAPTURE(by_hand, made, true);

}  // namespace
}  // namespace landdrill::bench

BENCHMARK_MAIN();
