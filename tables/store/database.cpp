#include "tables/store/database.h"

#include <fmt/format.h>
#include <sqlite3.h>

#include <cstring>

#include "tables/store/refusal.h"

namespace landdrill::store {
namespace {

// How long a writer waits for another before it gives up, in milliseconds: longer than any edit takes.
constexpr int patience = 2000, long_patience = 30000;  // milliseconds

// checksum_of(text) in SQL.
void sum_text(sqlite3_context* context, int, sqlite3_value** values) {
  const auto* bytes = reinterpret_cast<const char*>(sqlite3_value_text(values[0]));
  const auto size = static_cast<std::size_t>(sqlite3_value_bytes(values[0]));
  sqlite3_result_int64(context,
                       checksum_of(bytes == nullptr ? std::string_view() : std::string_view(bytes, size)));
}

int flags_for(Database::Access access) {
  if (access == Database::Access::read) return SQLITE_OPEN_READONLY;
  return SQLITE_OPEN_READWRITE | (access == Database::Access::create ? SQLITE_OPEN_CREATE : 0);
}

}  // namespace

void Database::Close::operator()(sqlite3* connection) const {
  sqlite3_close_v2(connection);
}
void Statement::Finalize::operator()(sqlite3_stmt* statement) const {
  sqlite3_finalize(statement);
}

// Absolute, because SQLite takes a few relative names, such as ":memory:", for something else than a file.
Database::Database(const std::filesystem::path& file, Access access)
    : Database(std::filesystem::absolute(file).string(), file.string(), flags_for(access)) {}

Database Database::in_memory(const std::string& name) {
  return Database(":memory:", name, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE);
}

Database::Database(const std::string& path, const std::string& name, int flags) : file_(name) {
  sqlite3* connection = nullptr;
  constexpr int always = SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOMUTEX;
  const int code = sqlite3_open_v2(path.c_str(), &connection, flags | always, nullptr);
  connection_.reset(connection);
  if (code != SQLITE_OK) refuse();
  sqlite3_busy_timeout(connection, patience);
  check(sqlite3_create_function(connection, "checksum_of", 1, SQLITE_UTF8 | SQLITE_DETERMINISTIC, nullptr,
                                sum_text, nullptr, nullptr));
}

void Database::be_patient(bool patient) {
  sqlite3_busy_timeout(connection_.get(), patient ? long_patience : patience);
}

void Database::refuse() const {
  sqlite3* const connection = connection_.get();
  if (connection == nullptr) throw Refused(trouble_of(SQLITE_NOMEM, file_, ""), SQLITE_NOMEM);
  const int code = sqlite3_extended_errcode(connection);
  std::string message = sqlite3_errmsg(connection);
  const int reason = sqlite3_system_errno(connection);
  if ((code & 0xff) == SQLITE_CANTOPEN && reason != 0) message = std::strerror(reason);
  throw Refused(trouble_of(code, file_, message), code);
}

void Database::check(int code) const {
  if (code != SQLITE_OK) refuse();
}

void Database::run(const char* sql) {
  check(sqlite3_exec(raw(), sql, nullptr, nullptr, nullptr));
}

std::int64_t Database::number(const char* sql) {
  Statement statement(*this, sql);
  return statement.next() ? statement.number(0) : 0;
}

void Database::copy_from(Database& other) {
  sqlite3_backup* backup = sqlite3_backup_init(raw(), "main", other.raw(), "main");
  if (backup == nullptr) refuse();
  const int code = sqlite3_backup_step(backup, -1);
  sqlite3_backup_finish(backup);
  if (code != SQLITE_DONE) throw Refused(trouble_of(code, file_, sqlite3_errstr(code)), code);
}

bool Database::is_read_only() const {
  return sqlite3_db_readonly(raw(), "main") == 1;
}

Statement::Statement(const Database& db, std::string_view sql, Prepare) : db_(db) {
  sqlite3_stmt* statement = nullptr;
  db.check(sqlite3_prepare_v2(db.raw(), sql.data(), static_cast<int>(sql.size()), &statement, nullptr));
  statement_.reset(statement);
}

bool Statement::next() {
  const int code = sqlite3_step(statement_.get());
  if (code == SQLITE_ROW) return true;
  if (code != SQLITE_DONE) db_.refuse();
  return false;
}

// Not with RETURNING, for which SQLite makes a table of its own each time.
std::int64_t Statement::new_row() {
  while (next()) {
  }
  return sqlite3_last_insert_rowid(db_.raw());
}

// An error of the last run was thrown when it happened; reset only repeats it.
void Statement::restart() {
  sqlite3_reset(statement_.get());
}

void Statement::bind(int place, std::int64_t value) {
  db_.check(sqlite3_bind_int64(statement_.get(), place, value));
}

// SQLite copies the text: a caller's temporary may be gone before the statement runs.
void Statement::bind(int place, std::string_view value) {
  const char* const bytes = value.data() == nullptr ? "" : value.data();
  db_.check(sqlite3_bind_text64(statement_.get(), place, bytes, value.size(), SQLITE_TRANSIENT, SQLITE_UTF8));
}

void Statement::bind(int place, const std::optional<std::string>& value) {
  if (value) return bind(place, std::string_view(*value));
  db_.check(sqlite3_bind_null(statement_.get(), place));
}

std::int64_t Statement::number(int column) const {
  return sqlite3_column_int64(statement_.get(), column);
}

std::string_view Statement::view(int column) const {
  const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(statement_.get(), column));
  if (bytes == nullptr) return {};
  return {bytes, static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column))};
}

bool Statement::is_null(int column) const {
  return sqlite3_column_type(statement_.get(), column) == SQLITE_NULL;
}

// A writer takes its lock at once: two that both read first and then wanted to write would lock each other
// out.
Transaction::Transaction(Database& db, Kind kind) : db_(db), inner_(sqlite3_get_autocommit(db.raw()) == 0) {
  db_.run(inner_ ? "SAVEPOINT inner_one" : kind == Kind::write ? "BEGIN IMMEDIATE" : "BEGIN");
}

// After some errors (a full disk) SQLite has rolled back by itself; then there is nothing left to do.
Transaction::~Transaction() {
  if (open_ && sqlite3_get_autocommit(db_.raw()) == 0) {
    sqlite3_exec(db_.raw(), inner_ ? "ROLLBACK TO inner_one; RELEASE inner_one" : "ROLLBACK", nullptr,
                 nullptr, nullptr);
  }
}

void Transaction::commit() {
  db_.run(inner_ ? "RELEASE inner_one" : "COMMIT");
  open_ = false;
}

}  // namespace landdrill::store
