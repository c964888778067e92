#include "engine/judging/lessons.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;

const std::string panel_of_may =
    "panel 2026-05-09 \"Tarn Open\"\n"
    "element 1: 7.25 7.50 7.25 7.00 7.75\n"
    "element 2: 6.75 7.00 6.50 7.00 6.75\n";

std::vector<Lesson> lessons_of(const std::string& text, const std::vector<std::size_t>& options = {}) {
  const ReadSheet sheet(text, kit::pond());
  return lessons(sheet.routine(), sheet.routine().panels.front(), options);
}
double expected_of_first(const std::string& text) {
  return lessons_of(text).front().expected;
}

TEST(Lessons, LayThePanelsKeptMeanBesideTheExpectedMark) {
  const std::vector<Lesson> found = lessons_of(kit::reeds + panel_of_may);
  ASSERT_EQ(found.size(), 2u);
  EXPECT_DOUBLE_EQ(found[0].expected, 7.5);
  EXPECT_DOUBLE_EQ(found[0].given, 22.0 / 3);  // 7.25, 7.50, 7.25
  EXPECT_DOUBLE_EQ(found[1].expected, 7);
  EXPECT_DOUBLE_EQ(found[1].given, 20.5 / 3);
}

TEST(Lessons, SayWhatTheyAreOf) {
  const std::vector<Lesson> found = lessons_of(kit::reeds + panel_of_may);
  EXPECT_EQ(found[0].date, "2026-05-09");
  EXPECT_EQ(found[0].routine, "Reeds");
  EXPECT_EQ(found[0].label, "1 Ripple");
  EXPECT_EQ(found[1].label, "2");
  EXPECT_EQ(found[0].kind, "hybrid");
  EXPECT_EQ(found[1].families, (std::vector<std::string>{"spins", "holds"}));
  EXPECT_TRUE(found[0].faults.empty());
  EXPECT_FALSE(found[0].base);
  EXPECT_DOUBLE_EQ(found[0].least, 0);
  EXPECT_DOUBLE_EQ(found[0].most, 10);
}

TEST(Lessons, NameAFamilyAndAFaultOnceHoweverOftenItOccurs) {
  const std::vector<Lesson> found = lessons_of(
      kit::reeds + "run 2026-05-01\nelement 2: bent-knee small, bent-knee medium, splash small x2\n" +
      panel_of_may);
  EXPECT_EQ(found[1].families, (std::vector<std::string>{"spins", "holds"}));
  EXPECT_EQ(found[1].faults, (std::vector<std::string>{"bent-knee", "splash"}));
}

TEST(Lessons, RestOnTheLatestRunBeforeThePanel) {
  const std::string runs =
      "run 2026-05-01\nelement 1: bent-knee medium\n"
      "run 2026-04-01\nelement 1: bent-knee large\n";
  EXPECT_DOUBLE_EQ(expected_of_first(kit::reeds + runs + panel_of_may), 9.5);
}

TEST(Lessons, TakeTheLatestRunThatSawTheElement) {
  const std::string runs =
      "run 2026-04-01\nelement 1: bent-knee large\n"
      "run 2026-05-01\nelement 2: bent-knee medium\n";
  EXPECT_DOUBLE_EQ(expected_of_first(kit::reeds + runs + panel_of_may), 9);
}

// It may have been swum after the panel.
TEST(Lessons, DoNotRestOnARunOfThePanelsOwnDay) {
  const std::string before = "run 2026-05-08\nelement 1: bent-knee medium\n";
  const std::string own = "run 2026-05-09\nelement 1: bent-knee large\nelement 2: sinking large\n";
  EXPECT_DOUBLE_EQ(expected_of_first(kit::reeds + own + panel_of_may), 7.5);
  EXPECT_DOUBLE_EQ(expected_of_first(kit::reeds + before + own + panel_of_may), 9.5);
  EXPECT_TRUE(lessons_of(kit::reeds + own + panel_of_may)[1].faults.empty());
}

