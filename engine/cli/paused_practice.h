// Which practice a call of `practice start` goes on with, and what it says of those that stay paused.
//
//   PausedPractice paused(call, *practice.paused("Robin"));
//   paused.choose(tasks)          // the one to go on with; empty: a new one is begun
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/folder.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

// A practice session beside its panels: what the commands of practice share.
//
//   tell_practice(call, session, *tasks.of(session))      // prints her marks beside the panel's

// Whose marks: what --name says. Otherwise what is wrong with it.
struct TraineeNamed {
  std::string name, mistake;
};
TraineeNamed name_of_trainee(const Call& call);

// In the format that the call asks for, where it may.
void tell_practice(Call& call, const PracticeSession& session, const std::vector<PracticeTask>& tasks);

class PausedPractice {
 public:
  // `sessions`: paused ones of one trainee, by their number.
  PausedPractice(const Call& call, std::string trainee, std::vector<PracticeSession> sessions)
      : call_(call), trainee_(std::move(trainee)), sessions_(std::move(sessions)) {}

  // The one that --session names; without a wish, or with --weak alone, the latest; otherwise the latest
  // whose panels, number of lines and time are all as wished, whatever the seed; with --new none. `wish`: the
  // panels that are asked for.
  Result<std::optional<PracticeSession>> choose(const BookWish& wish, BookTasks& tasks);
  // What is wrong with --session; empty when nothing is.
  const std::string& mistake() const { return mistake_; }
  // Whole lines on the sessions but that one.
  std::string others(int number) const;
  // "landdrill practice start club.season --name Robin --session 2"
  std::string command(int number) const;

 private:
  std::optional<PracticeSession> named();
  bool wishes() const;
  bool is_as_wished(const PracticeSession& session, std::size_t all_lines) const;

  const Call& call_;
  const std::string trainee_;
  const std::vector<PracticeSession> sessions_;
  std::string mistake_;
};

}  // namespace landdrill::cli
