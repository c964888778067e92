#include "engine/cli/marking.h"

#include <gtest/gtest.h>

#include <cstdlib>

#include "grammar/calendar.h"

namespace landdrill::cli {
namespace {

TEST(Today, IsADayOfTheCalendarOrWhatIsSaid) {
  unsetenv("LANDDRILL_TODAY");
  EXPECT_TRUE(is_written_day(today()));
  setenv("LANDDRILL_TODAY", "2026-05-09", 1);
  EXPECT_EQ(today(), "2026-05-09");
  setenv("LANDDRILL_TODAY", "tomorrow", 1);
  EXPECT_TRUE(is_written_day(today()));
  unsetenv("LANDDRILL_TODAY");
}

}  // namespace
}  // namespace landdrill::cli
