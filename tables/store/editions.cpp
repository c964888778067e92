#include "tables/store/editions.h"

#include <sqlite3.h>

#include <algorithm>

#include "grammar/diagnostics.h"
#include "tables/csv.h"
#include "tables/load.h"
#include "tables/read_table.h"
#include "tables/store/checksum.h"
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

}  // namespace landdrill::store
