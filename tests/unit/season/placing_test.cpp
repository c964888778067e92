// With which version of its routine a run or a panel stays when its sheet is changed and added again.
#include "engine/season/placing.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <filesystem>

#include "tables/folder.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill {
namespace {

using What = Block::What;

Block block(What what, const std::string& date, const std::string& text) {
  return {what, "Reed Song", "duet-free", date, "", text, 0};
}
// Versions of a routine; only the one with split-hold has an element 2.
const std::vector<std::string> parts = {"thrust-high", "spin-360", "split-hold"};
bool has_element_2(int version) {
  return version == 2;
}
Block routine(int version) {
  const std::string first = "routine \"Reed Song\"\nevent    duet-free\nvalues   kingfisher-2026\n\n";
  const std::string element = " hybrid\n  parts  " + parts.at(static_cast<std::size_t>(version)) + "\n";
  return block(What::routine, "",
               first + "element 1" + element + (has_element_2(version) ? "element 2" + element : ""));
}
// Words of a panel or run: 0 and 1 fit every version, 2 speaks of element 2.
bool fits(int words, int version) {
  return words < 2 || has_element_2(version);
}
Block panel(const std::string& date, int words) {
  const std::string marks[] = {"1: 7 7 7 7 7", "1: 8 8 8 8 8", "2: 7 7 7 7 7"};
  return block(What::panel, date, "panel " + date + "\n  element " + marks[words] + "\n");
}
Block run(const std::string& date, int words) {
  const std::string faults[] = {"1: bent-knee small", "1: clean", "2: clean"};
  return block(What::run, date, "run " + date + "\n  element " + faults[words] + "\n");
}

class PlacingBook {
 public:
  explicit PlacingBook(const std::string& file)
      : season_(std::move(*Season::open(file, Season::Mode::create))) {}

  // What is said of each block, and "+" after those that are not kept yet.
  std::string add(std::vector<Block> blocks) {
    static const std::vector<TableFiles> sets = {
        *read_folder(std::filesystem::path(SHIPPED_SETS) / "kingfisher-2026")};
    Placing placing(book_, sets);
    EXPECT_TRUE(placing.read());
    const std::vector<Placed> placed = placing.place(std::move(blocks)).value();
    std::vector<Block> all;
    for (const Placed& one : placed) all.push_back(one.block);
    const std::vector<AddedBlock> added = book_.add(all, sets).value();
    std::string told;
    for (std::size_t i = 0; i < placed.size(); ++i)
      told += (told.empty() ? "" : ", ") + said(placed[i]) +
              (added[i].did == AddedBlock::Did::already_there ? "" : "+");
    return told;
  }
  // "2026-05-09 of 1, ...": each panel (run) with the version that it belongs to (counts with).
  std::string kept(What what) const {
    BookWish wish;
    wish.what = what;
    std::string text;
    const auto found = book_.find(wish);
    for (const KeptBlock& one : *found)
      text += (text.empty() ? "" : ", ") + one.date + " of " + std::to_string(one.of_version);
    return text;
  }
  std::string panel_text(const std::string& date) const {
    BookWish wish;
    wish.what = What::panel;
    wish.from = wish.until = date;
    return *book_.text(book_.find(wish)->front().id);
  }
  // What the first version has below its routine.
  std::string first_sheet() const {
    BookWish wish;
    wish.what = What::routine;
    wish.all_versions = true;
    const std::string sheet = *book_.sheet(book_.find(wish)->front().id);
    return sheet.substr(sheet.find("\n\nrun") + 2);
  }

 private:
  static std::string said(const Placed& placed) {
    const std::string version = " " + std::to_string(placed.version);
    switch (placed.why) {
      case Placed::Why::as_given:
        return "as given";
      case Placed::Why::same_words:
        return "same words";
      case Placed::Why::stays:
        return "stays" + version;
      case Placed::Why::moves:
        return "moves" + version;
      case Placed::Why::corrected:
        return "corrected" + version;
      case Placed::Why::left:
        return "left" + version;
    }
    return "?";
  }

