// The numbers of made-up sheets as CSV tables, one row one fact, whole numbers only: for SQLite and R to add up.
//
//   FactTables tables("/tmp/facts", set);   tables.add(17, sheet);
//
// Marks and difficulties are in hundredths, factors in tenths, points in ten-thousandths.
#pragma once

#include <cstdio>
#include <filesystem>
#include <map>
#include <string>

#include "tests/bench/sheet_maker.h"

namespace landdrill::bench {

class FactTables {
 public:
  // Writes the tables of the set at once. Throws std::runtime_error when the folder refuses.
  FactTables(const std::filesystem::path& folder, const ValueSet& set);
  ~FactTables();
  void add(std::uint64_t sheet, const MadeSheet& made);

 private:
  // A line of `table`, whose file is opened at the first.
  template <class... Numbers>
  void row(const char* table, Numbers... numbers);
  std::FILE* file(const std::string& table);
  void write_set(const ValueSet& set);
  void add_run(std::uint64_t sheet, std::size_t run, const MadeRun& made);
  void add_panel(std::uint64_t sheet, const MadePanel& made);
  void add_uses(std::uint64_t sheet, std::size_t run, const std::vector<MadeUse>& sync,
                const std::vector<MadeUse>& penalties);
  void add_marks(std::uint64_t sheet, std::size_t line, bool base, const MadeMarks& marks);

  std::filesystem::path folder_;
  std::map<std::string, std::FILE*> files_;
};

}  // namespace landdrill::bench
