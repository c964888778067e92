// The figures of a practice: how a trainee's marks lie beside those of the panels (practice_report.h works them out).
//
//   report.bias.value        // +0.18, in marks: above the mean of the kept marks
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/judging/statistics/sample.h"

namespace landdrill {

struct PracticeReport {
  std::string reference;  // whom she is compared with: "the panel"
  std::size_t marked = 0, skipped = 0, late = 0;
  std::size_t corrected = 0;                      // of all tasks
  std::size_t again = 0;                          // marked once more: not among those that are compared
  std::size_t meets = 0;                          // of the marks that are compared
  Statistic bias;                                 // the mean of (her mark - mean of the kept ones)
  std::optional<double> difference;               // the mean of the same whichever way, in marks
  std::optional<double> within_one, within_two;   // share within one and two steps of the kept mean
  Statistic order;                                // Spearman's rho with the kept means
  std::optional<double> lowest, highest, spread;  // of her marks
  std::optional<double> panel_lowest, panel_highest, panel_spread;  // of the kept means of the same tasks
  std::optional<double> first_half, second_half;                    // mean absolute difference: steadiness
  // One judge: a seat of one panel of one event of one meet. Seats of different meets are not one judge.
  struct Against {
    std::string panel, event;
    bool of_elements = true;  // else of aspects
    std::size_t judge = 0;    // seat, 0 is the first
    Statistic bias;           // of (her mark - the judge's)
    double difference = 0;
  };
  std::vector<Against> judges;  // with marks enough
  // Where she is off: by kind, by level of the kept mean, by part of the session.
  struct Where {
    enum class By { kind, level, time } by = By::kind;
    std::string name;  // "lift", "below 6.5", "first third"
    std::size_t tasks = 0;
    Statistic bias = {};
    double difference = 0;
    std::optional<double> from = {}, below = {};  // of a level: the kept means that belong to it
    bool told = false;                            // it lies apart from the rest by more than chance
  };
  std::vector<Where> where;            // in each sort furthest off first
  std::vector<std::string> sentences;  // plain, the most important first
  std::vector<std::string> warnings;   // too few marks
};

}  // namespace landdrill
