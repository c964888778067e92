#include "tables/store/book.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <utility>

#include "tables/store/checksum.h"
#include "tables/store/editions.h"
#include "tables/store/find_blocks.h"
#include "tables/store/keep_blocks.h"
#include "tables/store/rescue.h"
#include "tables/store/season_file.h"
#include "tables/store/season_inside.h"
#include "tables/store/wordings.h"

namespace landdrill {

using namespace store;

namespace {

constexpr std::string_view words_of_what[] = {"routine", "run", "panel"};

// Of all that a run or a panel was called, the words that count: of a run the latest beside this version of
// the routine, of a panel the latest of all.
constexpr std::string_view latest_words_of_version =
    "SELECT id, text, checksum, what = 'panel' FROM block b WHERE of_routine = ?1 AND version = (SELECT "
    "max(v.version) FROM "
    "block v "
    "WHERE v.routine_id = b.routine_id AND v.what = b.what AND v.date = b.date AND v.title = b.title "
    "AND (b.what = 'panel' OR v.of_routine = ?1)) ORDER BY what = 'panel', date, title";

// Of panels the words beside other versions too.
constexpr std::string_view all_words_of_version =
    "SELECT b.id, b.text, b.checksum, b.of_routine, b.what || '/' || b.date || '/' || b.title FROM block r "
    "JOIN block b ON b.routine_id = r.routine_id WHERE r.id = ?1 AND (b.what = 'panel' OR b.of_routine = ?1) "
    "ORDER BY b.what = 'panel', b.date, b.title, b.version";

// Given a row of id, text and checksum.
std::string sound_text(Database& db, const Statement& row) {
  std::string text = row.text(1);
  if (row.is_null(2) || row.number(2) == checksum_of(text)) return text;
  throw Refused(changed_texts(db.file(), name_of_entry(db, row.number(0))), SQLITE_CORRUPT);
}

std::string text_of(Database& db, std::int64_t block) {
  Statement row(db, "SELECT id, text, checksum FROM block WHERE id = ?", block);
  if (!row.next())
    throw Refused({db.file(), fmt::format("it has no entry {}", block), "look it up in the list"});
  return sound_text(db, row);
}

// Sheets of a version of a routine: in each the next words of its runs and panels.
class TellingAllWords {
 public:
  TellingAllWords(std::int64_t version, std::string text) : version_(version), alone_(std::move(text)) {
    sheets_.push_back(alone_);
  }
  // Those of one name follow each other.
  void take(const std::string& name, std::int64_t home, std::string text) {
    if (name != name_) tell();
    name_ = name;
    homes_.push_back(home);
    texts_.push_back(std::move(text));
  }
  std::vector<std::string> sheets() {
    tell();
    return std::move(sheets_);
  }

 private:
  void tell() {
    std::vector<Wording> wordings;
    for (std::size_t i = 0; i < texts_.size(); ++i) wordings.push_back({homes_[i], texts_[i]});
    const std::vector<bool> told = wordings_to_tell(wordings);
    for (std::size_t i = 0, turn = 0; i < texts_.size(); ++i) {
      if (!told[i] || homes_[i] != version_) continue;
      if (turn == sheets_.size()) sheets_.push_back(alone_);
      sheets_[turn++] += "\n" + texts_[i];
    }
    homes_.clear();
    texts_.clear();
  }

  const std::int64_t version_;
  const std::string alone_;
  std::string name_;
  std::vector<std::int64_t> homes_;
  std::vector<std::string> texts_;
  std::vector<std::string> sheets_;
};

}  // namespace

std::string_view word_of(Block::What what) {
  return words_of_what[static_cast<std::size_t>(what)];
}

Result<std::vector<AddedBlock>> Book::add(const std::vector<Block>& blocks,
                                          const std::vector<TableFiles>& editions) {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::write);
    std::vector<AddedBlock> added = KeepingBlocks(db, editions).keep(blocks);
    transaction.commit();
    return added;
  });
}

Result<std::vector<KeptBlock>> Book::find(const BookWish& wish) const {
  return attempt([&] {
    Transaction transaction(season_.inside_->db, Transaction::Kind::read);
    return find_blocks(season_.inside_->db, wish);
  });
}

Result<std::string> Book::text(std::int64_t block) const {
  return attempt([&] { return text_of(season_.inside_->db, block); });
}

Result<SheetTexts> Book::texts(std::int64_t routine) const {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::read);
    SheetTexts texts{text_of(db, routine), {}, {}};
    Statement rows(db, latest_words_of_version, routine);
    while (rows.next()) (rows.number(3) == 0 ? texts.runs : texts.panels).push_back(sound_text(db, rows));
    return texts;
  });
}

Result<std::string> Book::sheet(std::int64_t routine) const {
  auto texts = this->texts(routine);
  if (!texts) return tl::unexpected(texts.error());
  std::string sheet = std::move(texts->routine);
  for (const auto& blocks : {texts->runs, texts->panels})
    for (const std::string& block : blocks) sheet.append("\n").append(block);
  return sheet;
}

Result<std::vector<std::string>> Book::sheets_of_all_words(std::int64_t routine) const {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::read);
    TellingAllWords telling(routine, text_of(db, routine));
    Statement rows(db, all_words_of_version, routine);
    while (rows.next()) telling.take(rows.text(4), rows.number(3), sound_text(db, rows));
    return telling.sheets();
  });
}

Result<std::vector<KeptEdition>> Book::editions() const {
  return attempt([&] {
    Transaction transaction(season_.inside_->db, Transaction::Kind::read);
    return kept_editions(season_.inside_->db);
  });
}

Result<TableFiles> Book::edition(std::int64_t edition) const {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::read);
    Statement row(db, "SELECT name FROM edition WHERE id = ?", edition);
    if (!row.next())
      throw Refused({db.file(), fmt::format("it has no edition {}", edition), "look it up in the list"});
    return TableFiles{row.text(0), db.file() + "/" + row.text(0) + "/", files_of_edition(db, edition)};
  });
}

Result<Rescued> Book::rescue() const {
  return attempt([&] { return store::rescue(season_.inside_->db); });
}

Result<void> Book::back_up(const std::filesystem::path& to) const {
  return attempt([&] {
    if (std::filesystem::exists(to))
      throw Refused({to.string(), "there is a file of this name already", "name a new file for the backup"});
    try {
      Database copy(to, Database::Access::create);
      copy.copy_from(season_.inside_->db);
      refuse_damaged(copy);
    } catch (const Refused&) {
      std::error_code ignored;
      std::filesystem::remove(to, ignored);  // what is no backup is not taken for one
      refuse_damaged(season_.inside_->db);   // and it is the book that has to be looked at
      throw;
    }
  });
}

Result<void> Book::restore(const std::filesystem::path& backup) {
  return attempt([&] {
    Database kept = open_season_file(backup, Season::Mode::read);
    refuse_damaged(kept);
    season_.inside_->db.copy_from(kept);
  });
}

}  // namespace landdrill
