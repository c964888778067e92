// Sheets worked on several at once and handed out one by one: nothing lost, nothing out of order.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <thread>

#include "engine/files/sheet_reader.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill {
namespace {

std::string sheet_called(std::string_view title, int empty_lines = 0) {
  return fmt::format("routine \"{}\"\nevent duet-free\nvalues kingfisher-2026\n{}", title,
                     std::string(static_cast<std::size_t>(empty_lines), '\n'));
}

std::string stream_of(int count) {
  std::string text;
  for (int i = 0; i < count; ++i) text += sheet_called(std::to_string(i), i % 50 * 10);
  return text;
}

std::string text_of(const StreamSheet& sheet) {
  std::string text;
  for (const Source& piece : sheet.sources()) text += piece.text;
  return text;
}

class ReadAhead : public testing::Test {
 protected:
  SheetReader reader(std::vector<std::string> files) {
    return SheetReader(std::move(files), sets_,
                       {[this](const Trouble& trouble) { troubles_.push_back(trouble.what); },
                        [](const ReadSet&) { ADD_FAILURE(); }});
  }

  const test::Scratch scratch_;
  SetFolders sets_{{SHIPPED_SETS}};
  std::vector<std::string> troubles_;
};

TEST_F(ReadAhead, HandsOutEverySheetInItsOrder) {
  const int count = 3000;
  SheetReader all = reader({scratch_.file("many", stream_of(count))});
  int ahead = 0;
  for (int i = 0; i < count; ++i) {
    ASSERT_TRUE(all.next()) << i;
    ASSERT_EQ(all.more(), i + 1 < count) << i;
    ASSERT_EQ(all.sheet().title(), std::to_string(i));
    // A copy, so that a text taken back too early shows.
    if (all.sheet().ahead) {
      ASSERT_EQ(all.sheet().ahead->line, text_of(all.sheet())) << i;
    }
    ahead += all.sheet().ahead.has_value();
    if (i == 0) all.read_ahead([](StreamSheet& sheet) { sheet.ahead = {text_of(sheet), {}}; });
  }
  EXPECT_FALSE(all.next());
  EXPECT_FALSE(all.next());
  EXPECT_EQ(ahead, count - 1);
}

TEST_F(ReadAhead, ReadsLessAheadWhenTheTextsAreLong) {
  std::string text, comments;
  for (int i = 0; i < 3000; ++i) comments += "# " + std::string(97, '-') + "\n";
  for (int i = 0; i < 64; ++i) text += sheet_called(std::to_string(i)) + comments;
  SheetReader all = reader({scratch_.file("long", text)});
  std::atomic<int> begun = 1;
  for (int i = 1; i <= 64; ++i) {
    ASSERT_TRUE(all.next());
    EXPECT_LE(begun, i + 1) << "more than two long sheets at once";
    if (i == 1) all.read_ahead([&](StreamSheet&) { ++begun; });
  }
  EXPECT_EQ(begun, 64);
}

TEST_F(ReadAhead, GivesATroubleWithTheSheetThatWasReadWhenItCame) {
  SheetReader all = reader(
      {scratch_.file("a", sheet_called("a")), scratch_.path("gone"), scratch_.file("b", sheet_called("b"))});
  ASSERT_TRUE(all.next());
  EXPECT_EQ(all.sheet().title(), "a");
  EXPECT_EQ(troubles_, std::vector<std::string>{scratch_.path("gone")});
  ASSERT_TRUE(all.next());
  EXPECT_EQ(all.sheet().title(), "b");
  EXPECT_EQ(troubles_.size(), 1u);
  EXPECT_FALSE(all.next());
}

TEST_F(ReadAhead, ThrowsWhatTheWorkThrowsOnAnyThread) {
  if (std::thread::hardware_concurrency() < 2) GTEST_SKIP() << "one processor";
  const std::thread::id here = std::this_thread::get_id();
  SheetReader all = reader({scratch_.file("many", stream_of(1000))});
  ASSERT_TRUE(all.next());
  all.read_ahead([&](StreamSheet&) {
    // Long enough for another thread to get its share.
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
    if (std::this_thread::get_id() != here) throw std::runtime_error("not here");
  });
  const auto read_all = [&] {
    while (all.next()) {
    }
  };
  EXPECT_THROW(read_all(), std::runtime_error);
}

}  // namespace
}  // namespace landdrill
