// Panels judge by judge: of sheets, or of the season book.
#include "engine/report/pages/judges.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/output.h"
#include "engine/files/sheet_reader.h"
#include "engine/judging/meets.h"
#include "engine/routine/routine.h"
#include "engine/season/kept_sheets.h"

namespace landdrill::cli {
namespace {

// Without any panel there is nothing to print, which is no mistake.
Exit print_judges(Call& call, const report::Answer& answer, Exit worst) {
  if (answer)
    print_page(call, *answer);
  else if (worst == Exit::ok)
    call.streams.say(fmt::format("landdrill: {}\n", answer.error()));
  return worst;
}

// A panel that comes again, as when a file is named twice, is counted once.
class SeenPanels {
 public:
  explicit SeenPanels(Call& call) : call_(call) {}

  // Of a sheet without errors.
  std::vector<SatPanel> not_seen(const StreamSheet& sheet) {
    const Routine& routine = *sheet.routine();
    std::vector<std::string> words;
    for (TypedBlock& one : typed_blocks(sheet))
      if (one.block.what == Block::What::panel) words.push_back(std::move(one.block.text));
    std::vector<SatPanel> panels;
    for (std::size_t i = 0; i < routine.panels.size(); ++i) {
      SatPanel panel = sat_panel(routine, routine.panels[i]);
      std::set<std::string>& known = seen_[{panel.routine, panel.event, panel.date, panel.meet}];
      const bool is_first = known.empty();
      if (!known.insert(std::move(words.at(i))).second) {
        note(panel, "came before in the same words; it is counted once");
        continue;
      }
      if (!is_first) note(panel, "came before with something else in it; both are counted");
      panels.push_back(std::move(panel));
    }
    return panels;
  }
  void tell() const { say_notes(call_, notes_, 5); }

 private:
  void note(const SatPanel& panel, std::string_view what) {
    notes_.push_back(fmt::format("the panel of {}{} of {} {}", panel.date,
                                 panel.meet.empty() ? std::string() : fmt::format(" \"{}\"", panel.meet),
                                 panel.routine, what));
  }

  Call& call_;
  std::map<std::tuple<std::string, std::string, std::string, std::string>, std::set<std::string>> seen_;
  std::vector<std::string> notes_;
};

}  // namespace

Exit judges(Call& call) {
  SeenPanels seen(call);
  std::vector<SatPanel> panels;
  CallSheets sheets(call);
  const Exit worst = with_sheets(call, sheets, [&](const SheetReader& reader, Messages& messages) {
    const StreamSheet& sheet = reader.sheet();
    if (!sheet.ok()) {
      messages.add(sheet.messages());
      return Exit::errors;
    }
    for (SatPanel& panel : seen.not_seen(sheet)) panels.push_back(std::move(panel));
    return Exit::ok;
  });
  seen.tell();
  return print_judges(call, report::judges(call.given, std::move(panels)), worst);
}

Exit book_judges(Call& call) {
  std::vector<SatPanel> all;
  const auto sat = [](const Swum& swum) {
    const Routine& routine = *swum.kept.sheet.routine();
    std::vector<SatPanel> panels;
    for (const RecordedPanel& panel : routine.panels) panels.push_back(sat_panel(routine, panel));
    return panels;
  };
  const auto take = [&](const KeptBlock&, std::vector<SatPanel> panels) {
    std::move(panels.begin(), panels.end(), std::back_inserter(all));
  };
  return with_swum(call, sat, take, [&](const Book&, const BookWish&, Exit worst) {
    return print_judges(call, report::judges(call.given, std::move(all)), worst);
  });
}

}  // namespace landdrill::cli
