#include "engine/score/totals.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

// "2 Undertow: 4.00 -> 4.10, +0.10"
std::vector<std::string> told(const std::vector<SheetMove>& moves) {
  const auto text = [](const std::optional<Decimal>& amount, int places) {
    return amount ? amount->text(places) : std::string("nothing");
  };
  std::vector<std::string> lines;
  for (const SheetMove& one : moves)
    lines.push_back(one.line + ": " + text(one.before, one.places) + " -> " + text(one.after, one.places) +
                    ", " + text(one.change(), one.places));
  return lines;
}

std::vector<std::string> told_after(std::string_view piece, std::string_view by,
                                    const std::string& sheet = kit::reeds) {
  kit::Tables changed;
  changed.replace("parts.csv", piece, by);
  const ValueSet after_set = changed.load();
  const kit::ReadSheet before(sheet, kit::pond()), after(sheet, after_set);
  return told(moves({before.routine(), {}}, {after.routine(), {}}));
}

TEST(Moves, AreTheElementsThatHoldTheChangedPartAndWhatFollowsFromThem) {
  EXPECT_EQ(told_after("Slow spin,0.9,", "Slow spin,1.0,"),
            (std::vector<std::string>{"1 Ripple: 1.80 -> 1.90, 0.10",
                                      "difficulty, all elements: 4.50 -> 4.60, 0.10",
                                      "total, as estimated: 86.4000 -> 87.1500, 0.7500"}));
}

TEST(Moves, AreNoneWhereNothingOfTheSheetChanged) {
  EXPECT_EQ(told_after("Otter,1.4,", "Otter,1.5,"), std::vector<std::string>{});
}

TEST(Moves, LeaveATotalOutThatLacksAMarkBeforeAndAfter) {
  const std::string unmarked = kit::replaced(kit::reeds, "expect 7.5\n", "");
  for (const std::string& line : told_after("Slow spin,0.9,", "Slow spin,1.0,", unmarked))
    EXPECT_EQ(line.find("total"), std::string::npos) << line;
}

}  // namespace
}  // namespace landdrill
