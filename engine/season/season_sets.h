// Value sets from a season file, and the changes of one as a coach counts them.
//
//   SeasonSets sets("club.season");
//   sets.of_sheet("my-2026", "duet.sheet")      // whatever the sheet's folder
#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/files/value_sets.h"
#include "tables/edit_cell.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill {

class SeasonSets : public ValueSets {
 public:
  explicit SeasonSets(std::string file) : file_(std::move(file)) {}

  const std::string& file() const { return file_; }
  // Opened once, and again when it is to be changed.
  Result<Season*> season(Season::Mode mode);

 private:
  Result<const ReadSet*> find(std::string_view name, std::string_view file) override;
  std::vector<std::string> look_for_names(std::string_view file) override;

  std::string file_;
  std::optional<Season> season_;
  Season::Mode mode_ = Season::Mode::read;
  std::map<std::string, std::unique_ptr<ReadSet>> read_;  // by name
};

// The history of a value set in the season file as a coach counts it: a value with its source and status is one change.
//
//   undo_change(*season, "club-2026")->cells   // {{"value", "1.0", "0.9"}, {"status", "memory", "published"}, ...}

// Takes back the last change, or brings back the one that was undone last: the cell, then what was changed in its row
// for its sake. Without a table when all tables were replaced.
Result<RowChange> undo_change(Season& season, const std::string& set);
Result<RowChange> redo_change(Season& season, const std::string& set);

// A change of source or status that only goes with the change of a value; or the undo or redo of one.
bool is_companion(const EditRecord& record, const std::vector<EditRecord>& all);
// The edits that stand, without companions.
std::size_t standing_changes(const std::vector<EditRecord>& all);

}  // namespace landdrill
