#include <fmt/format.h>

#include "grammar/builder.h"
#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/once.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "grammar/tree.h"
#include "grammar/words.h"

namespace landdrill::ast {
namespace {

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

}  // namespace

std::string_view Builder::name_of_place() const {
  if (place_ == Place::after_elements && routine_->impressions.empty())
    return "after the sync errors or penalties that are expected";
  return name_of(place_);
}

std::string_view Builder::first_word() const {
  const char* last = line_.data() + line_.size();
  const char* start = characters::skip_blanks(line_.data(), last);
  const char* end = characters::code_end(start, last);
  return {start, static_cast<std::size_t>(end - start)};
}

void Builder::misplaced(std::string_view expected, std::string hint, std::string_view what) {
  mark_incomplete();
  const std::string_view word = first_word();
  const std::string thing = what.empty() ? fmt::format("\"{}\"", word) : std::string(what);
  if (!forgiving_)
    complain(word, {Problem::misplaced, fmt::format("{} {}", thing, name_of_place()), std::string(expected),
                    std::move(hint)});
  forgiving_ = forgiving_ || !is_header(word);
}

bool Builder::is_header(std::string_view word) {
  const auto found = words::find(word);
  return found && is_in_header(*found);
}

bool Builder::once(Once& seen, Once::Key key, std::string_view piece) {
  const std::string_view* first = seen.first(key, piece.empty() ? line_ : piece);
  if (first != nullptr) complain_of_repeat(key, piece.empty() ? first_word() : piece, *first);
  return first == nullptr;
}

void Builder::complain_of_repeat(Once::Key key, std::string_view piece, std::string_view first) {
  mark_incomplete();
  if (!forgiving_ && wants_more()) complain(piece, repeated(key, piece, first));
}

Complaint Builder::repeated(Once::Key key, std::string_view piece, std::string_view first) const {
  const std::string hint = fmt::format("the first is on line {}", position_of(source_, first).line);
  const std::string word = fmt::format("\"{}\"", piece);
  switch (key.word) {
    case Word::element:
      return {Problem::repeated, fmt::format("element {} a second time", piece),
              in_block() ? "every element once in a run or a panel" : "a number of its own for every element",
              hint};
    case Word::option:
      return {Problem::repeated, fmt::format("the option \"{}\" a second time", piece),
              "a title of its own for every option of an element", hint};
    case Word::impression:
      return {Problem::repeated, fmt::format("the aspect {} a second time", word), "every aspect once", hint};
    case Word::errors:
      return {Problem::repeated, fmt::format("the sync errors {} a second time", word), "every class once",
              hint};
    case Word::risk:
      return {Problem::repeated, fmt::format("the penalty {} a second time", word), "every penalty once",
              hint};
    case Word::limit:
      return {Problem::repeated, fmt::format("the limit of {} a second time", word),
              "every limit once, with its least and its most on one line", hint};
    default:
      return {Problem::repeated, word + " a second time", fmt::format("it once {}", once_in(key.word)), hint};
  }
}

std::string_view Builder::once_in(Word word) const {
  if (is_among(said_of_an_element, word)) return "in an element";
  if (in_block()) return place_ == Place::run ? "in a run" : "in a panel";
  if (place_ == Place::passage) return "in a passage";
  return place_ == Place::element ? "in an element or an option" : "in a routine";
}

bool Builder::wants_more() {
  if (out_.diagnostics.wants_more()) return true;
  out_.diagnostics.count_only(Severity::error);
  return false;
}

void Builder::complain(std::string_view piece, Complaint complaint) {
  if (out_.diagnostics.wants_more())
    out_.diagnostics.add(diagnostic_at(source_, piece, std::move(complaint)));
  else
    out_.diagnostics.count_only(severity_of(complaint.problem));
}

}  // namespace landdrill::ast
