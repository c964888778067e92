#include "grammar/blocks.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "grammar/characters.h"
#include "grammar/once.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

using namespace ast;

// Where the reading stands, and with it which lines may follow.
enum class Place { outside, header, element, passage, after_elements, run, panel };

std::string_view name_of(Place place) {
  switch (place) {
    case Place::outside:
      return "before any routine";
    case Place::header:
      return "before the first element";
    case Place::element:
      return "in an element";
    case Place::passage:
      return "in a passage";
    case Place::after_elements:
      return "after the impression marks";
    case Place::run:
      return "in a run";
    case Place::panel:
      return "in a panel";
  }
  return {};
}

int number_in(std::string_view digits) {
  int value = 0;
  for (char c : digits) value = value * 10 + (c - '0');
  return value;
}

// 0 when there is no such month.
int days_of_month(std::string_view date) {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const int year = number_in(date.substr(0, 4)), month = number_in(date.substr(5, 2));
  if (year < 1 || month < 1 || month > 12) return 0;
  const bool leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  return days[month - 1] + (month == 2 && leap ? 1 : 0);
}

bool is_day_of_the_calendar(std::string_view date) {
  const int day = number_in(date.substr(8, 2));
  return day >= 1 && day <= days_of_month(date);
}

// Day and month in the wrong order, or a day that the month does not have.
std::string day_hint(std::string_view date) {
  const std::string swapped =
      fmt::format("{}-{}-{}", date.substr(0, 4), date.substr(8, 2), date.substr(5, 2));
  if (is_day_of_the_calendar(swapped)) return fmt::format("the month stands before the day: {}", swapped);
  const int days = days_of_month(date);
  return days == 0 ? "write year-month-day, for example 2026-04-14"
                   : fmt::format("this month has {} days", days);
}

std::string_view without_zeros(std::string_view number) {
  while (number.size() > 1 && number.front() == '0') number.remove_prefix(1);
  return number;
}

// Puts one line after another where it belongs. What has no place, or stands below a line in error, goes to a
// spare block that is thrown away, so that one mistake is one message.
class Builder {
 public:
  Builder(const Source& source, Assembled& out) : source_(source), out_(out) {
    if (!out.sheets.empty() && !out.routine_lost) sheet_ = &out.sheets.back();
    if (out.routine_lost) sheet_ = &spare_sheet_;
  }

  void add(Line& line) {
    line_ = line.text;
    std::visit([this](auto& statement) { put(statement); }, line.statement);
  }

 private:
  // ---- the routine and its header ----
  void put(EmptyLine&) {}

  void put(RoutineLine& line) {
    out_.routine_lost = false;
    sheet_ = &out_.sheets.emplace_back();
    start_routine(line);
  }
  void put(EventLine& line) { put_in_header(Said::event, line, &Routine::event); }
  void put(ValuesLine& line) { put_in_header(Said::values, line, &Routine::values); }
  void put(TempoLine& line) { put_in_header(Said::tempo, line, &Routine::tempo); }
  void put(SwimmersLine& line) { put_in_header(Said::swimmers, line, &Routine::swimmers); }

  void start_routine(const RoutineLine& line) {
    sheet_->source = &source_;
    sheet_->routine.head = line;
    in_routine_.clear();
    start(Place::header);
  }

  template <class Statement>
  void put_in_header(Said what, Statement& line, std::optional<Statement> Routine::*member) {
    need_routine();
    if (place_ != Place::header)
      return misplaced("it in the header of a routine, above its first element",
                       "move it up, above the first element or passage");
    if (once(in_routine_, {what})) sheet_->routine.*member = std::move(line);
  }

  // Everything but runs and panels belongs to a routine of the same text; without one, it is said once.
  void need_routine() {
    if (place_ != Place::outside) return;
    misplaced("a routine above it", "a sheet starts with: routine \"Harbour Lights\"");
    start_lost_routine();
  }
  void start_lost_routine() {
    out_.routine_lost = true;
    sheet_ = &(spare_sheet_ = {});
    start_routine({});
  }

