// What the season tests share: a folder of their own, a small invented set, and children to be killed.
#pragma once

#include <gtest/gtest.h>
#include <sys/types.h>

#include <filesystem>
#include <functional>
#include <string>

#include "tables/store/season.h"

namespace landdrill {

// A set in several dialects of CSV: byte order mark, CRLF, semicolons, quoted cells, a column of the coach's
// own, an empty line, a last line without an ending.
TableFiles odd_set();
// The texts of a set, one after the other with their names: for comparing.
std::string bytes_of(const TableFiles& files);
// The same bytes but for the first `before`, which must be there.
std::string with_change(std::string bytes, std::string_view before, std::string_view after);

std::string text_of(const std::filesystem::path& file);

// A folder that is gone after the test.
class SeasonTest : public testing::Test {
 protected:
  SeasonTest();
  ~SeasonTest() override;
  std::filesystem::path folder;
  std::filesystem::path file;  // folder / "club.season", not made yet

  // The season file with odd_set() in it.
  Season season_with_set() const;
  Season open(Season::Mode mode) const;
  std::string exported() const;
  std::string bytes_on_disk() const;
  void write_file(std::string_view bytes) const;
};

// "what: why (hint)", or "" when there was no trouble.
template <class T>
std::string trouble_in(const Result<T>& result) {
  if (result) return {};
  return result.error().what + ": " + result.error().why + " (" + result.error().hint + ")";
}

// Runs `work` in a child process and returns what it returns, or how the child ended.
std::string in_child(const std::function<std::string()>& work);

}  // namespace landdrill
