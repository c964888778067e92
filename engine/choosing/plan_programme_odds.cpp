#include "engine/choosing/plan_programme_odds.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/mark_odds.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_wish.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/objections.h"
#include "grammar/diagnostics.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

class PiecesOf {
 public:
  explicit PiecesOf(const AimInputs& inputs) : inputs_(inputs) {}

  Pieces run(Obstacles& obstacles) {
    const Wish first = wish_for(inputs_, 0);
    ForecastWish coarse = inputs_.how.forecast;
    coarse.grid.grid = Decimal::whole(10);
    const Forecast told = forecast(inputs_.routine, first, coarse);
    obstacles = told.obstacles;
    if (!obstacles.empty()) return {};
    pieces_.days = told.days;
    add_shared(told);
    add_choices(obstacles);
    return std::move(pieces_);
  }

 private:
  void add_shared(const Forecast& told) {
    for (const ForecastLine& line : told.lines) {
      if (line.what == ForecastLine::What::aspect) {
        const PanelRule& rule = *inputs_.routine.aspects[line.index];
        pieces_.shared.push_back(marked(rule, *line.expected_mark, line.spread,
                                        [&](const Odds& kept) { return plain_odds(rule, kept); }));
      } else if (line.what == ForecastLine::What::sync || line.what == ForecastLine::What::penalties) {
        pieces_.shared.push_back({line.points});
      }
    }
  }

  template <class OddsOf>
  std::vector<Odds> marked(const PanelRule& rule, Decimal mark, const Spread& spread, OddsOf odds_of) {
    std::vector<Odds> by_day;
    for (const Odds::Case& day : pieces_.days.cases()) {
      by_day.push_back(odds_of(memory_.kept(rule, mark + day.value, spread.marks).odds));
    }
    return by_day;
  }

  void add_choices(Obstacles& obstacles) {
    const std::vector<std::vector<std::size_t>>& options = inputs_.programmes.options;
    std::size_t most = 0;
    const std::vector<Odds> nothing(pieces_.days.cases().size(), Odds::certain(Decimal()));
    for (const auto& list : options) {
      pieces_.choices.emplace_back(list.size(), nothing);
      most = std::max(most, list.size());
    }
    for (std::size_t place = 0; place < most; ++place) {
      const Wish wish = wish_for(inputs_, place);
      const Risked all = risked(inputs_.routine, wish);
      const Spreads spread = spreads(inputs_.routine, wish, inputs_.how.forecast.spreads);
      for (Obstacle& one : obstacles_before(inputs_.routine, all, spread)) {
        if (std::find(obstacles.begin(), obstacles.end(), one) == obstacles.end())
          obstacles.push_back(std::move(one));
      }
      for (std::size_t i = 0; obstacles.empty() && i < options.size(); ++i) {
        const PanelRule* rule = inputs_.routine.elements[i].panel;
        if (place >= options[i].size() || options[i][place] == leave_out || rule == nullptr) continue;
        pieces_.choices[i][place] = marked(
            *rule, mean_mark(*all.showing.elements[i].marks), spread.elements[i],
            [&](const Odds& kept) { return element_odds(*rule, kept, credited(inputs_.routine, all, i)); });
      }
    }
  }

  const AimInputs& inputs_;
  KeptMemory memory_;
  Pieces pieces_;
};

}  // namespace

std::vector<World> Pieces::worlds(const std::vector<std::size_t>& chosen) const {
  std::vector<World> worlds;
  for (std::size_t day = 0; day < days.cases().size(); ++day) {
    World world{days.cases()[day].chance, {&nothing}};
    for (std::size_t i = 0; i < chosen.size(); ++i) world.pieces.push_back(&choices[i][chosen[i]][day]);
    for (std::size_t i = 0; i < shared.size(); ++i) world.pieces.push_back(&shared_on(i, day));
    worlds.push_back(std::move(world));
  }
  return worlds;
}

TotalOdds Pieces::total(const std::vector<std::size_t>& chosen, const GridWish& wish) const {
  return total_odds(worlds(chosen), wish);
}

GridStep Pieces::step_for(const std::vector<std::size_t>& chosen, const GridWish& wish) const {
  return chosen_step(worlds(chosen), wish);
}

TotalOdds Pieces::total(const std::vector<std::size_t>& chosen, GridStep step) const {
  return total_odds(worlds(chosen), step);
}

Pieces pieces_of(const AimInputs& inputs, Obstacles& obstacles) {
  return PiecesOf(inputs).run(obstacles);
}

// A routine cut down to one programme.

namespace {

// The new index of each element; leave_out for those that are gone.
std::vector<std::size_t> new_places(const std::vector<std::size_t>& options) {
  std::vector<std::size_t> places;
  std::size_t next = 0;
  for (const std::size_t option : options) places.push_back(option == leave_out ? leave_out : next++);
  return places;
}

template <class Seen>
void renumber(std::vector<Seen>& seen, const std::vector<std::size_t>& places) {
  std::erase_if(seen, [&](const Seen& one) { return places[one.element] == leave_out; });
  for (Seen& one : seen) one.element = places[one.element];
}

}  // namespace

