#include "tables/store/book.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "grammar/words.h"
#include "tables/store/find_blocks.h"
#include "tables/store/season_file.h"
#include "tables/store/season_inside.h"

namespace landdrill {

using namespace store;

namespace {

constexpr std::string_view words_of_what[] = {"routine", "run", "panel"};

std::vector<TableFile> files_of_edition(Database& db, std::int64_t edition) {
  std::vector<TableFile> files;
  Statement rows(db, "SELECT file, text FROM edition_file WHERE edition_id = ? ORDER BY position", edition);
  while (rows.next()) files.push_back({rows.text(0), rows.text(1)});
  return files;
}

bool same_files(const std::vector<TableFile>& a, const std::vector<TableFile>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const TableFile& one, const TableFile& other) {
    return one.file == other.file && one.text == other.text;
  });
}

std::int64_t new_id(Statement& insert) {
  insert.next();
  const std::int64_t id = insert.number(0);
  insert.next();
  return id;
}

// The edition with these bytes, kept now if it was not there.
std::int64_t keep_edition(Database& db, const TableFiles& set) {
  Statement known(db, "SELECT id FROM edition WHERE name = ?", set.name);
  while (known.next()) {
    if (same_files(files_of_edition(db, known.number(0)), set.files)) return known.number(0);
  }
  Statement insert(db,
                   "INSERT INTO edition (name, kept_at) VALUES (?, strftime('%Y-%m-%dT%H:%M:%SZ', 'now')) "
                   "RETURNING id",
                   set.name);
  const std::int64_t id = new_id(insert);
  Statement file(db, "INSERT INTO edition_file (edition_id, position, file, text) VALUES (?, ?, ?, ?)");
  for (std::size_t i = 0; i < set.files.size(); ++i) file.run(id, i, set.files[i].file, set.files[i].text);
  return id;
}

// Keeps blocks one after the other, inside the caller's transaction.
class Keeping {
 public:
  Keeping(Database& db, const std::vector<TableFiles>& editions)
      : db_(db),
        latest_(db,
                "SELECT id, version, text, edition_id, coalesce(of_routine, 0) FROM block WHERE routine_id = "
                "? AND "
                "what = ? AND date = ? AND title = ? ORDER BY version DESC LIMIT 1"),
        insert_(db,
                "INSERT INTO block (routine_id, what, date, title, version, of_routine, edition_id, kept_at, "
                "text) "
                "VALUES (?, ?, ?, ?, ?, nullif(?, 0), ?, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), ?) RETURNING "
                "id") {
    for (const TableFiles& set : editions) editions_.push_back(keep_edition(db, set));
  }

  AddedBlock keep(const Block& block) {
    const Home home = home_of(block);
    const std::int64_t edition = editions_.at(block.edition);
    latest_.start(home.routine, word_of(block.what), block.date, block.title);
    AddedBlock added;
    if (latest_.next()) {
      const bool same =
          latest_.text(2) == block.text && latest_.number(3) == edition && latest_.number(4) == home.version;
      added = {same ? AddedBlock::Did::already_there : AddedBlock::Did::new_version, latest_.number(0),
               static_cast<int>(latest_.number(1)) + (same ? 0 : 1)};
    }
    if (added.did != AddedBlock::Did::already_there) added.id = write(block, home, edition, added.version);
    if (block.what == Block::What::routine) versions_[{block.routine, block.event}] = added.id;
    return added;
  }

 private:
  // The routine a block belongs to, and for a run or a panel the version of it.
  struct Home {
    std::int64_t routine = 0, version = 0;
  };

  Home home_of(const Block& block) {
    const std::int64_t routine = block.what == Block::What::routine ? routine_made(block) : routine_of(block);
    if (block.what == Block::What::routine) return {routine, 0};
    const auto added_now = versions_.find({block.routine, block.event});
    if (added_now != versions_.end()) return {routine, added_now->second};
    Statement latest(
        db_,
        "SELECT id FROM block WHERE routine_id = ? AND title = '' AND what = 'routine' AND date = '' "
        "ORDER BY version DESC LIMIT 1",
        routine);
    latest.next();
    return {routine, versions_[{block.routine, block.event}] = latest.number(0)};
  }

  std::optional<std::int64_t> find_routine(const Block& block) {
    const auto known = routines_.find({block.routine, block.event});
    if (known != routines_.end()) return known->second;
    Statement row(db_, "SELECT id FROM routine WHERE title = ? AND event = ?", block.routine, block.event);
    if (!row.next()) return std::nullopt;
    return routines_[{block.routine, block.event}] = row.number(0);
  }

