// A practice session: her marks beside the panel's, and what they say of her eye; and her curve over the weeks.
//
//   render_text(practice_page({"Robin", "2026-11-25T15:03:43Z", tasks, done, report}), {})
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/report/page.h"

namespace landdrill::report {

struct PracticeTold {
  std::string trainee, started;
  std::span<const PracticeTask> tasks;
  std::span<const Practised> done;
  const PracticeReport* report = nullptr;
};
Page practice_page(const PracticeTold& told);

// One session of several, oldest first.
struct PracticePoint {
  int number = 0;
  std::string started;
  const PracticeReport* report = nullptr;
};
Page practice_curve_page(const std::string& trainee, const std::vector<PracticePoint>& points);

}  // namespace landdrill::report
