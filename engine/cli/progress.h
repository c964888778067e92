// How far work is that takes longer than a second: one line on standard error, on a terminal only, gone when
// the work is done.
//
//   Progress progress(call.streams, "forecast");
//   progress.show("day 3 of 17");       // "landdrill: forecast: day 3 of 17", once a second has passed
#pragma once

#include <chrono>
#include <string>
#include <string_view>

#include "engine/cli/output.h"

namespace landdrill::cli {

class Progress {
 public:
  Progress(Streams& streams, std::string_view what);
  ~Progress() { clear(); }
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

  // At most ten times a second, and not in the first.
  void show(std::string_view how_far);
  void clear();
  double seconds() const;  // since it began

 private:
  Streams& streams_;
  std::string what_;
  bool on_terminal_, shown_ = false;
  std::chrono::steady_clock::time_point began_, next_;
};

}  // namespace landdrill::cli
