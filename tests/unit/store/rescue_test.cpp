// A damaged book: damage that the file's structure does not show is found, and what can be read is given.
#include "scene.h"
#include "tables/store/book.h"
#include "tables/store/database.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using What = Block::What;

constexpr std::size_t page = 4096;

// Texts of several pages, each page of them with the text's letter all over it.
std::string long_text(const std::string& first, char letter) {
  return first + "\n" + std::string(3 * page, letter) + "\n";
}

class RescueTest : public SeasonTest {
 protected:
  RescueTest() {
    Season season = open(Mode::create);
    Book book(season);
    const auto block = [](What what, const std::string& date, const std::string& text) {
      return Block{what, "Low Water", "solo-free", date, "", text, 0};
    };
    EXPECT_EQ(trouble_in(book.add({block(What::routine, "", long_text("routine", 'r')),
                                   block(What::panel, "2026-05-09", long_text("panel 2026-05-09", 'p')),
                                   block(What::panel, "2026-06-13", "panel 2026-06-13\n")},
                                  {odd_set()})),
              "");
    whole = bytes_on_disk();
  }
  // The last page on which `letters` stand, zeroed from there on or the whole of it.
  void zero_page_of(const std::string& letters) const {
    std::string damaged = whole;
    const std::size_t at = damaged.rfind(letters) / page * page;
    damaged.replace(at, page, page, '\0');
    write_file(damaged);
  }
  std::string check() const { return trouble_in(open(Mode::read).check()); }
  std::string saved() const {
    const auto rescued = Book(season_to_read()).rescue();
    if (!rescued) return trouble_in(rescued);
    std::string text;
    for (const std::string& sheet : rescued->sheets) text += first_lines(sheet) + "\n";
    for (const std::string& lost : rescued->lost) text += "lost: " + lost + "\n";
    return text;
  }
  // Without the long lines.
  static std::string first_lines(const std::string& sheet) {
    std::string text;
    for (std::size_t at = 0; at < sheet.size();) {
      const std::size_t end = std::min(sheet.find('\n', at), sheet.size());
      if (end > at && end - at < 100) text += (text.empty() ? "" : "; ") + sheet.substr(at, end - at);
      at = end + 1;
    }
    return text;
  }
  Season& season_to_read() const {
    static std::optional<Season> season;
    season.emplace(open(Mode::read));
    return *season;
  }
  std::string whole;
};

TEST_F(RescueTest, AWholeBookIsGivenWhole) {
  EXPECT_EQ(check(), "");
  EXPECT_EQ(saved(), "routine; panel 2026-05-09; panel 2026-06-13\n");
}

TEST_F(RescueTest, AZeroedPageInsideATextIsFoundAndTheRestGiven) {
  zero_page_of("pppp");
  EXPECT_NE(check().find("the panel 2026-05-09 of Low Water"), std::string::npos) << check();
  EXPECT_EQ(saved(), "routine; panel 2026-06-13\nlost: the panel 2026-05-09 of Low Water\n");
  Season season = open(Mode::read);
  const auto sheet = Book(season).sheet(1);
  EXPECT_NE(trouble_in(sheet).find("no longer what was kept"), std::string::npos);
}

TEST_F(RescueTest, ATextThatIsNotSoundIsNotGivenAndTheBookSaysWhoseItIs) {
  zero_page_of("pppp");
  Season season = open(Mode::read);
  const Book book(season);
  EXPECT_TRUE(book.text(1));
  EXPECT_TRUE(book.text(3));
  EXPECT_EQ(book.text(2).error().why,
            "the file is damaged (no longer what was kept: the panel 2026-05-09 of Low Water)");
}

TEST_F(RescueTest, PanelsOfARoutineThatIsLostAreGivenAsComments) {
  zero_page_of("rrrr");
  EXPECT_EQ(saved(),
            "# These belong to a version of Low Water that cannot be read.; # panel 2026-05-09; # panel "
            "2026-06-13\n"
            "lost: the routine Low Water\n");
}

TEST_F(RescueTest, AZeroedPageOfAnEditionIsFound) {
  Season season = open(Mode::write);
  TableFiles edition = odd_set();
  edition.files.push_back({"notes.csv", long_text("title", 'n')});
  ASSERT_EQ(trouble_in(Book(season).add({{What::routine, "High Water", "solo-free", "", "", "routine\n", 0}},
                                        {edition})),
            "");
  std::string damaged = bytes_on_disk();
  const std::size_t at = damaged.rfind("nnnn") / page * page;
  damaged.replace(at, page, page, '\0');
  write_file(damaged);
  EXPECT_NE(check().find("notes.csv of the edition of tarn-pool"), std::string::npos) << check();
  EXPECT_NE(trouble_in(Book(season_to_read()).edition(2)).find("no longer what was kept"), std::string::npos);
}

TEST_F(RescueTest, WhateverPageIsZeroedItIsSaidOrEverythingIsStillThere) {
  const std::string everything = saved();
  int damaged_pages = 0, saved_something = 0;
  for (std::size_t at = page; at < whole.size(); at += page) {
    std::string damaged = whole;
    damaged.replace(at, page, page, '\0');
    write_file(damaged);
    const Result<Season> season = Season::open(file, Mode::read);
    if (!season) continue;
    const bool found = !season->check();
    const std::string text = saved();
    EXPECT_TRUE(found || text == everything) << at / page << ": " << text;
    damaged_pages += found ? 1 : 0;
    saved_something += found && text.find("panel") != std::string::npos ? 1 : 0;
  }
  EXPECT_GT(damaged_pages, 10);
  EXPECT_GT(saved_something, 10);
}

}  // namespace
}  // namespace landdrill
