#include "tables/store/season.h"

#include "tables/csv.h"
#include "tables/store/database.h"
#include "tables/store/edit_set.h"
#include "tables/store/editions.h"
#include "tables/store/history.h"
#include "tables/store/import_set.h"
#include "tables/store/kept_tables.h"
#include "tables/store/season_file.h"
#include "tables/store/season_inside.h"

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

}  // namespace

Season::Season(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Season::Season(Season&&) noexcept = default;
Season& Season::operator=(Season&&) noexcept = default;
Season::~Season() = default;

Result<Season> Season::open(const std::filesystem::path& file, Mode mode) {
  return attempt([&] { return Season(std::unique_ptr<Inside>(new Inside{open_season_file(file, mode)})); });
}

Result<std::vector<SeasonSet>> Season::sets() const {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::read);
    std::vector<SeasonSet> sets;
    Statement all(inside_->db, "SELECT id, name FROM value_set ORDER BY name");
    while (all.next()) sets.push_back(describe(inside_->db, all.number(0), all.text(1)));
    return sets;
  });
}

Result<Season::ImportOutcome> Season::import_set(const TableFiles& files, std::string_view why,
                                                 bool replace) {
  return attempt([&] {
    refuse_bad_name(files.name);
    refuse_unless_loads(files, files.name, "the set has errors, so it was not imported");
    Transaction transaction(inside_->db, Transaction::Kind::write);
    const bool written = import_into(inside_->db, files, why, replace);
    transaction.commit();
    return ImportOutcome{count_rows(tables_of(files.files)), !written};
  });
}

Result<TableFiles> Season::export_set(std::string_view name) const {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::read);
    const SetId set = set_id_of(inside_->db, name);
    return TableFiles{std::string(name), place_of_set(inside_->db, name),
                      texts_of(kept_tables(inside_->db, set))};
  });
}

Result<EditRecord> Season::edit(const Edit& wish) {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::write);
    EditRecord record = edit_set(inside_->db, wish);
    transaction.commit();
    return record;
  });
}

Result<EditRecord> Season::undo(std::string_view set, std::string_view why) {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::write);
    EditRecord record = undo_in(inside_->db, set, why);
    transaction.commit();
    return record;
  });
}

Result<EditRecord> Season::redo(std::string_view set, std::string_view why) {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::write);
    EditRecord record = redo_in(inside_->db, set, why);
    transaction.commit();
    return record;
  });
}

Result<void> Season::together(const std::function<Result<void>()>& work) {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::write);
    if (const Result<void> done = work(); !done) throw Refused(done.error());
    transaction.commit();
  });
}

Result<std::vector<EditRecord>> Season::history(std::string_view set) const {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::read);
    return history_of(inside_->db, set_id_of(inside_->db, set));
  });
}

Result<void> Season::remove_set(std::string_view set) {
  return attempt([&] {
    Transaction transaction(inside_->db, Transaction::Kind::write);
    Statement remove(inside_->db, "DELETE FROM value_set WHERE id = ?", set_id_of(inside_->db, set));
    remove.next();
    transaction.commit();
  });
}

Result<void> Season::check() const {
  return attempt([&] { refuse_damaged(inside_->db); });
}

}  // namespace landdrill
