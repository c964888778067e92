// Which choices of each list are still open, when some are settled and limits are to be kept.
//
//   Openings openings(choosing);
//   openings.narrow(open)       // false: nothing within the limits is left
//
// Takes out what no programme can hold that keeps one limit, or the chain; it does not look at several
// together. Only plan*.cpp include this.
#pragma once

#include "engine/choosing/search/choose_best.h"

namespace landdrill {

// The choices of each list that are still open; a list of one is settled.
using OpenLists = std::vector<std::vector<std::size_t>>;

class Openings {
 public:
  explicit Openings(const Choosing& choosing) : choosing_(choosing) {}
  OpenLists all() const;
  bool narrow(OpenLists& open) const;

 private:
  bool narrow_by_limit(OpenLists& open, std::size_t limit, bool& changed) const;
  bool narrow_by_chain(OpenLists& open, bool& changed) const;

  const Choosing& choosing_;
};

}  // namespace landdrill
