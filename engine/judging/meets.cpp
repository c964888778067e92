#include "engine/judging/meets.h"

#include <algorithm>

#include "engine/routine/routine.h"

namespace landdrill {
namespace {

std::vector<std::string> routines_of(const Meet& meet) {
  std::vector<std::string> routines;
  for (const SatPanel& one : meet.panels) {
    if (std::find(routines.begin(), routines.end(), one.routine) == routines.end())
      routines.push_back(one.routine);
  }
  return routines;
}

}  // namespace

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
