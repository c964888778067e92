// Season files of versions 2 and 3 are brought to the present version: a panel that version 3 moved to a
// changed routine goes back to the version it was first kept with, and practice that was done with it stays
// practice.
#include "scene.h"
#include "tables/store/book.h"
#include "tables/store/database.h"
#include "tables/store/practice_book.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using What = Block::What;
using store::Database;

// Low Water was changed once. The panel of May came again with it and was moved (4), then a mark was
// corrected (5) and the sheet added again for the routine of summer (6, 7). Robin practised with the moved
// one.
const char* const book_of_version_3 = R"sql(
  INSERT INTO edition (id, name, kept_at) VALUES (1, 'tarn-pool', '2026-04-01T08:00:00Z');
  INSERT INTO edition_file (edition_id, position, file, text) VALUES (1, 0, 'set.csv', 'title\nTarn Pool\n');
  INSERT INTO routine (id, title, event) VALUES (1, 'Low Water', 'solo-free');
  INSERT INTO block (id, routine_id, what, date, title, version, of_routine, edition_id, kept_at, text) VALUES
    (1, 1, 'routine', '', '', 1, NULL, 1, '2026-05-10T08:00:00Z', 'routine "Low Water" # spring'),
    (2, 1, 'panel', '2026-05-09', 'Tarn Open', 1, 1, 1, '2026-05-10T08:00:00Z', 'first words'),
    (3, 1, 'routine', '', '', 2, NULL, 1, '2026-06-01T08:00:00Z', 'routine "Low Water" # summer'),
    (4, 1, 'panel', '2026-05-09', 'Tarn Open', 2, 3, 1, '2026-06-01T08:00:00Z', 'first words'),
    (5, 1, 'panel', '2026-05-09', 'Tarn Open', 3, 3, 1, '2026-06-02T08:00:00Z', 'corrected'),
    (6, 1, 'routine', '', '', 3, NULL, 1, '2026-07-01T08:00:00Z', 'routine "Low Water" # late summer'),
    (7, 1, 'panel', '2026-05-09', 'Tarn Open', 4, 6, 1, '2026-07-01T08:00:00Z', 'corrected'),
    (8, 1, 'panel', '2026-06-13', 'Osier Shield', 1, 6, 1, '2026-07-01T08:00:00Z', 'another'),
    (9, 1, 'run', '2026-06-30', '', 1, 3, 1, '2026-07-01T08:00:00Z', 'run'),
    (10, 1, 'run', '2026-06-30', '', 2, 6, 1, '2026-07-01T08:00:00Z', 'run');
  INSERT INTO practice (id, trainee, started_at, finished_at) VALUES
    (1, 'Robin', '2026-06-01T18:00:00Z', '2026-06-01T18:10:00Z');
  INSERT INTO practice_line (practice_id, position, block_id, line, did, mark) VALUES
    (1, 0, 4, '1', 'marked', '7.25'), (1, 1, 8, '1', 'marked', '7');
)sql";

class OldBook : public SeasonTest {
 protected:
  void make(std::int64_t version) const {
    Database db(file, Database::Access::create);
    db.run(text_of(STORE_SOURCE "/schema.sql").c_str());
    if (version == 2) return db.run("PRAGMA user_version = 2");
    db.run(text_of(STORE_SOURCE "/book.sql").c_str());
    db.run(book_of_version_3);
  }
  std::string panels(Mode mode) const {
    Season season = open(mode);
    BookWish wish;
    wish.what = What::panel;
    wish.all_versions = true;
    std::string text;
    const Book book(season);
    const auto found = book.find(wish);
    if (!found) return trouble_in(found);
    for (const KeptBlock& one : *found)
      text += one.date + " " + std::to_string(one.version) + "/" + std::to_string(one.versions) + " of " +
              std::to_string(one.of_version) + ": " + *book.text(one.id) + "\n";
    return text;
  }
  std::string version() const {
    return std::to_string(Database(file, Database::Access::read).number("PRAGMA user_version"));
  }
};

constexpr const char* panels_afterwards =
    "2026-05-09 1/2 of 1: first words\n2026-05-09 2/2 of 2: corrected\n2026-06-13 1/1 of 3: another\n";

TEST_F(OldBook, APanelThatWasMovedGoesBackAndNoWordsAreLost) {
  make(3);
  EXPECT_EQ(panels(Mode::write), panels_afterwards);
  EXPECT_EQ(version(), "5");
  EXPECT_EQ(trouble_in(open(Mode::read).check()), "");
}

TEST_F(OldBook, IsReadInTheSameWayWithoutBeingChanged) {
  make(3);
  const std::string before = bytes_on_disk();
  EXPECT_EQ(panels(Mode::read), panels_afterwards);
  EXPECT_EQ(bytes_on_disk(), before);
}

TEST_F(OldBook, PracticeWithAMovedPanelIsPracticeWithTheFirst) {
  make(3);
  Season season = open(Mode::write);
  const auto sessions = PracticeBook(season).finished("Robin");
  ASSERT_EQ(trouble_in(sessions), "");
  ASSERT_EQ(sessions->size(), 1u);
  EXPECT_EQ(sessions->front().lines[0].block, 2);
  EXPECT_EQ(sessions->front().lines[1].block, 8);
  EXPECT_EQ(sessions->front().marks[0].mark->text(), "7.25");
}

TEST_F(OldBook, ARunStaysWithEachVersionThatHadIt) {
  make(3);
  Season season = open(Mode::write);
  const Book book(season);
  EXPECT_EQ(*book.sheet(3), "routine \"Low Water\" # summer\nrun\ncorrected");
  EXPECT_EQ(*book.sheet(6), "routine \"Low Water\" # late summer\nrun\nanother");
}

TEST_F(OldBook, EveryTextHasItsChecksumAfterwards) {
  make(3);
  open(Mode::write);
  Database db(file, Database::Access::read);
  EXPECT_EQ(db.number("SELECT count(*) FROM block WHERE checksum IS NOT checksum_of(text)"), 0);
  EXPECT_EQ(db.number("SELECT count(*) FROM edition_file WHERE checksum IS NOT checksum_of(text)"), 0);
  EXPECT_EQ(db.number("SELECT checksum FROM block WHERE id = 8") != 0, true);
}

TEST_F(OldBook, AFileOfVersion2BecomesABook) {
  make(2);
  Season season = open(Mode::write);
  EXPECT_EQ(version(), "5");
  Book book(season);
  EXPECT_EQ(
      trouble_in(book.add({{What::routine, "Low Water", "solo-free", "", "", "routine \"Low Water\"\n", 0}},
                          {odd_set()})),
      "");
}

}  // namespace
}  // namespace landdrill
