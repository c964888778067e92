#include "engine/season/placing.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include "engine/files/value_sets.h"
#include "engine/routine/sheet.h"
#include "engine/score/objections.h"
#include "engine/season/kept_sheets.h"
#include "grammar/diagnostics.h"
#include "grammar/parse.h"
#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "tables/decimal.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/book.h"
#include "tables/store/refusal.h"

namespace landdrill {

using store::attempt;
using store::must;

namespace {

// The marks of a panel by their line and seat, and which elements have the base mark.
struct PanelMarks {
  std::map<std::pair<std::string, std::size_t>, std::optional<Decimal>> marks;
  std::map<std::string, bool> bases;
};
PanelMarks marks_in(const ast::Lines& lines) {
  PanelMarks all;
  for (const ast::Line& line : lines) {
    const auto* element = std::get_if<ast::ElementMarksLine>(&line.statement);
    const auto* aspect = std::get_if<ast::AspectMarksLine>(&line.statement);
    if (element == nullptr && aspect == nullptr) continue;
    const std::string name(element != nullptr ? element->element.text : aspect->aspect.text);
    if (element != nullptr) all.bases[name] = element->base;
    std::size_t seat = 0;
    for (const ast::JudgeMark& mark : element != nullptr ? element->marks : aspect->marks) {
      if (mark) all.marks[{name, seat}] = Decimal::parse(mark->text);
      ++seat;
    }
  }
  return all;
}

}  // namespace

MarksApart marks_apart(const ast::Lines& before, const ast::Lines& now) {
  const PanelMarks old_panel = marks_in(before), new_panel = marks_in(now);
  MarksApart marks{old_panel.marks.size()};
  for (const auto& [seat, mark] : old_panel.marks) {
    const auto other = new_panel.marks.find(seat);
    if (other == new_panel.marks.end())
      ++marks.gone;
    else if (other->second != mark)
      ++marks.changed;
  }
  for (const auto& [seat, mark] : new_panel.marks) marks.added += old_panel.marks.count(seat) == 0;
  for (const auto& [element, base] : new_panel.bases) {
    const auto other = old_panel.bases.find(element);
    if (other != old_panel.bases.end() && other->second != base) ++(base ? marks.based : marks.unbased);
  }
  return marks;
}

MarksApart marks_apart(std::string_view before, std::string_view now) {
  return marks_apart(parse({"", before}).lines, parse({"", now}).lines);
}

Placing::Placing(const Book& book, const std::vector<TableFiles>& editions)
    : book_(book), editions_(editions), kept_(book) {}

Result<void> Placing::read() {
  return attempt([&] {
    BookWish every;
    every.all_versions = true;
    for (KeptBlock& one : must(book_.find(every))) {
      if (one.what == Block::What::routine)
        routines_[{one.routine, one.event}].push_back(std::move(one));
      else
        swum_[name_of(one)].push_back(std::move(one));
    }
    for (const auto& [name, versions] : routines_)
      for (const KeptBlock& one : versions) versions_[one.id] = &one;
  });
}

Result<std::vector<Placed>> Placing::place(std::vector<Block> blocks) {
  return attempt([&] {
    std::map<RoutineName, std::set<std::string>> texts;
    for (const Block& block : blocks)
      if (block.what == Block::What::routine) texts[{block.routine, block.event}].insert(block.text);
    std::map<RoutineName, Block> above;
    std::vector<Placed> placed;
    for (Block& block : blocks) {
      const RoutineName name(block.routine, block.event);
      const bool known = routines_.count(name) != 0 && texts[name].size() == 1;
      if (block.what == Block::What::routine) {
        above[name] = block;
        placed.push_back(place_routine(std::move(block)));
      } else if (block.of != 0) {
        placed.push_back(leave(std::move(block)));
      } else if (!known || above.count(name) == 0 || swum_.count(name_of(block)) == 0) {
        placed.push_back({Placed::Why::as_given, std::move(block), 0});
      } else if (block.what == Block::What::panel) {
        placed.push_back(place_panel(std::move(block)));
      } else {
        place_run(std::move(block), above[name], placed);
      }
    }
    return placed;
  });
}

Placed Placing::place_routine(Block block) {
  Placed placed{Placed::Why::as_given, std::move(block), 0};
  const auto kept = routines_.find({placed.block.routine, placed.block.event});
  if (kept != routines_.end() && must(book_.text(kept->second.back().id)) == placed.block.text)
    placed.why = Placed::Why::same_words;
  return placed;
}

Placed Placing::place_panel(Block block) {
  const KeptBlock& kept = swum_[name_of(block)].back();
  const std::string text = must(book_.text(kept.id));
  if (text == block.text) return {Placed::Why::as_given, std::move(block), 0};
  const KeptBlock& home = *versions_.at(kept.of_routine);
  const bool stays = fits(home, block.text);
  if (stays) block.of = home.id;
  const int again = older_words(block);
  const MarksApart marks = marks_apart(text, block.text);
  return {
      stays ? Placed::Why::stays : Placed::Why::moves, std::move(block), home.version, again, false, marks};
}

// A panel that was corrected since is left as it is now.
Placed Placing::leave(Block block) {
  Placed left{Placed::Why::left, std::move(block), 0};
  const auto known = swum_.find(name_of(left.block));
  if (left.block.what == Block::What::panel && known != swum_.end()) {
    const KeptBlock& latest = known->second.back();
    std::string text = must(book_.text(latest.id));
    left.corrected_since = text != left.block.text;
    left.block.text = std::move(text);
    left.block.of = latest.of_routine;
  }
  left.version = versions_.at(left.block.of)->version;
  return left;
}

int Placing::older_words(const Block& panel) const {
  for (const KeptBlock& one : swum_.at(name_of(panel)))
    if (must(book_.text(one.id)) == panel.text) return one.version;
  return 0;
}

void Placing::place_run(Block block, const Block& beside, std::vector<Placed>& placed) {
  const std::vector<KeptBlock>& words = swum_[name_of(block)];
  const KeptBlock* kept = &words.front();  // the latest words beside the first version that had it
  for (const KeptBlock& one : words)
    if (one.of_version <= kept->of_version) kept = &one;
  const KeptBlock& home = *versions_.at(kept->of_routine);
  const std::string text = must(book_.text(kept->id));
  if (text != block.text && !is_kept_as(beside, home) && fits_beside(beside, text) &&
      fits(home, block.text)) {
    placed.push_back({Placed::Why::corrected, block, home.version});
    placed.back().block.of = home.id;
  }
  placed.push_back({Placed::Why::as_given, std::move(block), 0});
}

// Whether the routine is its latest version again, from the same value set.
bool Placing::is_kept_as(const Block& routine, const KeptBlock& version) {
  if (version.id != routines_.at({routine.routine, routine.event}).back().id) return false;
  const TableFiles set = must(book_.edition(version.edition));
  const TableFiles& given = editions_.at(routine.edition);
  return must(book_.text(version.id)) == routine.text && set.name == given.name &&
         same_files(set.files, given.files);
}

bool Placing::fits(const KeptBlock& version, const std::string& text) {
  return kept_.understood(version, must(book_.text(version.id)) + "\n" + text).sheet.ok();
}

bool Placing::fits_beside(const Block& routine, const std::string& text) {
  const auto [known, is_new] = sets_.try_emplace(routine.edition);
  if (is_new) {
    known->second.files = editions_.at(routine.edition);
    known->second.loaded = load(known->second.files);
  }
  return kept_sheet({}, routine.text + "\n" + text, known->second).sheet.ok();
}

const KeptBlock* Placing::kept_as(const Block& block) const {
  for (const auto& [name, words] : swum_) {
    const auto& [what, routine, event, date, title] = name;
    if (what != block.what || routine != block.routine || date != block.date || title != block.title)
      continue;
    for (auto one = words.rbegin(); one != words.rend(); ++one)
      if (must(book_.text(one->id)) == block.text) return &*one;
  }
  return nullptr;
}

namespace {

bool is_wrong(const TypedBlock& typed, const Diagnostics& diagnostics) {
  const std::size_t first = position_of(*typed.source, typed.typed).line;
  const std::size_t last = position_of(*typed.source, typed.typed.substr(typed.typed.size())).line;
  return std::any_of(diagnostics.list().begin(), diagnostics.list().end(), [&](const Diagnostic& one) {
    return severity_of(one.problem) == Severity::error && one.file == typed.source->name &&
           one.at.line >= first && one.at.line <= last;
  });
}

// The text with nothing there but the ends of lines.
std::string without(std::string_view text, std::string_view piece) {
  const auto start = static_cast<std::size_t>(piece.data() - text.data());
  std::string rest(text.substr(0, start));
  std::copy_if(piece.begin(), piece.end(), std::back_inserter(rest),
               [](char c) { return c == '\n' || c == '\r'; });
  return rest.append(text.substr(start + piece.size()));
}

class Leaving {
 public:
  Leaving(const StreamSheet& sheet, Placing& placing) : set_(sheet.set), placing_(placing) {
    for (const Source& source : sheet.sources())
      texts_.push_back({source.name, std::string(source.text), source.first_line});
  }

