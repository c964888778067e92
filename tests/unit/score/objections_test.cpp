#include "engine/score/objections.h"

#include <gtest/gtest.h>

#include "engine/choosing/plan.h"
#include "engine/score/problems.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::pond;
using kit::ReadSheet;

// The pond's open water wants 1 to 3 hybrids, and no more than two spins in one of them.
const std::string mill =
    "routine \"Mill\"\nevent open\nvalues pond\nswimmers 3\n"
    "element 1 hybrid\nparts spin-a x2, spin-b\nexpect 7\noption \"easy\"\nparts spin-a, hold\nexpect 7.5\n"
    "element 2 hybrid\nparts hold x2\nexpect 7\n"
    "element 3 hybrid\nparts hold x2\nexpect 7\n"
    "element 4 hybrid\nparts hold x2\nexpect 7\noptional\n"
    "impression choreography 7.50, performance 8.00\n";

std::string told(const Diagnostics& objections) {
  std::string result;
  for (const Diagnostic& one : objections.list())
    result += std::to_string(one.at.line) + ": " + one.found + "; " + one.expected + "\n";
  return result;
}

TEST(Objections, AreThoseOfTheSheetWhileItStandsAsWritten) {
  const ReadSheet sheet(mill, pond());
  EXPECT_EQ(told(objections_with(sheet.routine(), {}, sheet.sheet().messages())),
            told(sheet.sheet().messages()));
  EXPECT_EQ(sheet.sheet().messages().warnings(), 3u);
}

// The scale is ten marks wide, so a run is questioned from more than one mark above what is expected.
TEST(Objections, QuestionARunWhoseMarkLiesFarAboveTheExpectedOne) {
  const auto doubts = [](const std::string& best, const std::string& said) {
    const ReadSheet sheet(kit::replaced(kit::reeds, "expect 7.5\n", "expect 7.5\n" + best) +
                              "run 2026-04-14\nelement 1: " + said + "\n",
                          pond());
    std::string all;
    for (const Diagnostic& one : sheet.sheet().messages().list())
      if (one.problem == Problem::doubtful_run) all += one.found + "; " + one.expected;
    return all;
  };
  EXPECT_EQ(doubts("", "bent-knee small"),
            "9.75 from the run of 2026-04-14, 2.25 above the 7.50 you expect; at most 1.00 above it");
  EXPECT_EQ(doubts("best 8.5\n", "bent-knee small"), "");
  EXPECT_EQ(doubts("", "8.5"), "");
  EXPECT_EQ(doubts("", "8.75"),
            "8.75 from the run of 2026-04-14, 1.25 above the 7.50 you expect; at most 1.00 above it");
  EXPECT_EQ(doubts("", "clean"), "");
}

TEST(Objections, GoWithTheOptionThatRepairsThem) {
  const ReadSheet sheet(mill, pond());
  EXPECT_EQ(told(objections_with(sheet.routine(), {{1}, {}}, sheet.sheet().messages())),
            "2: 4 hybrid elements; from 1 to 3 in open\n4: 3 swimmers; from 1 to 2 in open\n");
}

TEST(Objections, HaveNoPlaceWhenAnOptionBringsThem) {
  const std::string swapped =
      "routine \"Mill\"\nevent open\nvalues pond\n"
      "element 1 hybrid\nparts spin-a, hold\nexpect 7\n"
      "option \"still\"\nparts hold x2\nexpect 7.5\n"
      "impression choreography 7.50, performance 8.00\n";
  const ReadSheet sheet(swapped, pond());
  EXPECT_EQ(told(objections_with(sheet.routine(), {}, sheet.sheet().messages())), "");
  EXPECT_EQ(told(objections_with(sheet.routine(), {{1}, {}}, sheet.sheet().messages())),
            "0: 0 elements with a part of spins; at least 1 in open\n");
}

TEST(Objections, ToTheBestProgrammeAreThoseThatNoChoiceRepairs) {
  const ReadSheet sheet(mill, pond());
  const Plan best = plan(sheet.routine(), {}, {});
  ASSERT_FALSE(best.choices.empty());
  EXPECT_EQ(told(objections_with(sheet.routine(), {}, best.choices[0], sheet.sheet().messages())),
            "4: 3 swimmers; from 1 to 2 in open\n");
}

}  // namespace
}  // namespace landdrill
