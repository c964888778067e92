#include "engine/report/forecast.h"

#include <fmt/format.h>

#include "engine/cli/choosing.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"
#include "engine/cli/progress.h"

namespace landdrill::cli {
namespace {

// What was typed, before any sheet is read.
struct Wanted {
  ForecastWish how;
  std::optional<Decimal> within;
  std::vector<Decimal> targets;
  std::string mistake;
};

Wanted wanted(const Call& call) {
  Wanted result;
  const TypedSpreads spread = spreads_of(call);
  if (!spread.mistake.empty()) return {{}, {}, {}, spread.mistake};
  result.how.spreads = spread.wish;
  const TypedNumber within =
      number_of(call, "--within", *Decimal::parse("0.0001"), Decimal::whole(1000),
                "points, from 0.0001 to 1000: how far a total may lie from where it truly is");
  if (!within.mistake.empty()) return {{}, {}, {}, within.mistake};
  result.within = within.number;
  for (const std::string& typed : call.given.values("--target")) {
    const TypedNumber target = typed_number("--target", typed, "points, such as 190");
    if (!target.number) return {{}, {}, {}, target.mistake};
    result.targets.push_back(*target.number);
  }
  return result;
}

// A line of the forecast moves by half a grid at most, so the bound is met by a grid of that fraction of it.
Decimal grid_within(Decimal within, std::size_t lines) {
  const Exact grid = Exact(within) * Exact(Decimal::whole(2)) /
                     Exact(Decimal::whole(static_cast<std::int64_t>(std::max<std::size_t>(1, lines))));
  return std::max(round(grid, 4, Rounding::down), *Decimal::parse("0.0001"));
}

Forecast foretell(Call& call, const OneRoutine& one, const Wanted& wish) {
  Progress progress(call.streams, "forecast of " + std::string(one.routine().title));
  const auto days = [&](std::size_t done, std::size_t of) {
    progress.show(fmt::format("{} of {} kinds of day", done, of));
  };
  Forecast told = forecast(one.routine(), one.wish(), wish.how, days);
  if (!told.obstacles.empty() || !wish.within || told.total->bound <= *wish.within) return told;
  ForecastWish finer = wish.how;
  finer.grid.grid = grid_within(*wish.within, told.lines.size());
  return forecast(one.routine(), one.wish(), finer, days);
}

std::string other_rules(const Routine& first, const Routine& other) {
  const bool same = first.event->code == other.event->code &&
                    first.set->info.title == other.set->info.title &&
                    first.set->info.edition == other.set->info.edition;
  return same ? ""
              : fmt::format("{}, {} {}", other.event->title, other.set->info.title, other.set->info.edition);
}

// The other sheet is as it is written: --option and --runs speak of the first.
struct ToldRival {
  std::optional<report::ForecastRival> told;
  Exit exit = Exit::ok;
};
ToldRival rival(Call& call, const Wanted& wish, const Routine& first, const TotalOdds& ours) {
  if (!call.given.has("--against")) return {};
  const std::string file(call.given.value("--against"));
  report::Asked plain(call.command.words);
  for (const std::string_view option : {"--set", "--values", "--season", "--runs"})
    if (call.given.has(option)) plain.add(option, call.given.values(option));
  Call other{call.command, plain, call.streams};
  const OneRoutine one(other, file);
  if (!one) return {{}, one.exit()};
  const Forecast theirs = foretell(call, one, wish);
  if (!theirs.obstacles.empty()) return {{}, obstructed(call, one.routine(), theirs.obstacles)};
  return {report::ForecastRival{std::string(one.routine().title), shown(file), against(ours, *theirs.total),
                                other_rules(first, one.routine())},
          {}};
}

}  // namespace

Exit forecast(Call& call) {
  const Wanted wish = wanted(call);
  if (!wish.mistake.empty()) return misused(call, wish.mistake);
  if (call.given.operands.front() == "-" && call.given.value("--against") == "-")
    return misused(call, "found - for both sheets; expected standard input for one of them at most");
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const std::string beyond = beyond_scale(one.routine(), wish.how.spreads);
  if (!beyond.empty()) return misused(call, beyond);
  report::ToldForecast told;
  told.forecast = foretell(call, one, wish);
  if (!told.forecast.obstacles.empty()) return obstructed(call, one.routine(), told.forecast.obstacles);
  for (const Decimal target : wish.targets)
    told.targets.push_back({target, reaches(*told.forecast.total, target)});
  ToldRival other = rival(call, wish, one.routine(), *told.forecast.total);
  if (other.exit != Exit::ok) return other.exit;
  told.rival = std::move(other.told);
  told.spreads = spreads(one.routine(), one.wish(), wish.how.spreads);
  Risked risk = risked(one.routine(), one.wish());
  told.chances = std::move(risk.chances);
  told.penalties = std::move(risk.penalties);
  const report::Face face = face_of(one, std::span(&one.wish(), 1), rows_of(told.spreads));
  call.streams.out.write(report::forecast_report(told, face, format_of(call), choosing_page(call)));
  return Exit::ok;
}

}  // namespace landdrill::cli
