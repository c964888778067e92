// What a sheet says for choosing, tied to its rows; it never changes a score.
#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::complaints;
using kit::number;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

using Of = OwnLimit::Of;

std::string with_header(std::string_view lines) {
  return replaced(reeds, "swimmers 1\n", "swimmers 1\n" + std::string(lines));  // from line 6
}
std::string with_first_element(std::string_view lines) {
  return replaced(reeds, "expect 7.5\n", "expect 7.5\n" + std::string(lines));  // from line 10
}

TEST(ResolveWishes, TakesSpreadsAndTheDay) {
  const ReadSheet sheet(
      replaced(with_header("spread 0.35\nday 0.2\n"), "expect 7.5\n", "expect 7.5\nspread 0,4\n"),
      kit::pond());
  EXPECT_EQ(sheet.routine().spread, number("0.35"));
  EXPECT_EQ(sheet.routine().day, number("0.2"));
  EXPECT_EQ(sheet.routine().elements[0].options[0].spread, number("0.4"));
  EXPECT_FALSE(sheet.routine().elements[1].options[0].spread);
}

TEST(ResolveWishes, TakesExpectedErrorsAndRisks) {
  const ReadSheet sheet(reeds + "errors small 2.5, clear 0.4\nrisk overtime 10%, bottom 2%\n", kit::pond());
  const Routine& routine = sheet.routine();
  ASSERT_EQ(routine.errors.size(), 2u);
  EXPECT_EQ(routine.errors[0].sync, kit::pond().sync.find("small"));
  EXPECT_EQ(routine.errors[0].number, number("2.5"));
  ASSERT_EQ(routine.risks.size(), 2u);
  EXPECT_EQ(routine.risks[1].penalty, kit::pond().penalties.find("bottom"));
  EXPECT_EQ(routine.risks[1].chance, number("2"));
}

TEST(ResolveWishes, TellsWhatALimitIsOf) {
  const ReadSheet sheet(
      with_header(
          "limit elements most 3\nlimit SECONDS least 40.5 most 60\nlimit under most 30\nlimit breath "
          "most 9.5\nlimit hybrid least 1\nlimit spin-a most 2\n"),
      kit::pond());
  const std::vector<OwnLimit>& limits = sheet.routine().limits;
  ASSERT_EQ(limits.size(), 6u);
  const Of wanted[] = {Of::elements, Of::seconds, Of::under, Of::breath, Of::kind, Of::part};
  for (std::size_t i = 0; i < limits.size(); ++i) EXPECT_EQ(limits[i].of, wanted[i]) << i;
  EXPECT_EQ(limits[1].least, number("40.5"));
  EXPECT_EQ(limits[1].most, number("60"));
  EXPECT_EQ(limits[5].name, "spin-a");
  EXPECT_FALSE(limits[5].least);
}

TEST(ResolveWishes, TakesWhatAPlanMayLeaveOutAndWhatItKeeps) {
  const ReadSheet sheet(
      replaced(with_first_element("optional\n"), "element 2 hybrid\n", "element 2 hybrid\nstays\n"),
      kit::pond());
  EXPECT_TRUE(sheet.routine().elements[0].optional);
  EXPECT_FALSE(sheet.routine().elements[0].stays);
  EXPECT_TRUE(sheet.routine().elements[1].stays);
}

TEST(ResolveWishes, ChangesNoScore) {
  const ReadSheet sheet(
      with_header("spread 1\nday 1\nlimit elements most 1\n") + "errors small 9\nrisk overtime 100%\n",
      kit::pond());
  EXPECT_EQ(kit::expected_total(sheet.routine()), "86.4");
}

TEST(ResolveWishes, RefusesWhatCannotBeMeant) {
  EXPECT_EQ(
      complaints(with_header("spread -0.1\n")),
      "6:8 found the spread -0.1; expected a standard deviation from 0 to 10 marks, the width of the scale "
      "[out-of-range]\n");
  EXPECT_EQ(complaints(with_header("limit hybrid least 3 most 2\n")),
            "6:27 found most 2; expected at least 3, the least of the same limit [contradiction]\n");
  EXPECT_EQ(complaints(with_header("limit elements most 2.5\n")),
            "6:21 found the most \"2.5\"; expected a whole number from 0 to 10000 [bad-number]\n");
  EXPECT_EQ(complaints(with_first_element("stays\noptional\n")),
            "11:1 found an element that is optional and stays; expected one of the two: a plan may leave it "
            "out, or "
            "keeps it as written [contradiction]\n");
}

TEST(ResolveWishes, ListsTheGapsOfWhatIsExpected) {
  const ReadSheet sheet(reeds + "errors untold 1\nrisk untold 5%\n", kit::pond());
  const std::vector<Gap>& gaps = sheet.sheet().gaps();
  ASSERT_EQ(gaps.size(), 2u);
  EXPECT_EQ(gaps[0].table, "sync");
  EXPECT_EQ(gaps[1].table, "penalties");
  EXPECT_EQ(gaps[1].column, "points");
}

}  // namespace
}  // namespace landdrill
