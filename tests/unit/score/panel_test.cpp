#include "engine/score/panel.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <vector>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::difficulty;
using kit::factor;
using kit::mark;
using kit::marks;
using kit::number;

// Five judges, one high and one low dropped, the mean of three.
PanelRule five_judges() {
  PanelRule rule;
  rule.judges = 5;
  rule.drop_high = rule.drop_low = 1;
  rule.step = number("0.25");
  rule.most = mark("10");
  rule.weight = factor("1");
  return rule;
}

// What became of each judge: k kept, h dropped as high, l as low, - absent; a capital for a filled mark.
std::string fates(const Judged& judged) {
  std::string text;
  for (const JudgeMark& one : judged.judges) {
    const char fate = one.state == JudgeMark::State::kept           ? 'k'
                      : one.state == JudgeMark::State::dropped_high ? 'h'
                      : one.state == JudgeMark::State::dropped_low  ? 'l'
                                                                    : '-';
    text += one.filled ? static_cast<char>(fate - 'a' + 'A') : fate;
  }
  return text + " " + judged.kept.sum.text() + "/" + std::to_string(judged.kept.count);
}

TEST(Panel, DropsOneHighestAndOneLowestMark) {
  EXPECT_EQ(fates(judge(five_judges(), marks("7.25 7.50 7.25 7.00 7.75"))), "kkklh 22/3");
}

TEST(Panel, DropsTwoAndTwoOfSeven) {
  PanelRule rule = five_judges();
  rule.judges = 7;
  rule.drop_high = rule.drop_low = 2;
  EXPECT_EQ(fates(judge(rule, marks("6.5 8 7 7.5 7 8 7.5"))), "lhlkkhk 22/3");
}

TEST(Panel, DropsMoreHighMarksThanLowOnesWhenTheRuleSaysSo) {
  PanelRule rule = five_judges();
  rule.drop_high = 2;
  rule.drop_low = 0;
  EXPECT_EQ(fates(judge(rule, marks("9 5 7 6 8"))), "hkkkh 18/3");
}

TEST(Panel, KeepsAllMarksWhenNoneAreDropped) {
  PanelRule rule = five_judges();
  rule.drop_high = rule.drop_low = 0;
  EXPECT_EQ(fates(judge(rule, marks("1 2 3 4 5"))), "kkkkk 15/5");
}

TEST(Panel, DropsOnlyOneOfSeveralEqualHighestMarks) {
  EXPECT_EQ(fates(judge(five_judges(), marks("8 8 8 7 7"))), "kkhlk 23/3");
  EXPECT_EQ(fates(judge(five_judges(), marks("6 6 6 6 6"))), "lkkkh 18/3");
}

TEST(Panel, GivesAMissingJudgeTheMeanOfTheOthersInTheStepForIt) {
  PanelRule rule = five_judges();
  rule.missing = Missing::mean;
  rule.missing_step = number("0.25");
  const Judged judged = judge(rule, marks("7.25 - 7.00 7.75 7.25"));  // mean 7.3125, to 7.25
  EXPECT_EQ(fates(judged), "kKlhk 21.75/3");
  EXPECT_EQ(judged.judges[1].mark, mark("7.25"));
  rule.missing_step = number("0.1");
  EXPECT_EQ(judge(rule, marks("7.25 - 7.00 7.75 7.25")).judges[1].mark, mark("7.3"));
}

TEST(Panel, RoundsTheMarkOfAMissingJudgeAsTheRuleRounds) {
  PanelRule rule = five_judges();
  rule.missing = Missing::mean;
  rule.missing_step = number("0.5");
  rule.rounding = Rounding::half_up;
  EXPECT_EQ(judge(rule, marks("7 7.5 7 7.5 -")).judges[4].mark, mark("7.5"));  // mean 7.25, a tie
  rule.rounding = Rounding::down;
  EXPECT_EQ(judge(rule, marks("7 7.5 7 7.5 -")).judges[4].mark, mark("7"));
}

