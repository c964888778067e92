#include "engine/report/train.h"

#include "engine/cli/choosing.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"

namespace landdrill::cli {

Exit train(Call& call) {
  const TypedNumber top = number_of(call, "--top", Decimal::whole(1), Decimal::whole(1'000'000),
                                    "how many lines, a whole number from 1 on");
  const bool broken = top.number && !top.number->is_multiple_of(Decimal::whole(1));
  if (broken)
    return misused(call, "found --top " + top.number->text() + "; expected a whole number of lines");
  if (!top.mistake.empty()) return misused(call, top.mistake);
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  const NextPoints next = next_points(one.routine(), one.wish());
  if (!next.obstacles.empty()) return obstructed(call, one.routine(), next.obstacles);
  const report::TrainWish wish{format_of(call),
                               top.number ? static_cast<std::size_t>(top.number->units() / Decimal::one) : 0};
  const report::Face face = face_of(one, std::span(&one.wish(), 1));
  call.streams.out.write(report::training_report(next, face, wish, choosing_page(call)));
  return Exit::ok;
}

}  // namespace landdrill::cli
