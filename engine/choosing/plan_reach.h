// An upper bound on the chance that any programme of some choices reaches a total, by a table over the sum.
//
//   Reach reach(pieces, about, 160, 187'000'000);     // 160 points about the sums of the programme `about`;
//                                                     // 187 to reach
//   reach.look(open, order, added).most               // no programme of these reaches it more likely
//
// Where each list may choose by the day and by the sum of the lists before it, backward from the last one,
//
//   V[k](s) = the highest, over the choices of list k, of the expected V[k + 1](s + points) + added
//
// is at least what any programme has, for every programme is one way to choose so. `added` is what ties the
// days together and puts prices on limits (plan_tighten.h). Between the points of the grid V is a straight
// line; every point is lifted by as much as V may bulge over that line. Only plan*.cpp include this.
#pragma once

#include "engine/chances/odds.h"
#include "engine/choosing/plan_open.h"
#include "engine/choosing/plan_pieces.h"

namespace landdrill {

// [day][list][choice]
using ByDay = std::vector<std::vector<std::vector<Chance>>>;

class Reach {
 public:
  // The grid lies about the sums of `about`, one choice for each list, and fits this total, in millionths.
  Reach(const Pieces& pieces, const std::vector<std::size_t>& about, int points, double total);
  // Another total, not far from it.
  void aim_at(double total);

  struct Looked {
    double most = 0;            // of any of the open programmes, with what is added
    std::vector<double> first;  // with each choice of the first list of the order
    ByDay taken;                // how often each choice is taken
  };
  // `order`: the lists that are not settled; a list knows the sum of those before it.
  Looked look(const OpenLists& open, const std::vector<std::size_t>& order, const ByDay& added) const;
  // The chance of one programme to come within so many steps of the total, for certain between the two: [zero
  // + n] of (the total less n steps) or more.
  struct Survival {
    double step = 0;  // in millionths
    std::size_t zero = 0;
    std::vector<Chance> least, most;
  };
  Survival survival(const std::vector<std::size_t>& programme) const;
  // About the chance of a programme, and of those that differ from it in one choice; no bounds.
  ByDay worths(const std::vector<std::size_t>& programme) const;

 private:
  // A tail of less than this is moved up, where it counts for more.
  static constexpr Chance small_tail = 1e-8;
  // One choice on one day. Each case is shared out between the two points about it so that its mean stays.
  struct Case {
    int at = 0;  // points from where the list stands in the window
    Chance chance = 0;
    Chance bulge = 0;  // how far a bend of V at this point bulges over the line, for a bend of 1
  };
  using Cases = std::vector<Case>;
  // A window of V with as much again on either side: what lies below, and what lies above.
  using Padded = std::vector<double>;
  struct Day {
    std::vector<std::vector<Cases>> choices;  // [list][choice]
    double stands = 0;                        // where point `zero` lies before all lists, in millionths
    std::vector<double> value;                // of what all share, rising
    std::vector<Chance> at_least;
    Padded end, least_end;  // from above, and from below
  };

  std::size_t days() const { return pieces_.days.cases().size(); }
  void measure(const std::vector<std::size_t>& about, double total);
  void lay_out(std::size_t day, const std::vector<std::size_t>& about);
  void add_shared(std::size_t day);
  Cases split(const Odds& odds, double stands) const;
  void begin_end(Day& day, double total) const;
  std::vector<Chance> shared_from(const Day& day, double total) const;
  void pad(Padded& values, double above) const;
  void pad_below(Padded& values) const;
  std::vector<double> after(const Cases& cases, const Padded& values) const;
  std::vector<double> lifted(const Cases& cases, const Padded& values, const Padded& bends, double way) const;
  Padded bends(const Padded& values, double way) const;
  void put(const std::vector<double>& window, Padded& values) const;
  Padded settled(const Day& day, const OpenLists& open) const;
  void choose(const std::vector<Cases>& choices, const std::vector<std::size_t>& open,
              const std::vector<double>& added, Padded& values, std::vector<std::uint16_t>& best) const;
  double look_on(std::size_t day, const OpenLists& open, const std::vector<std::size_t>& order,
                 const ByDay& added, Looked& looked) const;
  void follow(const Day& day, const OpenLists& open, const std::vector<std::size_t>& order,
              const std::vector<std::vector<std::uint16_t>>& best,
              std::vector<std::vector<Chance>>& taken) const;
  void spread(const Cases& cases, std::size_t from, Chance chance, std::vector<Chance>& to) const;
  std::vector<std::vector<Chance>> worths_on(const Day& day, const std::vector<std::size_t>& programme) const;

  const Pieces& pieces_;
  int points_, zero_ = 0;
  double step_ = 1, moved_ = 0;  // in millionths; how far the grid of what all share moves it
  std::vector<Day> days_;
};

}  // namespace landdrill
