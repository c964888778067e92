#include "engine/season/fitting_rest.h"

#include <algorithm>
#include <iterator>

#include "engine/files/read_set.h"
#include "engine/routine/sheet.h"
#include "engine/score/objections.h"
#include "engine/season/book_blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {
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
