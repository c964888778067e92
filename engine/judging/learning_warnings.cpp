// What the lessons of a season cannot tell, in whole sentences.
#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "engine/judging/enough.h"
#include "engine/judging/learning.h"
#include "engine/judging/lessons.h"

namespace landdrill {

namespace {

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

std::string elements(std::size_t count) {
  return std::to_string(count) + (count == 1 ? " element" : " elements");
}

std::string too_few(std::size_t lessons) {
  return elements(lessons) + " in all, fewer than " + std::to_string(least_lessons) +
         ": too few to learn from, expected marks are left as they are";
}

void warn_of_days(const Learned& learned, std::vector<std::string>& warnings) {
  if (learned.days >= least_days) return;
  const std::string days = learned.days == 1 ? "one day" : std::to_string(learned.days) + " days";
  warnings.push_back("all of it is from " + days + ", fewer than " + std::to_string(least_days) +
                     ": strict or kind panels on so few days would look the same");
}

void warn_of_groups(const Learned& learned, std::vector<std::string>& warnings) {
  const auto kinds = std::count_if(learned.biases.begin(), learned.biases.end(),
                                   [](const LearnedBias& one) { return one.of == LearnedBias::Of::kind; });
  if (kinds == 1) {
    warnings.push_back("all of it is of one kind: of other kinds nothing is known but this");
  }
  if (kinds > 1 && !learned.within) {
    warnings.push_back("no kind was marked twice: every kind is taken for the mean of all");
  }
  const std::string once = seen_once(learned.biases);
  if (!once.empty()) warnings.push_back("one element only of " + once + ": too few to tell from chance");
}

}  // namespace

std::vector<std::string> warnings_of(const Learned& learned) {
  const std::size_t lessons = learned.biases.front().lessons;
  if (lessons == 0) return {"no panel marked an element that had an expected mark before its day"};
  std::vector<std::string> warnings;
  if (lessons < least_lessons) warnings.push_back(too_few(lessons));
  warn_of_days(learned, warnings);
  warn_of_groups(learned, warnings);
  return warnings;
}

}  // namespace landdrill