  // ---- elements and passages ----
  void put(ElementLine& line) {
    need_routine();
    if (in_block())
      return misplaced(
          "it in a routine, above its runs and panels",
          "marks and faults follow a colon (element 2: ...); an element stands above the first run or panel");
    const bool is_new = once(in_routine_, {Said::element, without_zeros(line.number.text)}, line.number.text);
    Element& element = is_new ? new_item<Element>() : (spare_element_ = {});
    element.head = std::move(line);
    start_element(element);
  }

  void put(OptionLine& line) {
    if (place_ != Place::element) return misplaced("it in an element", "write the element above its options");
    const bool is_new = once(in_element_, {Said::option, line.title.text}, line.title.text);
    Variant& variant = is_new ? element_->variants.emplace_back() : (spare_variant_ = {});
    variant.title = line.title;
    start_variant(variant);
  }

  void put(PassageLine& line) {
    need_routine();
    if (in_block())
      return misplaced("it in a routine, above its runs and panels",
                       "move it up, above the first run or panel");
    passage_ = &new_item<Passage>();
    passage_->head = std::move(line);
    start_passage();
  }

  void put(PartsLine& line) { put_in_variant(Said::parts, line, &Variant::parts); }
  void put(DifficultyLine& line) { put_in_variant(Said::difficulty, line, &Variant::difficulty); }
  void put(ExpectLine& line) { put_in_variant(Said::expect, line, &Variant::expect); }
  void put(SlipLine& line) { put_in_variant(Said::slip, line, &Variant::slip); }
  void put(CountsLine& line) {
    if (place_ != Place::passage) return put_in_variant(Said::counts, line, &Variant::counts);
    if (once(in_variant_, {Said::counts})) passage_->counts = std::move(line);
  }

  template <class Statement>
  void put_in_variant(Said what, Statement& line, std::optional<Statement> Variant::*member) {
    if (place_ != Place::element)
      return misplaced(what == Said::counts ? "it in an element or a passage" : "it in an element",
                       variant_hint());
    if (once(in_variant_, {what})) variant_->*member = std::move(line);
  }

  std::string variant_hint() const {
    if (place_ == Place::passage) return "a passage has counts only; what is scored is an element";
    return "write it below its element: element 1 hybrid \"Undertow\"";
  }

  void put(ImpressionLine& line) {
    need_routine();
    if (in_block())
      return misplaced("it in a routine, above its runs and panels",
                       "move it up, above the first run or panel");
    if (place_ != Place::header) start(Place::after_elements);
    for (ExpectedAspect& each : line.marks)
      if (once(in_routine_, {Said::aspect, each.aspect.text}, each.aspect.text))
        sheet_->routine.impressions.push_back(std::move(each));
  }

  // ---- runs and panels ----
  void put(RunLine& line) {
    const bool good = may_start(line.date);
    run_ = good ? &sheet_->runs.emplace_back() : &(spare_run_ = {});
    run_->source = &source_;
    run_->head = std::move(line);
    start(Place::run);
  }
  void put(PanelLine& line) {
    const bool good = may_start(line.date);
    panel_ = good ? &sheet_->panels.emplace_back() : &(spare_panel_ = {});
    panel_->source = &source_;
    panel_->head = std::move(line);
    start(Place::panel);
  }

  bool may_start(const Date& date) {
    if (sheet_ == nullptr) need_routine();
    const bool exists = is_day_of_the_calendar(date.text);
    if (!exists)
      complain(date.text, {Problem::bad_date, fmt::format("\"{}\"", date.text), "a day of the calendar",
                           day_hint(date.text)});
    return exists;
  }

  void put(FaultsLine& line) {
    if (place_ != Place::run) return misplaced("them in a run", faults_hint(), "faults");
    if (once(in_block_, {Said::element, without_zeros(line.element.text)}, line.element.text))
      run_->elements.push_back(std::move(line));
  }
  void put(ElementMarksLine& line) {
    if (place_ != Place::panel) return misplaced("them in a panel", marks_hint(), "marks");
    if (once(in_block_, {Said::element, without_zeros(line.element.text)}, line.element.text))
      panel_->elements.push_back(std::move(line));
  }

  std::string faults_hint() const {
    if (place_ == Place::panel) return "a panel holds marks: element 2: 7.25 7.50 7.00";
    return "start a run above it: run 2026-04-14 \"Tuesday\"";
  }
  std::string marks_hint() const {
    if (place_ == Place::run) return "a run holds faults: element 2: bent-knee small, or: element 2: clean";
    return "start a panel above it: panel 2026-05-09 \"Tarn Open\"";
  }

