// A practice session as text, JSON or CSV: her marks beside the panel's, and what they say of her eye.
//
//   practice({"Robin", "2026-11-25", tasks, done, report}, Format::text, {})
//
// Computes nothing but the writing of numbers: differences with two decimals.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/report/values.h"

namespace landdrill::report {

struct PracticeTold {
  std::string trainee, started;
  std::span<const PracticeTask> tasks;
  std::span<const Practised> done;
  const PracticeReport* report = nullptr;
};
std::string practice(const PracticeTold& told, Format format, const TextWish& wish);

// One session of several, oldest first.
struct PracticePoint {
  int number = 0;
  std::string started;
  const PracticeReport* report = nullptr;
};
std::string practice_curve(std::string_view trainee, const std::vector<PracticePoint>& points, Format format,
                           const TextWish& wish);

}  // namespace landdrill::report
