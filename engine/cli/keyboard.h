// Lines of standard input as they are typed, for as long as there is time.
//
//   Keyboard keyboard;
//   keyboard.listen(Clock::now() + 20s)      // Heard::line, and keyboard.line is "7.25"
//
// A line that was typed ahead is heard at once; what was half typed when the time was up is forgotten. While there is a
// keyboard, Ctrl-C and coming back after Ctrl-Z are heard, and nothing else is interrupted by them.
#pragma once

#include <chrono>
#include <csignal>
#include <optional>
#include <string>

namespace landdrill::cli {

class Keyboard {
 public:
  using Clock = std::chrono::steady_clock;
  enum class Heard {
    line,
    end,
    too_late,
    interrupted,  // Ctrl-C
    back_again    // after Ctrl-Z: what was half typed is forgotten
  };

  Keyboard();
  ~Keyboard();
  Keyboard(const Keyboard&) = delete;
  Keyboard& operator=(const Keyboard&) = delete;

  // Waits no longer than until the deadline; without one, as long as it takes.
  Heard listen(std::optional<Clock::time_point> deadline);

  std::string line;

 private:
  std::optional<Heard> signalled();
  int wait(std::optional<Clock::time_point> deadline) const;
  Heard end_of_input();
  void forget();
  void read_some();

  std::string waiting_;
  bool ended_ = false;
  sigset_t mask_before_;
  struct sigaction interrupt_before_, continue_before_;
};

}  // namespace landdrill::cli
