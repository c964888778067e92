// Panels put together by meet: within one event of one meet the same judges sat in the same seats.
//
//   Meets meets(false);
//   for (const RecordedPanel& panel : routine.panels) meets.add(sat_panel(routine, panel));
//   view_of(*meets.by_date()[0]).views[0].sentences
//   // of the first meet's first sheet of marks: panel_view.h
//
// The value sets of the routines outlive this; the routines need not.
#pragma once

#include <map>
#include <string>
#include <tuple>
#include <vector>

#include "engine/judging/panel_view.h"
#include "engine/routine/routine.h"

namespace landdrill {

struct MeetView {
  std::string date, meet, event, event_title;  // empty where several were put together
  std::vector<std::string> routines;           // titles, each once
  std::size_t panels = 0;
  std::vector<PanelView> views;
};

// Recorded panels as sheets of marks that can be compared. Elements with the same aspect, number of judges and scale make one sheet, over all panels given; so do the
// aspects of the whole routine.
std::vector<MarkSheet> mark_sheets(const Routine& routine, std::span<const RecordedPanel> panels);

// The marks of one panel, with what tells where they belong.
struct SatPanel {
  std::string date, meet, event, event_title, routine;
  std::vector<MarkSheet> sheets;
};
SatPanel sat_panel(const Routine& routine, const RecordedPanel& panel);

struct Meet {
  std::string date, meet, event, event_title;  // empty where several were put together
  std::vector<SatPanel> panels;                // as they were added
};
MeetView view_of(const Meet& meet);

class Meets {
 public:
  // `same_judges`: they sat in the same seats at all meets and events, so all is put together.
  explicit Meets(bool same_judges) : same_judges_(same_judges) {}
  void add(SatPanel panel);
  // As they were added within a day. They live until the next `add`.
  std::vector<const Meet*> by_date() const;

 private:
  Meet& meet_of(const SatPanel& panel);

  bool same_judges_;
  std::vector<Meet> meets_;
  std::map<std::tuple<std::string, std::string, std::string>, std::size_t>
      places_;  // of date, meet and event
};

}  // namespace landdrill