  std::optional<FittingRest> leave() {
    read();
    while (!rest_.sheet.ok() && leave_one()) read();
    return rest_.left.empty() ? std::nullopt : std::optional(std::move(rest_));
  }

 private:
  void read() {
    rest_.sheet = {read_sheet(texts_), set_};
    if (set_ != nullptr && set_->loaded.set) understand(rest_.sheet, *set_->loaded.set);
  }

  bool leave_one() {
    for (TypedBlock& typed : typed_blocks(rest_.sheet)) {
      if (typed.block.what == Block::What::routine || !is_wrong(typed, rest_.sheet.messages())) continue;
      const KeptBlock* const kept = placing_.kept_as(typed.block);
      if (kept == nullptr) continue;
      take_out(typed);
      typed.block.event = kept->event;
      typed.block.of = kept->of_routine;
      rest_.left.push_back(std::move(typed.block));
      return true;
    }
    return false;
  }

  void take_out(const TypedBlock& typed) {
    const auto at = static_cast<std::size_t>(typed.source - rest_.sheet.sources().data());
    texts_[at].text = without(typed.source->text, typed.typed);
  }

  const ReadSet* set_;
  Placing& placing_;
  std::vector<NamedText> texts_;
  FittingRest rest_;
};

}  // namespace

Result<std::optional<FittingRest>> fitting_rest(const StreamSheet& sheet, Placing& placing) {
  return attempt([&] { return Leaving(sheet, placing).leave(); });
}

}  // namespace landdrill