TEST(Lessons, OfTwoRunsOfOneDayTakeTheLaterOnTheSheet) {
  const std::string runs =
      "run 2026-05-01 \"morning\"\nelement 1: bent-knee medium\n"
      "run 2026-05-01 \"evening\"\nelement 1: bent-knee large\n";
  EXPECT_DOUBLE_EQ(expected_of_first(kit::reeds + runs + panel_of_may), 9);
}

TEST(Lessons, DoNotChangeWithARunAfterThePanelHoweverTelling) {
  const std::string early = "run 2026-05-01\nelement 1: bent-knee medium\n";
  const std::string telling = "run 2026-05-10\nelement 1: sinking large\nelement 2: sinking large\n";
  for (const std::string& runs : {std::string(), early}) {
    const std::vector<Lesson> without = lessons_of(kit::reeds + runs + panel_of_may);
    const std::vector<Lesson> with = lessons_of(kit::reeds + runs + telling + panel_of_may);
    ASSERT_EQ(without.size(), with.size());
    for (std::size_t i = 0; i < with.size(); ++i) {
      EXPECT_DOUBLE_EQ(without[i].expected, with[i].expected);
      EXPECT_EQ(without[i].faults, with[i].faults);
    }
  }
}

TEST(Lessons, ArePassedOverWithoutAnExpectedMarkByThen) {
  const std::string sheet = kit::replaced(kit::reeds, "expect 7.5\n", "");
  EXPECT_EQ(lessons_of(sheet + panel_of_may).size(), 1u);
  const std::string late = "run 2026-05-10\nelement 1: bent-knee medium\n";
  EXPECT_EQ(lessons_of(sheet + late + panel_of_may).size(), 1u);
}

TEST(Lessons, ArePassedOverForElementsThePanelDidNotMark) {
  const std::vector<Lesson> found =
      lessons_of(kit::reeds + "panel 2026-05-09\nelement 2: 6.75 7.00 6.50 7.00 6.75\n");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].label, "2");
}

TEST(Lessons, AreThereForABaseMarkTooAndSaySo) {
  const std::vector<Lesson> found =
      lessons_of(kit::reeds + "panel 2026-05-09\nelement 1 base: 5.00 5.00 5.00 5.25 5.25\n");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_TRUE(found[0].base);
  EXPECT_DOUBLE_EQ(found[0].given, 15.25 / 3);
}

TEST(Lessons, OfAnotherOptionRestOnWhatIsExpectedOfItNotOnRunsOfTheOneAsWritten) {
  const std::string sheet = kit::replaced(kit::reeds, "expect 7.5\n",
                                          "expect 7.5\noption \"safer\"\nparts spin-a, spin-b\nexpect 8\n");
  const std::string runs = "run 2026-05-01\nelement 1: bent-knee medium\n";
  const std::vector<Lesson> found = lessons_of(sheet + runs + panel_of_may, {1});
  EXPECT_DOUBLE_EQ(found[0].expected, 8);
  EXPECT_EQ(found[0].families, std::vector<std::string>{"spins"});
  EXPECT_TRUE(found[0].faults.empty());
}

// In weighted and plain panels a mark is a mark all the same; `award` adds its marks up instead.
TEST(Lessons, AreMarksWhateverThePanelMakesOfThem) {
  const std::string figures =
      "routine \"Figures\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\nexpect 7\n"
      "panel 2026-05-09\nelement 1: 6.5 6.6 6.7 6.8 6.9\n";
  EXPECT_NEAR(lessons_of(figures).front().given, 6.7, 1e-12);
  const std::string awards =
      "routine \"Awards\"\nevent plain\nvalues pond\nelement 1 figure\nparts heron\nexpect 7\n"
      "panel 2026-05-09\nelement 1: 6.5 7 7 - 8\n";
  EXPECT_NEAR(lessons_of(awards).front().given, 7, 1e-12);
}

}  // namespace
}  // namespace landdrill
