#include "engine/season/marks_apart.h"

#include <map>
#include <optional>
#include <string>
#include <utility>

#include "grammar/parse.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// The marks of a panel by their line and seat, and which elements have the base mark.
struct PanelMarks {
  std::map<std::pair<std::string, std::size_t>, std::optional<Decimal>> marks;
  std::map<std::string, bool> bases;
};
PanelMarks marks_in(const ast::Lines& lines) {
  PanelMarks all;
  for (const ast::Line& line : lines) {
    const auto* element = std::get_if<ast::ElementMarksLine>(&line.statement);
    const auto* aspect = std::get_if<ast::AspectMarksLine>(&line.statement);
    if (element == nullptr && aspect == nullptr) continue;
    const std::string name(element != nullptr ? element->element.text : aspect->aspect.text);
    if (element != nullptr) all.bases[name] = element->base;
    std::size_t seat = 0;
    for (const ast::JudgeMark& mark : element != nullptr ? element->marks : aspect->marks) {
      if (mark) all.marks[{name, seat}] = Decimal::parse(mark->text);
      ++seat;
    }
  }
  return all;
}

MarksApart apart(const PanelMarks& old_panel, const PanelMarks& new_panel) {
  MarksApart marks{old_panel.marks.size()};
  for (const auto& [seat, mark] : old_panel.marks) {
    const auto other = new_panel.marks.find(seat);
    if (other == new_panel.marks.end())
      ++marks.gone;
    else if (other->second != mark)
      ++marks.changed;
  }
  for (const auto& [seat, mark] : new_panel.marks) marks.added += old_panel.marks.count(seat) == 0;
  for (const auto& [element, base] : new_panel.bases) {
    const auto other = old_panel.bases.find(element);
    if (other != old_panel.bases.end() && other->second != base) ++(base ? marks.based : marks.unbased);
  }
  return marks;
}

}  // namespace

MarksApart marks_apart(const ast::Lines& before, const ast::Lines& now) {
  return apart(marks_in(before), marks_in(now));
}

MarksApart marks_apart(std::string_view before, std::string_view now) {
  return marks_apart(parse({"", before}).lines, parse({"", now}).lines);
}

}  // namespace landdrill
