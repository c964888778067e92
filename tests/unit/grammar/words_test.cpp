#include "grammar/words.h"

#include <gtest/gtest.h>

#include "grammar/parse.h"

namespace landdrill::words {
namespace {

using Words = std::vector<std::string_view>;

TEST(Nearest, FindsTheKnownWordsBestFirst) {
  const Words known{"join-foot", "spin-360", "spin-720"};
  EXPECT_EQ(nearest("spin-730", known), (Words{"spin-720", "spin-360"}));
}
TEST(Nearest, CountsTwoSwappedNeighboursOnce) {
  EXPECT_EQ(nearest("tepmo", Words{"tempo"}), Words{"tempo"});
  EXPECT_EQ(nearest("tpmoe", Words{"tempo"}), Words{});
}
TEST(Nearest, IgnoresCase) {
  EXPECT_EQ(nearest("SPIN", Words{"spin"}), Words{"spin"});
}
TEST(Nearest, FindsNothingFurtherThanAThird) {
  EXPECT_EQ(nearest("music", Words{"slip"}), Words{});
  EXPECT_EQ(nearest("up", Words{"in"}), Words{});
  EXPECT_EQ(nearest("runn", Words{"run"}), Words{"run"});
}
TEST(Nearest, KeepsTheOrderOfEquallyNearWordsAndStopsAtMost) {
  EXPECT_EQ(nearest("spin-1", Words{"spin-2", "spin-3", "spin-4", "spin-5"}, 2), (Words{"spin-2", "spin-3"}));
}
TEST(Nearest, FindsNothingForAWordOver64Bytes) {
  const std::string word(65, 'a');
  EXPECT_EQ(nearest(word, Words{word}), Words{});
  const std::string shorter(64, 'a');
  EXPECT_EQ(nearest(shorter, Words{shorter}), Words{shorter});
}
TEST(Nearest, FindsNothingForNothing) {
  EXPECT_EQ(nearest("", Words{"run"}), Words{});
  EXPECT_EQ(nearest("run", Words{}), Words{});
}

TEST(NearestHint, NamesOneOrMore) {
  EXPECT_EQ(nearest_hint("spin-721", Words{"spin-720", "arms"}).words, "the nearest is spin-720");
  EXPECT_EQ(nearest_hint("spin-730", Words{"spin-720", "spin-360"}).words,
            "the nearest are spin-720, spin-360");
  EXPECT_EQ(nearest_hint("zzz", Words{"spin-720"}).words, "");
}

TEST(Nearest, CanGoInThePlaceOfTheWordWhereThereIsNoChoice) {
  EXPECT_EQ(nearest_hint("spin-721", Words{"spin-720", "arms"}).instead, "spin-720");
  EXPECT_EQ(nearest_hint("spin-730", Words{"spin-720", "spin-360"}).instead, "");
  EXPECT_EQ(nearest_hint("spin 721", Words{"spin 720"}).instead, "");  // needs quotation marks
}

TEST(Keywords, AreFoundInUpperAndLowerCase) {
  EXPECT_EQ(find("swimmers"), Word::swimmers);
  EXPECT_EQ(find("SwimMers"), Word::swimmers);
  EXPECT_EQ(find("swimmer"), std::nullopt);
  EXPECT_EQ(find(""), std::nullopt);
  for (const Keyword& each : keywords()) EXPECT_EQ(keyword(find(each.word).value()).word, each.word);
}
TEST(Keywords, HaveExamplesThatReadWithoutAMistake) {
  for (const Keyword& each : keywords()) {
    const Source source{"example", each.example};
    EXPECT_TRUE(parse(source).diagnostics.ok()) << each.example;
    EXPECT_TRUE(each.example.starts_with(each.word)) << each.example;
    EXPECT_FALSE(each.help.empty()) << each.word;
  }
}

}  // namespace
}  // namespace landdrill::words
