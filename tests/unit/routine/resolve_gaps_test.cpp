// What the value set does not say yet: an error at the place of the sheet that needs it, and a list for the
// coach.
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
const std::string fill_in =
    " hint: put in what your catalogue says; `values missing` lists every gap of a sheet\n";

// "parts untold value, kinds figure base"
std::string gaps(const std::string& text) {
  std::string list;
  const ReadSheet sheet(text, kit::pond());
  for (const Gap& gap : sheet.sheet().gaps()) {
    if (!list.empty()) list += ", ";
    list += std::string(gap.table) + " " + std::string(gap.key) + " " + std::string(gap.column);
  }
  return list;
}

TEST(ResolveGaps, NamesThePartThatHasNoValue) {
  EXPECT_EQ(
      complaints(replaced(reeds, "spin-a, hold", "spin-a, untold")),
      "7:15 found no value for untold in parts.csv of pond; expected it to be filled in [value-missing]" +
          fill_in);
}

TEST(ResolveGaps, ListsEachGapOnceInTheOrderOfTheSheet) {
  const std::string sheet =
      replaced(replaced(reeds, "spin-a, hold", "untold-too, untold"), "spin-b, hold x2", "spin-b, untold x2");
  EXPECT_EQ(gaps(sheet), "parts untold-too value, parts untold value");
  EXPECT_EQ(ReadSheet(sheet, kit::pond()).sheet().messages().errors(),
            3u);  // a message for each place all the same
}

TEST(ResolveGaps, NeedsNoValueWhereTheDifficultyIsStated) {
  EXPECT_EQ(complaints(replaced(reeds, "parts spin-a, hold\n", "parts spin-a, untold\ndifficulty 2\n")), "");
}

TEST(ResolveGaps, NamesTheKindThatHasNoFormula) {
  const std::string unpriced =
      replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2", "element 2 unpriced\nparts hold");
  EXPECT_EQ(
      complaints(unpriced),
      "10:9 found no formula for unpriced in kinds.csv of pond; expected it to be filled in [value-missing]" +
          fill_in);
  EXPECT_EQ(gaps(unpriced), "kinds unpriced formula");
}

TEST(ResolveGaps, NamesTheKindWhoseFormulaNeedsABaseMarkThatIsNotThere) {
  EXPECT_EQ(
      gaps(replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2", "element 2 half-priced\nparts hold")),
      "kinds half-priced base");
}

TEST(ResolveGaps, NeedsABaseMarkOnlyWhereItIsCredited) {
  const std::string figure =
      replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2", "element 2 figure\nparts heron");
  EXPECT_EQ(gaps(figure + run + "element 2: clean\n"), "");
  EXPECT_EQ(gaps(figure + run + "element 2 base: clean\n"), "kinds figure base");
  EXPECT_EQ(gaps(figure + run + "element 2: lost heron\n"), "kinds figure base");
  EXPECT_EQ(gaps(figure + panel + "element 2 base: 7 7 7 7 7\n"), "kinds figure base");
  EXPECT_EQ(gaps(replaced(figure, "expect 7\n", "expect 7\nslip 5%\n")), "kinds figure base");
}

TEST(ResolveGaps, NamesTheWeightThatThePanelLacks) {
  EXPECT_EQ(gaps("routine \"Reeds\"\nevent dear\nvalues pond\n"), "panels dear choreography weight");
}

TEST(ResolveGaps, NamesSyncErrorsAndPenaltiesWithoutPoints) {
  EXPECT_EQ(gaps(reeds + panel + "sync: untold\npenalty: untold x2\n"),
            "sync untold points, penalties untold points");
}

TEST(ResolveGaps, ScoresNothingWhileAGapIsOpen) {
  EXPECT_FALSE(ReadSheet(replaced(reeds, "spin-a, hold", "spin-a, untold"), kit::pond())
                   .sheet()
                   .routine()
                   .has_value());
}

}  // namespace
}  // namespace landdrill
