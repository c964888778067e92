#include "engine/cli/output.h"

#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

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

void Messages::add(const Diagnostics& diagnostics) {
  if (shown_ >= most) {
    hidden_ += diagnostics.all();
    return;
  }
  shown_ += diagnostics.list().size();
  if (!diagnostics.list().empty()) streams_.say(to_string(diagnostics));
}

void Messages::finish() {
  if (hidden_ > 0) streams_.say(fmt::format("landdrill: and {} more messages, not shown\n", hidden_));
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

}  // namespace landdrill::cli
