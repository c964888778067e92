// What the tests of the tables share: numbers, the little set of tests/bad/tables/base, and its variations.
//
//   load(with(base_set(), "parts.csv", "code,...\n"))
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "tables/decimal.h"
#include "tables/folder.h"
#include "tables/load.h"

namespace landdrill::test {

Decimal d(std::string_view text);    // aborts when the test itself is wrong
Exact exact(std::string_view text);  // "6.25", "-20/3", of any size that stays exact

// As in tests/bad/tables/base, with no place before the file names.
const TableFiles& base_set();
// The set with this file added or replaced.
TableFiles with(TableFiles files, std::string_view file, std::string_view text);
TableFiles without(TableFiles files, std::string_view file);
// The set with the first `from` in this file replaced; aborts when there is none.
TableFiles edited(TableFiles files, std::string_view file, std::string_view from, std::string_view to);
std::string text_of(const TableFiles& files, std::string_view file);

// All messages of loading the set.
std::string messages(const TableFiles& files);

// A folder that is gone when the test is over.
class ScratchFolder {
 public:
  ScratchFolder();
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;
  ~ScratchFolder();
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};
std::string bytes_of(const std::filesystem::path& file);
void put_bytes(const std::filesystem::path& file, std::string_view bytes);

}  // namespace landdrill::test
