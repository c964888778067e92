// Several trainees beside each other: each against the panels or an expert, and any two on the lines that both marked.
//
//   compare_trainees({{"Robin", robins}, {"Sam", sams}}, "the panel").pairs[0].bias.value   // +0.20: Robin above Sam
//
// What is told of one or two of them is corrected for how many were compared (Bonferroni): among trainees who all mark as
// the judges do, one table in twenty names anybody.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {

struct TraineeMarks {
  std::string name;
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;  // one for each task
};

struct PracticeComparison {
  struct One {
    std::string name;
    std::size_t marked = 0, again = 0;  // `again` is left out of the rest
    Statistic bias;                     // of (her mark - the reference)
    std::optional<double> difference, within_one;
    Statistic order;
  };
  struct Two {
    std::size_t one = 0, other = 0;
    Statistic bias;         // of (the one's mark - the other's), on the lines that both marked
    double difference = 0;  // whichever way
  };
  std::string reference;
  std::vector<One> ones;
  std::vector<Two> pairs;  // that have lines enough in common
  std::vector<std::string> sentences, warnings;
};
PracticeComparison compare_trainees(std::span<const TraineeMarks> trainees, std::string_view reference);

}  // namespace landdrill
