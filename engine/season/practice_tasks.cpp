#include "engine/season/practice_tasks.h"

#include <algorithm>
#include <set>

#include "engine/judging/practice_report.h"
#include "tables/binary.h"
#include "tables/folder.h"
#include "tables/quantity.h"
#include "tables/store/book.h"
#include "tables/store/refusal.h"

namespace landdrill {

using store::attempt;
using store::must;
void BookTasks::know_blocks() {
  if (!blocks_.empty()) return;
  BookWish every;
  every.all_versions = true;
  for (KeptBlock& block : must(book_.find(every))) {
    if (block.what == Block::What::panel && block.version == block.versions)
      latest_[name_of(block)] = block.id;
    blocks_[block.id] = std::move(block);
  }
}

BookTasks::Name BookTasks::name_of(const KeptBlock& panel) {
  return {panel.routine, panel.event, panel.date, panel.title};
}

const std::vector<PracticeTask>& BookTasks::of_panel(std::int64_t panel) {
  know_blocks();
  const auto [known, is_new] = panels_.try_emplace(panel);
  const auto block = blocks_.find(panel);
  if (!is_new || block == blocks_.end()) return known->second;
  const KeptSheet& kept = *must(kept_.read_alone(block->second, blocks_[block->second.of_routine]));
  const std::optional<Routine>& routine = kept.sheet.routine();
  if (routine && !routine->panels.empty())
    known->second = practice_tasks(*routine, routine->panels.front(), panel);
  return known->second;
}

Result<std::vector<PracticeTask>> BookTasks::find(BookWish wish) {
  return attempt([&] {
    wish.what = Block::What::panel;
    std::vector<PracticeTask> tasks;
    for (const KeptBlock& panel : must(book_.find(wish))) {
      const auto& of_this = of_panel(panel.id);
      tasks.insert(tasks.end(), of_this.begin(), of_this.end());
    }
    return tasks;
  });
}

PracticeTask BookTasks::task_of(std::int64_t panel, const std::string& line) {
  const std::vector<PracticeTask>& of_this = of_panel(panel);
  const auto task =
      std::find_if(of_this.begin(), of_this.end(), [&](const PracticeTask& one) { return one.line == line; });
  return task == of_this.end() ? PracticeTask{} : *task;
}

std::int64_t BookTasks::latest_of(std::int64_t panel) const {
  const auto block = blocks_.find(panel);
  return block == blocks_.end() ? panel : latest_.at(name_of(block->second));
}

Result<std::vector<PracticeTask>> BookTasks::of(const PracticeSession& session) {
  return attempt([&] {
    know_blocks();
    std::vector<PracticeTask> tasks;
    for (const PracticeLine& line : session.lines) {
      PracticeTask task = task_of(line.block, line.line);
      if (const std::int64_t latest = latest_of(line.block); latest != line.block) {
        PracticeTask now = task_of(latest, line.line);
        if (now.rule != nullptr) {
          now.corrected = !std::ranges::equal(now.judges, task.judges);
          task = std::move(now);
        }
      }
      tasks.push_back(std::move(task));
    }
    return tasks;
  });
}

Result<void> BookTasks::say_which_come_again(std::vector<PracticeTask>& tasks,
                                             std::span<const PracticeSession> sessions,
                                             std::string_view started_at) {
  return attempt([&] {
    know_blocks();
    std::set<std::pair<std::int64_t, std::string>> met;
    for (const PracticeSession& session : sessions) {
      if (session.started_at >= started_at) continue;
      for (std::size_t i = 0; i < session.lines.size(); ++i)
        if (session.finished || session.marks[i].did != KeptMark::Did::open)
          met.emplace(latest_of(session.lines[i].block), session.lines[i].line);
    }
    for (PracticeTask& task : tasks) task.again = met.contains({latest_of(task.block), task.line});
  });
}

Result<std::vector<PracticeTask>> tasks_of(const PracticeSession& session,
                                           std::span<const PracticeSession> all, BookTasks& tasks) {
  return attempt([&] {
    std::vector<PracticeTask> of_this = must(tasks.of(session));
    must(tasks.say_which_come_again(of_this, all, session.started_at));
    return of_this;
  });
}

ComparedMarks compared_marks(const std::vector<PracticeTask>& tasks, const PracticeSession& session) {
  ComparedMarks all;
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    if (tasks[i].rule == nullptr) continue;
    const KeptMark& mark = session.marks[i];
    all.tasks.push_back(tasks[i]);
    all.done.push_back({mark.mark ? std::optional(Mark(*mark.mark)) : std::nullopt, mark.late});
  }
  return all;
}

Result<ComparedMarks> marks_so_far(const PracticeBook& practice, BookTasks& tasks,
                                   const std::string& trainee) {
  return attempt([&] {
    ComparedMarks all;
    const std::vector<PracticeSession> hers = must(practice.of(trainee));
    for (const PracticeSession& session : hers) {
      if (!session.finished) continue;
      const ComparedMarks one = compared_marks(must(tasks_of(session, hers, tasks)), session);
      all.tasks.insert(all.tasks.end(), one.tasks.begin(), one.tasks.end());
      all.done.insert(all.done.end(), one.done.begin(), one.done.end());
    }
    return all;
  });
}

Result<std::vector<Weakness>> weak_so_far(const PracticeBook& practice, BookTasks& tasks,
                                          const std::string& trainee) {
  return attempt([&] {
    const ComparedMarks all = must(marks_so_far(practice, tasks, trainee));
    return weaknesses(landdrill::practice_report(all.tasks, all.done));
  });
}

ComparedMarks beside_expert(const ComparedMarks& marks, const ComparedMarks& expert) {
  std::map<std::pair<std::int64_t, std::string>, Mark> hers;
  for (std::size_t i = 0; i < expert.tasks.size(); ++i)
    if (expert.done[i].mark)
      hers.insert_or_assign({expert.tasks[i].block, expert.tasks[i].line}, *expert.done[i].mark);
  ComparedMarks both;
  for (std::size_t i = 0; i < marks.tasks.size(); ++i) {
    const auto mark = hers.find({marks.tasks[i].block, marks.tasks[i].line});
    if (mark == hers.end()) continue;
    PracticeTask task = marks.tasks[i];
    task.judges = {mark->second};
    task.kept = binary(mark->second);
    both.tasks.push_back(std::move(task));
    both.done.push_back(marks.done[i]);
  }
  return both;
}

}  // namespace landdrill
