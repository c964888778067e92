// What the commands of practice share: whose marks, how a session is told, the present day.
//
//   tell_practice(call, session, *tasks.of(session));      // prints her marks beside the panel's
//   today()                                                // "2026-05-09"
#pragma once

#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/judging/practice.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

// Whose marks: what --name says. Otherwise what is wrong with it.
struct TraineeNamed {
  std::string name, mistake;
};
TraineeNamed name_of_trainee(const Call& call);

// In the format that the call asks for, where it may.
void tell_practice(Call& call, const PracticeSession& session, const std::vector<PracticeTask>& tasks);

// Of the clock here or of UTC, the later of the two: for telling what cannot have happened yet. LANDDRILL_TODAY takes its
// place, for tests.
std::string today();

}  // namespace landdrill::cli
