// Sentences for what stands in the way, and for what swimmers have to take care of.
#include "engine/report/sentences.h"

#include <gtest/gtest.h>

#include "tables/load.h"

namespace landdrill::report {
namespace {

TEST(ObstacleWords, NameTheElementsTogether) {
  EXPECT_EQ(elements_have({}), "");
  EXPECT_EQ(elements_have({2}), "element 2 has");
  EXPECT_EQ(elements_have({1, 3, 5}), "elements 1, 3 and 5 have");
  EXPECT_EQ(words_of({Obstacle::Of::elements_unmarked, {.elements = {1, 3}}}),
            "elements 1 and 3 have no expected mark: add `expect`, or a run");
}

TEST(ObstacleWords, SayWhatHasNoMarks) {
  EXPECT_EQ(in_words({}), "");
  EXPECT_EQ(in_words({{}, {"choreography", "performance"}}), "choreography and performance have no marks");
  EXPECT_EQ(in_words({{2}, {"choreography"}}), "element 2 has no marks, nor has choreography");
}

TEST(ObstacleWords, NameAnElementOfAPlanWithItsTitle) {
  EXPECT_EQ(words_of({Obstacle::Of::element_unmarked, {.elements = {2}, .names = {""}, .most = 1}}),
            "element 2 has no expected mark: add `expect`, or a run");
  EXPECT_EQ(words_of({Obstacle::Of::element_unmarked, {.elements = {2}, .names = {"Lily"}, .most = 3}}),
            "element 2 \"Lily\" has no expected mark in any option: add `expect`, or a run");
}

TEST(ObstacleWords, SayWhereNothingTellsTheSpread) {
  const std::string to_do =
      ": write `spread 0.4` into the sheet, give --spread, or add a row to the set's table spreads";
  EXPECT_EQ(words_of({Obstacle::Of::no_spread}), "nothing says how far judges' marks scatter" + to_do);
  EXPECT_EQ(words_of({Obstacle::Of::no_spread, {.elements = {1}, .names = {"choreography"}}}),
            "nothing says how far judges' marks scatter for element 1 and choreography" + to_do);
}

TEST(ObstacleWords, HaveASentenceOfItsOwnForEveryObstacle) {
  std::vector<std::string> sentences;
  for (int of = 0; of <= static_cast<int>(Obstacle::Of::share_no_chance); ++of) {
    const Obstacle one{static_cast<Obstacle::Of>(of),
                       {.elements = {1}, .names = {"lily"}, .amount = Decimal::whole(7), .most = 5}};
    // A plan names its element as all others do.
    if (one.of == Obstacle::Of::element_unmarked) continue;
    for (const std::string& other : sentences) EXPECT_NE(words_of(one), other);
    sentences.push_back(words_of(one));
  }
}

using When = CautionRule::When;

TEST(Cautions, ThatAreUsualAreSpokenInWholeSentencesAndEndWithWhatAPriceDoesNotSay) {
  EXPECT_EQ(
      sentences_of(usual_cautions()),
      (std::vector<std::string>{
          "Lifts and throws: agree on the call, check the depth by the facility's and the federation's rule, "
          "have spotters, land clear of the bases and the walls, and let the bases swim clear before the "
          "flyer "
          "comes down.",
          "After a blow to the head: out of the water, and a medical check.",
          "Breath-hold: never hyperventilate, never drill it alone or unsupervised, rest between tries, stop "
          "at the first sign of trouble.",
          "This prices a routine; it does not say that anyone can safely swim it. Follow your federation's "
          "and the facility's rules, the law and medical advice."}));
}

TEST(Cautions, WithTheSameTextAreSaidOnceOfAllTheirTopics) {
  const auto said = [](const Cautions& cautions) { return sentences_of(cautions); };
  EXPECT_EQ(said({}), (std::vector<std::string>{}));
  EXPECT_EQ(said({{When::lift, "a", "lifts", "look up.", {}},
                  {When::lift, "b", "stacks", "look down.", {}},
                  {When::thrown, "c", "throws", "look up.", {}},
                  {When::any, "d", "", "Look out.", {}}}),
            (std::vector<std::string>{"Lifts and throws: look up.", "Stacks: look down.", "Look out."}));
}

}  // namespace
}  // namespace landdrill::report
