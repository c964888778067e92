// What the season teaches about the coach's expected marks.
#include <algorithm>
#include <iterator>
#include <optional>

#include "engine/cli/as_swum.h"
#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/messages.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/cli/read_ahead.h"
#include "engine/cli/sheet_reader.h"
#include "engine/judging/lessons.h"
#include "engine/report/pages/lessons.h"
#include "engine/routine/routine.h"
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

// The routine of --sheet.
class Calibrating {
 public:
  explicit Calibrating(Call& call) : call_(call) {}

  Exit read(const std::string& file) {
    if (!all_readable(call_, {file})) return Exit::environment;
    reader_.emplace(call_, std::vector{file});
    if (!reader_->next()) return worse(Exit::errors, reader_->worst());
    if (reader_->more()) return misused(call_, shown(file) + " holds several routines; expected one");
    const StreamSheet& sheet = reader_->sheet();
    if (sheet.ok()) {
      routine = &*sheet.routine();
      return Exit::ok;
    }
    Messages(call_.streams).add(sheet.messages());
    return worse(Exit::errors, reader_->worst());
  }

  const Routine* routine = nullptr;  // lives as long as this

 private:
  Call& call_;
  std::optional<SheetReader> reader_;
};

Exit print_lessons(Call& call, const std::vector<Lesson>& all, Exit worst) {
  Calibrating sheet(call);
  if (call.given.has("--sheet")) {
    const Exit read = sheet.read(std::string(call.given.value("--sheet")));
    if (read != Exit::ok) return read;
  }
  print_page(call, report::lessons_page(all, sheet.routine));
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
