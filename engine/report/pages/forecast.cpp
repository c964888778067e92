#include "engine/report/pages/forecast.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/report/face.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/price_wish.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

// What was typed.
struct ForecastAsked {
  ForecastWish how;
  std::optional<Decimal> within;
  std::vector<Decimal> targets;
};

Typed<ForecastAsked> forecast_asked(const Asked& asked, const Routine& routine) {
  ForecastAsked result;
  const Typed<SpreadWish> spread = spreads_of(asked, routine);
  if (!spread) return tl::unexpected(spread.error());
  result.how.spreads = *spread;
  const auto within =
      number_of(asked, "--within",
                {*Decimal::parse("0.0001"), Decimal::whole(1000),
                 "points, from 0.0001 to 1000: how far a total may lie from where it truly is"});
  if (!within) return tl::unexpected(within.error());
  result.within = *within;
  for (const std::string& typed : asked.values("--target")) {
    const Typed<Decimal> target = typed_number("--target", typed, "points, such as 190");
    if (!target) return tl::unexpected(target.error());
    result.targets.push_back(*target);
  }
  return result;
}

// A line of the forecast moves by half a grid at most, so the bound is met by a grid of that fraction of it.
Decimal grid_within(Decimal within, std::size_t lines) {
  const Exact grid = Exact(within) * Exact(Decimal::whole(2)) /
                     Exact(Decimal::whole(static_cast<std::int64_t>(std::max<std::size_t>(1, lines))));
  return std::max(round(grid, 4, Rounding::down), *Decimal::parse("0.0001"));
}

Forecast foretell(const Routine& routine, const Wish& wish, const ForecastAsked& asked,
                  const Progress& days_done) {
  Forecast told = landdrill::forecast(routine, wish, asked.how, days_done);
  if (!told.obstacles.empty() || !asked.within || told.total->bound <= *asked.within) return told;
  ForecastWish finer = asked.how;
  finer.grid.grid = grid_within(*asked.within, told.lines.size());
  return landdrill::forecast(routine, wish, finer, days_done);
}

std::string other_rules(const Routine& first, const Routine& other) {
  const bool same = first.event->code == other.event->code &&
                    first.set->info.title == other.set->info.title &&
                    first.set->info.edition == other.set->info.edition;
  return same ? ""
              : fmt::format("{}, {} {}", other.event->title, other.set->info.title, other.set->info.edition);
}

// What is asked of both sheets, with the odds of the first.
struct Both {
  const ForecastAsked& asked;
  const Routine& first;
  const TotalOdds& ours;
  const Progress& days_done;
};
tl::expected<ForecastRival, Refused> beside(const RivalSheet& rival, const Asked& asked, const Both& both) {
  const PriceWish price = whole_price_wish(asked, rival.routine);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  Forecast theirs = foretell(rival.routine, price.wish, both.asked, both.days_done);
  if (!theirs.obstacles.empty()) return missing_in(rival.routine, theirs.obstacles);
  return ForecastRival{std::string(rival.routine.title), rival.file, against(both.ours, *theirs.total),
                       other_rules(both.first, rival.routine)};
}

// What goes into the routine's own odds, and those for the targets.
ToldForecast told_alone(const Routine& routine, const Wish& wish, const ForecastAsked& asked,
                        const Progress& days_done) {
  ToldForecast told;
  told.forecast = foretell(routine, wish, asked, days_done);
  if (!told.forecast.obstacles.empty()) return told;
  for (const Decimal target : asked.targets)
    told.targets.push_back({target, reaches(*told.forecast.total, target)});
  told.spreads = spreads(routine, wish, asked.how.spreads);
  Risked risk = risked(routine, wish);
  told.chances = std::move(risk.chances);
  told.penalties = std::move(risk.penalties);
  return told;
}

}  // namespace

ChoosingAnswer forecast(const Asked& asked, const AskedSheet& sheet, const std::optional<RivalSheet>& rival,
                        const Progress& days_done) {
  const Routine& routine = sheet.routine;
  const PriceWish price = whole_price_wish(asked, routine);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  const Typed<ForecastAsked> wish = forecast_asked(asked, routine);
  if (!wish) return mistaken(wish.error());
  ToldForecast told = told_alone(routine, price.wish, *wish, days_done);
  if (!told.forecast.obstacles.empty()) return missing_in(routine, told.forecast.obstacles);
  if (rival) {
    Asked as_written(asked.question());
    as_written.add("--runs", asked.values("--runs"));
    auto other = beside(*rival, as_written, {*wish, routine, *told.forecast.total, days_done});
    if (!other) return tl::unexpected(other.error());
    told.rival = std::move(*other);
  }
  const Face face = face_of(routine, sheet.messages, std::span(&price.wish, 1), rows_of(told.spreads));
  return forecast_page(told, face);
}

}  // namespace landdrill::report
