// Any bytes as a sheet: no crash, and an answer whose size is bounded.
#include <cassert>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "grammar/blocks.h"
#include "grammar/parse.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace landdrill;
  const std::string text(reinterpret_cast<const char*>(bytes), size);
  const Source source{"fuzz.sheet", text};
  assert(parse(source).lines.size() <= size + 1);
  Assembled assembled;
  assemble(source, assembled);
  assembled.diagnostics.sort();
  for (const Diagnostic& each : assembled.diagnostics.list()) {
    assert(!each.found.empty() && !each.expected.empty());
    assert(to_string(each).size() < 4000);
  }
  assert(to_string(assembled.diagnostics).size() < 4000 * (Diagnostics::most + 1));
  return 0;
}
