// How often programmes reach a total, all on one grid.
//
//   Reach reach(pieces, step);
//   reach.often({0, 1, 0}, total)                       // of these choices, as far as the grid can tell
//   reach.often(reach.ideal(), total - reach.bound())   // no programme reaches it more often
//
// What half of the elements give is added up once for all programmes that share it: then another programme takes
// no more than a sum of products. Only plan*.cpp include this.
#pragma once

#include <array>
#include <map>

#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_aims.h"
#include "tables/decimal.h"

namespace landdrill {

// The odds that a plan adds up: of every choice on every day, and of what all programmes share.
//
//   Pieces pieces = pieces_of(inputs, obstacles);
//   pieces.total({0, 1, 0}, {}).odds.quantile(0.25)    // of the programme of these choices
//
// The same model as forecast.h; spreads are those of the whole sheet, whatever is left out.

struct Pieces {
  Days days;
  std::vector<std::vector<std::vector<Odds>>> choices;  // [element][choice][day]
  std::vector<std::vector<Odds>> shared;                // [piece][day, or only one]

  const Odds& shared_on(std::size_t piece, std::size_t day) const {
    return shared[piece][shared[piece].size() == 1 ? 0 : day];
  }
  // Of one choice for each element.
  TotalOdds total(const std::vector<std::size_t>& chosen, const GridWish& wish) const;
  GridStep step_for(const std::vector<std::size_t>& chosen, const GridWish& wish) const;

  Odds nothing = Odds::certain(Decimal());  // what a world of no pieces has

 private:
  std::vector<World> worlds(const std::vector<std::size_t>& chosen) const;
};
// Fills `obstacles` instead when there can be no forecast.
Pieces pieces_of(const AimInputs& inputs, Obstacles& obstacles);

// See above.
class Reach {
 public:
  using Choices = std::vector<std::size_t>;  // one for each list

  Reach(const Pieces& pieces, GridStep step);

  Chance often(const Choices& choices, Decimal total) const;
  // The least total that is not exceeded with a chance of at least `share`.
  Decimal missed(const Choices& choices, Chance share) const;
  // No total lies further than that from where it truly is.
  Decimal bound() const { return Decimal::from_units(bound_ + 1); }
  // Each list has the best of all its choices at once, total by total: the highest chance of any to come to that
  // much or more.
  Choices ideal() const;

 private:
  using Days = std::vector<GridSum>;

  void put_on_grid();
  void halve();
  const Days& half(std::size_t which, const Choices& choices) const;
  std::int64_t point_of(Decimal total) const;
  Chance often_at(const Choices& choices, std::int64_t point) const;

  const Pieces& pieces_;
  const GridStep step_;
  std::int64_t bound_ = 0;                                  // in millionths
  std::vector<std::vector<std::vector<Gridded>>> choices_;  // [list][choice][day], the ideal one last
  Days shared_;                                             // all that no choice changes
  std::array<Choices, 2> lists_;                            // of each half: those with more than one choice
  // The first half with what is shared; of the second one, the chance of every point or more.
  mutable std::array<std::map<Choices, Days>, 2> halves_;
};

}  // namespace landdrill
