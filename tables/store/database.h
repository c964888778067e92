// A thin layer over the C API of SQLite: a database, its statements, a transaction; nothing is left open or
// locked.
//
//   Statement rows(db, "SELECT name FROM value_set WHERE id > ?", 3);
//   while (rows.next()) names.push_back(rows.text(0));
//
// A database belongs to one thread at a time. Whatever SQLite refuses is thrown as Refused (refusal.h), and
// the transaction around it takes everything back.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "tables/store/refusal.h"  // IWYU pragma: export

namespace landdrill::store {

// A number kept beside a text, so that a text that was damaged on the disk is noticed.
//
//   checksum_of("")      // -3750763034362895579, that is 0xCBF29CE484222325
//
// FNV-1a with 64 bits (Fowler, Noll and Vo). Finds accidents, not forgery.

constexpr std::int64_t checksum_of(std::string_view text) {
  std::uint64_t sum = 0xCBF29CE484222325u;
  for (const char byte : text) sum = (sum ^ static_cast<unsigned char>(byte)) * 0x100000001B3u;
  return static_cast<std::int64_t>(sum);
}

}  // namespace landdrill::store

struct sqlite3;
struct sqlite3_stmt;

namespace landdrill::store {

class Database {
 public:
  enum class Access { read, write, create };
  // Opens the file; SQLite reads it only when it is first asked something.
  Database(const std::filesystem::path& file, Access access);
  // An empty database in memory that is called `name` in messages.
  static Database in_memory(const std::string& name);

  // Any number of statements without parameters, whose rows do not matter.
  void run(const char* sql);
  // The number in the first column of the first row: run_number("PRAGMA user_version").
  std::int64_t number(const char* sql);
  // Replaces everything in this database by what is in `other`.
  void copy_from(Database& other);
  bool is_read_only() const;
  // Whether it waits long for a lock that another program has.
  void be_patient(bool patient);

  const std::string& file() const { return file_; }
  sqlite3* raw() const { return connection_.get(); }
  [[noreturn]] void refuse() const;  // throws what SQLite said last
  void check(int code) const;

 private:
  Database(const std::string& path, const std::string& name, int flags);
  struct Close {
    void operator()(sqlite3* connection) const;
  };
  std::string file_;
  std::unique_ptr<sqlite3, Close> connection_;
};

// A prepared statement with its parameters.
class Statement {
 public:
  template <class... Values>
  Statement(const Database& db, std::string_view sql, const Values&... values)
      : Statement(db, sql, Prepare{}) {
    bind_all(values...);
  }
  // The next row, if there is one.
  bool next();
  // Runs once more, to the end, with other values.
  template <class... Values>
  void run(const Values&... values) {
    start(values...);
    while (next()) {
    }
  }

  // Runs an INSERT to its end: the number of the new row.
  std::int64_t new_row();

  // Ready to be asked for rows once more, with other values.
  template <class... Values>
  void start(const Values&... values) {
    restart();
    bind_all(values...);
  }

  // Columns of the current row, counted from 0.
  std::int64_t number(int column) const;
  std::string text(int column) const { return std::string(view(column)); }
  std::string_view view(int column) const;  // until the next row
  bool is_null(int column) const;

 private:
  struct Prepare {};
  Statement(const Database& db, std::string_view sql, Prepare);
  template <class... Values>
  void bind_all(const Values&... values) {
    int place = 0;
    (bind(++place, values), ...);
  }
  void restart();
  void bind(int place, std::int64_t value);
  void bind(int place, int value) { bind(place, std::int64_t{value}); }
  void bind(int place, std::size_t value) { bind(place, static_cast<std::int64_t>(value)); }
  void bind(int place, std::string_view value);
  void bind(int place, const std::string& value) { bind(place, std::string_view(value)); }
  void bind(int place, const char* value) { bind(place, std::string_view(value)); }
  void bind(int place, const std::optional<std::string>& value);

  struct Finalize {
    void operator()(sqlite3_stmt* statement) const;
  };
  const Database& db_;
  std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

// All or nothing: what is not committed when it goes out of scope never happened. One inside another belongs
// to the outer one, and may still be taken back by itself.
class Transaction {
 public:
  enum class Kind { read, write };  // read: what is read belongs together; write: others wait from the start
  Transaction(Database& db, Kind kind);
  ~Transaction();
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  void commit();

 private:
  Database& db_;
  bool inner_ = false;
  bool open_ = true;
};

// Work in a transaction of its own, as a value outside.
//
//   return reading(db, [&] { return block_text(db, block); });   // a Result

template <class Work>
auto attempt_in(Database& db, Transaction::Kind kind, Work work) {
  return attempt([&]() -> decltype(work()) {
    Transaction transaction(db, kind);
    if constexpr (std::is_void_v<decltype(work())>) {
      work();
      transaction.commit();
    } else {
      auto done = work();
      transaction.commit();
      return done;
    }
  });
}
template <class Work>
auto reading(Database& db, Work work) {
  return attempt_in(db, Transaction::Kind::read, work);
}
template <class Work>
auto writing(Database& db, Work work) {
  return attempt_in(db, Transaction::Kind::write, work);
}

}  // namespace landdrill::store
