#include "engine/routine/routine.h"

#include <algorithm>

#include "tables/decimal.h"

namespace landdrill {

bool holds_family(const Option& option, std::size_t family_row) {
  return std::any_of(option.parts.begin(), option.parts.end(),
                     [&](const PartUse& use) { return use.part->family_row == family_row; });
}

int counts_in(const CountUses& uses, bool only_under) {
  int sum = 0;
  for (const CountUse& use : uses) sum += !only_under || use.under ? use.counts : 0;
  return sum;
}

std::string label_of(const Element& element) {
  const std::string number = std::to_string(element.number);
  return element.title.empty() ? number : number + " " + std::string(element.title);
}

std::string name_of(const Element& element) {
  const std::string_view title = element.title.empty() ? element.kind->title : element.title;
  return std::to_string(element.number) + " " + std::string(title);
}

std::string_view word_of(Size size) {
  constexpr std::string_view words[] = {"small", "medium", "large"};
  return words[static_cast<std::size_t>(size)];
}

std::optional<Mark> of_size(const FaultRule& fault, Size size) {
  return size == Size::small ? fault.small : size == Size::medium ? fault.medium : fault.large;
}

std::optional<Decimal> width_of_scale(const ValueSet& set, const Event& event) {
  std::optional<Decimal> width;
  for (const PanelRule& rule : set.panels) {
    if (rule.event != event.code) continue;
    const Decimal of_rule = rule.most.value() - rule.least.value();
    if (!width || *width < of_rule) width = of_rule;
  }
  return width;
}

}  // namespace landdrill
