#include "engine/cli/today.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>

#include "grammar/calendar.h"

namespace landdrill::cli {
namespace {

std::string as_day(const std::tm& time) {
  return fmt::format("{:04}-{:02}-{:02}", time.tm_year + 1900, time.tm_mon + 1, time.tm_mday);
}

}  // namespace

std::string today() {
  const char* const said = std::getenv("LANDDRILL_TODAY");
  if (said != nullptr && is_written_day(said)) return said;
  const std::time_t now = std::time(nullptr);
  std::tm here{}, universal{};
  localtime_r(&now, &here);
  gmtime_r(&now, &universal);
  return std::max(as_day(here), as_day(universal));
}

}  // namespace landdrill::cli
