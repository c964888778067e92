#include "engine/cli/call.h"

#include <fmt/format.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>

namespace landdrill::cli {
namespace {

// `wish` is auto, always or never; auto means: on a terminal, unless NO_COLOR is set or TERM is dumb.
bool wants_colour(std::string_view wish, int descriptor) {
  if (wish == "always") return true;
  if (wish == "never") return false;
  const char* no_colour = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  if (no_colour != nullptr && *no_colour != '\0') return false;
  if (terminal == nullptr || std::string_view(terminal) == "dumb") return false;
  return isatty(descriptor) == 1;
}

// Columns of a page: those of the terminal, from 60 to 120; 80 when it is none.
int page_width(int descriptor) {
  winsize seen{};
  if (ioctl(descriptor, TIOCGWINSZ, &seen) != 0 || seen.ws_col == 0) return 80;
  return std::clamp<int>(seen.ws_col, 60, 120);
}

}  // namespace

std::vector<std::string> pieces(std::string_view text, std::string_view between) {
  std::vector<std::string> all;
  for (std::size_t at = 0; at <= text.size() && !text.empty();) {
    const std::size_t end = std::min(text.find(between, at), text.size());
    all.emplace_back(text.substr(at, end - at));
    at = end + between.size();
  }
  return all;
}

Exit misused(Call& call, const std::string& mistake) {
  call.streams.say(fmt::format("landdrill {}: {}\n", call.command.words, mistake));
  return Exit::usage;
}

Exit refuse(Call& call, const Trouble& trouble) {
  call.streams.say("landdrill: " + to_string(trouble));
  return Exit::environment;
}

void say_notes(Call& call, const std::vector<std::string>& notes, std::size_t most) {
  for (std::size_t i = 0; i < std::min(most, notes.size()); ++i)
    call.streams.say(fmt::format("landdrill: {}\n", notes[i]));
  if (notes.size() > most)
    call.streams.say(fmt::format("landdrill: and {} more such notes\n", notes.size() - most));
}

report::TextWish page_wish(const Call& call) {
  report::TextWish wish;
  wish.width = page_width(call.streams.out.descriptor());
  wish.colour = wants_colour(call.given.value("--colour", "auto"), call.streams.out.descriptor());
  wish.full = call.given.has("--full");
  return wish;
}

report::Format format_of(const Call& call) {
  const std::string_view typed = call.given.value("--format", "text");
  return typed == "csv" ? report::Format::csv : typed == "json" ? report::Format::json : report::Format::text;
}

void print_page(Call& call, const report::Page& page, bool one_of_many) {
  const auto layout = one_of_many ? report::JsonLayout::one_line : report::JsonLayout::indented;
  call.streams.out.write(render(page, format_of(call), page_wish(call), layout));
}

}  // namespace landdrill::cli
