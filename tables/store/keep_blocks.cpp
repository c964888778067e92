#include <fmt/format.h>

#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>

#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/book.h"
#include "tables/store/database.h"
#include "tables/store/kept_tables.h"
#include "tables/store/refusal.h"

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

namespace {

// A block that is kept of one thing; of a run or a panel `home` is the version of the routine that it belongs to.
struct Kept {
  std::int64_t id = 0, edition = 0, home = 0;
  int version = 1;
  std::string text;
};

// What is kept of one thing, oldest first.
struct History {
  // Of a run only what goes with the version `home` of its routine: with another one it is another story.
  History(Statement& rows, bool of_home, std::int64_t home) {
    while (rows.next()) {
      Kept one{rows.number(0), rows.number(3), rows.number(4), static_cast<int>(rows.number(1)),
               rows.text(2)};
      last_version = one.version;
      if (!of_home || one.home == home) kept.push_back(std::move(one));
    }
  }
  std::vector<std::string_view> texts() const {
    std::vector<std::string_view> all;
    for (const Kept& one : kept) all.push_back(one.text);
    return all;
  }
  std::vector<Kept> kept;
  int last_version = 0;
};

struct Adding {
  const Block* block = nullptr;
  AddedBlock added = {};
  std::int64_t routine = 0;
  std::int64_t beside = 0;  // the version of it that stands beside, or 0
  std::int64_t swum = 0;    // the version that it is or belongs to
};

struct Given {
  const TableFiles* set = nullptr;
  std::optional<std::int64_t> id;  // once it is kept
};

class KeepingBlocks {
 public:
  KeepingBlocks(Database& db, const std::vector<TableFiles>& editions)
      : db_(db),
        history_(
            db,
            "SELECT id, version, text, edition_id, coalesce(of_routine, 0) FROM block WHERE routine_id = ? "
            "AND what = ? AND date = ? AND title = ? ORDER BY version"),
        // What is swum of a routine is swum under the edition of that.
        insert_(db,
                "INSERT INTO block (routine_id, what, date, title, version, of_routine, edition_id, kept_at, "
                "text, checksum) VALUES (?1, ?2, ?3, ?4, ?5, nullif(?6, 0), coalesce((SELECT edition_id FROM "
                "block WHERE id = ?6), ?7), strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), ?8, ?9)"),
        latest_(db,
                "SELECT id FROM block WHERE routine_id = ? AND title = '' AND what = 'routine' AND date = '' "
                "ORDER BY version DESC LIMIT 1"),
        version_(
            db,
            "SELECT v.version, e.name, (SELECT max(version) FROM block WHERE routine_id = v.routine_id AND "
            "title = '' AND what = 'routine' AND date = '') FROM block v JOIN edition e ON e.id = "
            "v.edition_id WHERE v.id = ?") {
    for (const TableFiles& set : editions) editions_.push_back({&set, find_edition(db, set)});
  }

  std::vector<AddedBlock> keep(const std::vector<Block>& blocks) {
    for (const Block& block : blocks)
      all_.push_back({&block, {}, is_routine(block) ? make_routine(block) : find_routine(block)});
    for (const Group& group : groups(true)) keep_group(group);
    lay_beside();
    for (const Group& group : groups(false)) keep_group(group);
    std::vector<AddedBlock> added;
    for (Adding& one : all_) {
      say_versions(one);
      added.push_back(std::move(one.added));
    }
    return added;
  }

 private:
  // Blocks that are versions of one thing.
  using Group = std::vector<Adding*>;

  // In the order in which the first of each group is given.
  std::vector<Group> groups(bool of_routines) {
    std::vector<Group> all;
    std::unordered_map<std::string, std::size_t> known;
    for (Adding& one : all_) {
      if (is_routine(*one.block) != of_routines) continue;
      const auto [place, is_new] = known.try_emplace(name_of_thing(one), all.size());
      if (is_new) all.emplace_back();
      all[place->second].push_back(&one);
    }
    return all;
  }

  static std::string name_of_thing(const Adding& one) {
    const Block& block = *one.block;
    return fmt::format("{}\x1F{}\x1F{}\x1F{}\x1F{}", one.routine, word_of(block.what), block.date,
                       block.title, block.what == Block::What::run ? one.beside : 0);
  }

  std::int64_t find_routine(const Block& block) {
    const auto [place, is_new] = routines_.try_emplace({block.routine, block.event}, 0);
    if (!is_new) return place->second;
    Statement row(db_, "SELECT id FROM routine WHERE title = ? AND event = ?", block.routine, block.event);
    if (!row.next()) refuse_stray(block);
    return place->second = row.number(0);
  }

  std::int64_t make_routine(const Block& block) {
    Statement(db_, "INSERT INTO routine (title, event) VALUES (?, ?) ON CONFLICT DO NOTHING", block.routine,
              block.event)
        .next();
    return find_routine(block);
  }

