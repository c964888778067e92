#include "engine/cli/keyboard.h"

#include <poll.h>
#include <termios.h>
#include <unistd.h>

#include <utility>

namespace landdrill::cli {
namespace {

using Clock = Keyboard::Clock;

volatile std::sig_atomic_t was_interrupted = 0, was_continued = 0;

void note(int signal) {
  (signal == SIGINT ? was_interrupted : was_continued) = 1;
}

timespec time_left(Clock::duration left) {
  const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(left);
  return {static_cast<time_t>(seconds.count()),
          static_cast<long>(std::chrono::duration_cast<std::chrono::nanoseconds>(left - seconds).count())};
}

}  // namespace

// The signals come through while it waits and at no other time, so that none is missed between a look at them
// and the waiting.
Keyboard::Keyboard() {
  sigset_t heard;
  sigemptyset(&heard);
  sigaddset(&heard, SIGINT);
  sigaddset(&heard, SIGCONT);
  sigprocmask(SIG_BLOCK, &heard, &mask_before_);
  struct sigaction action {};
  action.sa_handler = note;
  sigaction(SIGCONT, &action, &continue_before_);
  sigaction(SIGINT, nullptr, &interrupt_before_);
  if (interrupt_before_.sa_handler != SIG_IGN) sigaction(SIGINT, &action, nullptr);
}

Keyboard::~Keyboard() {
  sigaction(SIGINT, &interrupt_before_, nullptr);
  sigaction(SIGCONT, &continue_before_, nullptr);
  sigprocmask(SIG_SETMASK, &mask_before_, nullptr);
}

Keyboard::Heard Keyboard::listen(std::optional<Clock::time_point> deadline) {
  for (;;) {
    if (const auto signal = signalled()) return *signal;
    if (const std::size_t end = waiting_.find('\n'); end != waiting_.npos) {
      line = waiting_.substr(0, end);
      waiting_.erase(0, end + 1);
      return Heard::line;
    }
    if (ended_) return end_of_input();
    const int ready = wait(deadline);
    if (ready > 0) read_some();
    if (ready == 0) {
      forget();
      return Heard::too_late;
    }
  }
}

std::optional<Keyboard::Heard> Keyboard::signalled() {
  if (std::exchange(was_interrupted, 0) != 0) return Heard::interrupted;
  if (std::exchange(was_continued, 0) == 0) return std::nullopt;
  forget();
  return Heard::back_again;
}

// As ppoll says it: above 0 there is input, at 0 the time is up, below it was a signal.
int Keyboard::wait(std::optional<Clock::time_point> deadline) const {
  timespec left{};
  if (deadline) {
    const Clock::duration remaining = *deadline - Clock::now();
    if (remaining <= Clock::duration::zero()) return 0;
    left = time_left(remaining);
  }
  pollfd input{0, POLLIN, 0};
  return ppoll(&input, 1, deadline ? &left : nullptr, &mask_before_);
}

Keyboard::Heard Keyboard::end_of_input() {
  if (waiting_.empty()) return Heard::end;
  line = std::exchange(waiting_, {});
  return Heard::line;
}

// What was half typed when the time was up belongs to no element.
void Keyboard::forget() {
  waiting_.clear();
  if (isatty(0)) tcflush(0, TCIFLUSH);
}

void Keyboard::read_some() {
  char buffer[4096];
  const ssize_t size = read(0, buffer, sizeof buffer);
  if (size <= 0) ended_ = true;
  if (size > 0) waiting_.append(buffer, static_cast<std::size_t>(size));
}

}  // namespace landdrill::cli
