// Sheets worked on several at once and handed out one by one: nothing lost, nothing out of order.
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <thread>

#include "engine/files/sheet_reader.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill {
namespace {

using test::Scratch;

std::string sheet_called(int number) {
  return "routine \"" + std::to_string(number) + "\"\n" +
         std::string(static_cast<std::size_t>(number % 50 * 10), '\n');
}

std::string stream_of(int count) {
  std::string text;
  for (int i = 0; i < count; ++i) text += sheet_called(i);
  return text;
}

std::string text_of(const StreamSheet& sheet) {
  std::string text;
  for (const Source& piece : sheet.sources()) text += piece.text;
  return text;
}

// The work copies the text, so that a text taken back too early shows.
void note_text(StreamSheet& sheet) {
  sheet.ahead = {text_of(sheet), {}};
}

TEST(ReadAhead, HandsOutEverySheetInItsOrder) {
  const Scratch scratch;
  const int count = 3000;
  ReadAhead ahead({scratch.file("many", stream_of(count))}, note_text);
  ahead.ahead();
  for (int i = 0; i < count; ++i) {
    const ReadAhead::Place& place = ahead.next();
    ASSERT_FALSE(place.ended) << i;
    ASSERT_EQ(place.more, i + 1 < count) << i;
    ASSERT_EQ(place.sheet.ahead->line, text_of(place.sheet)) << i;
    ASSERT_TRUE(text_of(place.sheet).find("\"" + std::to_string(i) + "\"") != std::string::npos) << i;
  }
  EXPECT_TRUE(ahead.next().ended);
  EXPECT_TRUE(ahead.next().ended);
}

TEST(ReadAhead, WorksOnOneSheetAtATimeUntilItIsToldOtherwise) {
  const Scratch scratch;
  std::atomic<int> begun = 0;
  ReadAhead ahead({scratch.file("many", stream_of(40))}, [&](StreamSheet&) { ++begun; });
  for (int i = 1; i <= 10; ++i) {
    ahead.next();
    EXPECT_EQ(begun, i);
  }
  ahead.ahead();
  ahead.next();
  EXPECT_GT(begun, 11);
}

TEST(ReadAhead, ReadsLessAheadWhenTheTextsAreLong) {
  const Scratch scratch;
  std::string text;
  for (int i = 0; i < 64; ++i) text += "routine \"" + std::string(300'000, '-') + "\"\n";
  std::atomic<int> begun = 0;
  ReadAhead ahead({scratch.file("long", text)}, [&](StreamSheet&) { ++begun; });
  ahead.ahead();
  for (int i = 1; i <= 64; ++i) {
    ahead.next();
    EXPECT_LE(begun, i + 1) << "more than two long sheets at once";
  }
}

TEST(ReadAhead, GivesATroubleWithTheSheetThatWasReadWhenItCame) {
  const Scratch scratch;
  ReadAhead ahead(
      {scratch.file("a", "routine \"a\"\n"), scratch.path("gone"), scratch.file("b", "routine \"b\"\n")},
      note_text);
  const ReadAhead::Place& first = ahead.next();
  EXPECT_EQ(text_of(first.sheet), "routine \"a\"\n");
  ASSERT_EQ(first.troubles.size(), 1u);
  EXPECT_EQ(first.troubles[0].what, scratch.path("gone"));
  const ReadAhead::Place& second = ahead.next();
  EXPECT_EQ(text_of(second.sheet), "routine \"b\"\n");
  EXPECT_TRUE(second.troubles.empty());
  EXPECT_TRUE(ahead.next().ended);
}

TEST(ReadAhead, ThrowsWhatTheWorkThrowsOnAnyThread) {
  if (std::thread::hardware_concurrency() < 2) GTEST_SKIP() << "one processor";
  const Scratch scratch;
  const std::thread::id here = std::this_thread::get_id();
  ReadAhead ahead({scratch.file("many", stream_of(1000))}, [&](StreamSheet&) {
    // Long enough for another thread to get its share.
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
    if (std::this_thread::get_id() != here) throw std::runtime_error("not here");
  });
  ahead.ahead();
  const auto read_all = [&] {
    for (int i = 0; i < 1000; ++i) ahead.next();
  };
  EXPECT_THROW(read_all(), std::runtime_error);
}

}  // namespace
}  // namespace landdrill