  [[noreturn]] void refuse_stray(const Block& block) {
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
  void lay_beside() {
    std::unordered_map<std::int64_t, const Adding*> last;
    for (Adding& one : all_) {
      if (is_routine(*one.block)) {
        last[one.routine] = &one;
      } else if (const auto above = last.find(one.routine); above != last.end()) {
        one.beside = above->second->added.id;
        one.added.beside = above->second->added.version;
      }
      if (one.block->of != 0) one.beside = said_version(one);
    }
  }

  // The version that is said, when it is one of this routine.
  std::int64_t said_version(const Adding& one) {
    const std::int64_t version = one.block->of;
    Statement row(db_, "SELECT 1 FROM block WHERE id = ? AND routine_id = ? AND what = 'routine'", version,
                  one.routine);
    if (!row.next())
      throw Refused({db_.file(), fmt::format("entry {} is no version of \"{}\"", version, one.block->routine),
                     "look it up in the list"});
    return version;
  }

  void say_versions(Adding& one) {
    version_.start(one.swum);
    if (!version_.next()) return;
    if (!is_routine(*one.block)) one.added.of_version = static_cast<int>(version_.number(0));
    one.added.set = version_.text(1);
    one.added.routine_versions = static_cast<int>(version_.number(2));
  }

  void keep_group(const Group& group) {
    const Adding& first = *group.front();
    const Block& name = *first.block;
    history_.start(first.routine, word_of(name.what), name.date, name.title);
    History history(history_, name.what == Block::What::run && first.beside != 0, first.beside);
    std::vector<std::string_view> given;
    for (const Adding* one : group) given.push_back(one->block->text);
    const std::vector<std::size_t> places = kept_before(given, history.texts());
    const std::size_t known = history.kept.size();
    for (std::size_t i = 0; i < group.size(); ++i) {
      const bool as_before = i < places.size() && history.kept.size() == known;
      const Kept* same = as_before ? &history.kept[places[i]] : latest_if(history, given[i]);
      if (same != nullptr && is_another(*group[i]->block, *same, history)) same = nullptr;
      if (same == nullptr)
        write(*group[i], history);
      else
        take(*group[i], *same, AddedBlock::Did::already_there);
    }
  }

  static const Kept* latest_if(const History& history, std::string_view text) {
    return !history.kept.empty() && history.kept.back().text == text ? &history.kept.back() : nullptr;
  }

  // Older versions are history whatever the tables say now; the latest in another edition is a new version.
  bool is_another(const Block& block, const Kept& same, const History& history) {
    if (block.of != 0 && same.home != block.of) return true;
    if (!is_routine(block) || &same != &history.kept.back()) return false;
    Given& edition = editions_.at(block.edition);
    if (!edition.id) edition.id = find_edition(db_, *edition.set);
    return edition.id != same.edition;
  }

  void take(Adding& one, const Kept& kept, AddedBlock::Did did) {
    one.added.did = did;
    one.added.id = kept.id;
    one.added.version = kept.version;
    one.swum = kept.home == 0 ? kept.id : kept.home;
  }

  std::int64_t home_of(const Adding& one, const History& history) {
    if (is_routine(*one.block)) return 0;
    if (one.beside != 0) return one.beside;
    if (!history.kept.empty()) return history.kept.back().home;
    latest_.start(one.routine);
    return latest_.next() ? latest_.number(0) : 0;
  }

  // An edition is kept with the first that needs it, not when all was there already.
  std::int64_t keep_edition_of(const Block& block) {
    Given& edition = editions_.at(block.edition);
    if (!edition.id) edition.id = keep_edition(db_, *edition.set);
    return *edition.id;
  }

  void write(Adding& one, History& history) {
    const Block& block = *one.block;
    const std::int64_t home = home_of(one, history);
    Kept kept{0, home == 0 ? keep_edition_of(block) : 0, home, ++history.last_version, block.text};
    insert_.start(one.routine, word_of(block.what), block.date, block.title, kept.version, home, kept.edition,
                  block.text, checksum_of(block.text));
    kept.id = insert_.new_row();
    take(one, kept, kept.version == 1 ? AddedBlock::Did::added : AddedBlock::Did::new_version);
    history.kept.push_back(std::move(kept));
  }

  Database& db_;
  Statement history_, insert_, latest_, version_;
  std::vector<Given> editions_;
  std::vector<Adding> all_;
  std::map<std::pair<std::string_view, std::string_view>, std::int64_t> routines_;
};

}  // namespace

}  // namespace landdrill::store

namespace landdrill {

Result<std::vector<AddedBlock>> Book::add(const std::vector<Block>& blocks,
                                          const std::vector<TableFiles>& editions) {
  store::Database& db = *season_.db_;
  return store::writing(db, [&] { return store::KeepingBlocks(db, editions).keep(blocks); });
}

}  // namespace landdrill