  Season season_;
  Book book_{season_};
};

class PlacingTest : public testing::Test {
 protected:
  test::Scratch scratch_;
  PlacingBook book_{scratch_.path("club.season")};
};

const std::string may = "2026-05-09", june = "2026-06-06";

TEST_F(PlacingTest, APanelInNewWordsStaysWithTheVersionThatItSaw) {
  EXPECT_EQ(book_.add({routine(0), panel(may, 0)}), "as given+, as given+");
  EXPECT_EQ(book_.add({routine(1), panel(may, 0)}), "as given+, as given");
  EXPECT_EQ(book_.add({routine(1), panel(may, 1), panel(june, 1)}), "same words, stays 1+, as given+");
  EXPECT_EQ(book_.kept(What::panel), "2026-05-09 of 1, 2026-06-06 of 2");
  EXPECT_EQ(book_.panel_text(may), panel(may, 1).text);
}

TEST_F(PlacingTest, ItBelongsToTheRoutineAboveItWhenItsNewWordsDoNotFitTheOldOne) {
  book_.add({routine(0), panel(may, 0)});
  EXPECT_EQ(book_.add({routine(2), panel(may, 2)}), "as given+, moves 1+");
  EXPECT_EQ(book_.kept(What::panel), "2026-05-09 of 2");
}

TEST_F(PlacingTest, ACorrectedRunIsKeptWithTheVersionThatItCountsWithToo) {
  book_.add({routine(0), run(may, 0)});
  book_.add({routine(1), run(may, 0)});
  EXPECT_EQ(book_.add({routine(1), run(may, 1)}), "same words, corrected 1+, as given+");
  EXPECT_EQ(book_.kept(What::run), "2026-05-09 of 1");
  EXPECT_EQ(book_.first_sheet(), run(may, 1).text);
  EXPECT_EQ(book_.add({routine(1), run(may, 1)}), "same words, as given");
}

TEST_F(PlacingTest, ARunWrittenAnewForAChangedRoutineIsNoCorrectionOfTheOldOne) {
  book_.add({routine(2), run(may, 2)});
  EXPECT_EQ(book_.add({routine(0), run(may, 1)}), "as given+, as given+");
  EXPECT_EQ(book_.first_sheet(), run(may, 2).text);
}

// What the book should hold, worked out from the rule alone.
struct Model {
  std::vector<int> versions;
  std::map<std::string, std::pair<int, std::size_t>> panels;  // words, and the number of the version

  void add(int version, const std::map<std::string, int>& sheet) {
    if (versions.empty() || versions.back() != version) versions.push_back(version);
    for (const auto& [date, words] : sheet) {
      const auto [kept, is_new] = panels.try_emplace(date, words, versions.size());
      if (is_new || kept->second.first == words) continue;
      const bool stays = fits(words, versions[kept->second.second - 1]);
      kept->second = {words, stays ? kept->second.second : versions.size()};
    }
  }
};

TEST_F(PlacingTest, WhateverIsAddedAPanelMovesOnlyWhenItsNewWordsDoNotFitTheVersionThatItSaw) {
  int number = 0;
  const bool holds = rc::check([&] {
    PlacingBook book(scratch_.path(std::to_string(++number) + ".season"));
    Model model;
    const int adds = *rc::gen::inRange(1, 6);
    for (int i = 0; i < adds; ++i) {
      const int version = *rc::gen::inRange(0, 3);
      std::map<std::string, int> sheet;
      std::vector<Block> blocks = {routine(version)};
      for (const std::string& date : {may, june}) {
        const int words = *rc::gen::inRange(0, 4);
        if (words == 3 || !fits(words, version)) continue;
        sheet[date] = words;
        blocks.push_back(panel(date, words));
      }
      book.add(blocks);
      model.add(version, sheet);
      RC_ASSERT(book.add(blocks).find('+') == std::string::npos);
    }
    std::string expected;
    for (const auto& [date, kept] : model.panels) {
      expected += (expected.empty() ? "" : ", ") + date + " of " + std::to_string(kept.second);
      RC_ASSERT(book.panel_text(date) == panel(date, kept.first).text);
    }
    RC_ASSERT(book.kept(What::panel) == expected);
  });
  EXPECT_TRUE(holds);
}

}  // namespace
}  // namespace landdrill
