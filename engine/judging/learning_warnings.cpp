// What the lessons of a season cannot tell.
#include <algorithm>
#include <cmath>
#include <string_view>

#include "engine/judging/enough.h"
#include "engine/judging/learning.h"
#include "engine/judging/lessons.h"

namespace landdrill {
namespace {

// Intervals that are this many tenths wider are worth a word.
constexpr long worth_a_word = 12;

std::string_view word_of(LearnedBias::Of of) {
  switch (of) {
    case LearnedBias::Of::all:
      return "all";
    case LearnedBias::Of::kind:
      return "kind";
    case LearnedBias::Of::family:
      return "family";
    case LearnedBias::Of::fault:
      return "fault";
  }
  return "";
}

// "kind lift, fault splash"; empty for none.
std::string seen_once(const std::vector<LearnedBias>& biases) {
  std::string list;
  for (const LearnedBias& bias : biases) {
    if (bias.of == LearnedBias::Of::all || bias.lessons != 1) continue;
    list += (list.empty() ? "" : ", ") + std::string(word_of(bias.of)) + " " + bias.code;
  }
  return list;
}

std::string too_few(std::size_t lessons) {
  return std::to_string(lessons) + (lessons == 1 ? " lesson" : " lessons") + " in all, fewer than " +
         std::to_string(least_lessons) + ": too few to learn from, expected marks are left as they are";
}

void warn_of_days(const Learned& learned, std::vector<std::string>& warnings) {
  if (learned.days == 1) {
    warnings.push_back("all lessons are of one day: a strict or a kind panel that day would look the same");
  }
  const long tenths = std::lround(learned.wider * 10);
  if (tenths >= worth_a_word) {
    warnings.push_back("marks of one day hang together: read the intervals as " +
                       std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " times as wide");
  }
}

void warn_of_groups(const Learned& learned, std::vector<std::string>& warnings) {
  const auto kinds = std::count_if(learned.biases.begin(), learned.biases.end(),
                                   [](const LearnedBias& one) { return one.of == LearnedBias::Of::kind; });
  if (kinds == 1) {
    warnings.push_back("all lessons are of one kind: of other kinds nothing is known but this");
  }
  if (kinds > 1 && !learned.within) {
    warnings.push_back("no kind has two lessons: every kind is drawn to the mean of all");
  }
  const std::string once = seen_once(learned.biases);
  if (!once.empty()) warnings.push_back("one lesson only of " + once + ": too few to tell from chance");
}

}  // namespace

std::vector<std::string> warnings_of(const Learned& learned) {
  const std::size_t lessons = learned.biases.front().lessons;
  if (lessons == 0) return {"no lessons: no panel marked an element that had an expected mark by then"};
  std::vector<std::string> warnings;
  if (lessons < least_lessons) warnings.push_back(too_few(lessons));
  warn_of_days(learned, warnings);
  warn_of_groups(learned, warnings);
  return warnings;
}

}  // namespace landdrill
