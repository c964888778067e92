#include "engine/cli/tell_added.h"

#include <fmt/format.h>

#include <array>
#include <charconv>

#include "engine/cli/page.h"
#include "engine/report/pages/book.h"
#include "engine/report/render.h"

namespace landdrill::cli {
namespace {

constexpr std::size_t most_lines = 200;
constexpr std::string_view did_words[] = {"added", "new version", "already there"};

report::BookLine added_line(const Block& block, const AddedBlock& one) {
  report::BookLine line;
  line.routine = block.routine;
  line.event = block.event;
  line.what = word_of(block.what);
  line.date = block.date;
  line.title = block.title;
  line.version = std::to_string(one.version);
  line.of_version = one.of_version;
  line.routine_versions = one.routine_versions;
  line.set = one.set;
  line.did = did_words[static_cast<std::size_t>(one.did)];
  return line;
}

}  // namespace

void tell_added(Call& call, const std::vector<Block>& blocks, const std::vector<AddedBlock>& added) {
  std::array<std::size_t, 3> counts{};
  for (const AddedBlock& one : added) ++counts[static_cast<std::size_t>(one.did)];
  std::vector<report::BookLine> lines;
  if (blocks.size() <= most_lines || format_of(call) != report::Format::text) {
    lines.reserve(blocks.size());
    for (std::size_t i = 0; i < blocks.size(); ++i) lines.push_back(added_line(blocks[i], added[i]));
  }
  print_page(call, report::book_list_page(std::string(call.command.words), lines));
  call.streams.say(fmt::format("landdrill: {} added, {} new version{}, {} already there\n", counts[0],
                               counts[1], counts[1] == 1 ? "" : "s", counts[2]));
}

int version_number(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() && number > 0 ? number : 0;
}

}  // namespace landdrill::cli
