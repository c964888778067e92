#include "engine/cli/practice_tasks.h"

#include <algorithm>

namespace landdrill::cli {

Result<void> BookTasks::know_blocks() {
  if (!blocks_.empty()) return {};
  BookWish every;
  every.all_versions = true;
  const auto all = book_.find(every);
  if (!all) return tl::unexpected(all.error());
  for (const KeptBlock& block : *all) blocks_[block.id] = block;
  return {};
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

Result<std::vector<PracticeTask>> BookTasks::of(const PracticeSession& session) {
  std::vector<PracticeTask> tasks;
  for (const PracticeLine& line : session.lines) {
    const auto of_this = of_panel(line.block);
    if (!of_this) return tl::unexpected(of_this.error());
    const auto task = std::find_if((*of_this)->begin(), (*of_this)->end(),
                                   [&](const PracticeTask& one) { return one.line == line.line; });
    tasks.push_back(task == (*of_this)->end() ? PracticeTask{} : *task);
  }
  return tasks;
}

std::vector<Practised> practised(const PracticeSession& session) {
  std::vector<Practised> done;
  for (const KeptMark& mark : session.marks)
    done.push_back({mark.mark ? std::optional(Mark(*mark.mark)) : std::nullopt, mark.late});
  return done;
}

}  // namespace landdrill::cli