  void put(AspectMarksLine& line) {
    const bool is_difficulty = words::same(line.aspect.text, words::keyword(words::Word::difficulty).word);
    if (place_ == Place::element && is_difficulty && line.marks.size() == 1 && line.marks[0]) {
      DifficultyLine stated{*line.marks[0]};
      return put(stated);
    }
    if (!in_block()) return misplaced("them in a run or a panel", aspect_hint(line), "marks");
    if (place_ == Place::run && (line.marks.size() != 1 || !line.marks[0]))
      return complain_of_run_marks(line);
    if (once(in_block_, {Said::aspect, line.aspect.text}, line.aspect.text))
      (place_ == Place::run ? run_->aspects : panel_->aspects).push_back(std::move(line));
  }

  void complain_of_run_marks(const AspectMarksLine& line) {
    run_->incomplete = true;
    complain(
        line.aspect.text,
        {Problem::syntax,
         line.marks.size() == 1 ? "no mark in a run" : fmt::format("{} marks in a run", line.marks.size()),
         "the one mark that the coach gives", "the marks of several judges belong in a panel"});
  }

  static std::string aspect_hint(const AspectMarksLine& line) {
    if (const auto near = words::nearest_keyword(line.aspect.text))
      return fmt::format("the nearest keyword is {}", words::keyword(*near).word);
    return "the marks you expect go into the routine as: impression choreography 7.50";
  }

  void put(SyncLine& line) { put_in_block(Said::sync, line, &Run::sync, &Panel::sync); }
  void put(PenaltyLine& line) { put_in_block(Said::penalty, line, &Run::penalty, &Panel::penalty); }
  void put(ResultLine& line) {
    if (place_ != Place::panel)
      return misplaced("it in a panel", "a result is what was announced after a panel");
    if (once(in_block_, {Said::result})) panel_->result = line;
  }

  template <class Statement>
  void put_in_block(Said what, Statement& line, std::optional<Statement> Run::*of_run,
                    std::optional<Statement> Panel::*of_panel) {
    if (!in_block())
      return misplaced("it in a run or a panel", "start a run above it: run 2026-04-14 \"Tuesday\"");
    if (!once(in_block_, {what})) return;
    (place_ == Place::run ? run_->*of_run : panel_->*of_panel) = std::move(line);
  }

  // ---- lines in error ----
  void put(BadLine& line) {
    mark_incomplete();
    if (sheet_ == nullptr && line.opens != Opens::nothing && line.opens != Opens::unknown) {
      out_.routine_lost = true;
      sheet_ = &(spare_sheet_ = {});
    }
    switch (line.opens) {
      case Opens::nothing:
        return;
      case Opens::routine:
        return start_lost_routine();
      case Opens::run:
        run_ = &(spare_run_ = {});
        return start(Place::run);
      case Opens::panel:
        panel_ = &(spare_panel_ = {});
        return start(Place::panel);
      case Opens::unknown:
        forgiving_ = true;
        return;
      default:
        if (!in_block()) put_bad_item(line.opens);
    }
  }

  void put_bad_item(Opens opens) {
    if (opens == Opens::passage) {
      passage_ = &(spare_passage_ = {});
      start_passage();
    } else if (opens == Opens::option && place_ == Place::element) {
      start_variant(spare_variant_ = {});
    } else {
      start_element(spare_element_ = {});
    }
  }

  void mark_incomplete() {
    if (place_ == Place::run) run_->incomplete = true;
    if (place_ == Place::panel) panel_->incomplete = true;
    if (place_ == Place::element) variant_->incomplete = true;
    if (sheet_ != nullptr && !in_block()) sheet_->routine.incomplete = true;
  }

  // ---- where we are ----
  bool in_block() const { return place_ == Place::run || place_ == Place::panel; }

