#include "tables/store/edit_set.h"

#include <fmt/format.h>

#include "tables/store/find_cell.h"
#include "tables/store/history.h"
#include "tables/store/import_set.h"
#include "tables/store/kept_tables.h"
#include "tables/store/refusal.h"

namespace landdrill::store {
namespace {

EditRecord unchanged(const Edit& wish, const FoundCell& cell) {
  EditRecord record;
  record.set = wish.set;
  record.table = cell.table;
  record.key = cell.key;
  record.column = cell.column;
  record.before = record.after = cell.text;
  record.why = wish.why;
  return record;
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

void exchange(Database& db, SetId set, const Step& replacement) {
  replace_tables(db, set, exchange_files(db, replacement, texts_of(kept_tables(db, set))));
}

}  // namespace

EditRecord edit_set(Database& db, const Edit& wish) {
  const SetId set = set_id_of(db, wish.set);
  const FoundCell cell = find_cell(texts_of(kept_tables(db, set)), wish);
  if (cell.text == wish.value) return unchanged(wish, cell);
  const CellEdit edit{cell, wish.value, csv_cell(wish.value, cell.separator), wish.why};
  put_cell(db, set, cell.place, edit.after_raw);
  refuse_unless_loads({wish.set, place_of_set(db, wish.set), texts_of(kept_tables(db, set))},
                      fmt::format("{} {} {} {}", wish.set, cell.table, cell.key, cell.column),
                      fmt::format("with \"{}\" the set could no longer be used", wish.value));
  return record_edit(db, set, edit);
}

EditRecord undo_in(Database& db, std::string_view name, std::string_view why) {
  const SetId set = set_id_of(db, name);
  const std::optional<Step> step = step_to_undo(db, set);
  if (!step) throw Refused({std::string(name), "there is no edit to undo", ""});
  if (step->did == EditRecord::Did::replace) {
    exchange(db, set, *step);
  } else {
    change_back(db, set, *step, step->after_raw, step->before_raw);
  }
  return record_undo(db, set, *step, why);
}

EditRecord redo_in(Database& db, std::string_view name, std::string_view why) {
  const SetId set = set_id_of(db, name);
  const std::optional<Step> step = step_to_redo(db, set);
  if (!step) throw Refused({std::string(name), "there is no undone edit to bring back", ""});
  if (step->did == EditRecord::Did::replace) {
    exchange(db, set, *step);
  } else {
    change_back(db, set, *step, step->before_raw, step->after_raw);
  }
  return record_redo(db, set, *step, why);
}

}  // namespace landdrill::store
