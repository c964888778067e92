// A practice session beside its panels: what the commands of practice share.
//
//   tell_practice(call, session, *tasks.of(session))      // prints her marks beside the panel's
#pragma once

#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/cli/practice_tasks.h"
#include "engine/judging/practice.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

// Whose marks: what --name says. Otherwise what is wrong with it.
struct TraineeNamed {
  std::string name, mistake;
};
TraineeNamed name_of_trainee(const Call& call);

// Tasks and marks of a session, without those whose panel can no longer be read.
struct ComparedMarks {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
};
ComparedMarks compared_marks(const std::vector<PracticeTask>& tasks, const PracticeSession& session);

// In the format that the call asks for, where it may.
void tell_practice(Call& call, const PracticeSession& session, const std::vector<PracticeTask>& tasks);

}  // namespace landdrill::cli
