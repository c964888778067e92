// What programmes are worth by odds: the total that they miss no more often than wished, or how often they reach one.
//
//   std::unique_ptr<OddsWorth> odds = odds_worth(inputs, obstacles);
//   odds->coarsely({0, 1, 0})        // soon done, with bounds that hold
//   odds->finely({0, 1, 0})          // as a forecast says
//
// Only plan*.cpp include this.
#pragma once

#include <limits>
#include <memory>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/choosing/plan_aims.h"
#include "tables/decimal.h"

namespace landdrill {

// Chances are not told apart more finely: they come from sums of many small ones.
constexpr Chance last_bits = 1e-12;

// By the aim, in points or as a chance, its value lies between the two for certain, as far as the model goes.
struct Weighed {
  static constexpr double unknown = -std::numeric_limits<double>::infinity();  // not weighed yet

  std::vector<std::size_t> choices;  // one for each list
  double value = unknown, least = unknown, most = unknown;
  Exact exact = {};                      // in points, or per cent
  std::optional<Decimal> quantile = {};  // by the share of the wish
  std::optional<ChanceBounds> reaches = {};
};

class OddsWorth {
 public:
  virtual ~OddsWorth() = default;
  virtual Weighed coarsely(const std::vector<std::size_t>& choices) const = 0;
  virtual Weighed finely(const std::vector<std::size_t>& choices) const = 0;
  // False: certainly not, as far as is soon told.
  virtual bool may_be_worth(const std::vector<std::size_t>& choices, double value) const = 0;
  // What no programme exceeds, were there no limits.
  virtual double highest() const = 0;
};
// Fills `obstacles` instead when there can be no forecast.
std::unique_ptr<OddsWorth> odds_worth(const AimInputs& inputs, Obstacles& obstacles);

}  // namespace landdrill
