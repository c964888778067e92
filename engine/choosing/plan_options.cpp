// What each element can be in a plan: its options with a mark that keep the limits within one element.
#include <algorithm>

#include "engine/chances/obstacle.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/routine/wish.h"
#include "engine/score/option_limits.h"

namespace landdrill {
namespace {

std::string place_of(const Element& element) {
  return "element " + std::to_string(element.number) +
         (element.title.empty() ? "" : " \"" + std::string(element.title) + "\"");
}

std::string way_of(const Element& element, std::size_t option) {
  const std::string_view title = element.options[option].title;
  return title.empty() ? place_of(element) + " as written"
                       : "\"" + std::string(title) + "\" of " + place_of(element);
}

// An element that the event marks needs a mark.
bool has_mark(const Routine& routine, std::size_t element, std::size_t option, const Wish& wish) {
  const Element& of = routine.elements[element];
  return of.panel == nullptr ||
         expected_mark(routine, element, of.options[option], wish.runs).mark.has_value();
}

}  // namespace

void Programmes::look_into_elements(bool heed_limits) {
  OptionLimits limits(*routine_.set);
  for (const Element& element : routine_.elements) {
    auto& here = broken_.emplace_back(element.options.size());
    for (std::size_t option = 0; heed_limits && option < here.size(); ++option) {
      for (const BrokenLimit& limit : limits.broken_by(element.options[option], *element.kind)) {
        here[option] += (here[option].empty() ? "" : "; ") + limit.words();
      }
    }
  }
}

// Why an option is none to choose from, or nothing.
std::string Programmes::why_not(std::size_t element, std::size_t option, const Wish& wish) const {
  if (!has_mark(routine_, element, option, wish)) return "it has no expected mark; add `expect`";
  return broken_[element][option];
}

void Programmes::list_options(const Wish& wish) {
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    const Element& element = routine_.elements[i];
    const std::size_t written = i < wish.options.size() ? wish.options[i] : 0;
    std::vector<std::size_t> asked, fitting;
    std::vector<std::string> left_out;
    for (std::size_t option = 0; option < element.options.size(); ++option) {
      if (element.stays && option != written) continue;
      asked.push_back(option);
      const std::string why = why_not(i, option, wish);
      if (why.empty()) {
        fitting.push_back(option);
      } else {
        left_out.push_back(way_of(element, option) + " is left out of the plan: " + why);
      }
    }
    if (element.optional) fitting.push_back(leave_out);
    if (fitting.empty()) {
      tell_empty(i, asked);
    } else {
      notes.insert(notes.end(), left_out.begin(), left_out.end());
    }
    options.push_back(std::move(fitting));
  }
}

// Nothing to choose from is a conflict when a limit is to blame, and else something is missing.
void Programmes::tell_empty(std::size_t element, const std::vector<std::size_t>& asked) {
  const Element& of = routine_.elements[element];
  std::string reasons;
  for (const std::size_t option : asked) {
    const std::string& words = broken_[element][option];
    if (words.empty()) continue;
    const std::string_view title = of.options[option].title;
    const std::string name = title.empty() ? "as written" : "\"" + std::string(title) + "\"";
    reasons += (reasons.empty() ? "" : "; ") + (asked.size() == 1 ? "" : name + " has ") + words;
  }
  if (reasons.empty()) {
    obstacles.push_back({Obstacle::Of::element_unmarked,
                         {.elements = {of.number},
                          .names = {std::string(of.title)},
                          .most = static_cast<std::int64_t>(asked.size())}});
  } else {
    conflict.push_back(place_of(of) + ": " + reasons);
  }
}

}  // namespace landdrill
