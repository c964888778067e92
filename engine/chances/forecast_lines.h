// The lines of a forecast before they are added up: the odds of each on every day.
//
//   ForecastLines lines(routine, wish, how);
//   lines.all()[1].on(3)      // the odds of the second line on the fourth kind of day
//
// Only forecast.cpp and compare.cpp include this.
#pragma once

#include "engine/chances/forecast.h"
#include "engine/chances/line_odds.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/weighted_odds.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// One line: its odds on each day, or only one when they are the same every day.
struct DailyLine {
  ForecastLine line;  // without its points
  std::vector<Odds> by_day;
  Decimal bound;
  Chance lost = 0;

  const Odds& on(std::size_t day) const { return by_day[by_day.size() == 1 ? 0 : day]; }
  Odds over(const Odds& days) const;  // over all days
};

class ForecastLines {
 public:
  // When something is in the way, obstacles() says so, and nothing else is to be asked.
  ForecastLines(const Routine& routine, const Wish& wish, const ForecastWish& how);

  // May grow by what is in the way of weighted elements.
  const Obstacles& obstacles() const { return obstacles_; }
  const Spread& day() const { return spreads_.day; }
  const Odds& days() const { return days_; }
  const Risked& at_risk() const { return risked_; }

  // In the order of the report; what the event does not have is left out.
  std::vector<DailyLine> all();
  // The standard deviation, in points, of the line that an element is in: its own, or that of the rule that
  // weights it with others, there before rounding. Empty where the event does not mark it.
  std::optional<Chance> deviation_of(std::size_t element);

 private:
  Decimal expected_mark_of(std::size_t element) const;
  DailyLine own_line(std::size_t element, const PanelRule& rule);
  std::optional<DailyLine> weighted_line(const PanelRule& rule, std::size_t index);
  std::vector<WeightedElement> weighted_on(const PanelRule& rule, Decimal shift, Chance& lost);
  DailyLine aspect_line(std::size_t aspect);
  template <class OddsOf>
  DailyLine marked(ForecastLine line, const PanelRule& rule, OddsOf odds_of);

  const Routine& routine_;
  const Risked risked_;
  const Spreads spreads_;
  Obstacles obstacles_;
  Odds days_;
  KeptMemory memory_;
};

}  // namespace landdrill
