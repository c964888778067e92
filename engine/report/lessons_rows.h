// The same for other programs; lessons.h is the door.
#pragma once

#include <string>
#include <string_view>

#include "engine/report/lessons.h"

namespace landdrill::report {

std::string lessons_csv(const LessonsTold& told);
std::string lessons_json(const LessonsTold& told);
std::string_view word_of(LearnedBias::Of of);         // "kind"
std::string_view word_of(BackTest::Verdict verdict);  // "helped"

}  // namespace landdrill::report
