// Panels judge by judge: of sheets, or of the season book.
#include "engine/report/judges.h"

#include "engine/cli/as_swum.h"
#include "engine/cli/book_file.h"
#include "engine/cli/in_order.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/cli/sheet_reader.h"

namespace landdrill::cli {
namespace {

Exit print(Call& call, const Meets& meets, Exit worst) {
  const std::vector<const Meet*> all = meets.by_date();
  if (all.empty()) {
    if (worst == Exit::ok) call.streams.say("landdrill: there is no recorded panel in it\n");
    return worst;
  }
  report::TextWish wish = page_wish(call);
  wish.full = call.given.has("--full");
  const report::JudgesReport report(format_of(call), wish);
  const auto piece = [&](std::size_t i) {
    return i == 0 ? report.first(view_of(*all[i])) : report.next(view_of(*all[i]));
  };
  call.streams.out.write(report.head());
  make_in_order(all.size(), piece, [&](const std::string& text) { call.streams.out.write(text); });
  call.streams.out.write(report.foot());
  return worst;
}

}  // namespace

Exit judges(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  Meets meets(call.given.has("--same-judges"));
  Messages messages(call.streams);
  SheetReader reader(call);
  Exit worst = Exit::ok;
  while (reader.next()) {
    const ReadSheet& sheet = reader.sheet();
    if (!sheet.ok()) {
      messages.add(sheet.diagnostics);
      worst = worse(worst, Exit::errors);
      continue;
    }
    for (const RecordedPanel& panel : sheet.routine()->panels) meets.add(sat_panel(*sheet.routine(), panel));
  }
  messages.finish();
  return print(call, meets, worse(worst, reader.worst()));
}

Exit book_judges(Call& call) {
  Meets meets(call.given.has("--same-judges"));
  const auto sat = [](const Swum& swum) {
    const Routine& routine = *swum.kept.sheet.routine();
    std::vector<SatPanel> panels;
    for (const RecordedPanel& panel : routine.panels) panels.push_back(sat_panel(routine, panel));
    return panels;
  };
  const auto take = [&](const KeptBlock&, std::vector<std::vector<SatPanel>> parts) {
    for (std::vector<SatPanel>& panels : parts)
      for (SatPanel& panel : panels) meets.add(std::move(panel));
  };
  return with_swum(call, sat, take, [&](Exit worst) { return print(call, meets, worst); });
}

}  // namespace landdrill::cli
