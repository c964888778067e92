#include "engine/meets.h"

#include <algorithm>

namespace landdrill {

Meets::Meet& Meets::meet_of(const Routine& routine, const RecordedPanel& panel) {
  if (same_judges_) return meets_.empty() ? meets_.emplace_back() : meets_.front();
  const auto known = std::find_if(meets_.begin(), meets_.end(), [&](const Meet& one) {
    return one.date == panel.date && one.meet == panel.title && one.event == routine.event->title;
  });
  if (known != meets_.end()) return *known;
  return meets_.emplace_back(
      Meet{std::string(panel.date), std::string(panel.title), routine.event->title, {}});
}

void Meets::add(const Routine& routine, const RecordedPanel& panel) {
  meet_of(routine, panel)
      .panels.push_back({std::string(panel.date), std::string(panel.title), std::string(routine.title),
                         mark_sheets(routine, std::span(&panel, 1))});
}

MeetView Meets::view_of(const Meet& meet) {
  MeetView view{meet.date, meet.meet, meet.event, {}, meet.panels.size(), {}};
  for (const Sat& one : meet.panels) {
    if (std::find(view.routines.begin(), view.routines.end(), one.routine) == view.routines.end())
      view.routines.push_back(one.routine);
  }
  std::vector<MarkSheet> together;
  for (const Sat& one : meet.panels) {
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

std::vector<MeetView> Meets::views() const {
  std::vector<MeetView> views;
  for (const Meet& meet : meets_) views.push_back(view_of(meet));
  std::stable_sort(views.begin(), views.end(),
                   [](const MeetView& a, const MeetView& b) { return a.date < b.date; });
  return views;
}

}  // namespace landdrill
