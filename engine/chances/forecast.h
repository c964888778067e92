// How likely which score is: the exact odds of every line and of the total.
//
//   Forecast told = forecast(routine, wish, {});
//   told.total->odds.quantile(0.05)      // 171.40: one time in twenty it is no more than that
//
// The model. A day shifts every mark of the performance by the same amount: a bell curve, added up over as many kinds of
// day as the answer needs (days.h). Given the day, each judge of a full panel gives her own mark around the expected one,
// and each element gets its base mark with its own chance, whatever the marks, independently. Sync errors come one by one
// at an average rate (Poisson); a penalty comes with its chance. High and low are dropped, points rounded and added as the
// set says. Where elements are weighted by difficulty together, the whole quotient is taken. Two sheets have days of their
// own.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/chances/days.h"
#include "engine/chances/mark_odds.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/chances/weighted_odds.h"
#include "engine/chances/what_if.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

struct ForecastWish {
  SpreadWish spreads;
  GridWish grid;
  Change change = {};  // may be empty
};

struct ForecastLine {
  enum class What { element, weighted, aspect, sync, penalties } what = What::element;
  std::size_t index = 0;  // of the element, of Showing::aspects, of Score::weighted
  std::string label;      // "2 Undertow"
  std::optional<Decimal> expected_mark;
  Spread spread;
  BaseChance base;
  Odds points;  // over all days; of sync and penalties: 0 or less
};
struct Forecast {
  Obstacles obstacles;              // when there are any, nothing else is set
  std::vector<ForecastLine> lines;  // in the order of the report; what the event does not have is left out
  Spread day;
  Days days;
  std::vector<ExpectedErrors>
      errors;               // what was taken for sync errors: the sheet's `errors`, else the mean of the runs
  std::string errors_from;  // "the sheet", "2 runs", "nothing: none expected"
  std::optional<TotalOdds> total;
};

// `days_done`, when given, is called after each day with how many are done of how many.
using Progress = std::function<void(std::size_t done, std::size_t of)>;
Forecast forecast(const Routine& routine, const Wish& wish, const ForecastWish& how,
                  const Progress& days_done = {});

// The chance to reach a target, from the grid: between `least` and `most` for certain, as far as the model
// goes.
struct ChanceBounds {
  Chance chance = 0, least = 0, most = 0;
};
ChanceBounds reaches(const TotalOdds& total, Decimal target);
// The chance to be above another, independent total; `ties`: to be equal, on the grid.
struct Against {
  ChanceBounds above;
  Chance ties = 0;
};
Against against(const TotalOdds& ours, const TotalOdds& theirs);

// The lines of a forecast before they are added up: the odds of each on every day.
//
//   ForecastLines lines(routine, wish, how);
//   lines.all()[1].on(3)      // the odds of the second line on the fourth kind of day
//
// Only forecast.cpp and compare.cpp include this.

// Whose marks the day shifts; nothing may be in the way.
std::vector<DayLine> day_lines(const Routine& routine, const Inputs& inputs,
                               std::optional<std::size_t> only = {});

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
  // `only`: nothing is asked for but the line that this element is in.
  ForecastLines(const Routine& routine, const Wish& wish, const ForecastWish& how,
                std::optional<std::size_t> only = {});

  // May grow by what is in the way of weighted elements.
  const Obstacles& obstacles() const { return obstacles_; }
  const Spread& day() const { return inputs_.spread.day; }
  const Days& days() const { return days_; }
  const Risked& at_risk() const { return inputs_.at_risk; }

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
  const GridWish grid_;
  const Inputs inputs_;
  Obstacles obstacles_;
  Days days_;
  KeptMemory memory_;
};

}  // namespace landdrill
