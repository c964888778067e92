// Standard output and standard error, buffered, with every failure to write noticed.
//
//   Streams streams;
//   streams.out.write("187.3425\n");
//   streams.finish(Exit::ok)        // Exit::environment when the disk was full or the reader had gone
#pragma once

#include <string>
#include <string_view>

#include "engine/cli/exit.h"

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

}  // namespace landdrill::cli
