// A small routine put together by hand, with what choosing comes to for it, so that the tests of these
// reports need no sheet and no engine run.
//
// Element 1 is a lift, element 2 a hybrid with the option "safer".
#pragma once

#include <memory>

#include "engine/report/pages/compare.h"
#include "engine/report/pages/forecast.h"
#include "engine/report/pages/plan.h"
#include "engine/report/pages/train.h"
#include "sample.h"

namespace landdrill::report_test {

// The rows that the routine points to, and the routine.
struct Scene {
  ValueSet set;
  Event event;
  Kind lift, hybrid;
  PanelRule rule;
  SyncClass small;
  Routine routine;
};
std::unique_ptr<Scene> scene();
// The account that stands on the face of the reports.
report::Face face();

report::ComparedElement undertow_compared();
report::ToldForecast told_forecast(const Scene& scene);
report::ToldPlan told_plan();
NextPoints told_gains();

}  // namespace landdrill::report_test
