// Inserts the rows of a list of marks into one STRICT table of SQLite, in one transaction, and does nothing else: what
// an import of the list is measured against. Prints the seconds of the transaction, and those with reading the list.
//
//   bare_rows marks.csv /tmp/rows.db     // 0.912 1.034
//
// The table has neither index nor check; the file is as safe against a power cut as a season file is.
#include <sqlite3.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "tests/bench/demo_set.h"

namespace {

using Clock = std::chrono::steady_clock;

void run(sqlite3* db, const char* sql) {
  if (sqlite3_exec(db, sql, nullptr, nullptr, nullptr) == SQLITE_OK) return;
  std::fprintf(stderr, "bare_rows: %s\n", sqlite3_errmsg(db));
  std::exit(3);
}

std::vector<std::string_view> cells_of(std::string_view text) {
  std::vector<std::string_view> cells;
  text.remove_prefix(text.find('\n') + 1);
  while (!text.empty()) {
    const std::size_t end = text.find_first_of(",\n");
    cells.push_back(text.substr(0, end));
    text.remove_prefix(end + 1);
  }
  return cells;
}

void insert_all(sqlite3* db, const std::vector<std::string_view>& cells) {
  sqlite3_stmt* insert = nullptr;
  sqlite3_prepare_v2(db, "INSERT INTO mark VALUES (?, ?, ?, ?, ?, ?)", -1, &insert, nullptr);
  for (std::size_t i = 0; i < cells.size(); i += 6) {
    for (int column = 0; column < 6; ++column) {
      const std::string_view cell = cells[i + static_cast<std::size_t>(column)];
      if (column == 4) {
        sqlite3_bind_int(insert, column + 1, cell[0] - '0');
      } else {
        sqlite3_bind_text(insert, column + 1, cell.data(), static_cast<int>(cell.size()), SQLITE_STATIC);
      }
    }
    if (sqlite3_step(insert) != SQLITE_DONE) run(db, "SELECT 1/0 FROM no_such_table");
    sqlite3_reset(insert);
  }
  sqlite3_finalize(insert);
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) return std::fputs("usage: bare_rows LIST DATABASE\n", stderr), 2;
  const auto start = Clock::now();
  const std::string text = landdrill::bench::whole_text(argv[1]);
  const std::vector<std::string_view> cells = cells_of(text);
  sqlite3* db = nullptr;
  if (sqlite3_open(argv[2], &db) != SQLITE_OK) return 3;
  run(db, "PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA");
  run(db,
      "CREATE TABLE mark (date TEXT, meet TEXT, routine TEXT, element TEXT, judge INTEGER, mark TEXT) "
      "STRICT");
  const auto begin = Clock::now();
  run(db, "BEGIN IMMEDIATE");
  insert_all(db, cells);
  run(db, "COMMIT");
  const auto end = Clock::now();
  const std::chrono::duration<double> inserting = end - begin, all = end - start;
  std::printf("%.3f %.3f\n", inserting.count(), all.count());
  return sqlite3_close(db) == SQLITE_OK ? 0 : 3;
}
