#include "tables/store/season.h"

#include "tables/csv.h"
#include "tables/store/attempt.h"
#include "tables/store/database.h"
#include "tables/store/edit_set.h"
#include "tables/store/editions.h"
#include "tables/store/history.h"
#include "tables/store/import_set.h"
#include "tables/store/kept_tables.h"
#include "tables/store/season_file.h"

namespace landdrill {

using namespace store;

namespace {

SeasonSet describe(Database& db, SetId id, std::string name) {
  SeasonSet described;
  described.name = std::move(name);
  const std::vector<CsvTable> tables = kept_tables(db, id);
  described.rows = count_rows(tables);
  described.edits = standing_edits(db, id);
  described.imported_at = imported_at(db, id);
  const SetFace face = face_of(texts_of(tables));
  described.title = face.title;
  described.edition = face.edition;
  return described;
}

Database::Access access_for(Season::Mode mode) {
  switch (mode) {
    case Season::Mode::read:
      return Database::Access::read;
    case Season::Mode::write:
      return Database::Access::write;
    default:
      return Database::Access::create;
  }
}

}  // namespace

Season::Season(std::unique_ptr<Database> db) : db_(std::move(db)) {}
Season::Season(Season&&) noexcept = default;
Season& Season::operator=(Season&&) noexcept = default;
Season::~Season() = default;

Result<Season> Season::open(const std::filesystem::path& file, Mode mode) {
  return attempt(
      [&] { return Season(std::make_unique<Database>(open_season_file(file, access_for(mode)))); });
}

Result<std::vector<SeasonSet>> Season::sets() const {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::read);
    std::vector<SeasonSet> sets;
    Statement all(*db_, "SELECT id, name FROM value_set ORDER BY name");
    while (all.next()) sets.push_back(describe(*db_, all.number(0), all.text(1)));
    return sets;
  });
}

Result<Season::ImportOutcome> Season::import_set(const TableFiles& files, std::string_view why,
                                                 bool replace) {
  return attempt([&] {
    refuse_bad_name(files.name);
    refuse_unless_loads(files, files.name, "the set has errors, so it was not imported");
    Transaction transaction(*db_, Transaction::Kind::write);
    const bool written = import_into(*db_, files, why, replace);
    transaction.commit();
    return ImportOutcome{count_rows(tables_of(files.files)), !written};
  });
}

Result<TableFiles> Season::export_set(std::string_view name) const {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::read);
    const SetId set = set_id_of(*db_, name);
    return TableFiles{std::string(name), place_of_set(*db_, name), texts_of(kept_tables(*db_, set))};
  });
}

Result<EditRecord> Season::edit(const Edit& wish) {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::write);
    EditRecord record = edit_set(*db_, wish);
    transaction.commit();
    return record;
  });
}

Result<EditRecord> Season::undo(std::string_view set, std::string_view why) {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::write);
    EditRecord record = undo_in(*db_, set, why);
    transaction.commit();
    return record;
  });
}

Result<EditRecord> Season::redo(std::string_view set, std::string_view why) {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::write);
    EditRecord record = redo_in(*db_, set, why);
    transaction.commit();
    return record;
  });
}

Result<void> Season::together(const std::function<Result<void>()>& work) {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::write);
    if (const Result<void> done = work(); !done) throw Refused(done.error());
    transaction.commit();
  });
}

Result<std::vector<EditRecord>> Season::history(std::string_view set) const {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::read);
    return history_of(*db_, set_id_of(*db_, set));
  });
}

Result<void> Season::remove_set(std::string_view set) {
  return attempt([&] {
    Transaction transaction(*db_, Transaction::Kind::write);
    Statement remove(*db_, "DELETE FROM value_set WHERE id = ?", set_id_of(*db_, set));
    remove.next();
    transaction.commit();
  });
}

Result<void> Season::check() const {
  return attempt([&] { refuse_damaged(*db_); });
}

}  // namespace landdrill
