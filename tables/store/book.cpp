#include "tables/store/book.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <utility>

#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/keep_blocks.h"
#include "tables/store/kept_blocks.h"
#include "tables/store/refusal.h"
#include "tables/store/rescue.h"
#include "tables/store/season.h"
#include "tables/store/swum_blocks.h"

namespace landdrill {

using namespace store;

namespace {

// Of all that a run was called, the latest words beside this version of the routine, in the order of a sheet.
constexpr std::string_view latest_runs =
    "SELECT id, text, checksum FROM block b WHERE id IN (SELECT id FROM block WHERE what = 'run' AND "
    "routine_id = (SELECT routine_id FROM block WHERE id = ?1)) AND of_routine = ?1 AND version = "
    "(SELECT max(v.version) FROM block v WHERE v.routine_id = b.routine_id AND v.what = 'run' AND "
    "v.date = b.date AND v.title = b.title AND v.of_routine = ?1) ORDER BY date, title";

// Of panels the words beside other versions too.
constexpr std::string_view all_words_of_version =
    "SELECT b.id, b.text, b.checksum, b.of_routine, b.what || '/' || b.date || '/' || b.title FROM block r "
    "JOIN block b ON b.routine_id = r.routine_id WHERE r.id = ?1 AND (b.what = 'panel' OR b.of_routine = ?1) "
    "ORDER BY b.what = 'panel', b.date, b.title, b.version";

constexpr std::string_view text_of_block = "SELECT id, text, checksum FROM block WHERE id = ?";

// Given a row of id, text and checksum.
StoredText stored_text(const Statement& row) {
  StoredText stored{row.number(0), row.text(1), std::nullopt};
  if (!row.is_null(2)) stored.checksum = row.number(2);
  return stored;
}

Trouble damage_of(Database& db, std::int64_t block) {
  return changed_texts(db.file(), name_of_entry(db, block));
}

std::string sound_text(Database& db, const Statement& row) {
  StoredText stored = stored_text(row);
  if (!stored.sound()) throw Refused(damage_of(db, stored.id), SQLITE_CORRUPT);
  return std::move(stored.text);
}

void look_up(Database& db, Statement& row, std::int64_t block) {
  row.start(block);
  if (!row.next())
    throw Refused({db.file(), fmt::format("it has no entry {}", block), "look it up in the list"});
}

std::string block_text(Database& db, std::int64_t block) {
  Statement row(db, text_of_block);
  look_up(db, row, block);
  return sound_text(db, row);
}

std::string sheet_of(Database& db, std::int64_t routine, bool with_panels) {
  Transaction transaction(db, Transaction::Kind::read);
  std::string sheet = block_text(db, routine);
  Statement runs(db, latest_runs, routine);
  while (runs.next()) sheet.append("\n").append(sound_text(db, runs));
  if (!with_panels) return sheet;
  const std::int64_t version[] = {routine};
  const std::vector<SwumWith> swum = swum_blocks(db, version, {});
  for (const std::int64_t panel : swum.front().panels) sheet.append("\n").append(block_text(db, panel));
  return sheet;
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

struct Book::Hold::Inside {
  Transaction transaction;
};

Book::Hold::Hold(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Book::Hold::Hold(Hold&&) noexcept = default;
Book::Hold& Book::Hold::operator=(Hold&&) noexcept = default;
Book::Hold::~Hold() = default;

Result<void> Book::Hold::commit() {
  return attempt([&] { inside_->transaction.commit(); });
}

Result<Book::Hold> Book::hold() {
  return attempt([&] {
    Database& db = *season_.db_;
    db.be_patient(true);
    auto inside = std::unique_ptr<Hold::Inside>(new Hold::Inside{{db, Transaction::Kind::write}});
    db.be_patient(false);
    return Hold(std::move(inside));
  });
}

Result<std::vector<AddedBlock>> Book::add(const std::vector<Block>& blocks,
                                          const std::vector<TableFiles>& editions) {
  return attempt([&] {
    Database& db = *season_.db_;
    Transaction transaction(db, Transaction::Kind::write);
    std::vector<AddedBlock> added = KeepingBlocks(db, editions).keep(blocks);
    transaction.commit();
    return added;
  });
}

Result<std::vector<KeptBlock>> Book::find(const BookWish& wish) const {
  return attempt([&] {
    Transaction transaction(*season_.db_, Transaction::Kind::read);
    return find_blocks(*season_.db_, wish);
  });
}

Result<std::string> Book::text(std::int64_t block) const {
  return attempt([&] { return block_text(*season_.db_, block); });
}

Result<std::string> Book::sheet(std::int64_t routine) const {
  return attempt([&] { return sheet_of(*season_.db_, routine, true); });
}

Result<std::string> Book::sheet_without_panels(std::int64_t routine) const {
  return attempt([&] { return sheet_of(*season_.db_, routine, false); });
}

Result<std::vector<SwumWith>> Book::swum(std::span<const std::int64_t> versions, const BookWish& wish) const {
  return attempt([&] {
    Transaction transaction(*season_.db_, Transaction::Kind::read);
    return swum_blocks(*season_.db_, versions, wish);
  });
}

Result<std::vector<StoredText>> Book::stored(std::span<const std::int64_t> entries,
                                             std::size_t enough) const {
  return attempt([&] {
    Database& db = *season_.db_;
    Transaction transaction(db, Transaction::Kind::read);
    Statement row(db, text_of_block);
    std::vector<StoredText> texts;
    std::size_t bytes = 0;
    for (const std::int64_t entry : entries) {
      if (!texts.empty() && bytes >= enough) break;
      look_up(db, row, entry);
      bytes += texts.emplace_back(stored_text(row)).text.size();
    }
    return texts;
  });
}

Trouble Book::damaged(std::int64_t entry) const {
  const auto told = attempt([&] { return damage_of(*season_.db_, entry); });
  return told ? *told : told.error();
}

Result<std::vector<std::string>> Book::sheets_of_all_words(std::int64_t routine) const {
  return attempt([&] {
    Database& db = *season_.db_;
    Transaction transaction(db, Transaction::Kind::read);
    TellingAllWords telling(routine, block_text(db, routine));
    Statement rows(db, all_words_of_version, routine);
    while (rows.next()) telling.take(rows.text(4), rows.number(3), sound_text(db, rows));
    return telling.sheets();
  });
}

Result<std::vector<KeptEdition>> Book::editions() const {
  return attempt([&] {
    Transaction transaction(*season_.db_, Transaction::Kind::read);
    return kept_editions(*season_.db_);
  });
}

Result<TableFiles> Book::edition(std::int64_t edition) const {
  return attempt([&] {
    Database& db = *season_.db_;
    Transaction transaction(db, Transaction::Kind::read);
    Statement row(db, "SELECT name FROM edition WHERE id = ?", edition);
    if (!row.next())
      throw Refused({db.file(), fmt::format("it has no edition {}", edition), "look it up in the list"});
    return TableFiles{row.text(0), db.file() + "/" + row.text(0) + "/", files_of_edition(db, edition)};
  });
}

Result<Rescued> Book::rescue() const {
  return attempt([&] { return store::rescue(*season_.db_); });
}

Result<void> Book::back_up(const std::filesystem::path& to) const {
  return attempt([&] {
    if (std::filesystem::exists(to))
      throw Refused({to.string(), "there is a file of this name already", "name a new file for the backup"});
    refuse_unless_makeable(to);
    try {
      Database copy(to, Database::Access::create);
      copy.copy_from(*season_.db_);
      refuse_damaged(copy);
    } catch (const Refused&) {
      std::error_code ignored;
      std::filesystem::remove(to, ignored);  // what is no backup is not taken for one
      refuse_damaged(*season_.db_);          // and it is the book that has to be looked at
      throw;
    }
  });
}

Result<void> Book::restore(const std::filesystem::path& backup) {
  return attempt([&] {
    std::error_code not_there;
    if (std::filesystem::equivalent(season_.db_->file(), backup, not_there))
      throw Refused({backup.string(), "it is the season file itself", "name the backup"});
    Database kept = open_season_file(backup, Database::Access::read);
    refuse_damaged(kept);
    season_.db_->copy_from(kept);
  });
}

}  // namespace landdrill
