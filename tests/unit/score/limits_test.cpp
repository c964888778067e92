// What the rules of an event object to: warnings, beside a routine that is priced all the same.
#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::complaints;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

TEST(Limits, AreWarningsAndTheRoutineIsScored) {
  const ReadSheet sheet(replaced(reeds, "swimmers 1", "swimmers 3"), kit::pond());
  EXPECT_EQ(sheet.sheet().messages().warnings(), 1u);
  EXPECT_EQ(sheet.sheet().messages().errors(), 0u);
  EXPECT_EQ(kit::expected_total(sheet.routine()), "86.4");
}

TEST(Limits, AreNotCheckedWhileTheSheetIsInError) {
  EXPECT_EQ(complaints(replaced(replaced(reeds, "swimmers 1", "swimmers 3"), "spin-a", "spin-x")),
            "7:7 found the part \"spin-x\"; expected a part of pond [unknown-part] hint: the nearest are "
            "spin-a, spin-b\n");
}

TEST(Limits, WarnOfMorePartsOfAFamilyInOneElement) {
  EXPECT_EQ(complaints(replaced(reeds, "spin-a, hold", "spin-a x2, spin-b")),
            "6:9 found 3 parts of spins in one element; expected at most 2 [over-family-limit]\n"
            "1:10 found 4 parts of spins in the routine; expected at most 3 [over-family-limit]\n");
}

TEST(Limits, TakeAsManyPartsOfAFamilyAsAreAllowed) {
  EXPECT_EQ(complaints(replaced(reeds, "spin-a, hold", "spin-a, spin-b")), "");  // 2 in one, 3 in the routine
}

TEST(Limits, WarnOfOneCodeMoreOftenInAnElementThanAllowed) {
  EXPECT_EQ(complaints(replaced(reeds, "spin-a, hold", "hold, spin-a, hold x2")),
            "6:9 found hold 3 times in one element; expected at most 2 [over-code-limit]\n");
}

TEST(Limits, WarnOfTooFewOrTooManyPartsInAnElement) {
  EXPECT_EQ(complaints(replaced(reeds, "spin-a, hold", "hold")),
            "6:9 found 1 part in a hybrid; expected from 2 to 4 [part-count]\n");
  const ValueSet set =
      kit::Tables().replace("families.csv", "figures,Figures,figure unpriced", "figures,Figures,").load();
  EXPECT_EQ(ReadSheet(replaced(reeds, "spin-a, hold", "spin-a, spin-b, hold x2, otter"), set).complaints(),
            "6:9 found 5 parts in a hybrid; expected from 2 to 4 [part-count]\n");
}

TEST(Limits, LookAtTheOptionsOfAnElementToo) {
  EXPECT_EQ(complaints(replaced(reeds, "expect 7.5\n",
                                "expect 7.5\noption \"hasty\"\nparts spin-a x2, spin-b\nexpect 7\n")),
            "10:9 found 3 parts of spins in one element; expected at most 2 [over-family-limit]\n");
}

TEST(Limits, WarnOfTooFewOrTooManyElementsOfAKind) {
  const std::string session =
      "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\n";
  EXPECT_EQ(complaints(session), "2:7 found 1 figure element; expected exactly 2 in session [quota]\n");
  EXPECT_EQ(complaints(session + "element 2 figure\nparts otter\n"), "");
  EXPECT_EQ(complaints(session + "element 2 figure\nparts otter\nelement 3 figure\nparts otter\n"),
            "2:7 found 3 figure elements; expected exactly 2 in session [quota]\n");
}

TEST(Limits, WarnWhenNoElementHoldsAPartOfAFamily) {
  EXPECT_EQ(complaints(replaced(replaced(reeds, "spin-a, hold", "hold x2"), "spin-b, hold x2", "hold x2")),
            "2:7 found 0 elements with a part of spins; expected at least 1 in open [quota]\n");
}

// 120 counts at 120 beats a minute are the 60 s of the event, with a tolerance of 5 s: 110 to 130 counts.
TEST(Limits, SayHowLongARoutineIsThatIsOverByLessThanATenth) {
  // 120 counts at 110.75 beats a minute are 65.0 s to a tenth, and over 65 s all the same.
  EXPECT_EQ(complaints(replaced(reeds, "tempo 120", "tempo 110.75")),
            "4:7 found 65.011 s of counts at 110.75 beats a minute; expected 60 s, with a tolerance of 5 s "
            "[over-time]\n");
}

TEST(Limits, WarnOfARoutineLongerThanItsTimeAndTolerance) {
  EXPECT_EQ(complaints(replaced(reeds, "64 surface", "75 surface")),
            "4:7 found 65.5 s of counts at 120 beats a minute; expected 60 s, with a tolerance of 5 s "
            "[over-time]\n");
  EXPECT_EQ(complaints(replaced(reeds, "64 surface", "74 surface")), "");
}

TEST(Limits, WarnOfARoutineShorterThanItsTimeAndTolerance) {
  EXPECT_EQ(complaints(replaced(reeds, "64 surface", "53 surface")),
            "4:7 found 54.5 s of counts at 120 beats a minute; expected 60 s, with a tolerance of 5 s "
            "[under-time]\n");
  EXPECT_EQ(complaints(replaced(reeds, "64 surface", "54 surface")), "");
}

TEST(Limits, SayNothingOfTimeWithoutATempoOrWithoutCounts) {
  EXPECT_EQ(complaints(replaced(reeds, "tempo 120\n", "")), "");
  EXPECT_EQ(
      complaints(replaced(replaced(reeds, "counts 32 under, 64 surface\n", ""), "counts 24 under\n", "")),
      "");
}

TEST(Limits, WarnOfTheWrongNumberOfSwimmers) {
  EXPECT_EQ(complaints(replaced(reeds, "swimmers 1", "swimmers 3")),
            "5:10 found 3 swimmers; expected from 1 to 2 in open [swimmers]\n");
}

}  // namespace
}  // namespace landdrill
