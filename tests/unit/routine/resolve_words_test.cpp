// Words of a sheet that the value set does not have: one message each, with the nearest known word.
#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::complaints;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

const std::string run = "run 2026-04-14\n";      // line 15
const std::string panel = "panel 2026-05-09\n";  // line 15

TEST(Resolve, TiesEveryWordOfTheSheetToItsRow) {
  const ReadSheet sheet(reeds + run + "element 2: bent-knee small x2, sinking large\nsync: clear\npenalty: bottom\n",
                        kit::pond());
  const Routine& routine = sheet.routine();
  EXPECT_EQ(sheet.complaints(), "");
  EXPECT_EQ(routine.event, kit::pond().events.find("open"));
  EXPECT_EQ(routine.elements[1].kind, kit::pond().kinds.find("hybrid"));
  EXPECT_EQ(routine.elements[1].panel, kit::pond().element_panel(*routine.event, *routine.elements[1].kind));
  EXPECT_EQ(routine.elements[1].options[0].parts[1].part, kit::pond().parts.find("hold"));
  EXPECT_EQ(routine.elements[1].options[0].parts[1].times, 2);
  EXPECT_EQ(routine.runs[0].elements[0].element, 1u);
  EXPECT_EQ(routine.runs[0].elements[0].faults[0].fault, kit::pond().faults.find("bent-knee"));
  EXPECT_EQ(routine.runs[0].elements[0].faults[0].times, 2);
  EXPECT_EQ(routine.runs[0].sync[0].sync, kit::pond().sync.find("clear"));
  EXPECT_EQ(routine.runs[0].penalties[0].penalty, kit::pond().penalties.find("bottom"));
}

TEST(Resolve, AsksForTheEvent) {
  EXPECT_EQ(complaints(replaced(reeds, "event open\n", "")),
            "1:10 found a routine without an event; expected a line such as `event duet-free` [missing-line] "
            "hint: the events of pond are listed by `values show`\n");
}

TEST(Resolve, NamesTheNearestEvent) {
  EXPECT_EQ(
      complaints(replaced(reeds, "event open", "event opne")),
      "2:7 found the event \"opne\"; expected an event of pond [unknown-event] hint: the nearest is open\n");
}

TEST(Resolve, ListsTheEventsWhenNoneIsNear) {
  EXPECT_EQ(complaints(replaced(reeds, "event open", "event regatta")),
            "2:7 found the event \"regatta\"; expected an event of pond [unknown-event] "
            "hint: pond has open, session, plain, mixed, whole, dear\n");
}

TEST(Resolve, NamesTheNearestKind) {
  EXPECT_EQ(complaints(replaced(reeds, "element 2 hybrid", "element 2 hibrid")),
            "10:11 found the kind of element \"hibrid\"; expected a kind of element of pond [unknown-kind] "
            "hint: the nearest is hybrid\n");
}

TEST(Resolve, NamesTheNearestParts) {
  EXPECT_EQ(complaints(replaced(reeds, "spin-a, hold", "spin-c, hold")),
            "7:7 found the part \"spin-c\"; expected a part of pond [unknown-part] "
            "hint: the nearest are spin-a, spin-b\n");
}

TEST(Resolve, PutsTheCaretUnderTheWordInError) {
  const ReadSheet sheet(replaced(reeds, "hold x2", "hodl x2"), kit::pond());
  EXPECT_EQ(to_string(sheet.sheet().messages()),
            "reeds.sheet:11:15: error: found the part \"hodl\"; expected a part of pond [unknown-part]\n"
            "  parts spin-b, hodl x2\n"
            "                ^~~~\n"
            "  hint: the nearest is hold\n");
}

TEST(Resolve, ListsTheMarksForTheWholeRoutineWhenOneIsUnknown) {
  EXPECT_EQ(complaints(replaced(reeds, "choreography 7.50", "chroeography 7.50")),
            "14:12 found the mark for the whole routine \"chroeography\"; expected a mark for the whole "
            "routine of open "
            "[unknown-aspect] hint: the nearest is choreography\n");
  EXPECT_EQ(
      complaints(reeds + run + "glitter: 7.50\n"),
      "16:1 found the mark for the whole routine \"glitter\"; expected a mark for the whole routine of open "
      "[unknown-aspect] hint: open has choreography, performance\n");
  EXPECT_EQ(complaints(reeds + panel + "execution: 7 7 7 7 7\n"),
            "16:1 found the mark for the whole routine \"execution\"; expected a mark for the whole routine "
            "of open "
            "[unknown-aspect] hint: open has choreography, performance\n");
}

TEST(Resolve, NamesTheNearestFault) {
  EXPECT_EQ(complaints(reeds + run + "element 1: bend-knee small\n"),
            "16:12 found the fault \"bend-knee\"; expected a fault of pond [unknown-fault] "
            "hint: the nearest is bent-knee\n");
}

TEST(Resolve, ListsTheSizesThatAFaultHas) {
  EXPECT_EQ(complaints(reeds + run + "element 1: bent-knee huge\n"),
            "16:22 found the size \"huge\" of bent-knee; expected a size that it has: small, medium, large "
            "[unknown-size]\n");
  EXPECT_EQ(complaints(reeds + run + "element 1: splash large\n"),
            "16:19 found the size \"large\" of splash; expected a size that it has: small [unknown-size]\n");
}

