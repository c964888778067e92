#include "engine/score/step.h"

#include <array>

namespace landdrill {
namespace {

constexpr std::array<std::string_view, 19> role_words = {
    "total", "element",    "difficulty", "credited",     "part",     "base",     "mark",
    "judge", "deduction",  "run",        "weight",       "combined", "weighted", "aspect",
    "sync",  "sync-error", "penalty",    "penalty-line", "note"};

}  // namespace

std::string_view word_of(Role role) {
  return role_words[static_cast<std::size_t>(role)];
}

const Step* Step::find(Role wanted) const {
  for (const Step& step : inputs) {
    if (step.role == wanted) return &step;
  }
  return nullptr;
}

const Step* Step::at(std::string_view wanted_path) const {
  if (path == wanted_path) return this;
  for (const Step& step : inputs) {
    if (const Step* found = step.at(wanted_path)) return found;
  }
  return nullptr;
}

}  // namespace landdrill
