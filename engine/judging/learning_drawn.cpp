// Means of groups, each drawn towards the mean of all.
#include <cmath>

#include "engine/judging/learning.h"

namespace landdrill {
namespace {

// Variances below are what rounding of binary numbers leaves of equal marks.
constexpr double rounding = 1e-18, rounding_share = 1e-9;

struct Weighed {
  double weight = 0, mean = 0;
};

template <class WeightOf>
Weighed weighed(std::span<const GroupMean> groups, WeightOf weight_of) {
  Weighed sum;
  for (const GroupMean& group : groups) sum.weight += weight_of(group);
  for (const GroupMean& group : groups) sum.mean += weight_of(group) / sum.weight * group.mean;
  return sum;
}

double between_variance(std::span<const GroupMean> groups, double within) {
  const Weighed fixed = weighed(groups, [](const GroupMean& group) { return group.lessons; });
  double scatter = 0, squares = 0;
  for (const GroupMean& group : groups) {
    scatter += group.lessons * (group.mean - fixed.mean) * (group.mean - fixed.mean);
    squares += group.lessons * group.lessons;
  }
  const double excess = scatter - static_cast<double>(groups.size() - 1) * within;
  if (groups.size() < 2 || excess <= scatter * rounding_share) return 0;
  const double between = excess / (fixed.weight - squares / fixed.weight);
  return between < rounding ? 0 : between;
}

DrawnMean drawn(const GroupMean& group, double within, const DrawnTogether& all) {
  const double own = group.lessons * all.between;
  DrawnMean result;
  result.weight = own + within > 0 ? own / (own + within) : 0;
  result.mean = all.towards + result.weight * (group.mean - all.towards);
  return result;
}

}  // namespace

DrawnTogether draw_together(std::span<const GroupMean> groups, const Scatter& scatter) {
  DrawnTogether result;
  if (groups.empty()) return result;
  const double within = scatter.within;
  result.between = scatter.between ? *scatter.between : between_variance(groups, within);
  const bool same = result.between == 0 && within == 0;
  const auto weight_of = [&](const GroupMean& group) {
    return same ? group.lessons : group.lessons / (group.lessons * result.between + within);
  };
  const Weighed common = weighed(groups, weight_of);
  result.towards = common.mean;
  for (const GroupMean& group : groups) {
    result.groups.push_back(drawn(group, within, result));
    result.groups.back().share = weight_of(group) / common.weight;
  }
  if (groups.size() == 1) result.groups.front().weight = 1;
  return result;
}

}  // namespace landdrill
