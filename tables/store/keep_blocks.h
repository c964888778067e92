// Adds blocks to the season book: finds out which of them are kept already, and which are new versions.
//
//   KeepingBlocks(db, editions).keep(blocks)      // {already there 1, new version 2, already there 1}
//
// Inside the caller's transaction. What belongs to what: see book.h.
#pragma once

#include <cstdint>
#include <map>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

// What a run or a panel was called one time after the other, and what of that a book needs to be told to end
// up with the same.
//
//   wordings_to_tell({{1, "a"}, {2, "b"}, {1, "c"}})      // {true, false, true}

struct Wording {
  std::int64_t home =
      0;  // the version of the routine it belongs to, by its id: later versions have greater ones
  std::string_view text;
};

// Oldest first. Versions of a routine are told one after the other, so words that gave way to words beside an
// earlier version would come after those and win; and the same words told twice would stay where they were
// first.
inline std::vector<bool> wordings_to_tell(const std::vector<Wording>& all) {
  std::vector<bool> told(all.size(), false);
  const Wording* next = nullptr;
  for (std::size_t i = all.size(); i-- > 0;) {
    if (next != nullptr && (all[i].home > next->home || all[i].text == next->text)) continue;
    told[i] = true;
    next = &all[i];
  }
  return told;
}

// Of texts that are given one after the other, those that are history already: the longest beginning that
// occurs among the kept ones in this order, up to the last of these. The place of each among the kept ones;
// the same text twice in a row is in one place.
//
//   kept_before({"a", "b", "c"}, {"a", "x", "b"})      // {0, 2}
//   kept_before({"a"}, {"a", "b"})                     // {}: the older text is in force again
std::vector<std::size_t> kept_before(const std::vector<std::string_view>& given,
                                     const std::vector<std::string_view>& kept);

class KeepingBlocks {
 public:
  // The editions outlive this.
  KeepingBlocks(Database& db, const std::vector<TableFiles>& editions);
  // Throws Refused when a run or a panel belongs to no routine.
  std::vector<AddedBlock> keep(const std::vector<Block>& blocks);

 private:
  // Blocks that are versions of one thing, by their places among those that are given.
  using Group = std::vector<std::size_t>;
  struct Kept;
  class History;

  std::vector<Group> groups(bool of_routines) const;
  std::string name_of(std::size_t at) const;
  std::int64_t find_routine(const Block& block);
  std::int64_t make_routine(const Block& block);
  [[noreturn]] void refuse_stray(const Block& block);
  void lay_beside();
  std::int64_t of_routine(std::size_t at);
  void say_versions();
  const std::string& set_of(std::int64_t edition);
  void keep_group(const Group& group);
  std::int64_t home_of(std::size_t at, const History& history);
  void write(std::size_t at, History& history);
  bool is_of_edition(const Kept& one, const Block& block);
  std::int64_t keep_edition_of(const Block& block);
  std::int64_t latest_version(std::int64_t routine);
  // Of a version of a routine; nothing of 0.
  struct Version {
    int number = 0;
    std::int64_t edition = 0;
  };
  Version version_of(std::int64_t id);

  Database& db_;
  Statement history_, insert_;
  struct Given {
    const TableFiles* set = nullptr;
    std::optional<std::int64_t> id;  // once it is kept
  };
  std::vector<Given> editions_;
  const std::vector<Block>* blocks_ = nullptr;
  std::vector<AddedBlock> added_;      // of each block, and
  std::vector<std::int64_t> routine_;  // the routine it is of,
  std::vector<std::int64_t> beside_;   // the version of it that stands beside it, or 0,
  std::vector<std::int64_t> swum_;     // and the version that it is or belongs to
  std::map<std::pair<std::string_view, std::string_view>, std::int64_t> routines_;
  std::unordered_map<std::int64_t, Version> versions_;
  std::unordered_map<std::int64_t, std::int64_t> latest_;  // of routines
  std::unordered_map<std::int64_t, std::string> sets_;     // names, by edition
};

}  // namespace landdrill::store
