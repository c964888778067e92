// A practice session beside its panels: what the commands of practice share.
//
//   tell_practice(call, session, *tasks.of(session))      // prints her marks beside the panel's
#pragma once

#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

// Whose marks: what --name says. Otherwise what is wrong with it.
struct TraineeNamed {
  std::string name, mistake;
};
TraineeNamed name_of_trainee(const Call& call);

// In the format that the call asks for, where it may.
void tell_practice(Call& call, const PracticeSession& session, const std::vector<PracticeTask>& tasks);

}  // namespace landdrill::cli
