// Which version of a routine a panel saw, when the sheet was changed and added again.
#include "engine/cli/as_swum.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "scratch.h"
#include "tables/folder.h"

namespace landdrill::cli {
namespace {

using What = Block::What;

Block block(What what, const std::string& date, const std::string& text) {
  return {what, "Reed Song", "duet-free", date, "", text, 0};
}
Block routine(const std::string& parts, const std::string& more = {}) {
  return block(What::routine, "",
               "routine \"Reed Song\"\nevent    duet-free\nvalues   kingfisher-2026\n\nelement 1 hybrid\n"
               "  parts  " +
                   parts + "\n" + more);
}
Block panel(const std::string& date, const std::string& marks, const std::string& more = {}) {
  return block(What::panel, date, "panel " + date + "\n  element 1: " + marks + "\n" + more);
}
Block run(const std::string& date, const std::string& faults) {
  return block(What::run, date, "run " + date + "\n  element 1: " + faults + "\n");
}
const std::string hard = "thrust-high, spin-720, split-hold", easy = "thrust-high, spin-360, split-hold";
const std::string sevens = "7 7 7 7 7", eights = "8 8 8 8 8";

class AsSwumTest : public testing::Test {
 protected:
  AsSwumTest()
      : season_(std::move(*Season::open(scratch_.path("club.season"), Season::Mode::create))),
        book_(season_) {}

  void add(const std::vector<Block>& blocks) {
    static const TableFiles set = *read_folder(std::filesystem::path(SHIPPED_SETS) / "kingfisher-2026");
    ASSERT_TRUE(book_.add(blocks, {set}));
  }
  // "1: run 2026-03-01, panel 2026-04-11 (7); 2: ..."; in brackets what the wish does not find or an earlier
  // version had first.
  std::string swum(const BookWish& wish = {}) {
    AsSwum kept(book_);
    std::string text;
    const auto all = kept.read(wish);
    if (!all) return all.error().why;
    for (const Swum& one : *all) text += (text.empty() ? "" : "; ") + words(one);
    return text;
  }

  const Book& book() const { return book_; }

 private:
  static std::string words(const Swum& one) {
    const std::optional<Routine>& routine = one.kept->sheet.routine();
    std::string text = std::to_string(one.kept->routine.version) + ":";
    if (!routine) return text + " in error";
    for (std::size_t i = 0; i < routine->runs.size(); ++i)
      text += named(one.runs[i], "run " + std::string(routine->runs[i].date));
    for (std::size_t i = 0; i < routine->panels.size(); ++i) {
      const RecordedPanel& seen = routine->panels[i];
      text += named(one.panels[i],
                    "panel " + std::string(seen.date) + " of " + seen.elements.front().marks.front()->text());
    }
    return text;
  }
  static std::string named(bool counts, const std::string& name) {
    return counts ? " " + name : " (" + name + ")";
  }

  test::Scratch scratch_;
  Season season_;
  Book book_;
};

TEST_F(AsSwumTest, APanelStaysWithTheVersionItCameWith) {
  add({routine(hard), panel("2026-04-11", sevens)});
  add({routine(easy), panel("2026-04-11", sevens), panel("2026-06-13", eights)});
  EXPECT_EQ(swum(), "1: panel 2026-04-11 of 7; 2: panel 2026-06-13 of 8");
}

TEST_F(AsSwumTest, APanelInNewWordsBelongsToTheVersionBesideThem) {
  add({routine(hard), panel("2026-04-11", sevens)});
  add({routine(easy, "element 2 lift\n  parts  stand-feet, rise-high\n"),
       panel("2026-04-11", eights, "  element 2: 8 8 8 8 8\n")});
  EXPECT_EQ(swum(), "2: panel 2026-04-11 of 8");
}

TEST_F(AsSwumTest, ACorrectedMarkBesideTheOldVersionCountsWithThat) {
  add({routine(hard), panel("2026-04-11", sevens)});
  add({routine(hard), panel("2026-04-11", eights), routine(easy)});
  EXPECT_EQ(swum(), "1: panel 2026-04-11 of 8");
}

TEST_F(AsSwumTest, OlderRunsOfTheSheetAreThereButCountOnce) {
  add({routine(hard), run("2026-03-31", "travel large"), panel("2026-04-11", sevens)});
  add({routine(easy), run("2026-03-31", "travel large"), panel("2026-06-13", eights)});
  EXPECT_EQ(swum(), "1: run 2026-03-31 panel 2026-04-11 of 7; 2: (run 2026-03-31) panel 2026-06-13 of 8");
}

TEST_F(AsSwumTest, AnOlderVersionKeepsItsOwnWordingOfARun) {
  add({routine(hard), run("2026-03-31", "travel large"), panel("2026-04-11", sevens)});
  add({routine(easy), run("2026-03-31", "bent-knee large"), panel("2026-06-13", eights)});
  AsSwum kept(book());
  const auto all = kept.read({});
  ASSERT_TRUE(all);
  EXPECT_NE((*all)[0].kept->text.find("travel large"), std::string::npos);
  EXPECT_NE((*all)[1].kept->text.find("bent-knee large"), std::string::npos);
}

TEST_F(AsSwumTest, WhatTheWishDoesNotFindDoesNotCount) {
  add({routine(hard), run("2026-03-31", "travel large"), panel("2026-04-11", sevens),
       panel("2026-05-09", eights)});
  BookWish wish;
  wish.from = "2026-05-01";
  EXPECT_EQ(swum(wish), "1: (run 2026-03-31) (panel 2026-04-11 of 7) panel 2026-05-09 of 8");
  wish.from = "2026-06-01";
  EXPECT_EQ(swum(wish), "");
}

TEST_F(AsSwumTest, AVersionThatNothingWasSwumOfIsLeftOut) {
  add({routine(hard)});
  add({routine(easy), panel("2026-06-13", eights)});
  EXPECT_EQ(swum(), "2: panel 2026-06-13 of 8");
}

}  // namespace
}  // namespace landdrill::cli
