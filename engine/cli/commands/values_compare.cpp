#include "engine/report/pages/values_compare.h"

#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/messages.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/files/read_ahead.h"
#include "engine/files/read_set.h"
#include "engine/files/sheet_reader.h"
#include "engine/report/pages/price_wish.h"
#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "engine/score/score.h"
#include "engine/score/totals.h"
#include "tables/compare_sets.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::cli {
namespace {

std::string signed_text(Decimal change, int places) {
  return (change > Decimal() ? "+" : "") + change.text(places);
}

int places_in(const std::string& amount) {
  const std::size_t point = amount.find('.');
  return point == amount.npos ? 0 : static_cast<int>(amount.size() - point - 1);
}

// Two texts of amounts and what lies between them; an empty one is a mark that is missing.
report::SheetMove move_of(std::string line, const std::string& before, const std::string& after) {
  report::SheetMove move{std::move(line), before, after, {}};
  const auto a = Decimal::parse(before), b = Decimal::parse(after);
  if (a && b) move.change = signed_text(*b - *a, places_in(before));
  return move;
}

struct Pricing {
  const Routine& routine;
  report::PriceWish wish;
  Showing shown;
};

std::vector<report::SheetMove> moves(const Pricing& before, const Pricing& after) {
  std::vector<report::SheetMove> found;
  for (std::size_t i = 0; i < before.shown.elements.size(); ++i) {
    const Difficulty a = before.shown.elements[i].declared, b = after.shown.elements[i].declared;
    const Element& element = before.routine.elements[i];
    if (a != b)
      found.push_back(move_of(fmt::format("{} {}", element.number, element.title), a.text(2), b.text(2)));
  }
  const Totals from = totals(before.routine, before.wish.wish, {}),
               to = totals(after.routine, after.wish.wish, {});
  if (from.difficulty != to.difficulty)
    found.push_back(move_of("difficulty, all elements", from.difficulty, to.difficulty));
  if (from.estimate != to.estimate)
    found.push_back(move_of("total, as estimated", from.estimate, to.estimate));
  return found;
}

class Comparing {
 public:
  Comparing(Call& call, const ReadSet& before, const ReadSet& after)
      : call_(call), before_(before), after_(after), changes_(compare_sets(before.files, after.files)) {}

  void print(std::string sheet, std::vector<report::SheetMove> moved) {
    print_page(call_, report::values_compare_page({before_.files.name, after_.files.name, changes_,
                                                   std::move(sheet), std::move(moved)}));
  }

  Exit sheet(const StreamSheet& sheet) {
    const Resolved one = understood(*sheet.tree(), *before_.loaded.set);
    const Resolved other = understood(*sheet.tree(), *after_.loaded.set);
    if (!one.routine || !other.routine) return not_priced(sheet, one, other);
    const Pricing a = priced(*one.routine), b = priced(*other.routine);
    if (!a.wish.mistake.empty()) return misused(call_, a.wish.mistake);
    print(fmt::format("{} ({})", sheet.title(), sheet.file()), moves(a, b));
    return Exit::ok;
  }

 private:
  Pricing priced(const Routine& routine) const {
    report::PriceWish wish = report::whole_price_wish(call_.given, routine);
    return {routine, wish, expected(routine, wish.wish)};
  }

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
