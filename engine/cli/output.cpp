#include "engine/cli/output.h"

#include <fmt/format.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <cstring>

#include "engine/report/page.h"
#include "engine/report/render.h"

namespace landdrill::cli {
namespace {

constexpr std::size_t enough = 1 << 16;

bool same_file(int one, int other) {
  struct stat a {
  }, b{};
  return fstat(one, &a) == 0 && fstat(other, &b) == 0 && a.st_dev == b.st_dev && a.st_ino == b.st_ino;
}

}  // namespace

void Output::write(std::string_view text) {
  if (failure_ != 0) return;
  waiting_ += text;
  if (waiting_.size() >= enough) flush();
}

void Output::flush() {
  std::string_view rest = waiting_;
  while (!rest.empty() && failure_ == 0) {
    const ssize_t written = ::write(descriptor_, rest.data(), rest.size());
    if (written >= 0)
      rest.remove_prefix(static_cast<std::size_t>(written));
    else if (errno != EINTR)
      failure_ = errno;
  }
  waiting_.clear();
}

void Streams::say(std::string_view message) {
  static const bool shared = same_file(1, 2);
  if (shared) out.flush();
  err.write(message);
  err.flush();
}

Exit Streams::finish(Exit so_far) {
  out.flush();
  if (out.failure() != 0 && out.failure() != EPIPE)
    say(std::string("landdrill: cannot write the output: ") + std::strerror(out.failure()) + "\n");
  err.flush();
  return out.failure() != 0 ? Exit::environment : so_far;
}

bool wants_colour(std::string_view wish, int descriptor) {
  if (wish == "always") return true;
  if (wish == "never") return false;
  const char* no_colour = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  if (no_colour != nullptr && *no_colour != '\0') return false;
  if (terminal == nullptr || std::string_view(terminal) == "dumb") return false;
  return isatty(descriptor) == 1;
}

int page_width(int descriptor) {
  winsize seen{};
  if (ioctl(descriptor, TIOCGWINSZ, &seen) != 0 || seen.ws_col == 0) return 80;
  return std::clamp<int>(seen.ws_col, 60, 120);
}

using std::chrono::steady_clock;

Progress::Progress(Streams& streams, std::string_view what)
    : streams_(streams),
      what_(what),
      on_terminal_(isatty(streams.err.descriptor()) == 1),
      began_(steady_clock::now()),
      next_(began_ + std::chrono::seconds(1)) {}

void Progress::show(std::string_view how_far) {
  const auto now = steady_clock::now();
  if (!on_terminal_ || now < next_) return;
  next_ = now + std::chrono::milliseconds(100);
  shown_ = true;
  streams_.say(fmt::format("\r\x1b[Klanddrill: {}: {}", what_, how_far));
}

void Progress::clear() {
  if (shown_) streams_.say("\r\x1b[K");
  shown_ = false;
}

double Progress::seconds() const {
  return std::chrono::duration<double>(steady_clock::now() - began_).count();
}

report::TextWish page_wish(const Call& call) {
  report::TextWish wish;
  wish.width = page_width(call.streams.out.descriptor());
  const std::string_view asked =
      has_option(call.command, "--colour") ? call.given.value("--colour", "auto") : "auto";
  wish.colour = wants_colour(asked, call.streams.out.descriptor());
  wish.full = call.given.has("--full");
  return wish;
}

report::Format format_of(const Call& call) {
  const std::string_view typed = call.given.value("--format", "text");
  return typed == "csv" ? report::Format::csv : typed == "json" ? report::Format::json : report::Format::text;
}

report::JsonLayout layout_of(std::size_t pages) {
  return pages > 1 ? report::JsonLayout::one_line : report::JsonLayout::indented;
}

void print_page(Call& call, const report::Page& page, report::JsonLayout layout) {
  const report::Format format = format_of(call);
  call.streams.out.write(format == report::Format::json ? render_json(page, layout)
                                                        : render(page, format, page_wish(call)));
}

}  // namespace landdrill::cli