  void start(Place place) {
    place_ = place;
    forgiving_ = false;
    in_block_.clear();
  }
  void start_element(Element& element) {
    element_ = &element;
    in_element_.clear();
    start_variant(element.variants.emplace_back());
  }
  void start_variant(Variant& variant) {
    variant_ = &variant;
    in_variant_.clear();
    start(Place::element);
  }
  void start_passage() {
    in_variant_.clear();
    start(Place::passage);
  }
  template <class Kind>
  Kind& new_item() {
    return std::get<Kind>(sheet_->routine.items.emplace_back(Kind{}));
  }

  // ---- complaints ----
  std::string_view first_word() const {
    const char* last = line_.data() + line_.size();
    const char* start = characters::skip_blanks(line_.data(), last);
    const char* end = characters::code_end(start, last);
    return {start, static_cast<std::size_t>(end - start)};
  }

  // Says it once: the lines below a misplaced one are mostly misplaced with it.
  void misplaced(std::string_view expected, std::string hint, std::string_view what = {}) {
    mark_incomplete();
    const std::string_view word = first_word();
    const std::string thing = what.empty() ? fmt::format("\"{}\"", word) : std::string(what);
    if (!forgiving_)
      complain(word, {Problem::misplaced, fmt::format("{} {}", thing, name_of(place_)), std::string(expected),
                      std::move(hint)});
    forgiving_ = forgiving_ || !is_header(word);
  }
  static bool is_header(std::string_view word) {
    using words::Word;
    const auto found = words::find(word);
    return found == Word::event || found == Word::values || found == Word::tempo || found == Word::swimmers;
  }

  bool once(Once& seen, Once::Key key) { return once(seen, key, first_word()); }
  bool once(Once& seen, Once::Key key, std::string_view piece) {
    const std::string_view* first = seen.first(key, piece);
    if (first == nullptr) return true;
    mark_incomplete();
    if (!forgiving_ && wants_more()) complain(piece, repeated(key, piece, *first));
    return false;
  }
  Complaint repeated(Once::Key key, std::string_view piece, std::string_view first) const {
    const std::string hint = fmt::format("the first is on line {}", position_of(source_, first).line);
    const std::string word = fmt::format("\"{}\"", piece);
    switch (key.what) {
      case Said::element:
        return {
            Problem::repeated, fmt::format("element {} a second time", piece),
            in_block() ? "every element once in a run or a panel" : "a number of its own for every element",
            hint};
      case Said::option:
        return {Problem::repeated, fmt::format("the option \"{}\" a second time", piece),
                "a title of its own for every option of an element", hint};
      case Said::aspect:
        return {Problem::repeated, fmt::format("the aspect {} a second time", word), "every aspect once",
                hint};
      default:
        return {Problem::repeated, word + " a second time", "it once " + std::string(once_in()), hint};
    }
  }
  std::string_view once_in() const {
    if (in_block()) return place_ == Place::run ? "in a run" : "in a panel";
    if (place_ == Place::passage) return "in a passage";
    return place_ == Place::element ? "in an element or an option" : "in a routine";
  }

  bool wants_more() {
    if (out_.diagnostics.wants_more()) return true;
    out_.diagnostics.count_only(Severity::error);
    return false;
  }
  void complain(std::string_view piece, Complaint complaint) {
    if (out_.diagnostics.wants_more())
      out_.diagnostics.add(diagnostic_at(source_, piece, std::move(complaint)));
    else
      out_.diagnostics.count_only(severity_of(complaint.problem));
  }

  const Source& source_;
  Assembled& out_;
  std::string_view line_;
  Place place_ = Place::outside;
  bool forgiving_ = false;

  Sheet* sheet_ = nullptr;
  Element* element_ = nullptr;
  Variant* variant_ = nullptr;
  Passage* passage_ = nullptr;
  Run* run_ = nullptr;
  Panel* panel_ = nullptr;

  Sheet spare_sheet_;
  Element spare_element_;
  Variant spare_variant_;
  Passage spare_passage_;
  Run spare_run_;
  Panel spare_panel_;

  Once in_routine_, in_element_, in_variant_, in_block_;
};

}  // namespace

void assemble(const Source& source, ast::Lines&& lines, Assembled& so_far) {
  Builder builder(source, so_far);
  for (ast::Line& line : lines) builder.add(line);
}

void assemble(const Source& source, const ast::Lines& lines, Assembled& so_far) {
  assemble(source, ast::Lines(lines), so_far);
}

}  // namespace landdrill
