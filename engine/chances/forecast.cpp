#include "engine/chances/forecast.h"

#include <algorithm>

#include "engine/chances/forecast_lines.h"
#include "engine/chances/forecast_obstacles.h"
#include "engine/chances/odds.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// What was taken for sync errors says where it is from.
std::string errors_from(const Routine& routine, const RunWish& runs) {
  if (!routine.errors.empty()) return "the sheet";
  const std::size_t number = runs_with_sync(routine, runs);
  if (number == 0) return "nothing: none expected";
  return std::to_string(number) + (number == 1 ? " run" : " runs");
}

TotalOdds added_up(const std::vector<DailyLine>& lines, const Odds& days, const GridWish& grid,
                   const Progress& days_done) {
  std::vector<World> worlds;
  for (std::size_t day = 0; day < days.cases().size(); ++day) {
    worlds.push_back({days.cases()[day].chance, {}});
    for (const DailyLine& line : lines) worlds.back().pieces.push_back(&line.on(day));
  }
  TotalOdds total = total_odds(worlds, grid, [&](std::size_t done) {
    if (days_done) days_done(done, worlds.size());
  });
  for (const DailyLine& line : lines) {
    total.lost += line.lost;
    total.bound += line.bound;
  }
  return total;
}

}  // namespace

Forecast forecast(const Routine& routine, const Wish& wish, const ForecastWish& how,
                  const Progress& days_done) {
  Forecast told;
  ForecastLines lines(routine, wish, how);
  std::vector<DailyLine> all;
  if (lines.obstacles().empty()) all = lines.all();
  told.obstacles = lines.obstacles();
  if (!told.obstacles.empty()) return told;
  told.day = lines.day();
  told.days = lines.days();
  told.errors = lines.at_risk().errors;
  told.errors_from = errors_from(routine, wish.runs);
  for (const DailyLine& line : all) {
    told.lines.push_back(line.line);
    told.lines.back().points = line.over(told.days);
  }
  told.total = added_up(all, told.days, how.grid, days_done);
  return told;
}

ChanceBounds reaches(const TotalOdds& total, Decimal target) {
  return {total.odds.at_least(target), total.odds.at_least(target + total.bound),
          std::min(1.0, total.odds.at_least(target - total.bound) + total.lost)};
}

Against against(const TotalOdds& ours, const TotalOdds& theirs) {
  const Decimal bound = ours.bound + theirs.bound;
  const Chance most = beats_by_more_than(ours.odds, theirs.odds, -bound) + ours.lost + theirs.lost;
  return {
      {beats(ours.odds, theirs.odds), beats_by_more_than(ours.odds, theirs.odds, bound), std::min(1.0, most)},
      equals(ours.odds, theirs.odds)};
}

}  // namespace landdrill
