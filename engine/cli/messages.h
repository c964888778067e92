// Diagnostics of many sheets on standard error, bounded: after the first thousand they are only counted.
#pragma once

#include "engine/cli/output.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {

class Messages {
 public:
  static constexpr std::size_t most = 1000;
  explicit Messages(Streams& streams) : streams_(streams) {}
  void add(const Diagnostics& diagnostics);
  // Says how many were not shown, if any.
  void finish();

 private:
  Streams& streams_;
  std::size_t shown_ = 0, hidden_ = 0;
};

}  // namespace landdrill::cli
