// Means of groups, each drawn towards the mean of all: the fewer its lessons, the closer.
//
//   draw_together(groups, {0.12})     // groups: {-0.40, 2}, {-0.10, 30} ...; 0.12: variance of one lesson
//
// Empirical Bayes for normal means (Efron & Morris, J. Amer. Statist. Assoc. 70, 1975, 311-319), with the
// variance between groups by the method of moments (DerSimonian & Laird, Controlled Clinical Trials 7, 1986,
// 177-188) and, in the standard error, the uncertainty of the common mean (Kackar & Harville, Comm. Statist.
// A 10, 1981, 1249-1261); that of the variances is left out. Nothing is divided by a variance, which may be
// 0.
#pragma once

#include <optional>
#include <span>
#include <vector>

namespace landdrill {

struct GroupMean {
  double mean = 0;
  double lessons = 0;  // that it is the mean of: its variance is that of one lesson / lessons
};
struct Scatter {
  double within = 0;  // variance of one lesson around the mean of its group
  std::optional<double> between =
      std::nullopt;  // variance between the groups' true means; estimated when empty
  double shared =
      1;  // in how many groups a lesson is on average: the common mean rests on fewer lessons then
};
struct DrawnMean {
  double mean = 0;
  double weight = 0;  // of the group's own mean, 0 to 1
  double error = 0;   // standard error
};
struct DrawnTogether {
  double between = 0;                     // variance between the groups' true means
  double towards = 0, towards_error = 0;  // the common mean and its standard error
  std::vector<DrawnMean> groups;          // in the order given
};
// A single group is its own common mean, with weight 1. No group: nothing.
DrawnTogether draw_together(std::span<const GroupMean> groups, const Scatter& scatter);

}  // namespace landdrill