Programme programme_of(const Routine& routine, const Wish& wish, const std::vector<std::size_t>& options) {
  Programme result{routine, {{}, wish.runs}};
  const std::vector<std::size_t> places = new_places(options);
  for (const std::size_t option : options) {
    if (option != leave_out) result.wish.options.push_back(option);
  }
  if (result.wish.options.size() == options.size()) return result;
  std::vector<Element>& elements = result.routine.elements;
  for (std::size_t i = 0; i < options.size(); ++i) {
    if (options[i] != leave_out && places[i] != i) elements[places[i]] = std::move(elements[i]);
  }
  elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(result.wish.options.size()), elements.end());
  std::vector<Item>& order = result.routine.order;
  std::erase_if(order, [&](const Item& item) { return item.is_element && places[item.index] == leave_out; });
  for (Item& item : order) item.index = item.is_element ? places[item.index] : item.index;
  for (Run& run : result.routine.runs) renumber(run.elements, places);
  for (RecordedPanel& panel : result.routine.panels) renumber(panel.elements, places);
  return result;
}

Diagnostics objections_with(const Routine& routine, const Wish& wish, const PlanChoice& choice,
                            const Diagnostics& of_sheet) {
  const Programme programme = programme_of(routine, wish, choice.options);
  return objections_with(programme.routine, programme.wish, of_sheet);
}

namespace {

// How many beginnings of programmes there are to look into.
double beginnings_of(const Pieces& pieces) {
  double all = 0, here = 1;
  for (const auto& list : pieces.choices) {
    if (list.size() > 1) all += here;
    here *= static_cast<double>(list.size());
  }
  return std::max(all, 1.0);
}

// From one on which all beginnings take half a second, about, to that of a forecast.
std::vector<GridStep> steps_for(const Pieces& pieces, GridWish wish) {
  constexpr double work_of_all = 5e8, least_work = 1e7, most_work = 3e7, finer = 5;
  const std::vector<std::size_t> first(pieces.choices.size());
  const auto whole = static_cast<double>(wish.work);
  double work = std::min(whole, std::clamp(work_of_all / beginnings_of(pieces), least_work, most_work));
  std::vector<GridStep> steps;
  for (; steps.empty() || work < whole; work *= finer) {
    wish.work = static_cast<std::int64_t>(work);
    steps.push_back(pieces.step_for(first, wish));
  }
  return steps;
}

}  // namespace

std::optional<double> level(const std::vector<WeighedProgramme>& known, std::size_t how_many) {
  if (known.size() < how_many) return std::nullopt;
  std::vector<double> least;
  for (const WeighedProgramme& one : known) least.push_back(one.least);
  std::nth_element(least.begin(), least.begin() + static_cast<std::ptrdiff_t>(how_many - 1), least.end(),
                   std::greater<>());
  return least[how_many - 1];
}

void put_best_first(std::span<WeighedProgramme> all) {
  std::sort(all.begin(), all.end(),
            [](const WeighedProgramme& a, const WeighedProgramme& b) { return a.value > b.value; });
  for (auto from = all.begin(); from != all.end();) {
    const double equal = from->value - last_bits;
    const auto next =
        std::find_if(from, all.end(), [equal](const WeighedProgramme& one) { return one.value < equal; });
    std::sort(from, next,
              [](const WeighedProgramme& a, const WeighedProgramme& b) { return a.choices < b.choices; });
    from = next;
  }
}

bool are_alike(const std::vector<WeighedProgramme>& all) {
  double least = all.front().least, most = all.front().most;
  for (const WeighedProgramme& one : all) {
    least = std::min(least, one.least);
    most = std::max(most, one.most);
  }
  return most - least <= 4 * last_bits;
}

ProgrammeOdds::ProgrammeOdds(const AimInputs& inputs, const Pieces& pieces)
    : inputs_(inputs),
      pieces_(pieces),
      steps_(steps_for(pieces, inputs.how.forecast.grid)),
      known_(steps_.size() + 1) {}

const WeighedProgramme& ProgrammeOdds::of(const std::vector<std::size_t>& choices, std::size_t grid) {
  const auto known = known_[grid].find(choices);
  if (known != known_[grid].end()) return known->second;
  const TotalOdds total = grid < finest() ? pieces_.total(choices, steps_[grid])
                                          : pieces_.total(choices, inputs_.how.forecast.grid);
  return known_[grid].emplace(choices, weighed(choices, total)).first->second;
}

WeighedProgramme ProgrammeOdds::weighed(const std::vector<std::size_t>& choices,
                                        const TotalOdds& total) const {
  WeighedProgramme result{choices, 0, 0, 0, {}, {}, {}};
  if (inputs_.how.aim == PlanWish::For::quantile) {
    const double off = binary(total.bound);
    result.quantile = total.odds.quantile(inputs_.how.share);
    result.exact = Exact(*result.quantile);
    result.value = binary(*result.quantile);
    result.least = result.value - off;
    result.most = result.value + off;
  } else {
    result.reaches = reaches(total, inputs_.how.target);
    result.exact = Exact(Decimal::from_units(std::llround(result.reaches->chance * 100 * Decimal::one)));
    result.value = result.reaches->chance;
    result.least = result.reaches->least - last_bits;
    result.most = result.reaches->most + last_bits;
  }
  return result;
}

}  // namespace landdrill