TEST(Resolve, UnderstandsSizesAndUnderInAnyCase) {
  const ReadSheet sheet(replaced(reeds, "32 under", "32 Under") + run + "element 1: bent-knee LARGE\n",
                        kit::pond());
  EXPECT_EQ(sheet.routine().runs[0].elements[0].faults[0].size, Size::large);
  EXPECT_TRUE(sheet.routine().elements[0].options[0].counts[0].under);
}

TEST(Resolve, NamesTheNearestClassOfSyncError) {
  EXPECT_EQ(
      complaints(reeds + run + "sync: smal x2\n"),
      "16:7 found the class of sync error \"smal\"; expected a class of sync error of pond [unknown-sync] "
      "hint: the nearest is small\n");
}

TEST(Resolve, NamesTheNearestPenalty) {
  EXPECT_EQ(complaints(reeds + panel + "penalty: over-time\n"),
            "16:10 found the penalty \"over-time\"; expected a penalty of pond [unknown-penalty] "
            "hint: the nearest is overtime\n");
}

TEST(Resolve, ListsTheElementsWhenARunOrAPanelNamesAnother) {
  EXPECT_EQ(complaints(reeds + run + "element 3: clean\n"),
            "16:9 found element 3; expected an element of \"Reeds\": 1, 2 [unknown-element]\n");
  EXPECT_EQ(complaints(reeds + panel + "element 12: 7 7 7 7 7\n"),
            "16:9 found element 12; expected an element of \"Reeds\": 1, 2 [unknown-element]\n");
}

TEST(Resolve, DoesNotBlameARunOrAPanelForAnElementInError) {
  EXPECT_EQ(complaints(replaced(reeds, "element 2 hybrid", "element 2 hibrid") + run + "element 2: clean\n" +
                       panel + "element 2: 7 7 7 7 7\n"),
            "10:11 found the kind of element \"hibrid\"; expected a kind of element of pond [unknown-kind] "
            "hint: the nearest is hybrid\n");
}

TEST(Resolve, StillReadsThePartsOfAnElementOfUnknownKind) {
  EXPECT_EQ(complaints(replaced(replaced(reeds, "element 2 hybrid", "element 2 hibrid"), "spin-b, hold",
                                "spin-c, hold")),
            "10:11 found the kind of element \"hibrid\"; expected a kind of element of pond [unknown-kind] "
            "hint: the nearest is hybrid\n"
            "11:7 found the part \"spin-c\"; expected a part of pond [unknown-part] "
            "hint: the nearest are spin-a, spin-b\n");
}

TEST(Resolve, RefusesMarksForAnElementThatTheEventDoesNotMark) {
  const std::string whole = "routine \"Reeds\"\nevent whole\nvalues pond\nelement 1 hybrid\nparts hold\n";
  EXPECT_EQ(
      complaints(whole + "expect 7\n"),
      "6:8 found an expected mark for a hybrid; expected no mark: no panel of whole marks such an element by "
      "itself [no-element-panel]\n");
  EXPECT_EQ(complaints(whole + "panel 2026-05-09\nelement 1: 7 7 7\n"),
            "7:9 found a hybrid marked by itself; expected none: no panel of whole marks such an element "
            "[no-element-panel]\n");
}

TEST(Resolve, RefusesAPartWhoseFamilyDoesNotBelongIntoTheKind) {
  EXPECT_EQ(
      complaints(replaced(reeds, "spin-a, hold", "heron, hold")),
      "7:7 found the part \"heron\" of the family figures in a hybrid; expected a part that may stand in a "
      "hybrid [wrong-family]\n");
}

TEST(Resolve, CallsOnlyAPartOfTheElementLost) {
  EXPECT_EQ(complaints(reeds + run + "element 1: lost spin-b\n"),
            "16:17 found a lost part \"spin-b\"; expected a part of element 1 [not-lost] hint: the nearest "
            "is spin-a\n");
}

TEST(Resolve, ComplainsOfEveryMistakeInOneRun) {
  const ReadSheet sheet(replaced(replaced(reeds, "spin-a", "spin-x"), "hold x2", "hodl") + run +
                            "element 9: clean\n" + "sync: smal\n" + panel + "element 1: 7 7 7 7\n",
                        kit::pond());
  EXPECT_EQ(sheet.sheet().messages().errors(), 5u);
  EXPECT_FALSE(sheet.sheet().routine().has_value());
}

TEST(Resolve, CountsMistakesBeyondTheHundredThatAreShown) {
  std::string many = reeds + run;
  for (int i = 0; i < 150; ++i) many += "element " + std::to_string(100 + i) + ": clean\n";
  const ReadSheet sheet(many, kit::pond());
  EXPECT_EQ(sheet.sheet().messages().list().size(), Diagnostics::most);
  EXPECT_EQ(sheet.sheet().messages().errors(), 150u);
}

}  // namespace
}  // namespace landdrill
