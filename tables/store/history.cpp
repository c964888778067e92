#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/edit_cell.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_tables.h"
#include "tables/store/refusal.h"
#include "tables/store/season.h"

namespace landdrill {

using namespace store;

namespace {

using Did = EditRecord::Did;

constexpr std::string_view words_of_did[] = {"import", "replace", "edit", "undo", "redo"};

// An undo says the same cell as its target, from after to before.
const std::string select_records =
    "SELECT c.number, s.name, c.at, c.did, coalesce(c.target, 0), c.why, e.file, e.row_key, e.column_name, "
    "e.before, e.after, coalesce((SELECT undone FROM step WHERE step.number = c.number), 0) "
    "FROM change c JOIN value_set s ON s.id = c.set_id JOIN change e ON e.number = coalesce(c.target, "
    "c.number) ";

EditRecord record_from(const Statement& row) {
  EditRecord record;
  record.number = row.number(0);
  record.set = row.text(1);
  record.at = row.text(2);
  record.did = words::value_of<Did>(words_of_did, row.view(3)).value_or(Did::edit);
  record.target = row.number(4);
  record.why = row.text(5);
  const std::string file = row.text(6);
  record.table = file.substr(0, file.rfind('.'));
  record.key = row.text(7);
  record.column = row.text(8);
  record.before = row.text(9);
  record.after = row.text(10);
  record.undone = row.number(11) != 0;
  if (record.did == Did::undo) std::swap(record.before, record.after);
  return record;
}

EditRecord record_of(Database& db, std::int64_t number) {
  Statement row(db, select_records + "WHERE c.number = ?", number);
  row.next();
  return record_from(row);
}

// `target`: of an undo or redo; else 0.
EditRecord add_entry(Database& db, SetId set, Did did, std::int64_t target, std::string_view why) {
  Statement insert(db,
                   "INSERT INTO change (set_id, at, did, target, why) "
                   "VALUES (?, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), ?, nullif(?, 0), ?)",
                   set, words_of_did[static_cast<std::size_t>(did)], target, why);
  return record_of(db, insert.new_row());
}

void add_edit(Database& db, SetId set, const FoundCell& cell, const Edit& wish, std::string_view after_raw) {
  Statement insert(
      db,
      "INSERT INTO change (set_id, at, did, why, file, row, column, row_key, column_name, before, after, "
      "before_raw, after_raw) VALUES (?, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), 'edit', "
      "?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      set, wish.why, cell.place.file, cell.place.row, cell.place.column, cell.key, cell.column, cell.text,
      wish.value, cell.raw, after_raw);
  insert.next();
}

void put_aside(Database& db, std::int64_t change, const std::vector<TableFile>& files) {
  Statement insert(db, "INSERT INTO file_aside (change, position, file, text) VALUES (?, ?, ?, ?)");
  for (std::size_t i = 0; i < files.size(); ++i) insert.run(change, i, files[i].file, files[i].text);
}

// An edit or a replacement, with what is needed to take it back or do it again.
struct Step {
  std::int64_t number = 0;
  Did did = Did::edit;
  CellPlace place;
  std::string before_raw, after_raw;
};

// The last step that stands; and the one that was undone last: one that stands and is younger was made in the place of
// those that were undone before it, so they stay undone.
constexpr std::string_view to_undo = "WHERE set_id = ?1 AND NOT undone ORDER BY number DESC LIMIT 1";
constexpr std::string_view to_redo =
    "WHERE set_id = ?1 AND undone AND number > coalesce((SELECT max(number) FROM step WHERE set_id = ?1 "
    "AND NOT undone), 0) ORDER BY last_touched DESC LIMIT 1";

std::optional<Step> find_step(Database& db, SetId set, std::string_view which) {
  Statement row(
      db, fmt::format("SELECT number, did, file, row, column, before_raw, after_raw FROM step {}", which),
      set);
  if (!row.next()) return std::nullopt;
  return Step{row.number(0),
              words::value_of<Did>(words_of_did, row.view(1)).value_or(Did::edit),
              {row.text(2), static_cast<std::size_t>(row.number(3)), static_cast<std::size_t>(row.number(4))},
              row.text(5),
              row.text(6)};
}

// The files a replacement put aside; `in_force` takes their place.
std::vector<TableFile> exchange_files(Database& db, std::int64_t replacement,
                                      const std::vector<TableFile>& in_force) {
  std::vector<TableFile> aside;
  Statement files(db, "SELECT file, text FROM file_aside WHERE change = ? ORDER BY position", replacement);
  while (files.next()) aside.push_back({files.text(0), files.text(1)});
  Statement(db, "DELETE FROM file_aside WHERE change = ?", replacement).next();
  put_aside(db, replacement, in_force);
  return aside;
}

void replace_files(Database& db, SetId set, const std::vector<TableFile>& files) {
  drop_files(db, set);
  put_files(db, set, files);
}

std::size_t standing_edits(Database& db, SetId set) {
  Statement count(db, "SELECT count(*) FROM step WHERE set_id = ? AND did = 'edit' AND NOT undone", set);
  count.next();
  return static_cast<std::size_t>(count.number(0));
}

std::string imported_at(Database& db, SetId set) {
  Statement last(
      db,
      "SELECT at FROM change WHERE set_id = ?1 AND (did = 'import' OR number IN (SELECT number FROM step "
      "WHERE set_id = ?1 AND did = 'replace' AND NOT undone)) ORDER BY number DESC LIMIT 1",
      set);
  return last.next() ? last.text(0) : std::string();
}

void refuse_unless_loads(const TableFiles& files, const std::string& what, const std::string& why) {
  const Loaded loaded = load(files);
  if (loaded.set) return;
  std::string messages = to_string(loaded.diagnostics);
  while (messages.ends_with('\n')) messages.pop_back();
  throw Refused({what, fmt::format("{}:\n{}", why, messages), "nothing was changed"});
}

// A set is exported to a folder of its name.
void refuse_bad_name(const std::string& name) {
  const bool odd =
      std::any_of(name.begin(), name.end(), [](unsigned char c) { return c < ' ' || c == '/' || c == '\\'; });
  if (!name.empty() && name.front() != '.' && !odd) return;
  throw Refused(
      {fmt::format("\"{}\"", name), "a value set cannot be called that", "a name such as kingfisher-2026"});
}

// False when the same bytes are there already.
bool import_into(Database& db, const TableFiles& files, std::string_view why, bool replace) {
  const std::optional<SetId> set = find_set_id(db, files.name);
  if (!set) {
    const SetId added = Statement(db, "INSERT INTO value_set (name) VALUES (?)", files.name).new_row();
    add_entry(db, added, Did::import, 0, why);
    put_files(db, added, files.files);
    return true;
  }
  const std::vector<TableFile> in_force = kept_files(db, *set);
  if (same_files(in_force, files.files)) return false;
  if (!replace) {
    throw Refused(
        {db.file(), fmt::format("it holds another value set \"{}\" already", files.name),
         fmt::format("replace it (that can be undone; {} edits stand in it), or import under another name",
                     standing_edits(db, *set))});
  }
  put_aside(db, add_entry(db, *set, Did::replace, 0, why).number, in_force);
  replace_files(db, *set, files.files);
  return true;
}

// The cell holds what the history says, or the step is not carried out: nothing is overwritten unseen.
void change_back(Database& db, SetId set, const Step& step, std::string_view from, std::string_view to) {
  if (kept_cell(db, set, step.place) != from) {
    throw Refused(
        {db.file(),
         fmt::format("change {} does not fit: the cell was changed outside the history", step.number),
         "edit the cell instead"});
  }
  put_cell(db, set, step.place, to);
}

void edit_set(Database& db, const Edit& wish) {
  const SetId set = set_id_of(db, wish.set);
  const auto found = find_cell(kept_files(db, set), wish);
  if (!found) throw Refused(found.error());
  const FoundCell& cell = *found;
  if (cell.text == wish.value) return;
  const std::string after_raw = csv_cell(wish.value, cell.separator);
  put_cell(db, set, cell.place, after_raw);
  refuse_unless_loads({wish.set, place_of_set(db, wish.set), kept_files(db, set)},
                      fmt::format("{} {} {} {}", wish.set, cell.table, cell.key, cell.column),
                      fmt::format("with \"{}\" the set could no longer be used", wish.value));
  add_edit(db, set, cell, wish, after_raw);
}

// Undoes or redoes a step: what it took the place of is put back, or the other way round.
EditRecord step_in(Database& db, std::string_view name, Did did, std::string_view why) {
  const bool undo = did == Did::undo;
  const SetId set = set_id_of(db, name);
  const auto step = find_step(db, set, undo ? to_undo : to_redo);
  if (!step) {
    throw Refused(
        {std::string(name), undo ? "there is no edit to undo" : "there is no undone edit to bring back", ""});
  }
  if (step->did == Did::replace)
    replace_files(db, set, exchange_files(db, step->number, kept_files(db, set)));
  else if (undo)
    change_back(db, set, *step, step->after_raw, step->before_raw);
  else
    change_back(db, set, *step, step->before_raw, step->after_raw);
  return add_entry(db, set, did, step->number, why);
}

SeasonSet describe(Database& db, SetId id, std::string name) {
  SeasonSet described;
  described.name = std::move(name);
  const std::vector<TableFile> files = kept_files(db, id);
  described.rows = count_rows(files);
  described.edits = standing_edits(db, id);
  described.imported_at = imported_at(db, id);
  const SetFace face = face_of(files);
  described.title = face.title;
  described.edition = face.edition;
  return described;
}

}  // namespace

Result<std::vector<SeasonSet>> Season::sets() const {
  return reading(*db_, [&] {
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
    const bool written = must(writing(*db_, [&] { return import_into(*db_, files, why, replace); }));
    return ImportOutcome{count_rows(files.files), !written};
  });
}

Result<TableFiles> Season::export_set(std::string_view name) const {
  return reading(*db_, [&] {
    const SetId set = set_id_of(*db_, name);
    return TableFiles{std::string(name), place_of_set(*db_, name), kept_files(*db_, set)};
  });
}

Result<void> Season::edit(const Edit& wish) {
  return writing(*db_, [&] { edit_set(*db_, wish); });
}

Result<EditRecord> Season::undo(std::string_view set, std::string_view why) {
  return writing(*db_, [&] { return step_in(*db_, set, Did::undo, why); });
}

Result<EditRecord> Season::redo(std::string_view set, std::string_view why) {
  return writing(*db_, [&] { return step_in(*db_, set, Did::redo, why); });
}

Result<void> Season::together(const std::function<Result<void>()>& work) {
  return writing(*db_, [&] { must(work()); });
}

Result<std::vector<EditRecord>> Season::history(std::string_view set) const {
  return reading(*db_, [&] {
    std::vector<EditRecord> records;
    Statement rows(*db_, select_records + "WHERE c.set_id = ? ORDER BY c.number", set_id_of(*db_, set));
    while (rows.next()) records.push_back(record_from(rows));
    return records;
  });
}

Result<void> Season::remove_set(std::string_view set) {
  return writing(*db_,
                 [&] { Statement(*db_, "DELETE FROM value_set WHERE id = ?", set_id_of(*db_, set)).next(); });
}

}  // namespace landdrill
