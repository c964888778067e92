// The same views for other programs; judges.h is the door.
#pragma once

#include <string>
#include <vector>

#include "engine/judging/meets.h"

namespace landdrill::report {

std::string judges_csv_head();
std::string judges_csv(const MeetView& meet);
// As it stands in the list of all meets, indented.
std::string judges_json(const MeetView& meet);

}  // namespace landdrill::report
