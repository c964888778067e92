#include <gtest/gtest.h>

#include "engine/season/practice_tasks.h"

namespace landdrill {
namespace {

TEST(DayAfter, IsTheNextOfTheCalendar) {
  EXPECT_EQ(day_after("2026-05-09"), "2026-05-10");
  EXPECT_EQ(day_after("2026-12-31"), "2027-01-01");
  EXPECT_EQ(day_after("2026-02-28"), "2026-03-01");
  EXPECT_EQ(day_after("2028-02-28"), "2028-02-29");
}

}  // namespace
}  // namespace landdrill
