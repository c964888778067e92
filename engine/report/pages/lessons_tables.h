// What was learned in numbers, and a routine as expected and calibrated; lessons.h is the door.
#pragma once

#include "engine/judging/lessons.h"
#include "engine/report/page.h"
#include "engine/report/pages/lessons.h"

namespace landdrill::report {

Datum back_test_datum(const BackTest& tested);
// `in_csv`: they are the table of the spreadsheet.
void put_biases(const Learned& learned, bool in_csv, PageParts& page);
void put_estimate(const LessonsTold& told, Page& page);

}  // namespace landdrill::report
