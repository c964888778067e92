// One owner of a sheet's text, tree, routine and messages, wherever it is moved to.
#include "engine/routine/sheet.h"

#include <gtest/gtest.h>

#include <utility>

#include "engine/score/objections.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::reeds;

const std::string panel = "panel 2026-05-09 \"Fen\"\nelement 1: 7 7 7 7 7\n";

// Everything that points into a text.
std::string views_of(const Sheet& sheet) {
  const ast::Sheet& tree = *sheet.tree();
  const Routine& routine = *sheet.routine();
  std::string all = sheet.file() + "|" + std::string(sheet.title());
  for (const Source& source : sheet.sources()) all += "|" + source.name + std::string(source.text);
  for (std::string_view view : {tree.routine.head.title.text, tree.panels.at(0).head.date.text, routine.title,
                                routine.panels.at(0).title, routine.elements.at(0).title})
    (all += "|") += view;
  return all + "|" + tree.sources.of(tree.routine.head.title.text).name +
         tree.sources.of(tree.panels.at(0).head.date.text).name;
}

Sheet two_texts() {
  Sheet sheet = read_sheet({{"reeds.sheet", reeds}, {"p", panel}});
  sheet.take(resolve(*sheet.tree(), kit::pond()));
  return sheet;
}

TEST(SheetOwner, KeepsEveryViewRightWhereverItIsMoved) {
  Sheet first = two_texts();
  const std::string before = views_of(first);
  Sheet second = std::move(first);
  EXPECT_EQ(views_of(second), before);
  std::vector<Sheet> many;
  many.push_back(std::move(second));
  for (int i = 0; i < 20; ++i) many.push_back(two_texts());
  first = std::move(many.front());
  many.clear();
  EXPECT_EQ(views_of(first), before);
}

TEST(SheetOwner, KeepsViewsIntoATextSoShortThatAStringHoldsItWithinItself) {
  Sheet sheet = read_sheet({{"a", "routine \"A\""}});
  ASSERT_EQ(sheet.title(), "A");
  const Sheet moved = std::move(sheet);
  EXPECT_EQ(moved.title(), "A");
  EXPECT_EQ(moved.title().data(), moved.sources().front().text.data() + 9);
}

TEST(SheetOwner, HasNoRoutineWhileALineIsInErrorAndSaysWhatDoesNotFollowFromIt) {
  Sheet sheet = read_sheet({{"reeds.sheet", kit::replaced(reeds, "swimmers 1\n", "swimmers 1\nparty\n") +
                                                "run 2026-04-14\nelement 2: lost otter\n"}});
  sheet.take(resolve(*sheet.tree(), kit::pond()));
  EXPECT_FALSE(sheet.ok());
  EXPECT_FALSE(sheet.routine());
  EXPECT_EQ(sheet.messages().errors(), 2u) << to_string(sheet.messages());
}

TEST(SheetOwner, SaysOfATextWithoutARoutineThatThereIsNone) {
  Sheet sheet = read_sheet({{"a.sheet", "# later\n"}});
  EXPECT_EQ(to_string(sheet.messages()),
            "a.sheet: error: found no routine in it; expected a line such as `routine \"Harbour Lights\"` "
            "[missing-line]\n");
  EXPECT_EQ(sheet.tree(), nullptr);
  EXPECT_EQ(sheet.title(), "");
}

TEST(SheetOwner, HasOneRoutine) {
  const Sheet sheet = read_sheet({{"a.sheet", reeds + "routine \"Sedge\"\n"}});
  EXPECT_EQ(sheet.messages().errors(), 1u);
  EXPECT_NE(to_string(sheet.messages()).find("found a second routine"), std::string::npos);
}

TEST(SheetOwner, HearsTheObjectionsOfTheRulesInASecondStep) {
  const std::string crowded = kit::replaced(reeds, "swimmers 1", "swimmers 3");
  Sheet tied = read_sheet({{"reeds.sheet", crowded}}), understood = read_sheet({{"reeds.sheet", crowded}});
  tied.take(resolve(*tied.tree(), kit::pond()));
  understand(understood, kit::pond());
  EXPECT_EQ(tied.messages().warnings(), 0u);
  EXPECT_EQ(understood.messages().warnings(), 1u);
}

TEST(SheetOwner, CanLetGoOfAllButItsTexts) {
  Sheet sheet = two_texts();
  sheet.forget_routine();
  EXPECT_EQ(sheet.tree(), nullptr);
  EXPECT_FALSE(sheet.routine());
  EXPECT_TRUE(sheet.ok());
  EXPECT_EQ(sheet.sources().size(), 2u);
}

}  // namespace
}  // namespace landdrill
