// What the commands of practice share: the dialogue of a session, which asks for a mark, line by line, and keeps each at
// once; and whose marks, how a session is told, the present day (practice_list.cpp).
//
//   Marking marking{session, tasks, "landdrill practice start ... --session 2"};
//   mark(call, practice, marking);      // Exit::ok, also when she paused: then marking.finished is false
//   tell_practice(call, session, compared_marks(tasks, session));      // prints her marks beside the panel's
//   today()                                                // "2026-05-09"
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/cli/call.h"
#include "engine/judging/practice.h"
#include "engine/report/pages/asked.h"
#include "engine/season/practice_tasks.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

struct Marking {
  PracticeSession session;          // gets her marks
  std::vector<PracticeTask> tasks;  // as many as the session has lines
  std::string go_on;                // the command that goes on with it when it is paused
  bool finished = false;
  bool interrupted = false;  // by Ctrl-C
};
// On a terminal: the panel's marks of an earlier report are out of sight.
void clear_screen(Call& call);
Exit mark(Call& call, PracticeBook& book, Marking& marking);

// Ends the program as Ctrl-C does, so that a shell sees that it was.
[[noreturn]] void end_as_interrupted();

// Whose marks: what --name says.
report::Typed<std::string> name_of_trainee(const Call& call);

// In the format that the call asks for, where it may. `reference`: who marked the tasks.
void tell_practice(Call& call, const PracticeSession& session, const ComparedMarks& marks,
                   const std::string& reference = "the panel");

// The one that --session names by number or day; `expected`: "a finished session".
report::Typed<const PracticeSession*> chosen_session(const Call& call,
                                                     const std::vector<PracticeSession>& sessions,
                                                     std::string_view expected);

// Of the clock here or of UTC, the later of the two: for telling what cannot have happened yet. LANDDRILL_TODAY takes its
// place, for tests.
std::string today();

}  // namespace landdrill::cli
