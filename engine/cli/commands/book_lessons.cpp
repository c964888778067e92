// What the season teaches about the coach's expected marks.
#include <algorithm>
#include <iterator>

#include "engine/cli/as_swum.h"
#include "engine/cli/book_file.h"
#include "engine/cli/messages.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/cli/sheet_reader.h"
#include "engine/report/lessons.h"

namespace landdrill::cli {
namespace {

std::vector<Lesson> lessons_of(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  std::vector<Lesson> all;
  for (const RecordedPanel& panel : routine.panels)
    for (Lesson& lesson : lessons(routine, panel)) all.push_back(std::move(lesson));
  return all;
}

// The routine of --sheet beside what was learned.
class Calibrating {
 public:
  explicit Calibrating(const Learned& learned) : learned_(learned) {}

  Exit read(Call& call, const std::string& file) {
    if (!all_readable(call, {file})) return Exit::environment;
    SheetReader reader(call, {file});
    if (!reader.next()) return worse(Exit::errors, reader.worst());
    if (reader.more()) return misused(call, shown(file) + " holds several routines; expected one");
    const ReadSheet& sheet = reader.sheet();
    if (!sheet.ok()) {
      Messages(call.streams).add(sheet.diagnostics);
      return worse(Exit::errors, reader.worst());
    }
    title = sheet.routine()->title;
    estimate = calibrated_estimate(*sheet.routine(), {}, learned_);
    return Exit::ok;
  }

  std::string title;
  std::optional<CalibratedEstimate> estimate;

 private:
  const Learned& learned_;
};

Exit print_lessons(Call& call, const std::vector<Lesson>& all, Exit worst) {
  const Learned learned = learn(all);
  const BackTest tested = back_test(all);
  Calibrating sheet(learned);
  if (call.given.has("--sheet")) {
    const Exit read = sheet.read(call, std::string(call.given.value("--sheet")));
    if (read != Exit::ok) return read;
  }
  const report::LessonsTold told{&learned, &tested, sheet.title, sheet.estimate ? &*sheet.estimate : nullptr};
  call.streams.out.write(report::lessons(told, format_of(call), page_wish(call)));
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
