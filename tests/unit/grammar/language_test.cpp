// Every fenced example of language.md: a sheet reads without a mistake and survives printing, a wrong one
// gives its message.
#include <gtest/gtest.h>

#include <sstream>

#include "dump.h"
#include "grammar/print.h"
#include "grammar/words.h"

namespace landdrill::test {
namespace {

struct Fence {
  std::string kind;
  std::string text;
  std::size_t line = 0;
};

std::vector<Fence> fences() {
  std::istringstream in(read_file(LANDDRILL_LANGUAGE));
  std::vector<Fence> all;
  bool inside = false;
  std::size_t number = 0;
  for (std::string line; std::getline(in, line);) {
    ++number;
    if (line.starts_with("```")) {
      if (!inside) all.push_back({line.substr(3), "", number});
      inside = !inside;
    } else if (inside) {
      all.back().text += line + "\n";
    }
  }
  return all;
}

// An example may leave out the routine it belongs to.
std::string in_a_routine(const std::string& text) {
  return text.find("routine") == text.npos ? "routine \"Example\"\n" + text : text;
}

TEST(Language, EveryExampleReadsWithoutAMistake) {
  std::size_t examples = 0;
  for (const Fence& fence : fences()) {
    if (fence.kind != "sheet") continue;
    ++examples;
    EXPECT_EQ(messages(in_a_routine(fence.text)), "") << "language.md:" << fence.line;
  }
  EXPECT_GE(examples, 13u);
}
TEST(Language, EveryExampleSurvivesPrinting) {
  for (const Fence& fence : fences()) {
    if (fence.kind != "sheet") continue;
    const std::string once = print(parse({"a", fence.text}).lines);
    const Source typed{"a", fence.text}, printed{"a", once};
    const ast::Lines before = parse(typed).lines, after = parse(printed).lines;
    ASSERT_EQ(before.size(), after.size()) << "language.md:" << fence.line;
    for (std::size_t i = 0; i < before.size(); ++i)
      EXPECT_TRUE(before[i].statement == after[i].statement) << "language.md:" << fence.line << " line " << i;
  }
}
TEST(Language, EveryMistakeGivesItsMessage) {
  const std::vector<Fence> all = fences();
  std::size_t mistakes = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].kind != "sheet-error") continue;
    ++mistakes;
    ASSERT_LT(i + 1, all.size());
    ASSERT_EQ(all[i + 1].kind, "message") << "language.md:" << all[i].line;
    EXPECT_EQ(messages(all[i].text), all[i + 1].text) << "language.md:" << all[i].line;
  }
  EXPECT_GE(mistakes, 5u);
}
TEST(Language, TidiedExamplesAreTidy) {
  const std::vector<Fence> all = fences();
  std::size_t pairs = 0;
  for (std::size_t i = 0; i + 1 < all.size(); ++i) {
    if (all[i].kind != "sheet" || all[i + 1].kind != "sheet-tidied") continue;
    ++pairs;
    EXPECT_EQ(print(parse({"a", all[i].text}).lines), all[i + 1].text) << "language.md:" << all[i].line;
  }
  EXPECT_GE(pairs, 1u);
}
TEST(Language, KnowsNoOtherKindOfFence) {
  for (const Fence& fence : fences())
    EXPECT_TRUE(fence.kind == "sheet" || fence.kind == "sheet-error" || fence.kind == "sheet-tidied" ||
                fence.kind == "message")
        << "language.md:" << fence.line;
}
TEST(Language, NamesEveryKeyword) {
  const std::string text = read_file(LANDDRILL_LANGUAGE);
  for (const words::Keyword& each : words::keywords())
    EXPECT_NE(text.find("`" + std::string(each.word)), std::string::npos) << each.word;
}

}  // namespace
}  // namespace landdrill::test
