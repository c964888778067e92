// A final published judge by judge: men's 3 m springboard, Olympic Games 2000, semi-final and final. Seven
// judges, one high and one low mark dropped, the sum of five x degree of difficulty x 0.6. Source: marks and
// degrees from the open data set Diving2000.csv (1,541 dives x 7 judges); the total 708.72 and the 81.60 of
// the last dive as published in the press.
#include <algorithm>
#include <boost/multiprecision/cpp_int.hpp>
#include <sstream>

#include "tests/outside/published.h"

namespace landdrill {
namespace {

using boost::multiprecision::cpp_rational;

struct Dive {
  const char *difficulty, *marks;
};
constexpr Dive dives[] = {
    {"1.6", "8 8.5 7.5 7.5 8 7.5 8"}, {"2.1", "8 8 7 8.5 8 7.5 7"},     {"1.8", "8.5 8.5 8 9 8 8.5 8.5"},
    {"1.9", "8.5 8 8 8 8.5 8 8"},     {"2.1", "8.5 8 8.5 8.5 9 8 8.5"}, {"3.1", "8 9 8.5 8.5 8.5 8.5 8.5"},
    {"3.0", "8.5 8 8 9 8 8 8"},       {"3.0", "9 9 9 9 9.5 9 9"},       {"3.4", "8 8 8 8.5 8 8 8"},
    {"3.3", "8.5 8 8 9 8.5 8.5 8"},   {"3.4", "7.5 8.5 8 9 8 8 7.5"}};

std::string sheet_of_all_dives() {
  std::string routine = published::head("springboard", "springboard-2000"), panel = "panel 2000-09-26\n";
  int number = 0;
  for (const Dive& dive : dives) {
    const std::string name = "element " + std::to_string(++number);
    routine += name + " dive\nparts dd-" + dive.difficulty + "\n";
    panel += name + ": " + dive.marks + "\n";
  }
  return routine + panel;
}

// "8.5" as a fraction, read without any code of the program.
cpp_rational fraction(const std::string& text) {
  const std::size_t point = text.find('.');
  if (point == std::string::npos) return cpp_rational(std::stoi(text));
  return cpp_rational(std::stoi(text.substr(0, point))) + cpp_rational(std::stoi(text.substr(point + 1)), 10);
}

// The points of a dive, by the rule above and nothing of the program.
cpp_rational by_hand(const Dive& dive) {
  std::vector<cpp_rational> marks;
  std::istringstream words(dive.marks);
  for (std::string word; words >> word;) marks.push_back(fraction(word));
  std::sort(marks.begin(), marks.end());
  cpp_rational sum = 0;
  for (std::size_t i = 1; i + 1 < marks.size(); ++i) sum += marks[i];
  return sum * fraction(dive.difficulty) * cpp_rational(6, 10);
}

TEST(Springboard, AddsUpToThePublishedTotal) {
  const kit::ReadSheet sheet(sheet_of_all_dives(), kit::shipped("springboard-2000"));
  EXPECT_EQ(kit::recorded_total(sheet.routine()), "708.72");
  EXPECT_FALSE(published::rests_on_memory(account(sheet.routine(), {}, 0)));
}

TEST(Springboard, GivesTheLastDiveItsPublishedPoints) {
  const kit::ReadSheet sheet(sheet_of_all_dives(), kit::shipped("springboard-2000"));
  const Account told = account(sheet.routine(), {}, 0);
  EXPECT_EQ(told.elements.back().recorded->points->text(told.places), "81.60");
}

TEST(Springboard, AgreesWithExactFractionsDiveByDive) {
  const kit::ReadSheet sheet(sheet_of_all_dives(), kit::shipped("springboard-2000"));
  const Score result = score(sheet.routine(), recorded(sheet.routine(), sheet.routine().panels.front(), {}));
  cpp_rational total = 0;
  for (std::size_t i = 0; i < std::size(dives); ++i) {
    EXPECT_EQ(cpp_rational(result.elements[i]->value().units(), 1'000'000), by_hand(dives[i]))
        << "dive " << i + 1;
    total += by_hand(dives[i]);
  }
  EXPECT_EQ(total, cpp_rational(70872, 100));
}

// Secondary: a worked example of the later rule, two high and two low dropped, the sum of three x degree of
// difficulty.
TEST(Springboard, DropsTwoAndTwoByTheLaterRule) {
  const kit::ReadSheet sheet(
      published::head("springboard", "springboard-later") +
          "element 1 dive\nparts dd-2.8\npanel 2012-01-01\nelement 1: 6.5 7 7 7.5 7.5 8 8\n",
      kit::shipped("springboard-later"));
  EXPECT_EQ(kit::recorded_total(sheet.routine()), "61.6");
}

}  // namespace
}  // namespace landdrill
