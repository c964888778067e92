// The same views for other programs; judges.h is the door.
#pragma once

#include <string>
#include <vector>

#include "engine/meets.h"

namespace landdrill::report {

std::string judges_csv(const std::vector<MeetView>& meets);
std::string judges_json(const std::vector<MeetView>& meets);

}  // namespace landdrill::report
