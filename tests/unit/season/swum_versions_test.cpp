// Which version of a routine a panel saw, when the sheet was changed and added again.
#include "engine/season/swum_versions.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "tables/folder.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill {
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
  // "1: (run 2026-03-01) panel 2026-04-11 of 7; 2: ..."; in brackets a run that the wish does not find or
  // that an earlier version had first.
  std::string swum(const BookWish& wish = {}) {
    std::string text;
    for (const std::string& one : told(wish, words)) text += (text.empty() ? "" : "; ") + one;
    return text;
  }
  // What `tell` says of each version.
  std::vector<std::string> told(const BookWish& wish, std::string (*tell)(const Swum&)) {
    AsSwum kept(book_, wish);
    std::vector<std::string> all;
    const auto take = [&](const KeptBlock&, std::string one) { all.push_back(std::move(one)); };
    const auto complain = [&](const Diagnostics&) { all.push_back("in error"); };
    if (!kept.for_each(tell, take, complain)) return {"refused"};
    EXPECT_EQ(kept.found(), !all.empty());
    return all;
  }

 private:
  static std::string words(const Swum& one) {
    const std::optional<Routine>& routine = one.kept.sheet.routine();
    std::string text = std::to_string(one.kept.routine.version) + ":";
    for (std::size_t i = 0; i < routine->runs.size(); ++i) {
      const std::string run = "run " + std::string(routine->runs[i].date);
      text += one.runs[i] ? " " + run : " (" + run + ")";
    }
    for (const RecordedPanel& seen : routine->panels)
      text += " panel " + std::string(seen.date) + " of " + seen.elements.front().marks.front()->text();
    return text;
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
  const std::vector<std::string> texts =
      told({}, [](const Swum& one) { return std::string(one.kept.sheet.sources().front().text); });
  ASSERT_EQ(texts.size(), 2u);
  EXPECT_NE(texts[0].find("travel large"), std::string::npos);
  EXPECT_NE(texts[1].find("bent-knee large"), std::string::npos);
}

TEST_F(AsSwumTest, OfWhatTheWishDoesNotFindRunsAreThereAndDoNotCount) {
  add({routine(hard), run("2026-03-31", "travel large"), panel("2026-04-11", sevens),
       panel("2026-05-09", eights)});
  BookWish wish;
  wish.from = "2026-05-01";
  EXPECT_EQ(swum(wish), "1: (run 2026-03-31) panel 2026-05-09 of 8");
  wish.from = "2026-06-01";
  EXPECT_EQ(swum(wish), "");
}

TEST_F(AsSwumTest, AVersionThatNothingWasSwumOfIsLeftOut) {
  add({routine(hard)});
  add({routine(easy), panel("2026-06-13", eights)});
  EXPECT_EQ(swum(), "2: panel 2026-06-13 of 8");
}

// Together longer than what is held ahead of its turn.
TEST_F(AsSwumTest, VersionsWithManyPanelsComeInTheirOrder) {
  std::vector<std::string> expected;
  for (int year = 2000; year < 2008; ++year) {
    std::vector<Block> blocks = {routine(year % 2 == 0 ? easy : hard)};
    for (int day = 0; day < 28 * 12; ++day)
      blocks.push_back(panel(fmt::format("{}-{:02}-{:02}", year, 1 + day / 28, 1 + day % 28),
                             sevens + "  # " + std::string(2000, '-')));
    add(blocks);
    expected.push_back(fmt::format("336 from {}-01-01", year));
  }
  const auto panels = [](const Swum& one) {
    const std::vector<RecordedPanel>& all = one.kept.sheet.routine()->panels;
    return fmt::format("{} from {}", all.size(), all.front().date);
  };
  EXPECT_EQ(told({}, panels), expected);
}

}  // namespace
}  // namespace landdrill
