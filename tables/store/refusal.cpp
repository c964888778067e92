#include "tables/store/refusal.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace landdrill::store {
namespace {

const char* const nothing_lost = "nothing was changed; ";

Trouble read_only(int code, const std::string& file) {
  switch (code) {
    case SQLITE_READONLY_DIRECTORY:
      return {file, "its folder is read-only, and a change needs a second file beside it for a moment",
              "allow writing in the folder, or work on a copy of the file"};
    case SQLITE_READONLY_ROLLBACK:
    case SQLITE_READONLY_RECOVERY:
      return {file, "a change was interrupted half-way, and taking it back needs to write to the file",
              "allow writing to the file and its folder, then try again"};
    case SQLITE_READONLY_DBMOVED:
      return {file, "the file was moved, replaced or deleted while it was open", "open it again"};
    default:
      return {file, "it is read-only, so nothing can be changed in it",
              fmt::format("allow writing to it (chmod u+w '{}'), or work on a copy", file)};
  }
}

Trouble damaged(const std::string& file, const std::string& message) {
  return {
      file, fmt::format("the file is damaged ({})", message),
      fmt::format(
          "put it aside and go on with your last copy; sqlite3 '{0}' 'PRAGMA quick_check' lists the damage, "
          "sqlite3 '{0}' .recover saves what can still be read",
          file)};
}

}  // namespace

Trouble trouble_of(int code, const std::string& file, const std::string& message) {
  switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return {file, "another program is using it and keeps it locked",
              std::string(nothing_lost) + "close the other program, or wait until it is done, and try again"};
    case SQLITE_READONLY:
      return read_only(code, file);
    case SQLITE_FULL:
      return {file, "there is no space left on the disk",
              std::string(nothing_lost) + "free some space and try again"};
    case SQLITE_IOERR:
      return {file, fmt::format("the disk reports an error ({})", message),
              std::string(nothing_lost) + "copy the file to another disk and try again there"};
    case SQLITE_CANTOPEN:
      return {file, fmt::format("it cannot be opened ({})", message),
              "see whether you may read the file, and write in its folder"};
    case SQLITE_NOTADB:
      return {file, "it is not a season file, nor any other database",
              "name a file that was made as a season file"};
    case SQLITE_CORRUPT:
      return damaged(file, message);
    case SQLITE_NOMEM:
    case SQLITE_TOOBIG:
      return {file, "there is not enough memory for it",
              std::string(nothing_lost) + "close other programs and try again"};
    default:
      return {file, fmt::format("the database refuses ({})", message),
              nothing_lost + std::string("please report this")};
  }
}

Trouble changed_texts(const std::string& file, const std::string& names) {
  return {
      file, fmt::format("the file is damaged (no longer what was kept: {})", names),
      fmt::format("put it aside and go on with your last copy; landdrill book check '{}' says more", file)};
}

}  // namespace landdrill::store
