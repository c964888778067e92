#include "tables/store/keep_blocks.h"

#include <fmt/format.h>

#include <algorithm>

#include "grammar/words.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/refusal.h"
#include "tables/store/swum_blocks.h"

namespace landdrill::store {
namespace {

// Whether the first `count` occur in this order up to the last kept one; their places are put down.
bool occur(const std::vector<std::string_view>& given, std::size_t count,
           const std::vector<std::string_view>& kept, std::vector<std::size_t>& places) {
  std::size_t place = kept.size() - 1;
  if (given[count - 1] != kept[place]) return false;
  places.assign(count, place);
  for (std::size_t i = count - 1; i-- > 0;) {
    if (given[i] != kept[place]) {
      while (place > 0 && given[i] != kept[place - 1]) --place;
      if (place-- == 0) return false;
    }
    places[i] = place;
  }
  return true;
}

bool is_routine(const Block& block) {
  return block.what == Block::What::routine;
}

}  // namespace

std::vector<std::size_t> kept_before(const std::vector<std::string_view>& given,
                                     const std::vector<std::string_view>& kept) {
  std::vector<std::size_t> places;
  for (std::size_t count = kept.empty() ? 0 : given.size(); count > 0; --count)
    if (occur(given, count, kept, places)) return places;
  return {};
}

struct KeepingBlocks::Kept {
  std::int64_t id = 0, edition = 0, home = 0;
  int version = 1;
  std::string text;
};

// What is kept of one thing, oldest first.
class KeepingBlocks::History {
 public:
  // Of a run only what goes with the version `home` of its routine: with another one it is another story.
  History(Statement& rows, bool of_home, std::int64_t home) {
    while (rows.next()) {
      Kept one{rows.number(0), rows.number(3), rows.number(4), static_cast<int>(rows.number(1)),
               rows.text(2)};
      last_version_ = one.version;
      if (!of_home || one.home == home) kept.push_back(std::move(one));
    }
  }
  int next_version() { return ++last_version_; }
  std::vector<std::string_view> texts() const {
    std::vector<std::string_view> all;
    for (const Kept& one : kept) all.push_back(one.text);
    return all;
  }
  std::vector<Kept> kept;

