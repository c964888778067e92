// Several files as one call, split by NUL bytes: no crash, and every message is about a line of one of them,
// after the words are tied to a value set too.
#include <algorithm>
#include <cassert>
#include <cstddef>
#include <cstdint>
#include <deque>
#include <string>
#include <string_view>

#include "engine/score/objections.h"
#include "tables/folder.h"
#include "tables/load.h"

namespace {

using namespace landdrill;

constexpr std::size_t most_files = 8;

const ValueSet& pond() {
  static const Loaded loaded = load(read_folder(LANDDRILL_POND).value());
  return loaded.set.value();
}

std::deque<Source> files_in(std::string_view text) {
  std::deque<Source> files;
  while (files.size() < most_files) {
    const std::size_t end = std::min(text.find('\0'), text.size());
    files.push_back({std::string(1, static_cast<char>('a' + files.size())), text.substr(0, end)});
    if (end == text.size()) break;
    text.remove_prefix(end + 1);
  }
  return files;
}

std::size_t lines_of(std::string_view text) {
  std::size_t lines = 1;
  for (std::size_t at = 0; at < text.size(); ++at)
    lines += text[at] == '\n' || (text[at] == '\r' && text.substr(at + 1, 1) != "\n");
  return lines;
}

void check_places(const Diagnostics& diagnostics, const std::deque<Source>& files) {
  for (const Diagnostic& each : diagnostics.list()) {
    assert(each.file.size() == 1);
    const Source& file = files.at(static_cast<std::size_t>(each.file[0] - 'a'));
    assert(each.at.line <= lines_of(file.text));
    assert(to_string(each).size() < 4000);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(bytes), size);
  const std::deque<Source> files = files_in(text);
  Assembled assembled;
  for (const Source& file : files) assemble(file, assembled);
  assembled.diagnostics.sort();
  check_places(assembled.diagnostics, files);
  for (const ast::Sheet& sheet : assembled.sheets) check_places(understood(sheet, pond()).diagnostics, files);
  return 0;
}
