#include "engine/judging/meets.h"

#include <algorithm>
#include <cassert>

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

// The lines of `more` behind those of the same aspect, number of judges and scale.
void put_together(std::vector<MarkSheet> more, std::vector<MarkSheet>& sheets) {
  for (MarkSheet& sheet : more) {
    for (MarkedLine& line : sheet.lines) add_to_its_scale(std::move(line), sheets);
  }
  for (MarkSheet& sheet : sheets) sheet.title = title_of(sheet);
}

std::vector<std::string> routines_of(const Meet& meet) {
  std::vector<std::string> routines;
  for (const SatPanel& one : meet.panels) {
    if (std::find(routines.begin(), routines.end(), one.routine) == routines.end())
      routines.push_back(one.routine);
  }
  return routines;
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

SatPanel sat_panel(const Routine& routine, const RecordedPanel& panel) {
  return {std::string(panel.date), std::string(panel.title),   routine.event->code,
          routine.event->title,    std::string(routine.title), mark_sheets(routine, std::span(&panel, 1))};
}

MeetView view_of(const Meet& meet) {
  MeetView view{meet.date,         meet.meet,          meet.event, meet.event_title,
                routines_of(meet), meet.panels.size(), {}};
  std::vector<MarkSheet> together;
  for (const SatPanel& one : meet.panels) {
    std::vector<MarkSheet> sheets = one.sheets;
    for (MarkSheet& sheet : sheets) {
      for (MarkedLine& line : sheet.lines) {
        if (view.routines.size() > 1) line.title = one.routine + ": " + line.title;
        if (meet.date.empty() && meet.panels.size() > 1) line.title += ", " + one.date + " " + one.meet;
      }
    }
    put_together(std::move(sheets), together);
  }
  for (const MarkSheet& sheet : together) view.views.push_back(panel_view(sheet));
  return view;
}

Meet& Meets::meet_of(const SatPanel& panel) {
  if (same_judges_) return meets_.empty() ? meets_.emplace_back() : meets_.front();
  const auto [known, is_new] = places_.try_emplace({panel.date, panel.meet, panel.event}, meets_.size());
  if (is_new) meets_.push_back({panel.date, panel.meet, panel.event, panel.event_title, {}});
  return meets_[known->second];
}

void Meets::add(SatPanel panel) {
  meet_of(panel).panels.push_back(std::move(panel));
}

std::vector<const Meet*> Meets::by_date() const {
  std::vector<const Meet*> meets;
  for (const Meet& meet : meets_) meets.push_back(&meet);
  std::stable_sort(meets.begin(), meets.end(),
                   [](const Meet* a, const Meet* b) { return a->date < b->date; });
  return meets;
}

}  // namespace landdrill
