// Which practice a call goes on with, and what it says of those that stay paused.
//
//   PausedPractice left(call, "Robin", *practice.paused("Robin"));
//   left.choose(lines, tasks)      // the session that is as wished
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "engine/cli/call.h"
#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/folder.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

class PausedPractice {
 public:
  // `sessions`: paused ones of one trainee, by their number.
  PausedPractice(const Call& call, std::string trainee, std::vector<PracticeSession> sessions)
      : call_(call), trainee_(std::move(trainee)), sessions_(std::move(sessions)) {}

  // The one that --session names; without a wish, or with --weak alone, the latest; otherwise the latest
  // whose lines, number of lines and time are all as wished, whatever the seed; with --new none. `lines`: those
  // that may be drawn.
  Result<std::optional<PracticeSession>> choose(const std::vector<PracticeTask>& lines, BookTasks& tasks);

  // What is wrong with --session; empty when nothing is.
  const std::string& mistake() const { return mistake_; }

  // Whole lines on the sessions but that one.
  std::string others(int number) const;

  // "landdrill practice start club.season --name Robin --session 2"
  std::string command(int number) const;

 private:
  using Line = std::pair<std::int64_t, std::string>;  // of a panel
  std::optional<PracticeSession> named();

  bool wishes() const;

  bool is_as_wished(const PracticeSession& session, const std::set<Line>& asked,
                    const std::set<Line>& wished) const;

  // How many routines these lines are all of; 0 where they are not.
  static std::size_t whole_routines(const std::set<Line>& asked, const std::set<Line>& wished);

  const Call& call_;
  const std::string trainee_;
  const std::vector<PracticeSession> sessions_;
  std::string mistake_;
};

}  // namespace landdrill::cli
