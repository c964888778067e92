// Figure sessions. Source: FINA Synchronised Swimming Rules 2009-2013, SS 12.1-12.3: one highest and one
// lowest mark dropped, the other 4 or 5 averaged, x degree of difficulty; the sum of the four / the sum of
// the group's degrees x 10; then penalties.
#include "tests/outside/published.h"

namespace landdrill {
namespace {

using kit::ReadSheet;
using kit::recorded_total;
using kit::shipped;

// Four figures by the degrees of difficulty in `group`; `marks` for each in turn.
std::string session(int judges, const std::vector<std::string>& group,
                    const std::vector<std::string>& marks) {
  std::string routine = published::head("figures-" + std::to_string(judges), "figures-2009"),
              panel = "panel 2010-03-20\n";
  for (std::size_t i = 0; i < group.size(); ++i) {
    const std::string name = "element " + std::to_string(i + 1);
    routine += name + " figure\n" + group[i] + "\n";
    panel += name + ": " + marks[i] + "\n";
  }
  return routine + panel;
}

// Worked by hand. Kept means 34.2/5, 32.2/5, 36.2/5, 33.1/5; x 3.1, 2.7, 1.4, 2.4 = 21.204 + 17.388 + 10.136
// + 15.888 = 64.616; / 9.6 x 10 = 8077/120 = 67.308333...
TEST(FigureSession, OfSevenJudgesAgreesWithTheRuleWorkedByHand) {
  const std::string text = session(7, {"parts 225", "parts 326", "parts 201", "difficulty 2.4"},
                                   {"6.8 7.0 6.5 6.7 7.1 6.9 6.8", "6.4 6.2 6.6 6.5 6.3 6.4 6.6",
                                    "7.4 7.2 7.3 7.0 7.5 7.2 7.1", "6.5 6.6 6.4 6.8 6.7 6.5 6.9"});
  const ReadSheet sheet(text, shipped("figures-2009"));
  EXPECT_EQ(recorded_total(sheet.routine()), "67.3083");
  EXPECT_FALSE(published::rests_on_memory(account(sheet.routine(), {}, 0)));
  // Penalties come after: 2 points for stopping and asking to begin again (SS 11.1.1).
  EXPECT_EQ(recorded_total(ReadSheet(text + "penalty: stopped\n", shipped("figures-2009")).routine()),
            "65.3083");
}

// Worked by hand. Kept means 27.3/4, 24.6/4, 30.8/4, 22.6/4; x 3.1, 2.7, 1.4, 1.9 = 59.2775; / 9.1 x 10 =
// 23711/364.
TEST(FigureSession, OfSixJudgesAgreesWithTheRuleWorkedByHand) {
  const std::string text = session(6, {"parts 225", "parts 326", "parts 201", "difficulty 1.9"},
                                   {"7.0 6.8 6.9 7.1 6.5 6.6", "6.0 6.1 6.3 6.2 6.5 5.9",
                                    "7.7 7.7 7.8 7.9 7.5 7.6", "5.5 5.6 5.8 5.7 6.0 5.4"});
  EXPECT_EQ(recorded_total(ReadSheet(text, shipped("figures-2009")).routine()), "65.1401");
}

// SS 20.2: a session gives at most 100.
TEST(FigureSession, GivesAtMostAHundred) {
  const std::vector<std::string> tens(4, "10 10 10 10 10 10 10");
  const std::string text = session(7, {"parts 225", "parts 326", "parts 201", "difficulty 2.4"}, tens);
  EXPECT_EQ(recorded_total(ReadSheet(text, shipped("figures-2009")).routine()), "100");
}

// The groups for which the identity is checked: four degrees of difficulty each.
std::vector<std::vector<std::string>> groups() {
  std::vector<std::vector<std::string>> list = {
      {"parts 225", "parts 326", "parts 201", "difficulty 2.4"},
      {"parts 225", "parts 225", "parts 225", "parts 225"},
      {"difficulty 0.1", "difficulty 9.9", "difficulty 3.3", "difficulty 0.7"}};
  // Secondary: degrees of difficulty of 2017-2025 as repeated by club and national pages.
  for (const char* set : {"figure-groups-2017", "figure-groups-2022"}) {
    std::vector<std::string> group;
    for (const Part& part : shipped(set).parts) {
      group.push_back("difficulty " + part.value->text());
      if (group.size() < 4) continue;
      list.push_back(group);
      group.clear();
    }
  }
  return list;
}

// A panel whose kept mean is m although no two neighbours agree.
std::string around(int tenths) {
  std::string marks;
  for (const int away : {-4, 1, 0, 5, -1, 2, -2})
    marks += " " + Decimal::from_units((tenths + away) * 100'000).text();
  return marks;
}

// If every kept mean is m, the result is 10 m, whatever the group.
TEST(FigureSession, GivesTenTimesTheMeanWhenEveryKeptMeanIsTheSame) {
  EXPECT_EQ(groups().size(), 3u + 1u + 5u);
  for (const std::vector<std::string>& group : groups()) {
    for (int tenths = 4; tenths <= 95; ++tenths) {
      const std::string text = session(7, group, std::vector<std::string>(4, around(tenths)));
      ASSERT_EQ(recorded_total(ReadSheet(text, shipped("figures-2009")).routine()), std::to_string(tenths))
          << text;
    }
  }
}

// Source: FINA Manual for Judges, Coaches & Referees 2009-2013 (rev. Jan 2010), pp. 88 and 110.
TEST(FigureSession, KnowsThePrintedDegreesOfDifficulty) {
  EXPECT_EQ(shipped("figures-2009").parts.find("225")->value, kit::difficulty("3.1"));
  EXPECT_EQ(shipped("figures-2009").parts.find("326")->value, kit::difficulty("2.7"));
  EXPECT_EQ(shipped("figures-2009").parts.find("201")->value, kit::difficulty("1.4"));
}

}  // namespace
}  // namespace landdrill
