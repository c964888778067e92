// What swimmers have to take care of.
#include "engine/report/cautions.h"

#include <gtest/gtest.h>

#include "tables/load.h"

namespace landdrill::report {
namespace {

using When = CautionRule::When;

TEST(Cautions, ThatAreUsualAreSpokenInWholeSentencesAndEndWithWhatAPriceDoesNotSay) {
  EXPECT_EQ(
      sentences_of(usual_cautions()),
      (std::vector<std::string>{
          "Lifts and throws: agree on the call, check the depth by the facility's and the federation's rule, "
          "have spotters, land clear of the bases and the walls, and let the bases swim clear before the flyer "
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
