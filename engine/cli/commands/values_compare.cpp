#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/output.h"
#include "engine/files/sheet_reader.h"
#include "engine/files/value_sets.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/values.h"
#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "engine/score/totals.h"
#include "tables/edit_cell.h"

namespace landdrill::cli {
namespace {

class Comparing {
 public:
  Comparing(Call& call, const ReadSet& before, const ReadSet& after)
      : call_(call), before_(before), after_(after), changes_(compare_sets(before.files, after.files)) {}

  void print(std::string sheet, std::vector<SheetMove> moved) {
    print_page(call_, report::values_compare_page({before_.files.name, after_.files.name, changes_,
                                                   std::move(sheet), std::move(moved)}));
  }

  Exit sheet(const StreamSheet& sheet) {
    const Resolved one = understood(*sheet.tree(), *before_.loaded.set);
    const Resolved other = understood(*sheet.tree(), *after_.loaded.set);
    if (!one.routine || !other.routine) return not_priced(sheet, one, other);
    const report::PriceWish a = report::whole_price_wish(call_.given, *one.routine);
    const report::PriceWish b = report::whole_price_wish(call_.given, *other.routine);
    if (!a.mistake.empty()) return misused(call_, a.mistake);
    print(fmt::format("{} ({})", sheet.title(), sheet.file()),
          moves({*one.routine, a.wish}, {*other.routine, b.wish}));
    return Exit::ok;
  }

 private:
  Exit not_priced(const StreamSheet& sheet, const Resolved& one, const Resolved& other) {
    for (const auto& [set, resolved] : {std::pair{&before_, &one}, {&after_, &other}}) {
      if (resolved->routine) continue;
      call_.streams.say(to_string(resolved->diagnostics));
      call_.streams.say(
          fmt::format("landdrill: {} cannot be priced from {}\n", sheet.file(), set->files.name));
    }
    return Exit::errors;
  }

  Call& call_;
  const ReadSet& before_;
  const ReadSet& after_;
  SetComparison changes_;
};

Exit compare_sheets(Call& call, Comparing& comparing) {
  CallSheets sheets(call, {call.given.operands.begin() + 2, call.given.operands.end()});
  SheetReader& reader = sheets.reader();
  Messages messages(call.streams);
  Exit worst = Exit::ok;
  while (reader.next_unpriced()) {
    const StreamSheet& sheet = reader.sheet();
    messages.add(sheet.messages());
    worst = worse(worst, sheet.ok() ? comparing.sheet(sheet) : Exit::errors);
  }
  return worse(worst, sheets.worst());
}

}  // namespace

Exit values_compare(Call& call) {
  const std::vector<std::string>& typed = call.given.operands;
  if (!all_readable(call, {typed.begin() + 2, typed.end()})) return Exit::environment;
  Values values(call);
  const ReadSet* sets[2] = {};
  for (std::size_t i = 0; i < 2; ++i) {
    const auto set = values.of_operand(typed[i]);
    if (!set) return refuse(call, set.error());
    if (!(*set)->loaded.set) return refuse_set(call, **set);
    sets[i] = *set;
  }
  Comparing comparing(call, *sets[0], *sets[1]);
  if (typed.size() > 2) return compare_sheets(call, comparing);
  comparing.print({}, {});
  return Exit::ok;
}

}  // namespace landdrill::cli
