// Another program: it includes the public door and nothing else of the project. Its function is that of the door's
// first comment, word for word.
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>

#include "engine/landdrill.h"

namespace {

std::string whole(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

using namespace landdrill;

// clang-format off
std::string told(const TableFiles& tables, const std::string& text) {
  const Loaded values = load(tables);  // {"pond-2026", "", {{"parts.csv", "code,family,value..."}, ...}}
  if (!values.set) return to_string(values.diagnostics);
  Sheet sheet = read_sheet({{"reeds.sheet", text}});
  understand(sheet, *values.set);
  if (!sheet.routine()) return to_string(sheet.messages());
  const report::Answer page = report::score(report::Asked("score"), *sheet.routine(), sheet.messages());
  return page ? render_text(*page, {}) : page.error();
}
// clang-format on

// The lines of the first comment that stand further in.
std::string example_in(std::string text) {
  const std::string start = "\n//   ";
  std::string example;
  for (std::size_t at = 0; (at = text.find(start, at)) != text.npos;) {
    at += start.size();
    example += text.substr(at, text.find('\n', at) - at) + "\n";
  }
  return example;
}

TEST(Door, OpensWithTheExampleThatIsTriedHere) {
  const std::string example = example_in(whole(LANDDRILL_SOURCE "/engine/landdrill.h"));
  EXPECT_GT(example.size(), 400u);
  EXPECT_NE(whole(LANDDRILL_SOURCE "/tests/unit/report/door_test.cpp").find("\n" + example),
            std::string::npos)
      << example;
}

TEST(Door, LetsAnotherProgramScoreASheet) {
  TableFiles tables{"kingfisher-2026", "", {}};
  for (const char* name :
       {"set", "events", "families", "faults", "kinds", "panels", "parts", "penalties", "quotas", "sync"})
    tables.files.push_back(
        {std::string(name) + ".csv",
         whole(LANDDRILL_SOURCE "/tables/data/kingfisher-2026/" + std::string(name) + ".csv")});
  const std::string text =
      "routine \"Reed Song\"\nevent duet-free\n"
      "element 1 hybrid\n  parts thrust-high, spin-720, split-hold\n  expect 7.5\n";
  const std::string page = told(tables, text);
  EXPECT_TRUE(page.starts_with("Reed Song\n")) << page;
  EXPECT_NE(told(tables, "routine \"Reed Song\"\nevent duet\n").find("[unknown-event]"), std::string::npos);
  tables.files.front().text += "x,y,z,a,b,c,d\n";
  EXPECT_NE(told(tables, text).find("set.csv:"), std::string::npos);
}

}  // namespace
