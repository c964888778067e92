#include "engine/cli/fitting_rest.h"

#include <algorithm>
#include <iterator>

#include "engine/cli/book_blocks.h"
#include "engine/cli/find_values.h"
#include "engine/cli/read_sheet.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {
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
  Leaving(const ReadSheet& sheet, Placing& placing)
      : set_(sheet.set), placing_(placing), rest_(std::make_unique<FittingRest>()) {
    for (const Source& piece : sheet.pieces)
      rest_->sheet.pieces.push_back({piece.name, rest_->texts.emplace_back(piece.text), piece.first_line});
    understand();
  }

  Result<std::unique_ptr<FittingRest>> leave() {
    while (!rest_->sheet.ok()) {
      const auto left = leave_one();
      if (!left) return tl::unexpected(left.error());
      if (!*left) break;
      understand();
    }
    return rest_->left.empty() ? nullptr : std::move(rest_);
  }

 private:
  void understand() {
    ReadSheet sheet;
    sheet.pieces = std::move(rest_->sheet.pieces);
    rest_->sheet = std::move(sheet);
    understand(rest_->sheet);
  }
  void understand(ReadSheet& sheet) const {
    put_together(sheet);
    if (set_ != nullptr && set_->loaded.set && !sheet.assembled.sheets.empty()) resolve_from(*set_, sheet);
  }

  Result<bool> leave_one() {
    for (TypedBlock& typed : typed_blocks(rest_->sheet)) {
      if (typed.block.what == Block::What::routine || !is_wrong(typed, rest_->sheet.diagnostics)) continue;
      const auto kept = placing_.kept_as(typed.block);
      if (!kept) return tl::unexpected(kept.error());
      if (*kept == nullptr) continue;
      take_out(typed);
      typed.block.event = (*kept)->event;
      typed.block.of = (*kept)->of_routine;
      rest_->left.push_back(std::move(typed.block));
      return true;
    }
    return false;
  }

  void take_out(const TypedBlock& typed) {
    const auto at = static_cast<std::size_t>(typed.source - rest_->sheet.pieces.data());
    Source& piece = rest_->sheet.pieces[at];
    piece.text = rest_->texts.emplace_back(without(piece.text, typed.typed));
  }

  const ReadSet* set_;
  Placing& placing_;
  std::unique_ptr<FittingRest> rest_;
};

}  // namespace

Result<std::unique_ptr<FittingRest>> fitting_rest(const ReadSheet& sheet, Placing& placing) {
  return Leaving(sheet, placing).leave();
}

}  // namespace landdrill::cli
