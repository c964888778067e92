// What goes wrong with a season file, in a coach's words.
//
//   throw Refused(trouble_of(SQLITE_FULL, "club.season", "database or disk is full"))
//   // club.season: there is no space left on the disk
//
// Thrown only here and in season/, where it ends a transaction or many steps half-way; outside it is a Result.
#pragma once

#include <exception>
#include <filesystem>
#include <string>
#include <type_traits>

#include "tables/folder.h"

namespace landdrill::store {

struct Refused : std::exception {
  explicit Refused(Trouble because, int sqlite_code = 0) : trouble(std::move(because)), code(sqlite_code) {}
  const char* what() const noexcept override { return trouble.why.c_str(); }
  Trouble trouble;
  int code;  // SQLite's extended result code; 0 when it is not SQLite that refuses
};

// Given SQLite's extended result code and message.
Trouble trouble_of(int code, const std::string& file, const std::string& message);

// Of texts that are readable and no longer what was kept: given their names.
Trouble changed_texts(const std::string& file, const std::string& names);

// Inside refusals are exceptions, so that a transaction ends at once; outside they are values.
//
//   return attempt([&] { refuse_damaged(db); });   // a Result<void>

template <class Work>
auto attempt(Work work) -> Result<decltype(work())> {
  try {
    if constexpr (std::is_void_v<decltype(work())>) {
      work();
      return {};
    } else {
      return work();
    }
  } catch (const Refused& refused) {
    return tl::unexpected(refused.trouble);
  } catch (const std::filesystem::filesystem_error& error) {
    return tl::unexpected(Trouble{error.path1().string(), error.code().message(), ""});
  }
}

// What a result holds; its trouble goes to the attempt around it.
//
//   attempt([&] { return must(book.text(1)) + must(book.text(2)); })

template <class Value>
Value must(Result<Value> result) {
  if (!result) throw Refused(std::move(result.error()));
  if constexpr (!std::is_void_v<Value>) return std::move(*result);
}

}  // namespace landdrill::store
