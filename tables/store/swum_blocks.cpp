#include "tables/store/swum_blocks.h"

#include <sqlite3.h>

#include <algorithm>
#include <tuple>

#include "grammar/diagnostics.h"
#include "tables/csv.h"
#include "tables/load.h"
#include "tables/read_table.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"
#include "tables/store/refusal.h"

namespace landdrill::store {

std::optional<std::int64_t> find_edition(Database& db, const TableFiles& set) {
  Statement known(db, "SELECT id FROM edition WHERE name = ?", set.name);
  while (known.next()) {
    if (same_files(files_of_edition(db, known.number(0)), set.files)) return known.number(0);
  }
  return std::nullopt;
}

std::int64_t keep_edition(Database& db, const TableFiles& set) {
  if (const auto known = find_edition(db, set)) return *known;
  Statement insert(
      db, "INSERT INTO edition (name, kept_at) VALUES (?, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'))", set.name);
  const std::int64_t id = insert.new_row();
  Statement file(
      db, "INSERT INTO edition_file (edition_id, position, file, text, checksum) VALUES (?, ?, ?, ?, ?)");
  for (std::size_t i = 0; i < set.files.size(); ++i)
    file.run(id, i, set.files[i].file, set.files[i].text, checksum_of(set.files[i].text));
  return id;
}

std::vector<TableFile> files_of_edition(Database& db, std::int64_t edition) {
  std::vector<TableFile> files;
  Statement rows(db, "SELECT file, text, checksum FROM edition_file WHERE edition_id = ? ORDER BY position",
                 edition);
  while (rows.next()) {
    files.push_back({rows.text(0), rows.text(1)});
    if (!rows.is_null(2) && rows.number(2) != checksum_of(files.back().text))
      throw Refused(changed_texts(db.file(), rows.text(0) + " of a value set"), SQLITE_CORRUPT);
  }
  return files;
}

std::vector<KeptEdition> kept_editions(Database& db) {
  std::vector<KeptEdition> editions;
  Statement rows(
      db,
      "SELECT e.id, e.name, e.kept_at, coalesce(r.title, '') FROM edition e "
      "LEFT JOIN (SELECT edition_id, min(id) AS id FROM block GROUP BY edition_id) f ON f.edition_id = e.id "
      "LEFT JOIN block b ON b.id = f.id LEFT JOIN routine r ON r.id = b.routine_id ORDER BY e.id");
  while (rows.next()) {
    const SetFace face = face_of(files_of_edition(db, rows.number(0)));
    editions.push_back({rows.number(0), rows.text(1), face.title, face.edition, rows.text(2), rows.text(3)});
  }
  return editions;
}

SetFace face_of(const std::vector<TableFile>& files) {
  SetFace face;
  for (const TableFile& file : files) {
    if (file.file != "set.csv") continue;
    Diagnostics ignored;
    const ReadTable set = read_table(*find_table("set"), {file.file, file.text}, ignored);
    for (const CsvRow& row : set.csv.rows) {
      if (is_blank(row)) continue;
      face = {std::string(set.text(row, "title")), std::string(set.text(row, "edition"))};
    }
  }
  return face;
}

namespace {

// All versions of a name follow each other, the first one first. Every column is in the index of names.
std::string names_of_routine(bool all) {
  const std::string wished =
      "AND (?2 = '' OR what = ?2) AND (?3 = '' OR date >= ?3) AND (?4 = '' OR date <= ?4) ";
  return "SELECT id, title, what = 'panel', date FROM block WHERE routine_id = (SELECT routine_id FROM block "
         "WHERE id = ?1) AND what <> 'routine' " +
         (all ? "" : wished) + "ORDER BY title, what, date, version";
}

// Somebody may have added one meanwhile.
constexpr std::string_view how_many_versions =
    "SELECT count(*) FROM block WHERE routine_id = (SELECT routine_id FROM block WHERE id = ?) AND title = "
    "'' AND "
    "what = 'routine'";

class Swum {
 public:
  Swum(Database& db, std::span<const std::int64_t> versions, const BookWish& wish)
      : versions_(versions), home_(db, "SELECT of_routine FROM block WHERE id = ?"), all_(versions.size()) {
    Statement title(db, "SELECT title FROM routine WHERE id = (SELECT routine_id FROM block WHERE id = ?)",
                    versions.front());
    if (title.next()) words_ = words_not_in(title.text(0), words_of(wish.words));
    Statement count(db, how_many_versions, versions.front());
    only_one_ = count.next() && count.number(0) == 1;
    const std::string_view what = wish.what ? word_of(*wish.what) : std::string_view();
    const bool all = what.empty() && wish.from.empty() && wish.until.empty();
    Statement names(db, names_of_routine(all), versions.front());
    if (!all) names.start(versions.front(), what, wish.from, wish.until);
    while (names.next()) take(names);
    put_in();
  }
  // Runs and panels in the order of a sheet.
  std::vector<SwumWith> in_order() {
    const auto by_day = [](const Name& a, const Name& b) {
      return std::tie(a.date, a.title) < std::tie(b.date, b.title);
    };
    for (std::size_t i = 0; i < all_.size(); ++i) {
      std::sort(panels_[i].begin(), panels_[i].end(), by_day);
      for (const Name& panel : panels_[i]) all_[i].panels.push_back(panel.id);
      std::sort(all_[i].runs.begin(), all_[i].runs.end());
    }
    return std::move(all_);
  }

 private:
  struct Name {
    std::int64_t id = 0;
    std::string date, title;
    bool panel = false;
  };

  void take(const Statement& row) {
    if (row.view(1) != title_ || !any_title_) {
      title_ = row.text(1);
      any_title_ = true;
      fits_ = words_.empty() || words_not_in(title_, words_).empty();
    }
    if (!fits_) return;
    const bool panel = row.number(2) != 0;
    if (last_ && last_->panel == panel && last_->date == row.view(3) && last_->title == title_) {
      const std::int64_t id = row.number(0);
      // Of a panel the latest words, of a run those beside the first version that had it.
      if (panel || home_of(id) < home_of(last_->id)) last_->id = id;
      return;
    }
    put_in();
    last_ = Name{row.number(0), row.text(3), title_, panel};
  }

  void put_in() {
    if (!last_) return;
    const auto at = std::find(versions_.begin(), versions_.end(), home_of(last_->id));
    if (at == versions_.end()) return;
    const auto place = static_cast<std::size_t>(at - versions_.begin());
    if (last_->panel)
      panels_[place].push_back(std::move(*last_));
    else
      all_[place].runs.emplace_back(last_->date, last_->title);
  }

  std::int64_t home_of(std::int64_t block) {
    if (only_one_) return versions_.front();
    home_.start(block);
    return home_.next() ? home_.number(0) : 0;
  }

  const std::span<const std::int64_t> versions_;
  Statement home_;
  std::vector<std::string> words_;  // that the routine's title has not
  std::string title_;
  bool only_one_ = false, any_title_ = false, fits_ = true;
  std::optional<Name> last_;
  std::vector<SwumWith> all_;
  std::vector<std::vector<Name>> panels_{all_.size()};
};

}  // namespace

std::vector<SwumWith> swum_blocks(Database& db, std::span<const std::int64_t> versions,
                                  const BookWish& wish) {
  return versions.empty() ? std::vector<SwumWith>() : Swum(db, versions, wish).in_order();
}

}  // namespace landdrill::store
