// Writes made-up sheets to standard output as one stream, and their numbers as tables for SQLite and R.
//
//   make_sheets 100000 --tables /tmp/facts > /tmp/made.sheet
//   make_sheets 5000 --files /tmp/made/             # a file each, made/0000000.sheet ...
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <optional>

#include "tests/bench/demo_set.h"
#include "tests/bench/fact_tables.h"

namespace {

using namespace landdrill::bench;

bool write_file(const std::string& folder, std::uint64_t number, const std::string& text) {
  char name[32];
  std::snprintf(name, sizeof name, "%07llu.sheet", static_cast<unsigned long long>(number));
  std::FILE* file = std::fopen((std::filesystem::path(folder) / name).c_str(), "w");
  if (file == nullptr) return false;
  const bool whole = std::fwrite(text.data(), 1, text.size(), file) == text.size();
  return std::fclose(file) == 0 && whole;
}

}  // namespace

int main(int argc, char** argv) {
  const bool to_tables = argc == 4 && std::strcmp(argv[2], "--tables") == 0;
  const bool to_files = argc == 4 && std::strcmp(argv[2], "--files") == 0;
  if (argc != 2 && !to_tables && !to_files) {
    std::fputs("usage: make_sheets COUNT [--tables FOLDER | --files FOLDER]\n", stderr);
    return 2;
  }
  const std::uint64_t count = std::strtoull(argv[1], nullptr, 10);
  const SheetMaker maker(demo_set());
  std::optional<FactTables> tables;
  if (to_tables) tables.emplace(argv[3], demo_set());
  if (to_files) std::filesystem::create_directories(argv[3]);
  for (std::uint64_t number = 0; number < count; ++number) {
    const MadeSheet made = maker.make(number);
    if (tables) tables->add(number, made);
    const bool written = to_files
                             ? write_file(argv[3], number, made.text)
                             : std::fwrite(made.text.data(), 1, made.text.size(), stdout) == made.text.size();
    if (!written) return std::perror("make_sheets"), 3;
  }
  return std::fflush(stdout) == 0 ? 0 : 3;
}
