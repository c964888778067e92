// What a season teaches, against published examples and against R (lessons_reference.R says by which roads). R also says
// what intervals would be if lessons were independent (lows and highs of its plain rows, and `days`): not compared.
#include "engine/judging/lessons.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <sstream>

#include "engine/judging/learning.h"

namespace landdrill {
namespace {

// Kacker, Metrologia 41 (2004), 132-136: nine laboratories. Values and variances as in the tests of
// statsmodels (stats/tests/results/results_meta.py, exk1_dl), there worked out by R's metafor, rma(y, v,
// method = "DL"); Kacker's table 1, p. 135, first row, prints the same deviation as 0.5359.
TEST(PublishedShrinkage, AgreesWithDerSimonianAndLairdOnNineLaboratories) {
  const double means[] = {61.00, 61.40, 62.21, 62.30, 62.34, 62.60, 62.70, 62.84, 65.90};
  const double variances[] = {0.2025, 1.2100, 0.0900, 0.2025, 0.3844, 0.5625, 0.0676, 0.0225, 1.8225};
  std::vector<GroupMean> groups;
  for (int i = 0; i < 9; ++i) groups.push_back({means[i], 1 / variances[i]});
  const DrawnTogether drawn = draw_together(groups, {1});
  EXPECT_NEAR(drawn.between, 0.288049246973751, 1e-10);
  EXPECT_NEAR(drawn.towards, 62.3901386044504, 1e-10);
  EXPECT_NEAR(std::sqrt(drawn.between), 0.5359, 1e-3);
}

// A second example, six laboratories of the key comparison CCQM-K25 (PCB 28): the comments of a public R
// function DerSimonianLaird print what metafor says to four places and metRology's dsl to seven. Secondary:
// the stored copy does not name its repository.
TEST(PublishedShrinkage, AgreesWithTwoProgramsOnSixLaboratories) {
  const double means[] = {34.3, 32.9, 34.53, 32.42, 31.9, 35.8};
  const double errors[] = {1.03, 0.69, 0.83, 0.29, 0.4, 0.38};
  std::vector<GroupMean> groups;
  for (int i = 0; i < 6; ++i) groups.push_back({means[i], 1 / (errors[i] * errors[i])});
  const DrawnTogether drawn = draw_together(groups, {1});
  EXPECT_NEAR(drawn.between, 2.9289, 5e-5);
  EXPECT_NEAR(drawn.towards, 33.60043, 5e-6);
}

// Efron & Morris, Scientific American 236 (1977), 119-127: averages of 18 batters over 45 turns each are
// drawn towards their mean .265 with the weight .212 (as reported at stats.stackexchange.com, question 5727,
// with the data, and the variance p (1 - p) / 45 in its answer). Theirs is 1 - (k - 3) v / S, that by moments
// 1 - (k - 1) v / S: with equal variances one follows from the other.
TEST(PublishedShrinkage, AgreesWithEfronAndMorrisButForTheirDegreesOfFreedom) {
  const int hits[] = {18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7};
  std::vector<GroupMean> groups;
  for (int hit : hits) groups.push_back({hit / 45.0, 45});
  const DrawnTogether drawn = draw_together(groups, {.265 * (1 - .265)});
  EXPECT_NEAR(drawn.towards, .265, 5e-4);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    EXPECT_NEAR(1 - (1 - drawn.groups[i].weight) * 15 / 17, .212, 1e-3);
    EXPECT_NEAR(drawn.groups[i].mean,
                drawn.towards + drawn.groups[i].weight * (groups[i].mean - drawn.towards), 1e-12);
  }
}

// ---- R ----

using Numbers = std::vector<std::optional<double>>;

std::vector<std::string> parted(const std::string& text, char at) {
  std::vector<std::string> pieces;
  std::istringstream in(text);
  for (std::string piece; std::getline(in, piece, at);) pieces.push_back(piece);
  return pieces;
}
Numbers numbers(const std::string& text) {
  Numbers result;
  for (const std::string& piece : parted(text, ' ')) {
    result.push_back(piece == "-" ? std::nullopt : std::optional(std::stod(piece)));
  }
  return result;
}

struct Season {
  std::vector<Lesson> lessons;
  std::map<std::string, Numbers> told;  // "kind,lift"
};

Lesson lesson(const std::vector<std::string>& fields) {
  Lesson one;
  one.date = fields[2];
  one.kind = fields[3];
  one.families = parted(fields[4], ';');
  one.faults = parted(fields[5], ';');
  const Numbers marks = numbers(fields[6]);
  one.expected = *marks[0];
  one.given = *marks[1];
  return one;
}

std::map<std::string, Season> seasons() {
  std::map<std::string, Season> result;
  std::ifstream in(LANDDRILL_LESSONS_REFERENCE);
  for (std::string line; std::getline(in, line);) {
    const std::vector<std::string> fields = parted(line, ',');
    Season& season = result[fields[0]];
    if (fields[1] == "lesson") {
      season.lessons.push_back(lesson(fields));
    } else {
      std::string name = fields[1];
      for (std::size_t i = 2; i + 1 < fields.size(); ++i) name += "," + fields[i];
      season.told[name] = numbers(fields.back());
    }
  }
  return result;
}

std::string name_of(const LearnedBias& bias) {
  switch (bias.of) {
    case LearnedBias::Of::all:
      return "all,";
    case LearnedBias::Of::kind:
      return "kind," + bias.code;
    case LearnedBias::Of::family:
      return "family," + bias.code;
    case LearnedBias::Of::fault:
      return "fault," + bias.code;
  }
  return "";
}

void expect_same(const Numbers& ours, const Numbers& told, const std::string& what) {
  ASSERT_EQ(ours.size(), told.size()) << what;
  for (std::size_t i = 0; i < told.size(); ++i) {
    ASSERT_EQ(ours[i].has_value(), told[i].has_value()) << what << ", number " << i;
    if (!told[i]) continue;
    EXPECT_NEAR(*ours[i], *told[i], 1e-9) << what << ", number " << i;
  }
}

double count(std::size_t number) {
  return static_cast<double>(number);
}

TEST(LessonsReference, BiasesAreWhatRSays) {
  std::size_t compared = 0;
  for (const auto& [title, season] : seasons()) {
    const Learned learned = learn(season.lessons);
    for (const LearnedBias& one : learned.biases) {
      const std::string name = name_of(one);
      ASSERT_TRUE(season.told.contains(name)) << title << " " << name;
      const Numbers& told = season.told.at(name);
      expect_same({count(one.lessons), one.bias, one.spread, one.towards, one.shrunk},
                  {told[0], told[1], told[2], told[5], told[6]}, title + " " + name);
      expect_same({count(one.days), one.low, one.high, one.shrunk_low, one.shrunk_high},
                  season.told.at("clustered," + name), title + " clustered " + name);
      ++compared;
    }
    expect_same({learned.within, learned.between}, season.told.at("kinds"), title + " kinds");
    // R's `kinds`, `days` and `back-test` besides.
    EXPECT_EQ(2 * learned.biases.size() + 3, season.told.size()) << title;
  }
  EXPECT_GE(compared, 50u);
}

TEST(LessonsReference, TheBackTestIsWhatRSays) {
  std::size_t compared = 0, tested = 0;
  for (const auto& [title, season] : seasons()) {
    const BackTest test = back_test(season.lessons);
    expect_same({count(test.tested), count(test.days), test.error_before, test.error_after, test.better_low,
                 test.better_high},
                season.told.at("back-test"), title);
    ++compared;
    tested += test.tested;
  }
  EXPECT_EQ(compared, 9u);
  EXPECT_GE(tested, 400u);
}

}  // namespace
}  // namespace landdrill
