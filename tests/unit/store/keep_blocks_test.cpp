// Which of the versions that are given are history already.
#include <gtest/gtest.h>

#include "tables/store/kept_blocks.h"

namespace landdrill::store {
namespace {

// Each letter a text.
std::string places(const std::string& given, const std::string& kept) {
  const auto letters = [](const std::string& word) {
    std::vector<std::string_view> all;
    for (std::size_t i = 0; i < word.size(); ++i) all.push_back(std::string_view(word).substr(i, 1));
    return all;
  };
  std::string text;
  for (const std::size_t place : kept_before(letters(given), letters(kept))) text += std::to_string(place);
  return text;
}

TEST(KeptBefore, NothingIsHistoryInAnEmptyBook) {
  EXPECT_EQ(places("ab", ""), "");
}

TEST(KeptBefore, TheLatestIsKnownAgain) {
  EXPECT_EQ(places("a", "a"), "0");
  EXPECT_EQ(places("b", "ab"), "1");
}

TEST(KeptBefore, AnOlderOneAloneIsNot) {
  EXPECT_EQ(places("a", "ab"), "");
  EXPECT_EQ(places("ba", "ab"), "1");
}

TEST(KeptBefore, TheWholeHistoryIsKnownAgainAndSomeOfItToo) {
  EXPECT_EQ(places("abc", "abc"), "012");
  EXPECT_EQ(places("ac", "abc"), "02");
  EXPECT_EQ(places("aba", "aba"), "012");
}

TEST(KeptBefore, WhatFollowsTheLatestIsNew) {
  EXPECT_EQ(places("abcd", "ab"), "01");
}

TEST(KeptBefore, TheSameTwiceInARowIsOne) {
  EXPECT_EQ(places("aab", "ab"), "001");
  EXPECT_EQ(places("aab", "aab"), "112");
  EXPECT_EQ(places("bb", "ab"), "11");
}

}  // namespace
}  // namespace landdrill::store
