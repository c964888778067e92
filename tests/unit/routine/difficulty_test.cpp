#include "engine/routine/difficulty.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;

class DifficultyOf : public testing::Test {
 protected:
  // The kind `hybrid` with another formula.
  Kind kind_with(const std::string& formula) {
    Kind kind = *set_.kinds.find("hybrid");
    const FormulaRead read = read_formula({"kinds.csv", formula}, formula);
    if (!read.diagnostics.ok()) throw std::runtime_error(to_string(read.diagnostics));
    kind.formula = read.formula;
    return kind;
  }
  Option of(std::vector<std::pair<std::string_view, int>> parts) {
    Option option;
    for (const auto& [code, times] : parts) option.parts.push_back({set_.parts.find(code), times});
    return option;
  }
  std::string declared_text(const Option& option, const Kind& kind) {
    const Declared result = declared(option, kind);
    return result.difficulty ? result.difficulty->text() : "none: " + result.why_not;
  }

  const ValueSet& set_ = kit::pond();
};

TEST_F(DifficultyOf, AddsTheBaseAndEveryPartAsOftenAsItIsSwum) {
  EXPECT_EQ(declared_text(of({{"spin-b", 1}, {"hold", 2}}), *set_.kinds.find("hybrid")), "2.7");
}

TEST_F(DifficultyOf, SumsAndCountsTheFamiliesOfTheParts) {
  const FormulaInput input =
      formula_input(of({{"hold", 2}, {"spin-a", 1}, {"spin-b", 1}}), *set_.kinds.find("hybrid"));
  EXPECT_EQ(input.base, number("0.5"));
  EXPECT_EQ(input.sum, number("3.1"));
  EXPECT_EQ(input.count, 4);
  ASSERT_EQ(input.families.size(), 2u);
  EXPECT_EQ(input.families[0].family, "holds");
  EXPECT_EQ(input.families[0].sum, number("0.8"));
  EXPECT_EQ(input.families[0].count, 2);
  EXPECT_EQ(input.families[1].family, "spins");
  EXPECT_EQ(input.families[1].sum, number("2.3"));
  EXPECT_EQ(input.families[1].count, 2);
}

TEST_F(DifficultyOf, PutsFamiliesCountsAndBoundsIntoTheFormula) {
  const Option option = of({{"hold", 2}, {"spin-b", 1}});
  EXPECT_EQ(declared_text(option, kind_with("sum(parts) + 0.1 * families")), "2.4");
  EXPECT_EQ(declared_text(option, kind_with("sum(spins) * count(parts)")), "4.2");
  EXPECT_EQ(declared_text(option, kind_with("min(2, sum(parts)) + max(0, count(spins) - 3)")), "2");
}

TEST_F(DifficultyOf, RoundsOnceAsTheRowOfTheKindSays) {
  Kind kind = kind_with("sum(parts) / 3");
  const Option option = of({{"spin-b", 1}, {"hold", 1}});  // 0.6
  kind.places = 1;
  EXPECT_EQ(declared_text(of({{"hold", 1}}), kind), "0.1");  // 0.1333
  kind.rounding = Rounding::up;
  EXPECT_EQ(declared_text(of({{"hold", 1}}), kind), "0.2");
  EXPECT_EQ(declared_text(option, kind), "0.6");
}

TEST_F(DifficultyOf, IsWhatTheSheetStatesWhateverThePartsAre) {
  Option option = of({{"spin-b", 1}});
  option.stated = kit::difficulty("2.35");
  EXPECT_EQ(declared_text(option, *set_.kinds.find("hybrid")), "2.35");
  EXPECT_EQ(declared_text(option, *set_.kinds.find("unpriced")), "2.35");
}

TEST_F(DifficultyOf, IsNoneWithTheReasonWhenTheFormulaGivesNoNumber) {
  EXPECT_EQ(declared_text(of({{"hold", 1}}), *set_.kinds.find("ratio")),
            "none: divides by count(spins), which is 0");
}

TEST_F(DifficultyOf, IsNoneWithTheReasonWhenTheKindHasNoFormula) {
  EXPECT_EQ(declared_text(of({{"hold", 1}}), *set_.kinds.find("unpriced")),
            "none: the kind unpriced has no formula in the value set");
}

}  // namespace
}  // namespace landdrill
