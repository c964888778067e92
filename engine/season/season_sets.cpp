#include "engine/season/season_sets.h"

#include <algorithm>
#include <cstdint>

#include "engine/files/value_sets.h"
#include "tables/edit_cell.h"
#include "tables/load.h"

namespace landdrill {

Result<Season*> SeasonSets::season(Season::Mode mode) {
  if (season_ && (mode == Season::Mode::read || mode_ != Season::Mode::read)) return &*season_;
  auto opened = Season::open(file_, mode);
  if (!opened) return tl::unexpected(opened.error());
  season_.emplace(std::move(*opened));
  mode_ = mode;
  return &*season_;
}

Result<const ReadSet*> SeasonSets::find(std::string_view name, std::string_view) {
  return store::attempt([&]() -> const ReadSet* {
    auto& known = read_[std::string(name)];
    if (known) return known.get();
    TableFiles files = store::must(store::must(season(Season::Mode::read))->export_set(name));
    Loaded loaded = load(files);
    known = std::make_unique<ReadSet>(ReadSet{std::move(files), std::move(loaded), {}, {}, file_});
    return known.get();
  });
}

std::vector<std::string> SeasonSets::look_for_names(std::string_view) {
  std::vector<std::string> found;
  const auto opened = season(Season::Mode::read);
  if (!opened) return found;
  if (const auto sets = (*opened)->sets())
    for (const SeasonSet& set : *sets) found.push_back(set.name);
  return found;
}

namespace {

const EditRecord* edit_numbered(const std::vector<EditRecord>& all, std::int64_t number) {
  const auto at = std::find_if(all.begin(), all.end(), [&](auto& one) { return one.number == number; });
  return at == all.end() ? nullptr : &*at;
}

// The edit that the next undo would take back.
const EditRecord* last_standing(const std::vector<EditRecord>& all) {
  const auto at = std::find_if(all.rbegin(), all.rend(), [](const EditRecord& one) {
    return (one.did == EditRecord::Did::edit || one.did == EditRecord::Did::replace) && !one.undone;
  });
  return at == all.rend() ? nullptr : &*at;
}

bool undo_goes_on(const EditRecord& done, const std::vector<EditRecord>& all) {
  const EditRecord* next = last_standing(all);
  return next != nullptr && goes_with_another(next->why) && next->key == done.key &&
         next->table == done.table;
}

// Up to the cell for whose sake the others were changed.
bool redo_goes_on(const EditRecord& done, const std::vector<EditRecord>& all) {
  const EditRecord* original = edit_numbered(all, done.target);
  return original != nullptr && goes_with_another(original->why);
}

struct Direction {
  Result<EditRecord> (Season::*step)(std::string_view, std::string_view);
  bool (*goes_on)(const EditRecord& done, const std::vector<EditRecord>& all);
};

Result<RowChange> take_steps(Season& season, const std::string& set, const Direction& direction) {
  RowChange change{{}, {}, RowChange::What::changed, {}};
  const auto done = season.together([&]() -> Result<void> {
    return store::attempt([&] {
      for (bool goes_on = true; goes_on;) {
        const EditRecord one = store::must((season.*direction.step)(set, {}));
        change.table = one.table;
        change.key = one.key;
        if (!one.table.empty()) change.cells.push_back({one.column, one.before, one.after});
        goes_on = direction.goes_on(one, store::must(season.history(set)));
      }
    });
  });
  if (!done) return tl::unexpected(done.error());
  return change;
}

}  // namespace

Result<RowChange> undo_change(Season& season, const std::string& set) {
  return take_steps(season, set, {&Season::undo, undo_goes_on});
}

Result<RowChange> redo_change(Season& season, const std::string& set) {
  auto change = take_steps(season, set, {&Season::redo, redo_goes_on});
  if (change) std::reverse(change->cells.begin(), change->cells.end());
  return change;
}

bool is_companion(const EditRecord& record, const std::vector<EditRecord>& all) {
  const EditRecord* target = record.target == 0 ? nullptr : edit_numbered(all, record.target);
  return goes_with_another(record.why) || (target != nullptr && goes_with_another(target->why));
}

std::size_t standing_changes(const std::vector<EditRecord>& all) {
  return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const EditRecord& one) {
    return one.did == EditRecord::Did::edit && !one.undone && !goes_with_another(one.why);
  }));
}

}  // namespace landdrill
