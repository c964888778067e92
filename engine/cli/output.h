// Standard output and standard error, buffered, with every failure to write noticed.
//
//   Streams streams;
//   streams.out.write("187.3425\n");
//   streams.finish(Exit::ok)        // Exit::environment when the disk was full or the reader had gone
#pragma once

#include <chrono>
#include <cstddef>
#include <string>
#include <string_view>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/report/page.h"
#include "engine/report/render.h"

namespace landdrill::cli {

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

// `wish` is auto, always or never; auto means: on a terminal, unless NO_COLOR is set or TERM is dumb.
bool wants_colour(std::string_view wish, int descriptor);
// Columns of a page: those of the terminal, from 60 to 120; 80 when it is none.
int page_width(int descriptor);

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

// How to print: what --format, --colour, --full and the terminal say.

report::TextWish page_wish(const Call& call);
// Of a command with --format.
report::Format format_of(const Call& call);
// Several objects stand one a line.
report::JsonLayout layout_of(std::size_t pages);
// As it is asked for. `layout`: of JSON.
void print_page(Call& call, const report::Page& page,
                report::JsonLayout layout = report::JsonLayout::indented);

}  // namespace landdrill::cli
