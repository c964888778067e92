#include "engine/season/panel_scores.h"

#include <algorithm>
#include <optional>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/account_notes.h"
#include "engine/score/score.h"

namespace landdrill {
namespace {

// A routine as it was known on the day of a panel: without later runs.
class OnTheDay {
 public:
  explicit OnTheDay(const Routine& routine) : routine_(routine) {}

  Totals beside(const RecordedPanel& panel) {
    const auto known = std::count_if(routine_.runs.begin(), routine_.runs.end(),
                                     [&](const Run& run) { return run.date <= panel.date; });
    // Of two days, what was known on the earlier was known on the later too: so many runs are always the
    // same.
    if (!estimated_ || known != known_) {
      known_ = known;
      Wish wish;
      wish.runs.until = panel.date;
      estimated_.emplace(routine_, wish);
    }
    return estimated_->beside(panel);
  }

 private:
  const Routine& routine_;
  std::optional<Estimated> estimated_;
  std::ptrdiff_t known_ = 0;  // runs
};

PanelScore score_of(const Routine& routine, const RecordedPanel& panel, const Totals& totals) {
  PanelScore score{std::string(panel.date), std::string(panel.title), totals, {}, {}};
  if (!totals.recorded) score.without_total = unmarked(routine, recorded(routine, panel, {}));
  if (!totals.estimate) {
    Wish wish;
    wish.runs.until = panel.date;
    score.without_estimate = unmarked(routine, expected(routine, wish));
  }
  return score;
}

}  // namespace

std::vector<PanelScore> panel_scores(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  OnTheDay on_the_day(routine);
  std::vector<PanelScore> scores;
  scores.reserve(routine.panels.size());
  for (const RecordedPanel& panel : routine.panels)
    scores.push_back(score_of(routine, panel, on_the_day.beside(panel)));
  return scores;
}

}  // namespace landdrill
