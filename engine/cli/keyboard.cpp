#include "engine/cli/keyboard.h"

#include <poll.h>
#include <termios.h>
#include <unistd.h>

#include <utility>

namespace landdrill::cli {
namespace {

bool ready(std::optional<Keyboard::Clock::time_point> deadline) {
  if (!deadline) return true;
  const auto left =
      std::chrono::duration_cast<std::chrono::milliseconds>(*deadline - Keyboard::Clock::now()).count();
  pollfd input{0, POLLIN, 0};
  return left > 0 && poll(&input, 1, static_cast<int>(left)) > 0;
}

}  // namespace

Keyboard::Heard Keyboard::listen(std::optional<Clock::time_point> deadline) {
  for (;;) {
    if (const std::size_t end = waiting_.find('\n'); end != waiting_.npos) {
      line = waiting_.substr(0, end);
      waiting_.erase(0, end + 1);
      return Heard::line;
    }
    if (ended_) return end_of_input();
    if (!ready(deadline)) return forget();
    read_some();
  }
}

Keyboard::Heard Keyboard::end_of_input() {
  if (waiting_.empty()) return Heard::end;
  line = std::exchange(waiting_, {});
  return Heard::line;
}

// What was half typed when the time was up belongs to no element.
Keyboard::Heard Keyboard::forget() {
  waiting_.clear();
  if (isatty(0)) tcflush(0, TCIFLUSH);
  return Heard::too_late;
}

void Keyboard::read_some() {
  char buffer[4096];
  const ssize_t size = read(0, buffer, sizeof buffer);
  if (size <= 0) ended_ = true;
  if (size > 0) waiting_.append(buffer, static_cast<std::size_t>(size));
}

}  // namespace landdrill::cli