  std::int64_t routine_made(const Block& block) {
    if (const auto known = find_routine(block)) return *known;
    Statement insert(db_, "INSERT INTO routine (title, event) VALUES (?, ?) RETURNING id", block.routine,
                     block.event);
    return routines_[{block.routine, block.event}] = new_id(insert);
  }

  std::int64_t routine_of(const Block& block) {
    if (const auto known = find_routine(block)) return *known;
    std::vector<std::string> titles;
    Statement rows(db_, "SELECT DISTINCT title FROM routine ORDER BY title");
    while (rows.next()) titles.push_back(rows.text(0));
    const std::vector<std::string_view> known(titles.begin(), titles.end());
    throw Refused({db_.file(),
                   fmt::format("it has no routine \"{}\" in {}, to which the {} of {} could belong",
                               block.routine, block.event, word_of(block.what), block.date),
                   words::nearest_hint(block.routine, known)});
  }

  std::int64_t write(const Block& block, const Home& home, std::int64_t edition, int version) {
    insert_.start(home.routine, word_of(block.what), block.date, block.title, version, home.version, edition,
                  block.text);
    return new_id(insert_);
  }

  Database& db_;
  Statement latest_, insert_;
  std::vector<std::int64_t> editions_;
  using Name = std::pair<std::string, std::string>;
  std::map<Name, std::int64_t> routines_;
  std::map<Name, std::int64_t> versions_;  // of the routines, the latest
};

std::string text_of(Database& db, std::int64_t block) {
  Statement row(db, "SELECT text FROM block WHERE id = ?", block);
  if (!row.next())
    throw Refused({db.file(), fmt::format("it has no entry {}", block), "look it up in the list"});
  return row.text(0);
}

}  // namespace

std::string_view word_of(Block::What what) {
  return words_of_what[static_cast<std::size_t>(what)];
}

Result<std::vector<AddedBlock>> Book::add(const std::vector<Block>& blocks,
                                          const std::vector<TableFiles>& editions) {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::write);
    std::vector<AddedBlock> added;
    added.reserve(blocks.size());
    {
      Keeping keeping(db, editions);
      for (const Block& block : blocks) added.push_back(keeping.keep(block));
    }
    transaction.commit();
    return added;
  });
}

Result<std::vector<KeptBlock>> Book::find(const BookWish& wish) const {
  return attempt([&] {
    Transaction transaction(season_.inside_->db, Transaction::Kind::read);
    return find_blocks(season_.inside_->db, wish);
  });
}

Result<std::string> Book::text(std::int64_t block) const {
  return attempt([&] { return text_of(season_.inside_->db, block); });
}

Result<std::string> Book::sheet(std::int64_t routine) const {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::read);
    std::string sheet = text_of(db, routine);
    Statement rows(
        db,
        "SELECT text FROM block b WHERE of_routine = ? AND version = (SELECT max(v.version) FROM block v "
        "WHERE v.routine_id = b.routine_id AND v.what = b.what AND v.date = b.date AND v.title = b.title) "
        "ORDER BY what = 'panel', date, title",
        routine);
    while (rows.next()) sheet += "\n" + rows.text(0);
    return sheet;
  });
}

Result<TableFiles> Book::edition(std::int64_t edition) const {
  return attempt([&] {
    Database& db = season_.inside_->db;
    Transaction transaction(db, Transaction::Kind::read);
    Statement row(db, "SELECT name FROM edition WHERE id = ?", edition);
    if (!row.next())
      throw Refused({db.file(), fmt::format("it has no edition {}", edition), "look it up in the list"});
    return TableFiles{row.text(0), db.file() + "/" + row.text(0) + "/", files_of_edition(db, edition)};
  });
}

Result<void> Book::back_up(const std::filesystem::path& to) const {
  return attempt([&] {
    if (std::filesystem::exists(to))
      throw Refused({to.string(), "there is a file of this name already", "name a new file for the backup"});
    Database copy(to, Database::Access::create);
    copy.copy_from(season_.inside_->db);
    refuse_damaged(copy);
  });
}

Result<void> Book::restore(const std::filesystem::path& backup) {
  return attempt([&] {
    Database kept = open_season_file(backup, Season::Mode::read);
    refuse_damaged(kept);
    season_.inside_->db.copy_from(kept);
  });
}

}  // namespace landdrill
