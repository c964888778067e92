#include "tables/store/book.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <utility>

#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"
#include "tables/store/kept_tables.h"
#include "tables/store/refusal.h"
#include "tables/store/season.h"

namespace landdrill {

using namespace store;

namespace {

// Of each run the latest words beside this version of the routine, of each panel the latest of all if they belong
// to it, in the order of a sheet.
constexpr std::string_view swum_of_version =
    "SELECT id, text, checksum FROM block b WHERE of_routine = ?1 AND (?2 OR what = 'run') AND version = "
    "(SELECT max(v.version) FROM block v WHERE v.routine_id = b.routine_id AND v.title = b.title AND "
    "v.what = b.what AND v.date = b.date AND (v.what = 'panel' OR v.of_routine = ?1)) "
    "ORDER BY what = 'panel', date, title";

// Of panels the words beside other versions too.
constexpr std::string_view all_words_of_version =
    "SELECT b.id, b.text, b.checksum, b.what, b.date, b.title, b.routine_id, b.version, b.of_routine FROM "
    "block r JOIN block b ON b.routine_id = r.routine_id WHERE r.id = ?1 AND (b.what = 'panel' OR "
    "b.of_routine = ?1) ORDER BY b.what = 'panel', b.date, b.title, b.version";

// Given a row of id, text and checksum.
std::string sound_text(Database& db, const Statement& row) {
  std::string text = row.text(1);
  if (!row.is_null(2) && row.number(2) != checksum_of(text))
    throw Refused(changed_texts(db.file(), name_of_entry(db, row.number(0))), SQLITE_CORRUPT);
  return text;
}

std::string block_text(Database& db, std::int64_t block) {
  Statement row(db, "SELECT id, text, checksum FROM block WHERE id = ?", block);
  if (!row.next())
    throw Refused({db.file(), fmt::format("it has no entry {}", block), "look it up in the list"});
  return sound_text(db, row);
}

std::string sheet_of(Database& db, std::int64_t routine, bool with_panels) {
  std::string sheet = block_text(db, routine);
  Statement swum(db, swum_of_version, routine, with_panels ? 1 : 0);
  while (swum.next()) sheet.append("\n").append(sound_text(db, swum));
  return sheet;
}

}  // namespace

Result<void> Book::Hold::commit() {
  return attempt([&] { transaction_->commit(); });
}

Result<Book::Hold> Book::hold() {
  return attempt([&] {
    Database& db = *season_.db_;
    db.be_patient(true);
    auto transaction = std::make_unique<Transaction>(db, Transaction::Kind::write);
    db.be_patient(false);
    return Hold(std::move(transaction));
  });
}

Result<std::string> Book::text(std::int64_t block) const {
  return attempt([&] { return block_text(*season_.db_, block); });
}

Result<std::string> Book::sheet(std::int64_t routine) const {
  return reading(*season_.db_, [&] { return sheet_of(*season_.db_, routine, true); });
}

Result<std::string> Book::sheet_without_panels(std::int64_t routine) const {
  return reading(*season_.db_, [&] { return sheet_of(*season_.db_, routine, false); });
}

Result<std::vector<std::string>> Book::sheets_of_all_words(std::int64_t routine) const {
  Database& db = *season_.db_;
  return reading(db, [&] {
    std::vector<BookEntry> entries;
    Statement rows(db, all_words_of_version, routine);
    while (rows.next())
      entries.push_back({rows.text(3), rows.text(4), rows.text(5), rows.number(0), rows.number(6),
                         rows.number(7), rows.number(8), sound_text(db, rows)});
    leave_out_what_need_not_be_told(entries);
    std::erase_if(entries, [&](const BookEntry& one) { return one.home != routine; });
    return sheets_of(block_text(db, routine), entries);
  });
}

Result<std::vector<KeptEdition>> Book::editions() const {
  return reading(*season_.db_, [&] { return kept_editions(*season_.db_); });
}

Result<TableFiles> Book::edition(std::int64_t edition) const {
  Database& db = *season_.db_;
  return reading(db, [&] {
    Statement row(db, "SELECT name FROM edition WHERE id = ?", edition);
    if (!row.next())
      throw Refused({db.file(), fmt::format("it has no edition {}", edition), "look it up in the list"});
    return TableFiles{row.text(0), db.file() + "/" + row.text(0) + "/", files_of_edition(db, edition)};
  });
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
