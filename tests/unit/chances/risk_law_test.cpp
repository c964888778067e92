// The expected total against the slow way: every base mark of the routine falls or does not, each of these
// routines is scored, and the scores are weighed by their chances.
#include <gtest/gtest.h>

#include <random>

#include "engine/chances/risk.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;

constexpr int sheets = 400;

// Sheets with a few elements, some of them risky, under one event of the pond.
class SheetDealer {
 public:
  explicit SheetDealer(unsigned seed) : random_(seed) {}

  std::string sheet(std::string_view event) {
    std::string text = "routine \"Dealt\"\nevent " + std::string(event) + "\nvalues pond\n";
    const int elements = from(1, 6);
    for (int i = 1; i <= elements; ++i) text += element(i, event);
    if (event == "open") text += "impression choreography " + mark() + ", performance " + mark() + "\n";
    if (event == "mixed") text += "impression choreography " + mark() + "\n";
    return text;
  }

 private:
  int from(int least, int most) {
    return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1));
  }
  std::string mark() { return Decimal::from_units(from(0, 40) * 250'000).text(); }
  std::string element(int number, std::string_view event) {
    const char* kinds[] = {"hybrid", "lift", "throw", "figure"};
    const int kind = event == "session" || from(0, 3) > 0 ? from(0, 2) : 3;
    std::string text = "element " + std::to_string(number) + " " + kinds[kind] + "\n";
    text += "difficulty " + Decimal::from_units(from(1, 60) * 50'000).text() + "\nexpect " + mark() + "\n";
    const int percents[] = {0, 5, 12, 33, 50, 100};
    if (kind != 3 && from(0, 3) > 0) text += "slip " + std::to_string(percents[from(0, 5)]) + "%\n";
    return text;
  }

  std::mt19937 random_;
};

Exact slowly(const Routine& routine) {
  const Risked known = risked(routine, {});
  const std::size_t elements = routine.elements.size();
  Exact sum;
  for (std::size_t ways = 0; ways < std::size_t{1} << elements; ++ways) {
    Showing showing = expected(routine, {});
    Exact chance(Decimal::whole(1));
    for (std::size_t i = 0; i < elements; ++i) {
      const bool falls = (ways >> i & 1) != 0;
      const Decimal percent = known.chances[i].percent;
      chance = chance * Exact(falls ? percent : Decimal::whole(100) - percent) / Exact(Decimal::whole(100));
      if (falls && routine.elements[i].kind->base)
        showing.elements[i].credited = *routine.elements[i].kind->base;
    }
    if (!chance.is_zero()) sum = sum + chance * Exact(score(routine, showing).total->value());
  }
  return sum;
}

Decimal to_a_millionth(Exact value) {
  return round(value, Decimal::places, Rounding::half_up);
}

void expect_equal_to_the_slow_way(std::string_view event, const ValueSet& set) {
  SheetDealer dealer(20261125);
  for (int i = 0; i < sheets; ++i) {
    const std::string text = dealer.sheet(event);
    const ReadSheet sheet(text, set);
    const std::optional<Exact> fast = expected_total(sheet.routine(), risked(sheet.routine(), {}));
    ASSERT_TRUE(fast.has_value()) << text;
    ASSERT_EQ(to_a_millionth(*fast).text(), to_a_millionth(slowly(sheet.routine())).text()) << text;
  }
}

TEST(RiskLaw, ExpectsWhatEveryWayOfFallingGivesWhenElementsCountByThemselves) {
  expect_equal_to_the_slow_way("open", kit::pond());
  expect_equal_to_the_slow_way("plain", kit::pond());
}

TEST(RiskLaw, ExpectsWhatEveryWayOfFallingGivesWhenElementsAreWeightedTogether) {
  expect_equal_to_the_slow_way("session", kit::pond());
}

TEST(RiskLaw, ExpectsWhatEveryWayOfFallingGivesWhenBothOccurInOneEvent) {
  const ValueSet set =
      kit::Tables().replace("panels.csv", "mixed,execution,figure,", "mixed,execution,throw,").load();
  expect_equal_to_the_slow_way("mixed", set);
}

TEST(RiskLaw, GivesUpWhenMoreElementsAreRiskyTogetherThanCanBeCounted) {
  std::string text = "routine \"Dealt\"\nevent session\nvalues pond\n";
  for (int i = 1; i <= most_risky + 1; ++i) {
    text += "element " + std::to_string(i) + " throw\ndifficulty 2.1\nexpect 7\nslip 7.77%\n";
  }
  const ReadSheet many(text, kit::pond());
  EXPECT_FALSE(expected_total(many.routine(), risked(many.routine(), {})).has_value());
  const ReadSheet one_certain(text + "element 99 lift\ndifficulty 2\nexpect 7\nslip 100%\n", kit::pond());
  EXPECT_FALSE(expected_total(one_certain.routine(), risked(one_certain.routine(), {})).has_value());
  // All marks are 7, so that no chance can move the mean, whatever its fractions are.
  const ReadSheet most(text.replace(text.rfind("slip 7.77%"), 10, "slip 0%"), kit::pond());
  EXPECT_EQ(kit::fraction(*expected_total(most.routine(), risked(most.routine(), {}))), "70");
}

}  // namespace
}  // namespace landdrill
