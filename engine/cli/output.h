// Standard output and standard error, buffered, with every failure to write noticed.
//
//   Streams streams;
//   streams.out.write("187.3425\n");
//   streams.finish(Exit::ok)        // Exit::environment when the disk was full or the reader had gone
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <string>
#include <string_view>

#include "grammar/diagnostics.h"

namespace landdrill::cli {

// What the program tells the shell when it ends.
enum class Exit {
  ok = 0,
  errors = 1,       // a sheet or a table has errors
  usage = 2,        // the command line cannot be understood
  environment = 3,  // a file, a folder, a season file or the output refused
};

// Of two outcomes the one that weighs more: errors on errors, a refusing file on everything.
inline Exit worse(Exit one, Exit other) {
  return std::max(one, other);
}

class Output {
 public:
  explicit Output(int descriptor) : descriptor_(descriptor) {}
  void write(std::string_view text);
  void flush();
  // The errno of the first write that failed, or 0. Nothing is written after it.
  int failure() const { return failure_; }
  int descriptor() const { return descriptor_; }

 private:
  int descriptor_;
  int failure_ = 0;
  std::string waiting_;
};

struct Streams {
  Output out{1};
  Output err{2};

  // A message on standard error, in its right place after what was printed before it.
  void say(std::string_view message);
  // Writes what is waiting. `so_far`, or Exit::environment when standard output could not take everything;
  // a reader that went away (`| head`) is not worth a message.
  Exit finish(Exit so_far);
};

// Diagnostics of many sheets on standard error, bounded: after the first thousand they are only counted.
class Messages {
 public:
  static constexpr std::size_t most = 1000;
  explicit Messages(Streams& streams) : streams_(streams) {}
  void add(const Diagnostics& diagnostics);
  // Says how many were not shown, if any.
  void finish();

 private:
  Streams& streams_;
  std::size_t shown_ = 0, hidden_ = 0;
};

// How far work is that takes longer than a second: one line on standard error, on a terminal only, gone when
// the work is done.
//
//   Progress progress(call.streams, "forecast");
//   progress.show("day 3 of 17");       // "landdrill: forecast: day 3 of 17", once a second has passed

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
