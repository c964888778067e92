// The season file: one SQLite database in which value sets are kept, edited with history and undo, and
// compared.
//
//   auto season = Season::open("club.season", Season::Mode::create);
//   season->import_set(*read_folder("kingfisher-2026"), "first import");
//   season->edit({"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"});
//   season->undo("kingfisher-2026");
//   season->export_set("kingfisher-2026")      // the same bytes that were imported
//
// STRICT tables, schema by user_version (schema.sql and migrations); every change is one transaction: when a
// call returns, it is on disk; when it fails, nothing has changed.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "tables/edit_cell.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/database.h"

namespace landdrill {

// One line of a set's history, to which lines are only ever added. An undo or redo is a line of its own: it names its `target`, and the same cell.
struct EditRecord {
  enum class Did { import, replace, edit, undo, redo };
  std::int64_t number = 0;
  std::string set, at;  // at: UTC, "2026-04-14T18:03:11Z"
  Did did = Did::edit;
  std::int64_t target = 0;                        // for undo and redo: the number of the edit or replacement
  std::string table, key, column, before, after;  // empty when whole files came in
  std::string why;
  bool undone = false;  // an edit or replacement that does not stand at present
};

struct SeasonSet {
  std::string name, title, edition, imported_at;
  std::size_t rows = 0, edits = 0;  // edits that stand, not undone
};

class Season {
 public:
  // read: creates and changes nothing, and works in a read-only folder; write: the file must be there;
  // create: made when it is missing.
  using Mode = store::Database::Access;
  static Result<Season> open(const std::filesystem::path& file, Mode mode);

  Result<std::vector<SeasonSet>> sets() const;
  // Refused when the set does not load, or when one of that name with other bytes is there, unless `replace`;
  // same bytes: nothing to do. A replacement can be undone.
  struct ImportOutcome {
    std::size_t rows = 0;
    bool already_there = false;
  };
  Result<ImportOutcome> import_set(const TableFiles& files, std::string_view why, bool replace = false);
  Result<TableFiles> export_set(std::string_view name) const;
  // The cell afterwards holds `value`; every other byte of the export stays. Nothing is written when it did before.
  // Refused when the set no longer loads.
  Result<void> edit(const Edit& edit);
  // Takes back the last edit or replacement that stands.
  Result<EditRecord> undo(std::string_view set, std::string_view why = {});
  // Brings back what was undone last, unless there was a new edit since.
  Result<EditRecord> redo(std::string_view set, std::string_view why = {});
  // All the changes that `work` makes in this season, or none when it fails; for others they happen at once.
  //   season.together([&]() -> Result<void> { season.edit(source); ... });
  Result<void> together(const std::function<Result<void>()>& work);
  // Oldest first.
  Result<std::vector<EditRecord>> history(std::string_view set) const;
  // The set goes with its history, and this alone cannot be undone.
  Result<void> remove_set(std::string_view set);
  // Reads the whole file and looks for damage.
  Result<void> check() const;

 private:
  friend class Book;          // book.h and
  friend class PracticeBook;  // practice_book.h keep what is theirs in the same file
  explicit Season(std::unique_ptr<store::Database> db) : db_(std::move(db)) {}
  std::unique_ptr<store::Database> db_;
};

}  // namespace landdrill

namespace landdrill::store {

// Opens a season file: says in plain words why a file is none, makes a new one, brings an old one to this
// version.
//
//   Database db = open_season_file("club.season", Database::Access::write);   // ready, of the present version
//
// Reading never creates or changes a file; the one exception is a change that was interrupted by a crash,
// which is taken back by whoever comes first and may write.

inline constexpr std::int64_t season_application_id = 0x4C44726C;  // "LDrl", also in schema.sql
inline constexpr std::int64_t season_version = 5;

// Throws Refused.
void refuse_unless_makeable(const std::filesystem::path& file);
Database open_season_file(const std::filesystem::path& file, Database::Access access);
// Reads every page and every kept text; refused when one is damaged or a row belongs to nothing.
void refuse_damaged(Database& db);

}  // namespace landdrill::store
