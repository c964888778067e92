#include "engine/report/page.h"
#include "engine/report/pages/score.h"

#include <utility>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/cli/output.h"
#include "engine/files/sheet_reader.h"
#include "engine/report/batch.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/render.h"
#include "engine/routine/problems.h"
#include "engine/score/totals.h"
#include "grammar/diagnostics.h"

namespace landdrill::cli {
namespace {

using report::Format;

enum class Layout { full, brief };

class Scoring {
 public:
  explicit Scoring(Call& call)
      : call_(call),
        messages_(call.streams),
        wish_(page_wish(call)),
        format_(format_of(call)),
        sheets_of_call_(call) {}

  Exit all() {
    while (call_.streams.out.failure() == 0 && worst_ != Exit::usage && reader().next()) {
      if (sheets_++ == 0) choose_layout();
      worst_ = worse(worst_, one(reader().sheet()));
    }
    messages_.finish();
    if (priced_ > 0 && unmet_ == priced_) worst_ = worse(worst_, misused(call_, last_unmet_));
    return worse(worst_, sheets_of_call_.worst());
  }

 private:
  SheetReader& reader() { return sheets_of_call_.reader(); }
  // One routine is told in full, many in a line each.
  void choose_layout() {
    many_ = reader().more();
    layout_ = call_.given.has("--brief") || (many_ && !wish_.full) ? Layout::brief : Layout::full;
    if (many_ && layout_ == Layout::brief && format_ == Format::text && !call_.given.has("--brief"))
      call_.streams.say("landdrill: several routines, so one line each; --full gives every report\n");
    if (format_ == Format::csv)
      heading_ = layout_ == Layout::brief ? report::batch_csv_header() : csv_header(report::score_page({}));
    if (format_ == Format::text && layout_ == Layout::brief) heading_ = report::batch_header(wish_);
    if (many_ && one_line_each()) reader().read_ahead([this](StreamSheet& sheet) { price_ahead(sheet); });
  }

  // Called for several at once; what needs a word to the user waits for its turn.
  void price_ahead(StreamSheet& sheet) const {
    if (!sheet.ok()) return;
    report::PriceWish wish = report::price_wish(call_.given, *sheet.routine());
    if (!wish.mistake.empty()) return;
    sheet.ahead = {line_of(sheet, wish), std::move(wish.not_here)};
    sheet.forget_routine();
  }

  Exit one(const StreamSheet& sheet) {
    if (sheet.ahead) {
      note_unmet(sheet.ahead->not_here);
      print(sheet.ahead->line);
      return Exit::ok;
    }
    if (!sheet.ok()) return refuse_sheet(sheet);
    if (!many_ && !one_line_each()) return only(sheet);
    const report::PriceWish wish = many_ ? report::price_wish(call_.given, *sheet.routine())
                                         : report::whole_price_wish(call_.given, *sheet.routine());
    if (!wish.mistake.empty()) return misused(call_, wish.mistake);
    note_unmet(wish.not_here);
    tell(sheet, wish);
    return Exit::ok;
  }

  Exit only(const StreamSheet& sheet) {
    report::Answer answer = report::score(call_.given, *sheet.routine(), sheet.messages(), sheet.file());
    if (!answer) return misused(call_, answer.error());
    tell(with_place(std::move(*answer), *sheet.set));
    return Exit::ok;
  }

  // A wish that not one of many routines can meet is a slip of the finger.
  void note_unmet(const std::string& not_here) {
    ++priced_;
    if (not_here.empty()) return;
    ++unmet_;
    last_unmet_ = not_here;
  }

  void tell(const StreamSheet& sheet, const report::PriceWish& wish) {
    const Routine& routine = *sheet.routine();
    if (one_line_each()) return print(line_of(sheet, wish));
    tell(with_place(report::score_page(routine, wish, sheet.messages(), sheet.file()), *sheet.set));
  }

  void tell(const report::Page& page) {
    if (format_ == Format::json)
      return print(render_json(page, many_ ? report::JsonLayout::one_line : report::JsonLayout::indented));
    if (format_ == Format::csv) return print(csv_rows(page));
    if (sheets_ > 1) print("\n\n");
    print(render_text(page, wish_));
  }

  bool one_line_each() const { return layout_ == Layout::brief && format_ != Format::json; }

  std::string line_of(const StreamSheet& sheet, const report::PriceWish& wish) const {
    const Routine& routine = *sheet.routine();
    const report::SheetRow row{sheet.file(), routine.title, routine.event->title,
                               totals(routine, wish.wish, wish.panel)};
    return format_ == Format::csv ? report::batch_csv_line(row) : report::batch_line(row, wish_);
  }

  Exit refuse_sheet(const StreamSheet& sheet) {
    messages_.add(sheet.messages());
    const std::size_t errors = sheet.messages().errors() + (sheet.without_set ? 1 : 0);
    if (format_ == Format::json) tell(report::refused_page(sheet.file(), refusal_of(sheet)));
    if (format_ == Format::text && layout_ == Layout::brief)
      print(report::batch_refusal(sheet.file(), errors, wish_));
    if (!many_) call_.streams.say("landdrill: not scored: mend the sheet first\n");
    return Exit::errors;
  }

  // What is wrong with its set was said already.
  static Diagnostics refusal_of(const StreamSheet& sheet) {
    Diagnostics messages = sheet.messages();
    if (sheet.without_set)
      messages.add(diagnostic_about(sheet.file(), {Problem::unknown_set, "no value set to score it by",
                                                   "a set that can be found and has no mistakes"}));
    return messages;
  }

  // The heading waits for the first line below it.
  void print(std::string_view text) {
    call_.streams.out.write(std::exchange(heading_, {}));
    call_.streams.out.write(text);
  }

  Call& call_;
  Messages messages_;
  report::TextWish wish_;
  Format format_;
  Layout layout_ = Layout::full;
  bool many_ = false;
  std::string heading_, last_unmet_;
  std::size_t sheets_ = 0, priced_ = 0, unmet_ = 0;
  Exit worst_ = Exit::ok;
  CallSheets sheets_of_call_;  // last, so that it ends first: what it does ahead needs the others
};

}  // namespace

Exit score(Call& call) {
  if (!all_readable(call, call.given.operands)) return Exit::environment;
  return Scoring(call).all();
}

}  // namespace landdrill::cli
