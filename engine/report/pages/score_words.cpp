#include "engine/report/pages/score_words.h"

#include "engine/chances/forecast_obstacles.h"
#include "engine/chances/obstacle.h"
#include "engine/report/obstacle_words.h"
#include "engine/report/pages/face.h"
#include "engine/score/account_notes.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"

namespace landdrill::report {
namespace {

void add_of_estimate(const MissingMarks& missing, std::vector<std::string>& sentences) {
  const Obstacles obstacles =
      missing.nothing_is_marked ? Obstacles{{Obstacle::Of::nothing_expected}} : unmarked_lines(missing);
  for (const Obstacle& one : obstacles) sentences.push_back(words_of(one));
}

void add_of_panel(const MissingMarks& missing, const std::string& panel,
                  std::vector<std::string>& sentences) {
  const std::string no_marks = " no marks in the panel of " + panel;
  if (!missing.elements.empty()) sentences.push_back(elements_have(missing.elements) + no_marks);
  for (const std::string& aspect : missing.aspects) sentences.push_back(aspect + " has" + no_marks);
}

}  // namespace

std::string words_of(const RestsOn& rests_on) {
  switch (rests_on.from) {
    case ExpectedMark::From::nothing:
      return "no mark yet";
    case ExpectedMark::From::sheet:
      return "expected";
    case ExpectedMark::From::run:
      return "run of " + rests_on.date;
    case ExpectedMark::From::runs:
      return "mean of " + std::to_string(rests_on.runs) + " runs";
  }
  return "";
}

std::string named(const ElementLine& line) {
  return std::to_string(line.number) + " " + (line.title.empty() ? line.kind : line.title);
}

std::string text_of(const std::optional<PanelMark>& mark) {
  return mark ? mark->value.text(mark->places) : "";
}

std::vector<std::string> missing_sentences(const Account& account) {
  std::vector<std::string> sentences;
  for (const MissingMarks& missing : account.missing) {
    if (missing.of == MissingMarks::Of::estimate)
      add_of_estimate(missing, sentences);
    else
      add_of_panel(missing, panel_name(account), sentences);
  }
  return sentences;
}

}  // namespace landdrill::report
