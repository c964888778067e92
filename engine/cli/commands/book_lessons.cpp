// What the season teaches about the coach's expected marks.
#include <algorithm>
#include <iterator>
#include <optional>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"
#include "engine/cli/with_swum.h"
#include "engine/judging/lessons.h"
#include "engine/report/pages/lessons.h"
#include "engine/routine/routine.h"
#include "engine/season/as_swum.h"
#include "tables/store/book.h"

namespace landdrill::cli {
namespace {

std::vector<Lesson> lessons_of(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  std::vector<Lesson> all;
  for (const RecordedPanel& panel : routine.panels)
    for (Lesson& lesson : lessons(routine, panel)) all.push_back(std::move(lesson));
  return all;
}

Exit print_lessons(Call& call, const std::vector<Lesson>& all, Exit worst) {
  std::optional<OneRoutine> sheet;
  if (call.given.has("--sheet")) {
    sheet.emplace(call, std::string(call.given.value("--sheet")));
    if (!*sheet) return sheet->exit();
  }
  print_page(call, report::lessons_page(all, sheet ? &sheet->routine() : nullptr));
  return worst;
}

}  // namespace

Exit book_lessons(Call& call) {
  std::vector<Lesson> all;
  const auto take = [&](const KeptBlock&, std::vector<std::vector<Lesson>> parts) {
    for (std::vector<Lesson>& lessons : parts)
      std::move(lessons.begin(), lessons.end(), std::back_inserter(all));
  };
  return with_swum(call, lessons_of, take,
                   [&](const Book&, const BookWish&, Exit worst) { return print_lessons(call, all, worst); });
}

}  // namespace landdrill::cli
