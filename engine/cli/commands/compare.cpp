#include "engine/report/compare.h"

#include <fmt/format.h>

#include <charconv>

#include "engine/choosing/worth.h"
#include "engine/cli/choosing.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"
#include "engine/cli/progress.h"
#include "engine/report/pages/asked.h"
#include "grammar/words.h"

namespace landdrill::cli {
namespace {

// Those that were asked for: one by its number or its title, or all that have options.
struct AskedElements {
  std::vector<std::size_t> elements;
  std::string mistake;
};

std::optional<int> number_in(std::string_view typed) {
  int number = 0;
  const auto [end, error] = std::from_chars(typed.data(), typed.data() + typed.size(), number);
  if (error != std::errc() || end != typed.data() + typed.size()) return std::nullopt;
  return number;
}

AskedElements one_element(const Routine& routine, const std::string& typed) {
  const std::optional<int> number = number_in(typed);
  std::vector<std::string_view> known;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    if (number ? element.number == *number : words::same(element.title, typed)) return {{i}, {}};
    if (!element.title.empty()) known.push_back(element.title);
  }
  const std::string mistake =
      fmt::format("found \"{}\"; expected the number or the title of an element", typed);
  return {{}, report::with_hint(mistake, words::nearest_hint(typed, known))};
}

AskedElements asked_for(const Call& call, const Routine& routine) {
  if (call.given.operands.size() > 1) return one_element(routine, call.given.operands[1]);
  AskedElements all;
  for (std::size_t i = 0; i < routine.elements.size(); ++i)
    if (routine.elements[i].options.size() > 1) all.elements.push_back(i);
  return all;
}

Obstacles without_options(const Routine& routine, const std::vector<std::size_t>& elements) {
  const std::string what_to_do =
      "add `option \"title\"` below the element, with its own lines: parts, expect, slip";
  if (elements.empty()) return {"no element has an option to compare with: " + what_to_do};
  const Element& element = routine.elements[elements.front()];
  if (element.options.size() > 1) return {};
  return {fmt::format("{} has no option to compare with: {}", name_of(element), what_to_do)};
}

std::vector<Wish> wishes_for(const Routine& routine, const std::vector<std::size_t>& elements, Wish wish) {
  std::vector<Wish> all{wish};
  wish.options.resize(routine.elements.size());
  for (const std::size_t element : elements)
    for (std::size_t option = 0; option < routine.elements[element].options.size(); ++option) {
      all.push_back(wish);
      all.back().options[element] = option;
    }
  return all;
}

// How the line of an element comes about with each of its options.
std::vector<Step> stories_of(const Routine& routine, std::size_t element, Wish wish) {
  std::vector<Step> stories;
  wish.options.resize(routine.elements.size());
  for (std::size_t option = 0; option < routine.elements[element].options.size(); ++option) {
    wish.options[element] = option;
    stories.push_back(account(routine, wish, std::nullopt).estimate->inputs.at(element));
  }
  return stories;
}

}  // namespace

Exit compare(Call& call) {
  const TypedSpreads spread = spreads_of(call);
  if (!spread.mistake.empty()) return misused(call, spread.mistake);
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const Routine& routine = one.routine();
  const std::string beyond = beyond_scale(routine, spread.wish);
  if (!beyond.empty()) return misused(call, beyond);
  const AskedElements asked = asked_for(call, routine);
  if (!asked.mistake.empty()) return misused(call, asked.mistake);
  Obstacles obstacles = without_options(routine, asked.elements);
  if (!obstacles.empty()) return obstructed(call, routine, obstacles);
  Progress progress(call.streams, "compare");
  std::vector<report::ComparedElement> compared;
  for (const std::size_t element : asked.elements) {
    progress.show(fmt::format("{} of {} elements", compared.size(), asked.elements.size()));
    compared.push_back({landdrill::compare(routine, element, one.wish(), {spread.wish, {}}), {}});
    if (!compared.back().comparison.obstacles.empty())
      return obstructed(call, routine, compared.back().comparison.obstacles);
    if (call.given.has("--full")) compared.back().stories = stories_of(routine, element, one.wish());
  }
  progress.clear();
  const std::vector<Wish> wishes = wishes_for(routine, asked.elements, one.wish());
  const report::Face face = face_of(one, wishes, rows_of(spreads(routine, one.wish(), spread.wish)));
  call.streams.out.write(
      report::comparison_report(routine, face, compared, format_of(call), choosing_page(call)));
  return Exit::ok;
}

}  // namespace landdrill::cli
