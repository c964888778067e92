// Every malformed sheet gives exactly the message beside it.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "dump.h"

namespace landdrill::test {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> bad_sheets() {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(LANDDRILL_BAD_SHEETS))
    if (entry.path().extension() == ".sheet") names.push_back(entry.path().stem().string());
  std::sort(names.begin(), names.end());
  return names;
}

class BadSheet : public testing::TestWithParam<std::string> {};

TEST_P(BadSheet, GivesItsMessage) {
  const std::string path = std::string(LANDDRILL_BAD_SHEETS) + "/" + GetParam();
  const std::string expected = read_file(path + ".message");
  EXPECT_FALSE(expected.empty()) << "write the message into " << path << ".message";
  EXPECT_EQ(messages(read_file(path + ".sheet"), GetParam() + ".sheet"), expected);
}

INSTANTIATE_TEST_SUITE_P(Syntax, BadSheet, testing::ValuesIn(bad_sheets()), [](const auto& test) {
  std::string name = test.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

TEST(BadSheets, AreManyAndEachHasItsMessage) {
  EXPECT_GE(bad_sheets().size(), 190u);
  for (const auto& entry : fs::directory_iterator(LANDDRILL_BAD_SHEETS))
    EXPECT_TRUE(fs::exists(fs::path(entry.path()).replace_extension(".sheet"))) << entry.path();
}

// A hint that names a spelling must name one that is understood.
TEST(BadSheets, HaveAHintEach) {
  for (const std::string& name : bad_sheets())
    EXPECT_NE(read_file(std::string(LANDDRILL_BAD_SHEETS) + "/" + name + ".message").find("\n  hint: "),
              std::string::npos)
        << name;
}

}  // namespace
}  // namespace landdrill::test
