#include "engine/report/pages/judges.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/figures.h"

namespace landdrill::report {
namespace {

std::string meet_title(const MeetView& meet) {
  if (meet.date.empty())
    return fmt::format("{}, taken as one panel of the same judges", counted(meet.panels, "panel"));
  const std::string name = meet.meet.empty() ? meet.date : meet.meet + ", " + meet.date;
  return name + ": " + meet.event_title;
}

std::string view_title(const PanelView& view) {
  const std::string what =
      view.of_elements ? counted(view.lines.size(), "element") : counted(view.lines.size(), "aspect");
  return fmt::format("{}: {}, {}", view.title, what, counted(view.judges.size(), "judge"));
}

void put_lines(const PanelView& view, PageParts& page) {
  PageTable lines("lines", program_columns({"line", "marks"}));
  for (std::size_t row = 0; row < view.lines.size(); ++row) {
    Data marks;
    for (std::size_t judge = 0; judge < view.judges.size(); ++judge)
      marks.push_back(figure_datum(view.table.at(row, judge)));
    lines.add({view.lines[row], Entry("", std::move(marks))});
  }
  page.add(std::move(lines), Seen::by_programs);
}

PageParts view_part(const PanelView& view) {
  PageParts page;
  page.heading(view_title(view));
  page.fact("title", view.title);
  page.list("sentences", view.sentences);
  if (!view.warnings.empty()) page.heading("With care");
  page.list("warnings", view.warnings);
  put_judges_table(view, page);
  put_bias_table(view, page);
  put_pairs_table(view, page);
  put_limits_table(view, page);
  put_agreement(view, page);
  put_lines(view, page);
  put_numbers(view, page);
  return page;
}

PageParts meet_part(const MeetView& meet) {
  PageParts page;
  page.heading(meet_title(meet));
  page.fact("date", meet.date);
  page.fact("meet", meet.meet);
  page.fact("event", meet.event);
  page.fact("event_title", meet.event_title);
  page.fact("routines", Datum::texts(meet.routines));
  page.fact("panels", meet.panels);
  page.say("  ", fmt::format("{}", fmt::join(meet.routines, ", ")));
  for (const PanelView& view : meet.views) page.section("views", view_part(view));
  return page;
}

void put_judges_legend(PageParts& page) {
  page.heading("How to read it");
  page.list(
      "",
      {"above or below the others: how far her marks lie above (+) or below (-) the mean of the other "
       "judges, "
       "and between what that may really lie. Where 0 lies between, it may be chance, and she is not named. "
       "Who is named is left out of the others from then on.",
       "What may be is wide enough for all judges and kinds of element that are looked at: of 20 meets whose "
       "judges mark alike, about one at most has somebody named.",
       "dropped: how often her mark lay above or below all that counted."});
  page.list(
      "",
      {"bias: her marks against the mean of all other judges, with an interval for one judge looked at by "
       "herself: "
       "one in 20 misses the truth. spread: how much she scatters around them. order: 1 where she ranks as "
       "the others do, 0 where there is nothing in common.",
       "apart: + where the first of the two judges marks higher; the interval is for one pair looked at by "
       "itself, so of many pairs some are off 0 by chance. Spearman and Kendall: 1 where both rank alike. "
       "kappa: 1 where both give the same marks, 0 what chance gives; the further apart two marks, the more "
       "they count.",
       "limits of agreement: of this one pair; where there are many lines, about 19 of 20 differences of the "
       "two judges lie between them and one in 20 outside.",
       "intraclass correlation: how much of what marks scatter is the swimming and not the judge; 1 all of "
       "it, 0 nothing. These are the forms (1,1) to (3,k) of Shrout and Fleiss (1979); (2) is the one for a "
       "panel drawn from a list of judges. Poor is below 0.5, moderate to 0.75, good to 0.9 (Koo and Li "
       "2016)."},
      Seen::in_full);
}

}  // namespace

Answer judges(const Asked& asked, std::vector<SatPanel> panels) {
  Meets meets(asked.has("--same-judges"));
  for (SatPanel& panel : panels) meets.add(std::move(panel));
  if (panels.empty()) return tl::unexpected<std::string>("there is no recorded panel in it");
  Page page(asked.question());
  page.csv = {"date",   "meet",  "event", "marked", "judge",    "other",  "kind",
              "number", "value", "low",   "high",   "rests_on", "why_not"};
  for (const Meet* meet : meets.by_date()) page.section("meets", meet_part(view_of(*meet)));
  put_judges_legend(page);
  return page;
}

}  // namespace landdrill::report
