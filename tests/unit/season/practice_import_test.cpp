#include <gtest/gtest.h>

#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {
namespace {

TEST(DayAfter, IsTheNextOfTheCalendar) {
  EXPECT_EQ(day_after("2026-05-09"), "2026-05-10");
  EXPECT_EQ(day_after("2026-12-31"), "2027-01-01");
  EXPECT_EQ(day_after("2026-02-28"), "2026-03-01");
  EXPECT_EQ(day_after("2028-02-28"), "2028-02-29");
}

PracticeTask line_of(std::int64_t panel, const char* line) {
  PracticeTask task;
  task.block = panel;
  task.line = line;
  task.kept = 7;
  return task;
}
Practised gave(const char* mark) {
  return {Mark(*Decimal::parse(mark)), false};
}

TEST(BesideExpert, IsWhatBothMarkedWithTheLatestMarkOfTheExpertInThePlaceOfThePanel) {
  const ComparedMarks hers{{line_of(1, "1"), line_of(1, "2"), line_of(2, "1")},
                           {gave("7.5"), gave("8"), gave("6")}};
  const ComparedMarks experts{{line_of(1, "2"), line_of(1, "1"), line_of(1, "2")},
                              {gave("7"), {}, gave("7.25")}};
  const ComparedMarks both = beside_expert(hers, experts);
  ASSERT_EQ(both.tasks.size(), 1u);
  EXPECT_EQ(both.tasks[0].line, "2");
  EXPECT_EQ(both.tasks[0].kept, 7.25);
  EXPECT_EQ(both.tasks[0].judges.size(), 1u);
  EXPECT_EQ(both.done[0].mark, Mark(*Decimal::parse("8")));
}

}  // namespace
}  // namespace landdrill
