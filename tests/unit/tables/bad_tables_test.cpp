// The gallery of tests/bad/tables: value sets with one mistake each, and what the coach is told of it.
//
// A folder holds the files that differ from base/, a file `absent` with the names of those that are not
// there, and the golden `message`. LANDDRILL_ACCEPT=<folder> rewrites one message, for somebody who then
// reads it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <set>

#include "kit.h"
#include "tables/problems.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> cases() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(BAD_TABLES)) {
    const std::string name = entry.path().filename().string();
    if (entry.is_directory() && name != "base") names.push_back(name);
  }
  std::sort(names.begin(), names.end());
  return names;
}

TableFiles laid_over_base(const fs::path& folder) {
  TableFiles files = test::base_set();
  if (fs::exists(folder / "absent")) {
    std::ifstream absent(folder / "absent");
    for (std::string file; std::getline(absent, file);) files = test::without(files, file);
  }
  std::set<fs::path> changed;
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.path().extension() == ".csv") changed.insert(entry.path());
  }
  for (const fs::path& file : changed)
    files = test::with(files, file.filename().string(), test::bytes_of(file));
  return files;
}

class BadTables : public testing::TestWithParam<std::string> {};

TEST_P(BadTables, GetTheirMessage) {
  const fs::path folder = fs::path(BAD_TABLES) / GetParam();
  const Loaded loaded = load(laid_over_base(folder));
  const std::string message = to_string(loaded.diagnostics);
  const char* accepted = std::getenv("LANDDRILL_ACCEPT");
  if (accepted && GetParam() == accepted) test::put_bytes(folder / "message", message);
  EXPECT_EQ(message, test::bytes_of(folder / "message"));
  EXPECT_NE(message, "");
  EXPECT_EQ(loaded.set.has_value(), loaded.diagnostics.ok());
}

std::string test_name(const testing::TestParamInfo<std::string>& info) {
  std::string name = info.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}
INSTANTIATE_TEST_SUITE_P(Gallery, BadTables, testing::ValuesIn(cases()), test_name);

TEST(BadTablesGallery, HasAtLeastSixtyMistakesAndABaseWithout) {
  EXPECT_GE(cases().size(), 60u);
  EXPECT_EQ(test::messages(test::base_set()), "");
}

TEST(BadTablesGallery, ShowsEveryProblemOfATable) {
  constexpr ProblemCode all[] = {
#define DIAGNOSTIC(name, severity, meaning) Problem::name,
#include "tables/set_problems.inc"
#undef DIAGNOSTIC
  };
  std::string messages;
  for (const std::string& name : cases()) messages += test::bytes_of(fs::path(BAD_TABLES) / name / "message");
  for (const ProblemCode& each : all) {
    const std::string code = "[" + std::string(code_of(each)) + "]";
    EXPECT_NE(messages.find(code), std::string::npos) << code;
  }
}

// One mistake has one message, and a reader is never sent to a second place for it.
TEST(BadTablesGallery, SaysEachMistakeOnce) {
  for (const std::string& name : cases()) {
    const Diagnostics diagnostics = load(laid_over_base(fs::path(BAD_TABLES) / name)).diagnostics;
    EXPECT_EQ(diagnostics.list().size(), 1u) << name << "\n" << to_string(diagnostics);
  }
}

}  // namespace
}  // namespace landdrill
