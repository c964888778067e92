// Shows that the hand-written parser makes the trees of parse(): on the examples, on made-up sheets, on malformed
// sheets, and on sheets with a byte changed at random. Ends with 1 at the first difference.
#include <cstdio>
#include <string>

#include "grammar/parse.h"
#include "tests/bench/demo_set.h"
#include "tests/bench/hand_parser.h"
#include "tests/bench/sheet_maker.h"

namespace landdrill::bench {
namespace {

bool same_place(std::string_view a, std::string_view b) {
  return a.size() == b.size() && (a.empty() || a.data() == b.data());
}

bool same(const ast::Line& a, const ast::Line& b) {
  return a.statement == b.statement && same_place(a.comment, b.comment) && same_place(a.text, b.text);
}

bool differs(const std::string& name, const std::string& why, std::string_view line) {
  std::printf("%s: %s: %.*s\n", name.c_str(), why.c_str(), static_cast<int>(line.size()), line.data());
  return false;
}

bool same_trees(const std::string& name, const std::string& text) {
  const Source source{name, text};
  const Parsed one = parse(source);
  const HandParsed other = hand_parse(text);
  const std::size_t shorter = std::min(one.lines.size(), other.lines.size());
  for (std::size_t i = 0; i < shorter; ++i)
    if (!same(one.lines[i], other.lines[i])) return differs(name, "not the same line", one.lines[i].text);
  if (one.lines.size() != other.lines.size()) return differs(name, "not as many lines", "");
  if (one.diagnostics.errors() != other.errors) return differs(name, "not as many errors", "");
  return true;
}

bool on_files() {
  bool all = true;
  int count = 0;
  for (const char* folder : {"examples", "tests"}) {
    for (const auto& file : sheets_in(source_folder() / folder)) {
      all = same_trees(file.string(), whole_text(file)) && all;
      ++count;
    }
  }
  std::printf("%d sheets of the repository\n", count);
  return all && count > 0;
}

bool on_made_sheets(std::size_t count) {
  for (const std::string& text : made_texts(count))
    if (!same_trees("a made-up sheet", text)) return false;
  std::printf("%zu made-up sheets\n", count);
  return true;
}

// One to four bytes of the demo changed, taken out or put in: most of the lines they hit are in error.
bool on_broken_sheets(int count) {
  constexpr std::string_view bytes =
      "0123456789xX.,;:-+*%#'\"\t\r\n abeino\x80\xC2\xA0\xE2\x80\x93\xE2\x80\x9C\xC3\x97\xFF";
  const std::string whole =
      demo_sheet() +
      "\noptional\nstays\nlimit lift least 1 most 2\nlimit breath most 16.5\nerrors small 2.5, clear 0.4\n"
      "risk overtime 10%, bottom: 2%\nday: 0.2\nspread 0,35\n"
      "run 2026-01-01\n element 1: lost spin-720, shake small x2\n limit: 8 7.5\n day: -\n";
  Dice dice(2026);
  for (int i = 0; i < count; ++i) {
    std::string text = whole;
    for (int changes = dice.from_to(1, 4); changes > 0; --changes) {
      const auto at = static_cast<std::size_t>(dice.below(static_cast<int>(text.size())));
      const char byte = bytes[static_cast<std::size_t>(dice.below(static_cast<int>(bytes.size())))];
      const int what = dice.below(3);
      if (what == 0) text[at] = byte;
      if (what == 1) text.insert(at, 1, byte);
      if (what == 2) text.erase(at, 1);
    }
    if (!same_trees("a broken sheet", text)) return false;
  }
  std::printf("%d broken sheets\n", count);
  return true;
}

}  // namespace
}  // namespace landdrill::bench

int main() {
  using namespace landdrill::bench;
  const bool all = on_files() & on_made_sheets(2000) & on_broken_sheets(20000);
  std::puts(all ? "the same trees" : "NOT the same trees");
  return all ? 0 : 1;
}
