#include "engine/choosing/next_point.h"

#include <gtest/gtest.h>

#include <random>

#include "engine/choosing/worth.h"
#include "engine/report/sentences.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;
using kit::points;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

NextPoints next_points_of(const std::string& text) {
  return next_points(ReadSheet(text, pond()).routine(), {});
}

std::string told(const NextPoints& next) {
  std::string text;
  for (const std::string& obstacle : report::words_of(next.obstacles)) text += obstacle + "\n";
  for (const Gain& gain : next.gains)
    text += gain.label + ", " + gain.before + " -> " + gain.after + ": " + gain.change.text() + "\n";
  return text;
}

TEST(NextPoint, RanksWhatALittleMoreOfEachThingBrings) {
  const NextPoints next =
      next_points_of(replaced(reeds, "expect 7.5\n", "expect 7.5\nslip 20%\n") +
                     "run 2026-04-14\nsync: small x3, clear\npenalty: bottom, overtime\n");
  EXPECT_EQ(next.total, points("80.65"));  // 86.4 - 0.2 x 9.75 - 0.3 - 0.5 - 2 - 1
  EXPECT_EQ(told(next),
            "bottom, 1 -> 0: 2\n"
            "overtime, 1 -> 0: 1\n"
            "1 Ripple, 20 -> 10: 0.975\n"
            "clear, 1 -> 0: 0.5\n"
            "Choreography, 7.50 -> 7.60: 0.4\n"
            "Performance, 8.00 -> 8.10: 0.3\n"
            "2 Hybrid, 7.00 -> 7.10: 0.27\n"
            "1 Ripple, 7.50 -> 7.60: 0.154\n"  // 0.1 x (0.8 x 1.8 + 0.2 x 0.5)
            "small, 3 -> 2: 0.1\n");
}

TEST(NextPoint, LeavesOutWhatThereIsNothingOf) {
  const std::string text = told(next_points_of(replaced(
      replaced(reeds, "expect 7.5\n", "expect 10\nslip 0%\n"), "performance 8.00", "performance 10")));
  EXPECT_EQ(text, "Choreography, 7.50 -> 7.60: 0.4\n2 Hybrid, 7.00 -> 7.10: 0.27\n");
}

TEST(NextPoint, GoesNoFurtherThanTheTopOfTheScale) {
  const std::string text = told(next_points_of(replaced(reeds, "expect 7.5\n", "expect 9.96\n")));
  EXPECT_NE(text.find("1 Ripple, 9.96 -> 10.00: 0.072\n"), std::string::npos) << text;
}

TEST(NextPoint, TakesOffAsManyErrorsAsAreExpectedWhenThatIsLessThanOne) {
  const ReadSheet sheet(reeds, pond());
  Routine routine = sheet.routine();
  routine.errors = {{routine.set->sync.find("clear"), number("0.4")},
                    {routine.set->sync.find("small"), number("2.5")}};
  routine.risks = {{routine.set->penalties.find("bottom"), number("10")}};
  const std::string text = told(next_points(routine, {}));
  EXPECT_NE(text.find("clear, 0.4 -> 0: 0.2\n"), std::string::npos) << text;
  EXPECT_NE(text.find("small, 2.5 -> 1.5: 0.1\n"), std::string::npos) << text;
  EXPECT_NE(text.find("bottom, 0.1 -> 0: 0.2\n"), std::string::npos) << text;
}

TEST(NextPoint, PutsWhatBringsNothingLast) {
  const std::string text = told(next_points_of(
      "routine \"Reeds\"\nevent plain\nvalues pond\nelement 1 hybrid\nparts spin-a\nexpect 7.5\nslip 30%\n"));
  EXPECT_EQ(text, "1 Hybrid, 7.5 -> 7.6: 0.6\n1 Hybrid, 30 -> 15: 0\n");
}

TEST(NextPoint, NamesTheMarksThatAreMissing) {
  const NextPoints next =
      next_points_of(replaced(replaced(reeds, "expect 7.5\n", ""), ", performance 8.00", ""));
  EXPECT_EQ(told(next),
            "element 1 has no expected mark: add `expect`, or a run\n"
            "performance has no expected mark: add it to a line `impression`\n");
}

