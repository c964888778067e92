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

namespace landdrill {
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

MarksApart apart(const PanelMarks& old_panel, const PanelMarks& new_panel) {
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

}  // namespace

MarksApart marks_apart(const ast::Lines& before, const ast::Lines& now) {
  return apart(marks_in(before), marks_in(now));
}

MarksApart marks_apart(std::string_view before, std::string_view now) {
  return marks_apart(parse({"", before}).lines, parse({"", now}).lines);
}

namespace {

bool same_set(const TableFiles& a, const TableFiles& b) {
  return a.name == b.name && std::equal(a.files.begin(), a.files.end(), b.files.begin(), b.files.end(),
                                        [](const TableFile& one, const TableFile& other) {
                                          return one.file == other.file && one.text == other.text;
                                        });
}

}  // namespace

Placing::Placing(const Book& book, const std::vector<TableFiles>& editions)
    : book_(book), editions_(editions), kept_(book) {}

Result<void> Placing::read() {
  BookWish every;
  every.all_versions = true;
  auto found = book_.find(every);
  if (!found) return tl::unexpected(found.error());
  for (KeptBlock& one : *found) {
    if (one.what == Block::What::routine)
      routines_[{one.routine, one.event}].push_back(std::move(one));
    else
      swum_[{one.what, one.routine, one.event, one.date, one.title}].push_back(std::move(one));
  }
  for (const auto& [name, versions] : routines_)
    for (const KeptBlock& one : versions) versions_[one.id] = &one;
  return {};
}

Placing::Name Placing::name_of(const Block& block) {
  return {block.what, block.routine, block.event, block.date, block.title};
}

Result<std::vector<Placed>> Placing::place(std::vector<Block> blocks) {
  std::map<RoutineName, std::set<std::string>> texts;
  for (const Block& block : blocks)
    if (block.what == Block::What::routine) texts[{block.routine, block.event}].insert(block.text);
  std::map<RoutineName, Block> above;
  std::vector<Placed> placed;
  for (Block& block : blocks) {
    const RoutineName name(block.routine, block.event);
    const bool known = routines_.count(name) != 0 && texts[name].size() == 1;
    Result<void> done;
    if (block.what == Block::What::routine) {
      above[name] = block;
      auto routine = place_routine(std::move(block));
      if (!routine) return tl::unexpected(routine.error());
      placed.push_back(std::move(*routine));
    } else if (block.of != 0) {
      done = leave(std::move(block), placed);
    } else if (!known || above.count(name) == 0 || swum_.count(name_of(block)) == 0) {
      placed.push_back({Placed::Why::as_given, std::move(block), 0});
    } else if (block.what == Block::What::panel) {
      done = place_panel(std::move(block), placed);
    } else {
      done = place_run(std::move(block), above[name], placed);
    }
    if (!done) return tl::unexpected(done.error());
  }
  return placed;
}

Result<Placed> Placing::place_routine(Block block) {
  Placed placed{Placed::Why::as_given, std::move(block), 0};
  const auto kept = routines_.find({placed.block.routine, placed.block.event});
  if (kept == routines_.end()) return placed;
  const auto text = book_.text(kept->second.back().id);
  if (!text) return tl::unexpected(text.error());
  if (*text == placed.block.text) placed.why = Placed::Why::same_words;
  return placed;
}

Result<void> Placing::place_panel(Block block, std::vector<Placed>& placed) {
  const KeptBlock& kept = swum_[name_of(block)].back();
  const auto text = book_.text(kept.id);
  if (!text) return tl::unexpected(text.error());
  if (*text == block.text) {
    placed.push_back({Placed::Why::as_given, std::move(block), 0});
    return {};
  }
  const KeptBlock& home = *versions_.at(kept.of_routine);
  const auto stays = fits(home, block.text);
  if (!stays) return tl::unexpected(stays.error());
  if (*stays) block.of = home.id;
  const auto again = older_words(block);
  if (!again) return tl::unexpected(again.error());
  const MarksApart marks = marks_apart(*text, block.text);
  placed.push_back({*stays ? Placed::Why::stays : Placed::Why::moves, std::move(block), home.version, *again,
                    false, marks});
  return {};
}

// A panel that was corrected since is left as it is now.
Result<void> Placing::leave(Block block, std::vector<Placed>& placed) {
  Placed left{Placed::Why::left, std::move(block), 0};
  const auto known = swum_.find(name_of(left.block));
  if (left.block.what == Block::What::panel && known != swum_.end()) {
    const KeptBlock& latest = known->second.back();
    auto text = book_.text(latest.id);
    if (!text) return tl::unexpected(text.error());
    left.corrected_since = *text != left.block.text;
    left.block.text = std::move(*text);
    left.block.of = latest.of_routine;
  }
  left.version = versions_.at(left.block.of)->version;
  placed.push_back(std::move(left));
  return {};
}

Result<int> Placing::older_words(const Block& panel) const {
  for (const KeptBlock& one : swum_.at(name_of(panel))) {
    const auto text = book_.text(one.id);
    if (!text) return tl::unexpected(text.error());
    if (*text == panel.text) return one.version;
  }
  return 0;
}

Result<void> Placing::place_run(Block block, const Block& beside, std::vector<Placed>& placed) {
  const std::vector<KeptBlock>& words = swum_[name_of(block)];
  const KeptBlock* kept = &words.front();  // the latest words beside the first version that had it
  for (const KeptBlock& one : words)
    if (one.of_version <= kept->of_version) kept = &one;
  const KeptBlock& home = *versions_.at(kept->of_routine);
  const auto text = book_.text(kept->id);
  if (!text) return tl::unexpected(text.error());
  if (*text != block.text) {
    const auto same_version = is_kept_as(beside, home);
    if (!same_version) return tl::unexpected(same_version.error());
    const auto old_would_do = fits_beside(beside, *text);
    if (!old_would_do) return tl::unexpected(old_would_do.error());
    const auto corrects = fits(home, block.text);
    if (!corrects) return tl::unexpected(corrects.error());
    if (!*same_version && *old_would_do && *corrects) {
      placed.push_back({Placed::Why::corrected, block, home.version});
      placed.back().block.of = home.id;
    }
  }
  placed.push_back({Placed::Why::as_given, std::move(block), 0});
  return {};
}

// Whether the routine is its latest version again, from the same value set.
Result<bool> Placing::is_kept_as(const Block& routine, const KeptBlock& version) {
  if (version.id != latest(routine).id) return false;
  const auto text = book_.text(version.id);
  if (!text) return tl::unexpected(text.error());
  const auto set = book_.edition(version.edition);
  if (!set) return tl::unexpected(set.error());
  return *text == routine.text && same_set(*set, editions_.at(routine.edition));
}

const KeptBlock& Placing::latest(const Block& routine) const {
  return routines_.at({routine.routine, routine.event}).back();
}

Result<bool> Placing::fits(const KeptBlock& version, const std::string& text) {
  const auto routine = book_.text(version.id);
  if (!routine) return tl::unexpected(routine.error());
  const auto sheet = kept_.understood(version, *routine + "\n" + text);
  if (!sheet) return tl::unexpected(sheet.error());
  return (*sheet)->sheet.ok();
}

Result<bool> Placing::fits_beside(const Block& routine, const std::string& text) {
  const auto [known, is_new] = sets_.try_emplace(routine.edition);
  if (is_new) {
    known->second.files = editions_.at(routine.edition);
    known->second.loaded = load(known->second.files);
  }
  return kept_sheet({}, routine.text + "\n" + text, known->second).sheet.ok();
}

Result<const KeptBlock*> Placing::kept_as(const Block& block) {
  for (const auto& [name, words] : swum_) {
    const auto& [what, routine, event, date, title] = name;
    if (what != block.what || routine != block.routine || date != block.date || title != block.title)
      continue;
    for (auto one = words.rbegin(); one != words.rend(); ++one) {
      const auto text = book_.text(one->id);
      if (!text) return tl::unexpected(text.error());
      if (*text == block.text) return &*one;
    }
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

  Result<std::optional<FittingRest>> leave() {
    for (bool left = true; left;) {
      read();
      if (rest_.sheet.ok()) break;
      const auto one = leave_one();
      if (!one) return tl::unexpected(one.error());
      left = *one;
    }
    if (rest_.left.empty()) return std::nullopt;
    return std::move(rest_);
  }

 private:
  void read() {
    rest_.sheet = {read_sheet(texts_), set_};
    if (set_ != nullptr && set_->loaded.set) understand(rest_.sheet, *set_->loaded.set);
  }

  Result<bool> leave_one() {
    for (TypedBlock& typed : typed_blocks(rest_.sheet)) {
      if (typed.block.what == Block::What::routine || !is_wrong(typed, rest_.sheet.messages())) continue;
      const auto kept = placing_.kept_as(typed.block);
      if (!kept) return tl::unexpected(kept.error());
      if (*kept == nullptr) continue;
      take_out(typed);
      typed.block.event = (*kept)->event;
      typed.block.of = (*kept)->of_routine;
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
  return Leaving(sheet, placing).leave();
}

}  // namespace landdrill
