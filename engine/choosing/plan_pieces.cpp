#include "engine/choosing/plan_pieces.h"

#include <algorithm>

#include "engine/chances/forecast.h"
#include "engine/chances/forecast_obstacles.h"
#include "engine/chances/grid_choice.h"
#include "engine/chances/grid_sum.h"
#include "engine/chances/line_odds.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/routine/wish.h"
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

}  // namespace landdrill