TEST(NextPoint, SaysWhenTooManyElementsAreRiskyTogether) {
  std::string text = "routine \"Reeds\"\nevent session\nvalues pond\n";
  for (int i = 1; i <= most_risky + 1; ++i)
    text += "element " + std::to_string(i) + " throw\ndifficulty 2\nexpect 7\nslip 5%\n";
  EXPECT_EQ(told(next_points_of(text)),
            "17 elements that are weighted together can get their base mark, more than 16: leave `slip` out "
            "where it hardly matters\n");
}

// A sheet that can be written with one thing changed.
struct Dealt {
  struct Line {
    Decimal difficulty, mark, slip;
  };
  std::string event;
  std::vector<Line> elements;
  std::vector<Decimal> aspects;
  int small = 0, bottom = 0;

  std::string text() const {
    std::string result = "routine \"Dealt\"\nevent " + event + "\nvalues pond\n";
    for (std::size_t i = 0; i < elements.size(); ++i) {
      const Line& line = elements[i];
      result += "element " + std::to_string(i + 1) + " lift\ndifficulty " + line.difficulty.text() +
                "\nexpect " + line.mark.text() + "\nslip " + line.slip.text() + "%\n";
    }
    if (!aspects.empty()) result += "impression choreography " + aspects[0].text();
    if (aspects.size() > 1) result += ", performance " + aspects[1].text();
    if (!aspects.empty()) result += "\n";
    result += "run 2026-04-14\nsync: " + (small > 0 ? "small x" + std::to_string(small) : "none");
    return result + "\npenalty: " + (bottom > 0 ? "bottom x" + std::to_string(bottom) : "none") + "\n";
  }
  Points total() const {
    const ReadSheet sheet(text(), pond());
    return rounded(sheet.routine(), *expected_total(sheet.routine(), risked(sheet.routine(), {})));
  }
  Dealt changed(const Gain& gain) const {
    Dealt then = *this;
    const Decimal after = number(gain.after);
    if (gain.what == Gain::What::execution) then.elements[gain.index].mark = after;
    if (gain.what == Gain::What::base_chance) then.elements[gain.index].slip = after;
    if (gain.what == Gain::What::impression) then.aspects[gain.index] = after;
    if (gain.what == Gain::What::sync) --then.small;
    if (gain.what == Gain::What::penalty) --then.bottom;
    return then;
  }
};

Dealt deal(std::mt19937& random) {
  const auto from = [&](int least, int most) {
    return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
  };
  const char* events[] = {"open", "session", "plain", "mixed"};
  Dealt dealt;
  dealt.event = events[from(0, 3)];
  for (int i = from(1, 5); i > 0; --i)
    dealt.elements.push_back({Decimal::from_units(from(1, 400) * 10'000),
                              Decimal::from_units(from(0, 40) * 250'000),
                              Decimal::from_units(from(0, 3) == 0 ? 0 : from(1, 1000) * 100'000)});
  const std::size_t aspects = dealt.event == "open" ? 2 : dealt.event == "mixed" ? 1 : 0;
  while (dealt.aspects.size() < aspects) dealt.aspects.push_back(Decimal::from_units(from(0, 40) * 250'000));
  dealt.small = from(0, 3);
  dealt.bottom = from(0, 2);
  return dealt;
}

TEST(NextPoint, GainsWhatTheSheetGainsWhenTheChangeIsWrittenIntoIt) {
  std::mt19937 random(20261125);
  std::size_t gains = 0;
  for (int i = 0; i < 200; ++i) {
    const Dealt dealt = deal(random);
    const ReadSheet sheet(dealt.text(), pond());
    const NextPoints next = next_points(sheet.routine(), {});
    ASSERT_TRUE(next.obstacles.empty()) << dealt.text();
    ASSERT_EQ(next.total, dealt.total()) << dealt.text();
    for (const Gain& gain : next.gains) {
      ASSERT_EQ(next.total + gain.change, dealt.changed(gain).total())
          << gain.label << " " << gain.before << " -> " << gain.after << "\n"
          << dealt.text();
    }
    gains += next.gains.size();
  }
  EXPECT_GT(gains, 1000u);
}

}  // namespace
}  // namespace landdrill
