// What the checks against published figures share: a sheet scored by a set of tables/data, and what it rests
// on.
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "engine/score/account.h"
#include "tests/unit/kit/kit.h"

namespace landdrill::published {

// The head of a sheet for `event` of the shipped set.
inline std::string head(const std::string& event, const std::string& set) {
  return "routine \"Check\"\nevent " + event + "\nvalues " + set + "\n";
}

// True when a row of the tables that counts here is from memory: then it is no check.
inline bool rests_on_memory(const Account& told) {
  for (const StatusCount& count : told.statuses) {
    if (count.status == Status::memory) return true;
  }
  return false;
}

inline std::string declared_sum(const std::string& text, const std::string& set) {
  const kit::ReadSheet sheet(text, kit::shipped(set));
  return score(sheet.routine(), expected(sheet.routine(), {})).declared.text(1);
}

}  // namespace landdrill::published
