// The dialogue of a practice session: asks for a mark, line by line, and keeps each at once.
//
//   Marking marking{session, tasks, "landdrill practice start ... --session 2"};
//   mark(call, practice, marking);      // Exit::ok, also when she paused: then marking.finished is false
#pragma once

#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/judging/practice.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

struct Marking {
  PracticeSession session;          // gets her marks
  std::vector<PracticeTask> tasks;  // as many as the session has lines
  std::string go_on;                // the command that goes on with it when it is paused
  bool finished = false;
  bool interrupted = false;  // by Ctrl-C
};
Exit mark(Call& call, PracticeBook& book, Marking& marking);

// Ends the program as Ctrl-C does, so that a shell sees that it was.
[[noreturn]] void end_as_interrupted();

}  // namespace landdrill::cli
