#include "engine/cli/progress.h"

#include <fmt/format.h>
#include <unistd.h>

namespace landdrill::cli {

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
