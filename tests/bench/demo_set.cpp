#include "tests/bench/demo_set.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <iterator>

#include "tables/folder.h"
#include "tests/bench/sheet_maker.h"

namespace landdrill::bench {
namespace fs = std::filesystem;
namespace {

[[noreturn]] void give_up(const std::string& why) {
  std::fputs(("bench: " + why + "\n").c_str(), stderr);
  std::exit(3);
}

TableFiles read_demo_tables() {
  auto files = read_folder(source_folder() / "tables" / "data" / "kingfisher-2026");
  if (!files) give_up(to_string(files.error()));
  return std::move(*files);
}

ValueSet load_demo_set() {
  Loaded loaded = load(demo_tables());
  if (!loaded.set) give_up(to_string(loaded.diagnostics));
  return std::move(*loaded.set);
}

}  // namespace

fs::path source_folder() {
  return LANDDRILL_SOURCE;
}

std::string whole_text(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  if (!in) give_up("cannot read " + file.string());
  return {std::istreambuf_iterator<char>(in), {}};
}

const TableFiles& demo_tables() {
  static const TableFiles files = read_demo_tables();
  return files;
}

const ValueSet& demo_set() {
  static const ValueSet set = load_demo_set();
  return set;
}

std::string demo_sheet() {
  return whole_text(source_folder() / "examples" / "harbour-lights.sheet");
}

std::vector<fs::path> sheets_in(const fs::path& folder) {
  std::vector<fs::path> sheets;
  if (!fs::exists(folder)) return sheets;
  for (const auto& entry : fs::recursive_directory_iterator(folder))
    if (entry.is_regular_file() && entry.path().extension() == ".sheet") sheets.push_back(entry.path());
  std::sort(sheets.begin(), sheets.end());
  return sheets;
}

std::vector<std::string> made_texts(std::size_t count) {
  const SheetMaker maker(demo_set());
  std::vector<std::string> texts;
  for (std::size_t i = 0; i < count; ++i) texts.push_back(maker.make(i).text);
  return texts;
}

}  // namespace landdrill::bench
