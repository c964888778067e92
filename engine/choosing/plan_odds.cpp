// The quantile and the target: from the best by expected points to the best by odds, and the proof.
#include <algorithm>

#include "engine/chances/forecast.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_pieces.h"
#include "engine/choosing/plan_programme_odds.h"
#include "engine/choosing/plan_search.h"
#include "engine/choosing/search/choose_best.h"

namespace landdrill {
namespace {

class ByOdds : public PlanAim {
 public:
  ByOdds(const AimInputs& inputs, Pieces pieces)
      : inputs_(inputs), pieces_(std::move(pieces)), weighing_(inputs_, pieces_) {
    Obstacles none;
    added_ = added_aim(inputs_, none);
  }

  AimedBest best(const Choosing& choosing, std::size_t how_many,
                 const std::vector<std::size_t>& known) override {
    // The best by their expected points are good ones, and whether there are any is known from then on.
    const AimedBest first = added_->best(choosing, how_many, {});
    if (first.best.empty()) return first;
    OddsSearch search(inputs_, pieces_, choosing, weighing_);
    for (const AimedProgramme& one : first.best) search.weigh(places_of(one.options));
    constexpr std::size_t some = 4;
    search.climb(std::max(how_many, some));
    // The best is proved before the next ones: the worse they are, the more is as good as they are.
    const AimedBest best = search.run(1, known.empty());
    if (how_many == 1) return best;
    AimedBest all = best.proved ? search.run(how_many, false) : search.found(how_many);
    all.proved = all.proved && best.proved;
    all.at_most = best.proved ? best.best.front().value : best.at_most;
    return all;
  }

  void tell(PlanChoice& choice) const override {
    if (!has_choices(choice.options)) return;
    const TotalOdds total = pieces_.total(places_of(choice.options), inputs_.how.forecast.grid);
    if (inputs_.how.aim == PlanWish::For::quantile) {
      choice.quantile = total.odds.quantile(inputs_.how.share);
    } else {
      choice.reaches = reaches(total, inputs_.how.target);
    }
  }

 private:
  std::size_t place_of(std::size_t element, std::size_t option) const {
    const auto& list = inputs_.programmes.options[element];
    return static_cast<std::size_t>(std::find(list.begin(), list.end(), option) - list.begin());
  }
  bool has_choices(const std::vector<std::size_t>& options) const {
    for (std::size_t i = 0; i < options.size(); ++i) {
      if (place_of(i, options[i]) == inputs_.programmes.options[i].size()) return false;
    }
    return true;
  }
  std::vector<std::size_t> places_of(const std::vector<std::size_t>& options) const {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < options.size(); ++i) places.push_back(place_of(i, options[i]));
    return places;
  }

  const AimInputs inputs_;
  const Pieces pieces_;
  std::unique_ptr<PlanAim> added_;
  ProgrammeOdds weighing_;
};

}  // namespace

std::unique_ptr<PlanAim> odds_aim(const AimInputs& inputs, Obstacles& obstacles) {
  Pieces pieces = pieces_of(inputs, obstacles);
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<ByOdds>(inputs, std::move(pieces));
}

}  // namespace landdrill
