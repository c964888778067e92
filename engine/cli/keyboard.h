// Lines of standard input as they are typed, for as long as there is time.
//
//   Keyboard keyboard;
//   keyboard.listen(Clock::now() + 20s)      // Heard::line, and keyboard.line is "7.25"
//
// A line that was typed ahead is heard at once; what was half typed when the time was up is forgotten.
#pragma once

#include <chrono>
#include <optional>
#include <string>

namespace landdrill::cli {

class Keyboard {
 public:
  using Clock = std::chrono::steady_clock;
  enum class Heard { line, end, too_late };
  // Waits no longer than until the deadline; without one, as long as it takes.
  Heard listen(std::optional<Clock::time_point> deadline);
  std::string line;

 private:
  Heard end_of_input();
  Heard forget();
  void read_some();

  std::string waiting_;
  bool ended_ = false;
};

}  // namespace landdrill::cli
