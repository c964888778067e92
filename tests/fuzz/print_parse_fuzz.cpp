// Any bytes, read and printed: the printed text reads as the same tree and is printed as itself.
#include <cassert>
#include <cstddef>
#include <cstdint>
#include <string>

#include "grammar/parse.h"
#include "grammar/print.h"

namespace {

using namespace landdrill;

void check_same(const ast::Lines& one, const ast::Lines& other) {
  assert(one.size() == other.size());
  for (std::size_t i = 0; i < one.size(); ++i) {
    assert(one[i].statement == other[i].statement);
    assert(one[i].comment == other[i].comment);
  }
}

// A line may grow by the blanks that tidying puts after commas; near the longest line it would be too long.
bool may_grow_too_long(const std::string& text) {
  return text.size() > 30'000;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(bytes), size);
  if (may_grow_too_long(text)) return 0;
  const Source source{"fuzz.sheet", text};
  const Parsed typed = parse(source);
  const std::string once = print(typed.lines);
  const Source printed{"printed.sheet", once};
  const Parsed read = parse(printed);
  check_same(typed.lines, read.lines);
  assert(typed.diagnostics.ok() || text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF") ||
         !read.diagnostics.ok());
  assert(print(read.lines) == once);
  for (const ast::Line& line : typed.lines) assert(print(line.statement).find('\n') == std::string::npos);
  return 0;
}
