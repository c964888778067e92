// Panels put together by meet: within one event of one meet the same judges sat in the same seats.
//
//   Meets meets(false);
//   for (const RecordedPanel& panel : routine.panels) meets.add(routine, panel);
//   meets.views()[0].views[0].sentences     // of the first meet's first sheet of marks: panel_view.h
//
// The value sets of the routines outlive this; the routines need not.
#pragma once

#include <string>
#include <vector>

#include "engine/panel_view.h"

namespace landdrill {

struct MeetView {
  std::string date, meet, event;      // empty where several were put together
  std::vector<std::string> routines;  // titles, each once
  std::size_t panels = 0;
  std::vector<PanelView> views;
};

class Meets {
 public:
  // `same_judges`: they sat in the same seats at all meets and events, so all is put together.
  explicit Meets(bool same_judges) : same_judges_(same_judges) {}
  void add(const Routine& routine, const RecordedPanel& panel);
  // By date, as they were added within a day.
  std::vector<MeetView> views() const;

 private:
  struct Sat {
    std::string date, meet, routine;
    std::vector<MarkSheet> sheets;
  };
  struct Meet {
    std::string date, meet, event;
    std::vector<Sat> panels;
  };
  Meet& meet_of(const Routine& routine, const RecordedPanel& panel);
  static MeetView view_of(const Meet& meet);

  bool same_judges_;
  std::vector<Meet> meets_;
};

}  // namespace landdrill
