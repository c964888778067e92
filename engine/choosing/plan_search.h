// The search for the best programmes by odds: what no bound rules out is settled list by list.
//
//   OddsSearch search(inputs, pieces, choosing, weighing);
//   search.weigh(choices);         // programmes within the limits; one at least
//   search.climb(6);
//   search.run(1, true).best       // proved, or with what it could be at most
//
// Beginnings with the highest bound come first, so what is left when it has to stop bounds the rest. Only
// plan*.cpp include this.
#pragma once

#include <queue>

#include "engine/chances/odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_open.h"
#include "engine/choosing/plan_pieces.h"
#include "engine/choosing/plan_programme_odds.h"
#include "engine/choosing/plan_reach.h"
#include "engine/choosing/plan_tighten.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {

class OddsSearch {
 public:
  OddsSearch(const AimInputs& inputs, const Pieces& pieces, const Choosing& choosing,
             ProgrammeOdds& weighing);

  void weigh(const std::vector<std::size_t>& choices);
  // From the best that is known to better ones: those of the highest sum of what each choice is worth beside
  // the others of the programme.
  void climb(std::size_t how_many);
  // `narrow`: where the proof takes long, first prove that nothing is better by more than a little.
  AimedBest run(std::size_t how_many, bool narrow);
  // As far as it got.
  AimedBest found(std::size_t how_many);

 private:
  // Some lists are settled; `most` bounds the chance to reach the total with them.
  struct Node {
    double most = 0;
    std::vector<std::pair<std::uint32_t, std::uint32_t>> settled;  // list and choice
    std::shared_ptr<const TiePrices> prices;
    std::shared_ptr<const std::vector<std::size_t>> order;
    bool operator<(const Node& other) const { return most < other.most; }
  };
  using Queue = std::priority_queue<Node>;

  std::optional<double> to_beat() const;
  double total_to_reach() const;
  Chance needed() const;
  void aim();

  bool begin();
  bool settle_for_good(const Tightened& root);
  Node root_node() const;
  std::vector<std::size_t> unsettled(const OpenLists& open, const std::vector<std::size_t>& order) const;
  bool search(Queue& queue, std::uint64_t at_most);
  void look_into(const Node& node, Queue& queue);
  void prove_narrow();
  bool reached(double total);
  double not_reached();

  Exact at_most(const Queue& left);

  const AimInputs& inputs_;
  const Pieces& pieces_;
  const Choosing& choosing_;
  ProgrammeOdds& weighing_;
  const bool quantile_;
  const Openings openings_;
  std::size_t how_many_ = 1;
  std::vector<WeighedProgramme> found_;  // best first

  OpenLists open_;  // what is not ruled out for good
  std::optional<Reach> reach_;
  std::optional<Tightening> tightening_;
  Tightened root_;
  double aimed_at_ = 0, lead_ = 0;      // in millionths; in points: how much better it has to be
  std::optional<double> none_reaches_;  // proved on the way, in points
  std::uint64_t steps_ = 0;
  bool stopped_ = false;
};

}  // namespace landdrill
