// What was learned in numbers, and a routine as expected and calibrated; lessons.h is the door.
#pragma once

#include <string>

#include "engine/judging/calibrated_estimate.h"
#include "engine/judging/lessons.h"
#include "engine/report/page.h"

namespace landdrill::report {

struct LessonsTold {
  const Learned* learned = nullptr;
  const BackTest* tested = nullptr;
  std::string routine;                           // of `estimate`
  const CalibratedEstimate* estimate = nullptr;  // nullptr: none was asked for
};

Datum back_test_datum(const BackTest& tested);
// `in_csv`: they are the table of the spreadsheet.
void put_biases(const Learned& learned, bool in_csv, PageParts& page);
void put_estimate(const LessonsTold& told, Page& page);

}  // namespace landdrill::report
