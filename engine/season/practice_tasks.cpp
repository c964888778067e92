#include "engine/season/practice_tasks.h"

#include <algorithm>

#include "tables/folder.h"
#include "tables/quantity.h"
#include "tables/store/book.h"

namespace landdrill {
namespace {

bool same_marks(const JudgeMarks& one, const JudgeMarks& other) {
  return std::equal(one.begin(), one.end(), other.begin(), other.end());
}

}  // namespace

Result<void> BookTasks::know_blocks() {
  if (!blocks_.empty()) return {};
  BookWish every;
  every.all_versions = true;
  const auto all = book_.find(every);
  if (!all) return tl::unexpected(all.error());
  for (const KeptBlock& block : *all) {
    blocks_[block.id] = block;
    if (block.what == Block::What::panel && block.version == block.versions)
      latest_[name_of(block)] = block.id;
  }
  return {};
}

BookTasks::Name BookTasks::name_of(const KeptBlock& panel) {
  return {panel.routine, panel.event, panel.date, panel.title};
}

Result<const std::vector<PracticeTask>*> BookTasks::of_panel(std::int64_t panel) {
  if (const auto known = know_blocks(); !known) return tl::unexpected(known.error());
  if (const auto known = panels_.find(panel); known != panels_.end()) return &known->second;
  std::vector<PracticeTask>& tasks = panels_[panel];
  const auto block = blocks_.find(panel);
  if (block == blocks_.end()) return &tasks;
  const auto sheet = kept_.read_alone(block->second, blocks_[block->second.of_routine]);
  if (!sheet) return tl::unexpected(sheet.error());
  const std::optional<Routine>& routine = (*sheet)->sheet.routine();
  if (routine && !routine->panels.empty()) tasks = practice_tasks(*routine, routine->panels.front(), panel);
  return &tasks;
}

Result<std::vector<PracticeTask>> BookTasks::find(BookWish wish) {
  wish.what = Block::What::panel;
  const auto found = book_.find(wish);
  if (!found) return tl::unexpected(found.error());
  std::vector<PracticeTask> tasks;
  for (const KeptBlock& panel : *found) {
    const auto of_this = of_panel(panel.id);
    if (!of_this) return tl::unexpected(of_this.error());
    tasks.insert(tasks.end(), (*of_this)->begin(), (*of_this)->end());
  }
  return tasks;
}

Result<PracticeTask> BookTasks::task_of(std::int64_t panel, const std::string& line) {
  const auto of_this = of_panel(panel);
  if (!of_this) return tl::unexpected(of_this.error());
  const auto task = std::find_if((*of_this)->begin(), (*of_this)->end(),
                                 [&](const PracticeTask& one) { return one.line == line; });
  return task == (*of_this)->end() ? PracticeTask{} : *task;
}

Result<std::vector<PracticeTask>> BookTasks::of(const PracticeSession& session) {
  if (const auto known = know_blocks(); !known) return tl::unexpected(known.error());
  std::vector<PracticeTask> tasks;
  for (const PracticeLine& line : session.lines) {
    auto then = task_of(line.block, line.line);
    if (!then) return tl::unexpected(then.error());
    const auto panel = blocks_.find(line.block);
    const std::int64_t latest = panel == blocks_.end() ? line.block : latest_.at(name_of(panel->second));
    if (latest != line.block) {
      auto now = task_of(latest, line.line);
      if (!now) return tl::unexpected(now.error());
      if (now->rule != nullptr) {
        now->corrected = !same_marks(now->judges, then->judges);
        then = std::move(now);
      }
    }
    tasks.push_back(std::move(*then));
  }
  return tasks;
}

std::vector<Practised> practised(const PracticeSession& session) {
  std::vector<Practised> done;
  for (const KeptMark& mark : session.marks)
    done.push_back({mark.mark ? std::optional(Mark(*mark.mark)) : std::nullopt, mark.late});
  return done;
}

ComparedMarks compared_marks(const std::vector<PracticeTask>& tasks, const PracticeSession& session) {
  ComparedMarks all;
  const std::vector<Practised> done = practised(session);
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    if (tasks[i].rule == nullptr) continue;
    all.tasks.push_back(tasks[i]);
    all.done.push_back(done[i]);
  }
  return all;
}

Result<std::vector<Weakness>> weak_so_far(const PracticeBook& practice, BookTasks& tasks,
                                          const std::string& trainee) {
  const auto sessions = practice.finished(trainee);
  if (!sessions) return tl::unexpected(sessions.error());
  ComparedMarks all;
  for (const PracticeSession& session : *sessions) {
    const auto of_this = tasks.of(session);
    if (!of_this) return tl::unexpected(of_this.error());
    const ComparedMarks one = compared_marks(*of_this, session);
    all.tasks.insert(all.tasks.end(), one.tasks.begin(), one.tasks.end());
    all.done.insert(all.done.end(), one.done.begin(), one.done.end());
  }
  return weaknesses(landdrill::practice_report(all.tasks, all.done));
}

}  // namespace landdrill
