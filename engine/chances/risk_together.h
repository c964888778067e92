// What elements that are weighted by difficulty together can be expected to give, over every way in which
// their base marks can fall.
//
//   Together figures(rule);
//   figures.add({marks, 2.1, base 0.5, 10 %});
//   figures.expected({marks, 1.4, base 0.5, 0 %})     // points of the two
//
// Exact but for the twelfth place, to which it is rounded. How many ways there are doubles with every element
// whose base mark is neither certain nor out of the question.
#pragma once

#include <boost/multiprecision/cpp_int.hpp>
#include <map>
#include <optional>
#include <vector>

#include "engine/chances/risk.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

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
