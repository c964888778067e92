#include "engine/report/pages/compare.h"

#include <fmt/format.h>

#include <charconv>

#include "engine/chances/forecast.h"
#include "engine/chances/spreads.h"
#include "engine/report/face.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/price_wish.h"
#include "engine/routine/wish.h"
#include "grammar/diagnostics.h"
#include "grammar/words.h"

namespace landdrill::report {
namespace {

std::optional<int> number_in(std::string_view typed) {
  int number = 0;
  const auto [end, error] = std::from_chars(typed.data(), typed.data() + typed.size(), number);
  if (error != std::errc() || end != typed.data() + typed.size()) return std::nullopt;
  return number;
}

// Those that were asked for: one by its number or its title, or all that have options.
using Elements = std::vector<std::size_t>;

Typed<Elements> one_element(const Routine& routine, const std::string& typed) {
  const std::optional<int> number = number_in(typed);
  std::vector<std::string_view> known;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    if (number ? element.number == *number : words::same(element.title, typed)) return Elements{i};
    if (!element.title.empty()) known.push_back(element.title);
  }
  return tl::unexpected(
      with_hint(fmt::format("found \"{}\"; expected the number or the title of an element", typed),
                words::nearest_hint(typed, known).words));
}

Typed<Elements> elements_asked_for(const Asked& asked, const Routine& routine) {
  if (asked.operands.size() > 1) return one_element(routine, asked.operands[1]);
  Elements all;
  for (std::size_t i = 0; i < routine.elements.size(); ++i)
    if (routine.elements[i].options.size() > 1) all.push_back(i);
  return all;
}

std::vector<std::string> without_options(const Routine& routine, const Elements& elements) {
  const std::string what_to_do =
      "add `option \"title\"` below the element, with its own lines: parts, expect, slip";
  if (elements.empty()) return {"no element has an option to compare with: " + what_to_do};
  const Element& element = routine.elements[elements.front()];
  if (element.options.size() > 1) return {};
  return {fmt::format("{} has no option to compare with: {}", name_of(element), what_to_do)};
}

std::vector<Wish> wishes_for(const Routine& routine, const Elements& elements, Wish wish) {
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

ChoosingAnswer compare(const Asked& asked, const Routine& routine, const Diagnostics& messages,
                       const Progress& elements_done) {
  const PriceWish price = whole_price_wish(asked, routine);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  const Typed<SpreadWish> spread = spreads_of(asked, routine);
  if (!spread) return mistaken(spread.error());
  const Typed<Elements> elements = elements_asked_for(asked, routine);
  if (!elements) return mistaken(elements.error());
  std::vector<std::string> nothing = without_options(routine, *elements);
  if (!nothing.empty()) return missing_in(routine, std::move(nothing));
  std::vector<ComparedElement> compared;
  for (const std::size_t element : *elements) {
    if (elements_done) elements_done(compared.size(), elements->size());
    Comparison one = landdrill::compare(routine, element, price.wish, {*spread, {}});
    if (!one.obstacles.empty()) return missing_in(routine, one.obstacles);
    compared.push_back({std::move(one), stories_of(routine, element, price.wish)});
  }
  const std::vector<Wish> wishes = wishes_for(routine, *elements, price.wish);
  const Face face = face_of(routine, messages, wishes, rows_of(spreads(routine, price.wish, *spread)));
  return compare_page(routine, face, compared);
}

}  // namespace landdrill::report
