// Recorded panels -> sheets of marks that can be compared with each other.
#include <algorithm>
#include <cassert>

#include "engine/judging/panel_view.h"
#include "engine/routine/routine.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

bool same_scale(const PanelRule& a, const PanelRule& b) {
  return a.per_element == b.per_element && (!a.per_element || a.aspect == b.aspect) && a.judges == b.judges &&
         a.step == b.step && a.least == b.least && a.most == b.most;
}

void add_to_its_scale(MarkedLine line, std::vector<MarkSheet>& sheets) {
  const auto place = std::find_if(sheets.begin(), sheets.end(), [&](const MarkSheet& sheet) {
    return same_scale(*sheet.lines.front().rule, *line.rule);
  });
  MarkSheet& sheet = place == sheets.end() ? sheets.emplace_back() : *place;
  sheet.lines.push_back(std::move(line));
}

// That of the rule for every kind of element, where there is one: "Execution", not "Execution of lifts".
std::string title_of(const MarkSheet& sheet) {
  const PanelRule& first = *sheet.lines.front().rule;
  for (const MarkedLine& line : sheet.lines) {
    if (!first.per_element && line.rule->aspect != first.aspect) return "The whole routine";
    if (first.per_element && line.rule->kind.empty()) return line.rule->title;
  }
  return first.title;
}

// Which panel a line is from, where there are several.
std::string from(const RecordedPanel& panel, std::size_t panels) {
  if (panels < 2) return "";
  std::string text = ", " + std::string(panel.date);
  if (!panel.title.empty()) text += " " + std::string(panel.title);
  return text;
}

}  // namespace

std::vector<MarkSheet> mark_sheets(const Routine& routine, std::span<const RecordedPanel> panels) {
  std::vector<MarkSheet> sheets;
  for (const RecordedPanel& panel : panels) {
    const std::string source = from(panel, panels.size());
    for (const RecordedElement& recorded : panel.elements) {
      const Element& element = routine.elements[recorded.element];
      assert(element.panel != nullptr);
      add_to_its_scale({name_of(element) + source, element.kind->title, element.panel, recorded.marks},
                       sheets);
    }
    for (const RecordedAspect& recorded : panel.aspects) {
      add_to_its_scale({recorded.rule->title + source, "", recorded.rule, recorded.marks}, sheets);
    }
  }
  for (MarkSheet& sheet : sheets) sheet.title = title_of(sheet);
  return sheets;
}

void put_together(std::vector<MarkSheet> more, std::vector<MarkSheet>& sheets) {
  for (MarkSheet& sheet : more) {
    for (MarkedLine& line : sheet.lines) add_to_its_scale(std::move(line), sheets);
  }
  for (MarkSheet& sheet : sheets) sheet.title = title_of(sheet);
}

}  // namespace landdrill