TEST(Panel, RoundsTheMarkOfAMissingJudgeOtherwiseWhereTheRuleSaysSo) {
  PanelRule rule = five_judges();
  rule.missing = Missing::mean;
  rule.missing_step = number("0.5");
  rule.missing_rounding = Rounding::down;
  EXPECT_EQ(judge(rule, marks("7 7.5 7 7.5 -")).judges[4].mark, mark("7"));  // mean 7.25, a tie
}

TEST(Panel, KeepsFewerMarksWhenAJudgeIsMissingAndTheRuleSaysFewer) {
  PanelRule rule = five_judges();
  rule.missing = Missing::fewer;
  EXPECT_EQ(fates(judge(rule, marks("7 - 8 9 6"))), "k-khl 15/2");
  EXPECT_EQ(fates(judge(rule, marks("- - 8 9 6"))), "--khl 8/1");
}

TEST(Panel, CombinesToTheMeanOrToTheSum) {
  PanelRule rule = five_judges();
  const KeptMarks kept = keep(rule, marks("7.25 7.50 7.25 7.00 7.75"));
  EXPECT_EQ(kit::fraction(combined(rule, kept)), "22/3");
  rule.combine = Combine::sum;
  EXPECT_EQ(kit::fraction(combined(rule, kept)), "22");
}

TEST(Panel, MultipliesFirstDividesOnceAndRoundsOnce) {
  PanelRule rule = five_judges();
  rule.weight = factor("0.7");
  const KeptMarks kept = keep(rule, marks("7.25 7.50 7.25 7.00 7.75"));  // 22 / 3
  EXPECT_EQ(element_points(rule, kept, difficulty("3.85")).text(), "19.7633");
  rule.weight = factor("3");
  EXPECT_EQ(element_points(rule, kept, difficulty("3.85")).text(),
            "84.7");  // a mean of 7.3333 would give 84.6996
  EXPECT_EQ(plain_points(rule, kept).text(), "22");
}

TEST(Panel, TakesTheSumOfTheKeptMarksTimesDifficultyAndWeight) {
  PanelRule rule = five_judges();
  rule.combine = Combine::sum;
  rule.weight = factor("0.6");
  rule.places = 2;
  EXPECT_EQ(element_points(rule, keep(rule, marks("8 8 8 8.5 8")), difficulty("3.4")).text(), "48.96");
  EXPECT_EQ(plain_points(rule, keep(rule, marks("8 8 8 8.5 8"))).text(), "14.4");
}

TEST(Panel, RoundsATieTheWayItsRowSays) {
  PanelRule rule = five_judges();
  rule.drop_high = rule.drop_low = 0;
  rule.judges = 1;
  rule.places = 1;
  const auto rounded = [&](Rounding rounding, std::string_view given) {
    rule.rounding = rounding;
    return plain_points(rule, keep(rule, marks(given))).text();
  };
  EXPECT_EQ(rounded(Rounding::half_up, "7.25"), "7.3");
  EXPECT_EQ(rounded(Rounding::half_even, "7.25"), "7.2");
  EXPECT_EQ(rounded(Rounding::half_even, "7.75"), "7.8");
  EXPECT_EQ(rounded(Rounding::down, "7.75"), "7.7");
  EXPECT_EQ(rounded(Rounding::up, "7.25"), "7.3");
}

TEST(Panel, RoundsTheProductOfAnElementTheWayItsRowSays) {
  PanelRule rule = five_judges();
  rule.places = 1;
  rule.rounding = Rounding::down;
  EXPECT_EQ(element_points(rule, all_giving(rule, mark("7.25")), difficulty("1")).text(), "7.2");
  rule.rounding = Rounding::up;
  EXPECT_EQ(element_points(rule, all_giving(rule, mark("7.25")), difficulty("1")).text(), "7.3");
}

TEST(Panel, LetsAnExpectedMarkStandForAsManyJudgesAsAreKept) {
  PanelRule rule = five_judges();
  EXPECT_EQ(all_giving(rule, mark("7.25")).sum, mark("21.75"));
  EXPECT_EQ(all_giving(rule, mark("7.25")).count, 3);
  EXPECT_EQ(kit::fraction(combined(rule, all_giving(rule, mark("7.25")))), "7.25");
  rule.combine = Combine::sum;
  EXPECT_EQ(kit::fraction(combined(rule, all_giving(rule, mark("7.25")))), "21.75");
}

