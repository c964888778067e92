#include "engine/report/page.h"
#include "engine/report/pages/score_parts.h"
#include "engine/report/pages/score_words.h"
#include "engine/score/account.h"

namespace landdrill::report {
namespace {

std::string_view what_became_of(const JudgeMark& judge) {
  switch (judge.state) {
    case JudgeMark::State::kept:
      return "kept";
    case JudgeMark::State::dropped_high:
      return "dropped as highest";
    case JudgeMark::State::dropped_low:
      return "dropped as lowest";
    case JudgeMark::State::absent:
      return "missing";
  }
  return "";
}

void add_judges(PageTable& table, const std::string& line, const LineResult& recorded) {
  for (std::size_t i = 0; i < recorded.judges.size(); ++i) {
    const JudgeMark& judge = recorded.judges[i];
    const bool given = judge.state != JudgeMark::State::absent;
    table.add({line,
               {"", i + 1},
               given ? judge.mark.text(recorded.mark->places) : "",
               what_became_of(judge),
               {"", judge.filled}});
  }
}

}  // namespace

void put_judges(PageParts& page, const Account& account) {
  PageTable table("panel_marks", {{"line", "line"},
                                  {"judge", "judge"},
                                  {"mark", "mark", Align::amount},
                                  {"state", "state"},
                                  {"filled", "filled in"}});
  for (const ElementLine& line : account.elements)
    if (line.recorded) add_judges(table, named(line), *line.recorded);
  for (const AspectLine& line : account.aspects) add_judges(table, line.title, line.recorded);
  table.picture = {Picture::As::dots, "Marks of the panel", "marks", "line", {"mark"}};
  page.add(std::move(table), Seen::by_programs);
}

}  // namespace landdrill::report
