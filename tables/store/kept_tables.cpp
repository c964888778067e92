#include "tables/store/kept_tables.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <filesystem>

#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/read_table.h"
#include "tables/store/refusal.h"

namespace landdrill::store {
namespace {

std::int64_t put_file(Database& db, SetId set, std::size_t position, const std::string& file,
                      const CsvTable& table) {
  Statement insert(
      db, "INSERT INTO table_file (set_id, position, file, before, separator) VALUES (?, ?, ?, ?, ?)", set,
      position, file, table.before, std::string(1, table.separator));
  return insert.new_row();
}

void put_rows(Database& db, std::int64_t file, const CsvTable& table) {
  Statement insert_row(db, "INSERT INTO table_row (file_id, row, ending) VALUES (?, ?, ?)");
  Statement insert_cell(db, "INSERT INTO cell (file_id, row, column, raw) VALUES (?, ?, ?, ?)");
  for (std::size_t row = 0; row <= table.rows.size(); ++row) {
    const CsvRow& cells = row == 0 ? table.header : table.rows[row - 1];
    insert_row.run(file, row, cells.ending);
    for (std::size_t column = 0; column < cells.cells.size(); ++column) {
      insert_cell.run(file, row, column, cells.cells[column].raw);
    }
  }
}

// The cells with everything around them.
std::string kept_text(Database& db, std::int64_t file, std::string_view before, std::string_view separator) {
  std::string text(before);
  Statement rows(db, "SELECT row, ending FROM table_row WHERE file_id = ? ORDER BY row", file);
  Statement cells(db, "SELECT raw FROM cell WHERE file_id = ? AND row = ? ORDER BY column");
  while (rows.next()) {
    cells.start(file, rows.number(0));
    for (bool first = true; cells.next(); first = false) {
      if (!first) text += separator;
      text += cells.view(0);
    }
    text += rows.view(1);
  }
  return text;
}

std::int64_t file_id_of(Database& db, SetId set, const std::string& file) {
  Statement find(db, "SELECT id FROM table_file WHERE set_id = ? AND file = ?", set, file);
  if (!find.next()) throw Refused({db.file(), fmt::format("the set has no {} any more", file), ""});
  return find.number(0);
}

std::vector<std::string> set_names(Database& db) {
  std::vector<std::string> names;
  Statement all(db, "SELECT name FROM value_set ORDER BY name");
  while (all.next()) names.push_back(all.text(0));
  return names;
}

}  // namespace

std::optional<SetId> find_set_id(Database& db, std::string_view name) {
  Statement find(db, "SELECT id FROM value_set WHERE name = ?", name);
  if (!find.next()) return std::nullopt;
  return find.number(0);
}

SetId set_id_of(Database& db, std::string_view name) {
  if (const auto id = find_set_id(db, name)) return *id;
  const std::vector<std::string> names = set_names(db);
  const std::vector<std::string_view> known(names.begin(), names.end());
  std::string hint = words::nearest_hint(name, known);
  if (hint.empty()) {
    hint = names.empty() ? "no set was imported so far" : fmt::format("it holds {}", fmt::join(names, ", "));
  }
  throw Refused({db.file(), fmt::format("it holds no value set \"{}\"", name), hint});
}

std::string place_of_set(const Database& db, std::string_view set) {
  return fmt::format("{}/{}/", std::filesystem::path(db.file()).filename().string(), set);
}

std::size_t count_rows(const std::vector<TableFile>& files) {
  const auto is_filled = [](const CsvRow& row) {
    return std::any_of(row.cells.begin(), row.cells.end(),
                       [](const CsvCell& cell) { return !cell.raw.empty(); });
  };
  std::ptrdiff_t rows = 0;
  for (const TableFile& file : files) {
    const CsvTable table = read_csv({file.file, file.text}).table;
    rows += std::count_if(table.rows.begin(), table.rows.end(), is_filled);
  }
  return static_cast<std::size_t>(rows);
}

void put_files(Database& db, SetId set, const std::vector<TableFile>& files) {
  for (std::size_t position = 0; position < files.size(); ++position) {
    const TableFile& file = files[position];
    const CsvTable table = read_csv({file.file, file.text}).table;
    if (write_csv(table) != file.text)
      throw Refused({file.file, "it cannot be kept byte for byte", "please report this, with the file"});
    put_rows(db, put_file(db, set, position, file.file, table), table);
  }
}

void drop_files(Database& db, SetId set) {
  Statement(db, "DELETE FROM table_file WHERE set_id = ?", set).next();
}

std::vector<TableFile> kept_files(Database& db, SetId set) {
  std::vector<TableFile> kept;
  Statement files(db, "SELECT id, file, before, separator FROM table_file WHERE set_id = ? ORDER BY position",
                  set);
  while (files.next())
    kept.push_back({files.text(1), kept_text(db, files.number(0), files.view(2), files.view(3))});
  return kept;
}

std::optional<std::string> kept_cell(Database& db, SetId set, const CellPlace& place) {
  Statement find(db, "SELECT raw FROM cell WHERE file_id = ? AND row = ? AND column = ?",
                 file_id_of(db, set, place.file), place.row, place.column);
  if (!find.next()) return std::nullopt;
  return find.text(0);
}

void put_cell(Database& db, SetId set, const CellPlace& place, std::string_view raw) {
  Statement put(db, "UPDATE cell SET raw = ? WHERE file_id = ? AND row = ? AND column = ?", raw,
                file_id_of(db, set, place.file), place.row, place.column);
  put.next();
}

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
