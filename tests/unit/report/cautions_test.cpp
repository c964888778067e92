// What swimmers have to take care of.
#include "engine/report/cautions.h"

#include <gtest/gtest.h>

namespace landdrill::report {
namespace {

TEST(Cautions, AreSpokenInWholeSentencesAndEndWithWhatAPriceDoesNotSay) {
  EXPECT_TRUE(sentences_of({}).empty());
  const std::vector<std::string> both = sentences_of({true, true, true});
  ASSERT_EQ(both.size(), 3u);
  EXPECT_EQ(
      both[0],
      "Lifts and throws: check the depth and a clear landing, have spotters, and let the bases swim clear "
      "before the flyer comes down.");
  EXPECT_NE(both[1].find("never hyperventilate, never drill it alone or unsupervised"), std::string::npos);
  EXPECT_NE(both[2].find("it does not say that anyone can safely swim it."), std::string::npos);
  EXPECT_EQ(sentences_of({.throws = true}).front().substr(0, 7), "Throws:");
  EXPECT_EQ(sentences_of({.under_water = true}).size(), 2u);
}

}  // namespace
}  // namespace landdrill::report
