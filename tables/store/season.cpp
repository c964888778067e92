#include "tables/store/season.h"

#include <fmt/format.h>
#include <sqlite3.h>
#include <unistd.h>

#include "book_sql.h"
#include "migrate_1_to_2_sql.h"
#include "migrate_3_to_4_sql.h"
#include "migrate_4_to_5_sql.h"
#include "schema_sql.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"
#include "tables/store/kept_tables.h"
#include "tables/store/refusal.h"

namespace landdrill {

using namespace store;

Result<Season> Season::open(const std::filesystem::path& file, Mode mode) {
  return attempt([&] { return Season(std::make_unique<Database>(open_season_file(file, mode))); });
}

Result<void> Season::check() const {
  return attempt([&] { refuse_damaged(*db_); });
}

}  // namespace landdrill

namespace landdrill::store {
namespace {

namespace fs = std::filesystem;
using Access = Database::Access;

constexpr std::size_t most_names = 10;  // in a message
constexpr const char* make_one_hint = "import a value set or add a sheet to make one";

void refuse_what_is_no_file(const fs::path& file, Access access) {
  std::error_code unreadable;
  const fs::file_status status = fs::status(file, unreadable);
  if (fs::is_directory(status)) {
    throw Refused({file.string(), "it is a folder, not a season file", "name a file in it"});
  }
  if (fs::exists(status) && !fs::is_regular_file(status)) {
    throw Refused({file.string(), "it is a device, not a season file", "name an ordinary file"});
  }
  if (status.type() != fs::file_type::not_found) return;
  if (access != Access::create) throw Refused({file.string(), "there is no such file", make_one_hint});
  refuse_unless_makeable(file);
}

void set_habits(Database& db) {
  db.run("PRAGMA foreign_keys = ON");
  // A file from elsewhere must not make SQLite do more than read tables.
  db.run("PRAGMA trusted_schema = OFF");
  db.run("PRAGMA cell_size_check = ON");
  db.run("PRAGMA temp_store = MEMORY");
  // FULL, and the folder is synced once the journal is gone: without that, a power cut could bring the
  // journal back, and it would take back the last edit.
  db.run("PRAGMA synchronous = EXTRA");
}

// A rollback journal and no WAL: a coach copies the season as one file, and a WAL beside it would hold her
// last edits without her knowing; nor can a WAL be read in a read-only folder. Only for a season: it changes
// the file.
void keep_in_one_file(Database& db) {
  db.run("PRAGMA journal_mode = DELETE");
}

bool is_fresh(Database& db) {
  return db.number("PRAGMA application_id") == 0 && db.number("PRAGMA user_version") == 0 &&
         db.number("SELECT count(*) FROM sqlite_schema") == 0;
}

void make_tables(Database& db) {
  Transaction transaction(db, Transaction::Kind::write);
  if (!is_fresh(db)) return;  // another program was faster
  db.run(schema_sql);
  db.run(book_sql);
  db.run(migrate_3_to_4_sql);
  db.run(migrate_4_to_5_sql);
  transaction.commit();
}

void refuse_what_is_no_season(Database& db) {
  if (is_fresh(db)) throw Refused({db.file(), "the file is empty, not a season file", make_one_hint});
  if (db.number("PRAGMA application_id") != season_application_id) {
    throw Refused(
        {db.file(), "it is the database of another program, not a season file", "name another file"});
  }
  const std::int64_t version = db.number("PRAGMA user_version");
  if (version > season_version) {
    throw Refused({db.file(),
                   fmt::format("it was written by a newer landdrill (season file version {}, this program "
                               "reads up to {})",
                               version, season_version),
                   "use the newer program; nothing was changed"});
  }
  if (version < 1)
    throw Refused({db.file(), fmt::format("its version is {}, which never existed", version), ""});
}

void refuse_rows_of_nothing(Database& db) {
  Statement broken(db, "PRAGMA foreign_key_check");
  if (!broken.next()) return;
  const std::string message = fmt::format("a row of {} belongs to nothing", broken.text(0));
  throw Refused(trouble_of(SQLITE_CORRUPT, db.file(), message), SQLITE_CORRUPT);
}

void migrate(Database& db) {
  Transaction transaction(db, Transaction::Kind::write);
  refuse_rows_of_nothing(db);
  if (db.number("PRAGMA user_version") == 1) db.run(migrate_1_to_2_sql);
  if (db.number("PRAGMA user_version") == 2) {
    db.run(book_sql);
    db.run("PRAGMA user_version = 3");
  }
  if (db.number("PRAGMA user_version") == 3) db.run(migrate_3_to_4_sql);
  if (db.number("PRAGMA user_version") == 4) db.run(migrate_4_to_5_sql);
  transaction.commit();
}

void read_schema(Database& db) {
  db.number("SELECT count(*) FROM sqlite_schema");
}

// Only a writer may take back what a crash left half-done; the first read makes it do so.
void take_back_interrupted_change(const fs::path& file) {
  Database writer(file, Database::Access::write);
  read_schema(writer);
}

// An old file is read by way of a copy in memory, which is brought to this version in its place.
Database migrated_copy(Database& old) {
  Database copy = Database::in_memory(old.file());
  set_habits(copy);
  copy.copy_from(old);
  migrate(copy);
  copy.run("PRAGMA query_only = ON");
  return copy;
}

Database open_to_read(const fs::path& file) {
  Database db(file, Database::Access::read);
  try {
    read_schema(db);
  } catch (const Refused& refused) {
    if (refused.code != SQLITE_READONLY_ROLLBACK) throw;
    take_back_interrupted_change(file);
  }
  set_habits(db);
  refuse_what_is_no_season(db);
  if (db.number("PRAGMA user_version") < season_version) return migrated_copy(db);
  return db;
}

}  // namespace

void refuse_unless_makeable(const fs::path& file) {
  std::error_code unreadable;
  const fs::path folder = fs::absolute(file).parent_path();
  if (!fs::is_directory(folder, unreadable)) {
    throw Refused(
        {file.string(), fmt::format("there is no folder {}", folder.string()), "make the folder first"});
  }
  if (access(folder.c_str(), W_OK | X_OK) != 0) {
    throw Refused({file.string(), "its folder is read-only, so no file can be made in it",
                   "allow writing in the folder, or name a file elsewhere"});
  }
}

Database open_season_file(const fs::path& file, Access access) {
  refuse_what_is_no_file(file, access);
  if (access == Access::read) return open_to_read(file);
  Database db(file, access);
  set_habits(db);
  if (access == Access::create && is_fresh(db)) make_tables(db);
  refuse_what_is_no_season(db);
  if (db.is_read_only()) throw Refused(trouble_of(SQLITE_READONLY, db.file(), ""), SQLITE_READONLY);
  keep_in_one_file(db);
  if (db.number("PRAGMA user_version") < season_version) migrate(db);
  return db;
}

void refuse_damaged(Database& db) {
  if (Statement check(db, "PRAGMA integrity_check(1)"); check.next() && check.text(0) != "ok") {
    const std::string found = check.text(0);  // may open with a line that only names the database
    throw Refused(trouble_of(SQLITE_CORRUPT, db.file(), found.substr(found.rfind('\n') + 1)), SQLITE_CORRUPT);
  }
  refuse_rows_of_nothing(db);
  const std::vector<std::string> texts = damaged_texts(db);
  if (texts.empty()) return;
  std::string names;
  for (std::size_t i = 0; i < std::min<std::size_t>(texts.size(), most_names); ++i)
    names += (i == 0 ? "" : "; ") + texts[i];
  if (texts.size() > most_names) names += fmt::format("; and {} more", texts.size() - most_names);
  throw Refused(changed_texts(db.file(), names), SQLITE_CORRUPT);
}

}  // namespace landdrill::store