 private:
  int last_version_ = 0;
};

KeepingBlocks::KeepingBlocks(Database& db, const std::vector<TableFiles>& editions)
    : db_(db),
      history_(
          db,
          "SELECT id, version, text, edition_id, coalesce(of_routine, 0) FROM block WHERE routine_id = ? "
          "AND what = ? AND date = ? AND title = ? ORDER BY version"),
      insert_(db,
              "INSERT INTO block (routine_id, what, date, title, version, of_routine, edition_id, kept_at, "
              "text, checksum) VALUES (?, ?, ?, ?, ?, nullif(?, 0), ?, strftime('%Y-%m-%dT%H:%M:%SZ', "
              "'now'), ?, ?)") {
  for (const TableFiles& set : editions) editions_.push_back({&set, find_edition(db, set)});
}

std::vector<AddedBlock> KeepingBlocks::keep(const std::vector<Block>& blocks) {
  blocks_ = &blocks;
  added_.assign(blocks.size(), {});
  routine_.assign(blocks.size(), 0);
  beside_.assign(blocks.size(), 0);
  swum_.assign(blocks.size(), 0);
  for (std::size_t i = 0; i < blocks.size(); ++i)
    routine_[i] = is_routine(blocks[i]) ? make_routine(blocks[i]) : find_routine(blocks[i]);
  for (const Group& group : groups(true)) keep_group(group);
  lay_beside();
  for (const Group& group : groups(false)) keep_group(group);
  say_versions();
  return std::move(added_);
}

// In the order in which the first of each group is given.
std::vector<KeepingBlocks::Group> KeepingBlocks::groups(bool of_routines) const {
  std::vector<Group> all;
  std::unordered_map<std::string, std::size_t> known;
  for (std::size_t i = 0; i < blocks_->size(); ++i) {
    if (is_routine((*blocks_)[i]) != of_routines) continue;
    const auto [place, is_new] = known.try_emplace(name_of(i), all.size());
    if (is_new) all.emplace_back();
    all[place->second].push_back(i);
  }
  return all;
}

std::string KeepingBlocks::name_of(std::size_t at) const {
  const Block& block = (*blocks_)[at];
  const bool run = block.what == Block::What::run;
  std::string name = std::to_string(routine_[at]);
  for (std::string_view part :
       {word_of(block.what), std::string_view(block.date), std::string_view(block.title)})
    (name += '\x1F') += part;
  return run ? name + '\x1F' + std::to_string(beside_[at]) : name;
}

std::int64_t KeepingBlocks::find_routine(const Block& block) {
  const auto [place, is_new] = routines_.try_emplace({block.routine, block.event}, 0);
  if (!is_new) return place->second;
  Statement row(db_, "SELECT id FROM routine WHERE title = ? AND event = ?", block.routine, block.event);
  if (!row.next()) refuse_stray(block);
  return place->second = row.number(0);
}

std::int64_t KeepingBlocks::make_routine(const Block& block) {
  const auto known = routines_.find({block.routine, block.event});
  if (known != routines_.end()) return known->second;
  Statement(db_, "INSERT INTO routine (title, event) VALUES (?, ?) ON CONFLICT DO NOTHING", block.routine,
            block.event)
      .next();
  return find_routine(block);
}

void KeepingBlocks::refuse_stray(const Block& block) {
  std::vector<std::string> titles;
  Statement rows(db_, "SELECT DISTINCT title FROM routine ORDER BY title");
  while (rows.next()) titles.push_back(rows.text(0));
  const std::vector<std::string_view> known(titles.begin(), titles.end());
  throw Refused({db_.file(),
                 fmt::format("it has no routine \"{}\" in {}, to which the {} of {} could belong",
                             block.routine, block.event, word_of(block.what), block.date),
                 words::nearest_hint(block.routine, known)});
}

// Each run and panel beside the version of its routine that was given last before it.
void KeepingBlocks::lay_beside() {
  std::unordered_map<std::int64_t, std::size_t> last;
  for (std::size_t i = 0; i < blocks_->size(); ++i) {
    if (is_routine((*blocks_)[i])) {
      last[routine_[i]] = i;
    } else if (const auto above = last.find(routine_[i]); above != last.end()) {
      beside_[i] = added_[above->second].id;
      added_[i].beside = added_[above->second].version;
    }
    if ((*blocks_)[i].of != 0) beside_[i] = of_routine(i);
  }
}

// The version that is said, when it is one of this routine.
std::int64_t KeepingBlocks::of_routine(std::size_t at) {
  const std::int64_t version = (*blocks_)[at].of;
  Statement row(db_, "SELECT 1 FROM block WHERE id = ? AND routine_id = ? AND what = 'routine'", version,
                routine_[at]);
  if (!row.next())
    throw Refused({db_.file(),
                   fmt::format("entry {} is no version of \"{}\"", version, (*blocks_)[at].routine),
                   "look it up in the list"});
  return version;
}

void KeepingBlocks::say_versions() {
  for (std::size_t i = 0; i < added_.size(); ++i) {
    const Version swum = version_of(swum_[i]);
    if (!is_routine((*blocks_)[i])) added_[i].of_version = swum.number;
    added_[i].set = set_of(swum.edition);
    added_[i].routine_versions = version_of(latest_version(routine_[i])).number;
  }
}

const std::string& KeepingBlocks::set_of(std::int64_t edition) {
  const auto [place, is_new] = sets_.try_emplace(edition);
  if (is_new) {
    Statement row(db_, "SELECT name FROM edition WHERE id = ?", edition);
    if (row.next()) place->second = row.text(0);
  }
  return place->second;
}

void KeepingBlocks::keep_group(const Group& group) {
  const std::size_t first = group.front();
  const Block& name = (*blocks_)[first];
  history_.start(routine_[first], word_of(name.what), name.date, name.title);
  History history(history_, name.what == Block::What::run && beside_[first] != 0, beside_[first]);
  std::vector<std::string_view> given;
  for (const std::size_t at : group) given.push_back((*blocks_)[at].text);
  const std::vector<std::size_t> places = kept_before(given, history.texts());
  const std::size_t known = history.kept.size();
  for (std::size_t i = 0; i < group.size(); ++i) {
    const bool as_before = i < places.size() && history.kept.size() == known;
    const Kept* same = nullptr;
    if (as_before) same = &history.kept[places[i]];
    if (!as_before && !history.kept.empty() && history.kept.back().text == given[i])
      same = &history.kept.back();
    // Older versions are history whatever the tables say now; the latest in another edition is a new version.
    if (same != nullptr && same == &history.kept.back() && is_routine(name) &&
        !is_of_edition(*same, (*blocks_)[group[i]]))
      same = nullptr;
    if (same != nullptr && (*blocks_)[group[i]].of != 0 && same->home != (*blocks_)[group[i]].of)
      same = nullptr;
    if (same == nullptr) {
      write(group[i], history);
      continue;
    }
    AddedBlock& added = added_[group[i]];
    added.did = AddedBlock::Did::already_there;
    added.id = same->id;
    added.version = same->version;
    swum_[group[i]] = same->home == 0 ? same->id : same->home;
  }
}

std::int64_t KeepingBlocks::home_of(std::size_t at, const History& history) {
  if (is_routine((*blocks_)[at])) return 0;
  if (beside_[at] != 0) return beside_[at];
  return history.kept.empty() ? latest_version(routine_[at]) : history.kept.back().home;
}

bool KeepingBlocks::is_of_edition(const Kept& one, const Block& block) {
  Given& edition = editions_.at(block.edition);
  if (!edition.id) edition.id = find_edition(db_, *edition.set);
  return edition.id && one.edition == *edition.id;
}

// An edition is kept with the first that needs it, not when all was there already.
std::int64_t KeepingBlocks::keep_edition_of(const Block& block) {
  Given& edition = editions_.at(block.edition);
  if (!edition.id) edition.id = keep_edition(db_, *edition.set);
  return *edition.id;
}

// What is swum of a routine is swum under the edition of that.
void KeepingBlocks::write(std::size_t at, History& history) {
  const Block& block = (*blocks_)[at];
  const std::int64_t home = home_of(at, history);
  Kept one{0, home == 0 ? keep_edition_of(block) : version_of(home).edition, home, history.next_version(),
           block.text};
  insert_.start(routine_[at], word_of(block.what), block.date, block.title, one.version, home, one.edition,
                block.text, checksum_of(block.text));
  one.id = insert_.new_row();
  AddedBlock& added = added_[at];
  added.did = one.version == 1 ? AddedBlock::Did::added : AddedBlock::Did::new_version;
  added.id = one.id;
  added.version = one.version;
  swum_[at] = home == 0 ? one.id : home;
  history.kept.push_back(std::move(one));
}

// Asked for when all routines of this add are kept.
std::int64_t KeepingBlocks::latest_version(std::int64_t routine) {
  const auto [place, is_new] = latest_.try_emplace(routine, 0);
  if (is_new) {
    Statement latest(
        db_,
        "SELECT id FROM block WHERE routine_id = ? AND title = '' AND what = 'routine' AND date = "
        "'' ORDER BY version DESC LIMIT 1",
        routine);
    if (latest.next()) place->second = latest.number(0);
  }
  return place->second;
}

KeepingBlocks::Version KeepingBlocks::version_of(std::int64_t id) {
  if (id == 0) return {};
  const auto [place, is_new] = versions_.try_emplace(id);
  if (is_new) {
    Statement row(db_, "SELECT version, edition_id FROM block WHERE id = ?", id);
    if (row.next()) place->second = {static_cast<int>(row.number(0)), row.number(1)};
  }
  return place->second;
}

}  // namespace landdrill::store