// What a random panel is made of; the seed is fixed, so a failure comes again.
struct RandomPanel {
  std::mt19937 random{20260509};
  int up_to(int most) { return std::uniform_int_distribution<int>(0, most)(random); }

  PanelRule rule(int judges) {
    PanelRule rule = five_judges();
    rule.judges = judges;
    rule.drop_high = up_to((judges - 1) / 2);
    rule.drop_low = up_to((judges - 1) / 2);
    rule.missing = up_to(1) == 0 ? Missing::mean : Missing::fewer;
    rule.missing_step = number("0.25");
    return rule;
  }
  JudgeMarks marks_for(const PanelRule& rule) {
    JudgeMarks given;
    for (int i = 0; i < rule.judges; ++i) given.push_back(Mark(rule.step * up_to(40)));
    if (rule.drop_high + rule.drop_low + 1 < rule.judges && up_to(3) == 0) {
      given[static_cast<std::size_t>(up_to(rule.judges - 1))].reset();
    }
    return given;
  }
};

// What is left of the marks, lowest first, when both ends are cut off.
KeptMarks kept_by_sorting(const PanelRule& rule, const Judged& judged) {
  std::vector<Mark> marks;
  for (const JudgeMark& one : judged.judges)
    if (one.state != JudgeMark::State::absent) marks.push_back(one.mark);
  std::sort(marks.begin(), marks.end());
  KeptMarks kept;
  for (auto at = marks.begin() + rule.drop_low; at != marks.end() - rule.drop_high; ++at) {
    kept.sum += *at;
    ++kept.count;
  }
  return kept;
}

TEST(Panel, KeepsWhatIsLeftWhenBothEndsOfTheSortedMarksAreCutOff) {
  RandomPanel panel;
  for (int round = 0; round < 20'000; ++round) {
    const PanelRule rule = panel.rule(1 + panel.up_to(19));
    const JudgeMarks given = panel.marks_for(rule);
    const KeptMarks kept = keep(rule, given), sorted = kept_by_sorting(rule, judge(rule, given));
    ASSERT_EQ(kept.sum, sorted.sum) << "round " << round;
    ASSERT_EQ(kept.count, sorted.count) << "round " << round;
  }
}

TEST(Panel, DropsTheFirstOfEqualLowMarksAndTheLastOfEqualHighOnes) {
  EXPECT_EQ(fates(judge(five_judges(), marks("7 7 7.5 7.5 7.25"))), "lkkhk 21.75/3");
}

TEST(Panel, GivesTheSameWhicheverSeatAJudgeHas) {
  RandomPanel panel;
  for (int round = 0; round < 2'000; ++round) {
    const PanelRule rule = panel.rule(3 + panel.up_to(6));
    JudgeMarks given = panel.marks_for(rule);
    const KeptMarks before = keep(rule, given);
    std::shuffle(given.begin(), given.end(), panel.random);
    ASSERT_EQ(keep(rule, given).sum, before.sum) << "round " << round;
  }
}

TEST(Panel, NeverDropsALowerMarkAsHighThanOneItKeeps) {
  RandomPanel panel;
  for (int round = 0; round < 2'000; ++round) {
    const PanelRule rule = panel.rule(3 + panel.up_to(6));
    const Judged judged = judge(rule, panel.marks_for(rule));
    int high = 0, low = 0;
    for (const JudgeMark& dropped : judged.judges) {
      high += dropped.state == JudgeMark::State::dropped_high;
      low += dropped.state == JudgeMark::State::dropped_low;
      for (const JudgeMark& kept : judged.judges) {
        if (kept.state != JudgeMark::State::kept) continue;
        ASSERT_TRUE(dropped.state != JudgeMark::State::dropped_high || dropped.mark >= kept.mark);
        ASSERT_TRUE(dropped.state != JudgeMark::State::dropped_low || dropped.mark <= kept.mark);
      }
    }
    ASSERT_EQ(high, rule.drop_high);
    ASSERT_EQ(low, rule.drop_low);
  }
}

}  // namespace
}  // namespace landdrill
