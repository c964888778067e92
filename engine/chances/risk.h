// What the risk of the base mark does to the points that can be expected, exactly.
//
//   38.0625 as declared, 3.6250 on the base mark, slip 12 %: expected 0.88 x 38.0625 + 0.12 x 3.6250 = 33.93
//
// Everything here is at the marks the coach expects: every judge gives that mark. How marks scatter is in
// forecast.h.
#pragma once

#include <boost/multiprecision/cpp_int.hpp>
#include <map>
#include <optional>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

inline constexpr Decimal hundred_percent = Decimal::from_units(100 * Decimal::one);
// 12 % is 0.12.
Exact as_share(Decimal percent);

// The chance that an element gets the base mark, and what says so.
struct BaseChance {
  // Who says the chance that the runs draw on: nobody (then it is 0), the sheet's `slip`, the kind's row.
  enum class From { nobody, sheet, set } from = From::nobody;
  Decimal percent;  // 0 to 100, with the runs, to a millionth
  Decimal said;     // 0 to 100, without them
  Decimal weight;   // how many runs that counts as
  RunsShown runs;   // that it rests on: all of the element as written
  bool is_known() const { return from != From::nobody || runs.all > 0; }
};
// All runs count, drawn toward what the sheet or the set says while they are few: with r of n runs lost it is
// (w x said + r) / (w + n), where w is the set's `slip-runs`. 0 where the event does not mark the element.
BaseChance base_chance(const Routine& routine, std::size_t element, const Wish& wish);

// A penalty and how often it is expected, counted no more often than its row allows.
struct ExpectedPenalty {
  const Penalty* penalty = nullptr;
  Decimal number;  // on average, 0 or more
};
// The sheet's `errors`; without them the sync errors of the latest run that counts, or the mean over all runs
// that said something of them (to a millionth) when runs are averaged. Each class once.
std::vector<ExpectedErrors> expected_errors(const Routine& routine, const RunWish& runs);
// The sheet's `risk`, as numbers: 10 % is 0.1; without it the penalties of the runs, likewise. Each once.
std::vector<ExpectedPenalty> expected_penalties(const Routine& routine, const RunWish& runs);

// The showing as expected, every element credited as declared, and the chance of the base mark beside it.
struct Risked {
  Showing showing;                  // nothing is base here, and no sync errors or penalties: they are below
  std::vector<BaseChance> chances;  // one for each element
  std::vector<ExpectedErrors> errors;
  std::vector<ExpectedPenalty> penalties;
};
Risked risked(const Routine& routine, const Wish& wish);

// The expected points of one element that is not weighted: (1 - p) x declared + p x base, not rounded. Empty
// without a mark, or where the event does not mark the element or weights it.
struct RiskedPoints {
  Points declared;
  std::optional<Points> base;  // empty: the kind has no base mark (then the chance is 0)
  Exact expected;
};
std::optional<RiskedPoints> risked_points(const Routine& routine, const Risked& risked, std::size_t element);
// The same of an element that is shown so, with that chance of the base mark in per cent.
std::optional<RiskedPoints> risked_points(const Element& element, const ShownElement& shown, Decimal percent);

// The elements marked under a rule that weights by difficulty: the expected points over every way in which
// base marks can fall; exact to the twelfth place, to which it is rounded. Empty while a mark is missing,
// when all credited difficulties can be 0, or when more than `most_risky` elements have a chance that is
// neither 0 nor 100 %.
constexpr int most_risky = 16;
std::optional<Exact> risked_together(const Routine& routine, const Risked& risked, const PanelRule& rule);
// The rules that weight elements of this routine, each once, in the order of the elements.
std::vector<const PanelRule*> weighting_rules(const Routine& routine);

// The expected total, not rounded but for what `risked_together` says. Empty while marks are missing, or when
// `risked_together` is empty for a rule.
std::optional<Exact> expected_total(const Routine& routine, const Risked& risked);
// The same without the points of one element; where it is weighted, without those of its rule.
std::optional<Exact> total_without(const Routine& routine, const Risked& risked,
                                   std::optional<std::size_t> element);

// What elements that are weighted by difficulty together can be expected to give, over every way in which
// their base marks can fall.
//
//   Together figures(rule);
//   figures.add({marks, 2.1, base 0.5, 10 %});
//   figures.expected({marks, 1.4, base 0.5, 0 %})     // points of the two
//
// Exact but for the twelfth place, to which it is rounded. How many ways there are doubles with every element
// whose base mark is neither certain nor out of the question.

// One element under the rule.
struct TogetherElement {
  Exact mark;  // combined, as the rule says
  Difficulty declared, base;
  Decimal percent;  // of the base mark
  bool risky() const { return percent > Decimal() && percent < hundred_percent; }
};
// `element` of a routine as it is shown; empty without a mark.
std::optional<TogetherElement> together_element(const Routine& routine, const Risked& risked,
                                                std::size_t element);

class Together {
 public:
  explicit Together(const PanelRule& rule) : rule_(&rule) {}

  void add(const TogetherElement& element);
  // Empty when all credited difficulties can be 0, or when more than `most_risky` elements are risky.
  std::optional<Exact> expected();
  // With one element more; what was worked out before for the same mark and difficulty is not again.
  std::optional<Exact> expected(const TogetherElement& more);

 private:
  // Wide enough for sixteen chances in hundred millionths, points, and twelve places.
  using Wide = boost::multiprecision::int1024_t;
  struct Way {
    Exact merit;
    Difficulty difficulty;
    Wide weight;  // its chance, times `whole_`
  };
  // Points in millionths, times `whole_`; empty where they cannot be worked out.
  using Sum = std::optional<Wide>;

  const Sum& sum_with(Exact mark, Difficulty credited);
  static Exact twelve_places(const Wide& numerator, const Wide& denominator);

  const PanelRule* rule_;
  std::vector<Way> ways_ = {{Exact(), Difficulty(), 1}};
  Wide whole_ = 1;
  int risky_ = 0;
  std::map<std::pair<Exact, Difficulty>, Sum> known_;
};

// The others that `element` is weighted together with; empty while one of them has no mark.
std::optional<Together> weighted_beside(const Routine& routine, const Risked& risked, std::size_t element);

}  // namespace landdrill
