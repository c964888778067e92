#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/explain.h"
#include "grammar/failure.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

using words::Shape;
using words::Word;

// `found` starts an unquoted title: the whole rest of the line was meant.
std::string quote_the_title(const FailedLine& line, const char* from) {
  std::string_view title = rest_of_line(line.text, from);
  if (title.size() > 2 && title.front() == '\'' && title.back() == '\'')
    title = title.substr(1, title.size() - 2);
  const bool plain = title.find('"') == title.npos && title.size() < 60;
  return plain ? fmt::format("put the title in quotation marks: \"{}\"", title)
               : std::string("put the title in quotation marks");
}

// An example with a list of two.
std::string example_list(Word word) {
  if (word == Word::element) return "element 2: bent-knee small, travel small x2";
  std::string list(words::keyword(word).example);
  if (word == Word::impression) list += ", performance 7.75";
  if (word == Word::penalty) list += ", bottom";
  return list;
}

std::optional<Shape> shape_of(const FailedLine& line) {
  return line.keyword ? std::optional(words::keyword(*line.keyword).shape) : std::nullopt;
}

bool comma_before(std::string_view line, const char* at) {
  return without_trailing_blanks(view(line.data(), at)).ends_with(',');
}

// All that was understood so far: "tempo 128".
std::string understood(const FailedLine& line, const char* at) {
  return std::string(without_trailing_blanks(view(line.first_word.data(), at)));
}

// ---- elements ----

constexpr std::string_view marked_example =
    "for example: element 2: 7.25 7.50 7.00, or in a run: element 2: bent-knee small";

// The line with the colon that is missing after the number: "element 1: 7.25 7.50".
std::string with_colon(const FailedLine& line) {
  const char* last = end_of(line.text);
  const char* number = characters::skip_blanks(end_of(line.first_word), last);
  const char* end = characters::number_end(number, last);
  std::string_view rest = rest_of_line(line.text, characters::skip_blanks(end, last));
  const std::string_view first = view(rest.data(), characters::code_end(rest.data(), end_of(rest)));
  std::string head = fmt::format("element {}", view(number, end));
  if (words::same(first, words::base)) {
    head += fmt::format(" {}", words::base);
    rest = view(characters::skip_blanks(end_of(first), end_of(rest)), end_of(rest));
  }
  return fmt::format("{}: {}", head, rest);
}

std::string title_or_colon_hint(const FailedLine& line, const char* at, std::string_view word) {
  if (word == ":")
    return "no colon follows the kind of element; marks and faults follow the number: element 2: 7.25 7.50";
  const std::string_view before = without_trailing_blanks(view(line.text.data(), at));
  if (before.ends_with('"')) return "the kind stands before the title: element 2 hybrid \"Undertow\"";
  if (characters::looks_like_number(word))
    return fmt::format("where marks are meant, a colon follows the number: {}", with_colon(line));
  return fmt::format("{}; where faults are meant, a colon follows the number: {}", quote_the_title(line, at),
                     with_colon(line));
}

std::string element_hint(const FailedLine& line, const Failure& failure, std::string_view word) {
  if (expects(failure, expected::element_number))
    return line.text.find(':') != line.text.npos
               ? "say which element: element 1: ..."
               : "elements are numbered 1, 2, 3 and so on: element 1 hybrid \"Undertow\"";
  if (expects(failure, expected::size)) return "every fault has its size: element 2: bent-knee small x2";
  if (expects(failure, expected::lost_code)) return "say which part was lost: element 2: lost spin-720";
  if (word.empty() && comma_before(line.text, failure.where)) return "take the last comma away";
  if (expects(failure, expected::clean) || expects(failure, expected::mark))
    return std::string(marked_example);
  if (expects(failure, expected::kind) && characters::looks_like_number(word))
    return fmt::format("where marks are meant, a colon follows the number: {}", with_colon(line));
  if (expects(failure, expected::title) && !word.empty())
    return title_or_colon_hint(line, failure.where, word);
  return example_hint(line);
}

// ---- a line that goes on too long ----

std::string one_number_hint(const FailedLine& line, const char* at) {
  const bool has_number = shape_of(line) != Shape::alone;
  return fmt::format("write {} alone: {}", has_number ? "the number" : "the word", understood(line, at));
}

std::string end_hint(const FailedLine& line, const Failure& failure, std::string_view word) {
  const char* at = failure.where;
  const std::string so_far = understood(line, at);
  if (const auto next = words::find(word))
    return fmt::format("every statement has a line of its own: start a new one before {}",
                       words::keyword(*next).word);
  if (at[-1] == '"' && word[0] != '"')
    return "a straight quotation mark ends the title; inside it write “ and ”";
  if (shape_of(line) == Shape::code)
    return fmt::format(
        "a code with blanks or other signs goes in quotation marks: {} \"{}\"", line.first_word,
        rest_of_line(line.text, characters::skip_blanks(end_of(line.first_word), end_of(line.text))));
  if (so_far.ends_with(words::clean)) return "clean stands alone: with a fault, an element is not clean";
  if (so_far.ends_with(words::none)) return "none stands alone";
  if (!line.keyword || line.keyword == Word::element)
    return "a mark is a number such as 7.50, and blanks stand between marks";
  if (!has_title(line)) return one_number_hint(line, at);
  return fmt::format("end the line here; a note may follow after #: {}  # {}", so_far,
                     rest_of_line(line.text, at));
}

std::string percent_hint(const FailedLine& line, const char* at) {
  const std::string_view before = without_trailing_blanks(view(line.text.data(), at));
  std::string_view number = before.substr(before.find_last_of(" \t:") + 1);
  if (number.size() == 4 && (number.starts_with("0.") || number.starts_with("0,")))
    number.remove_prefix(number[2] == '0' ? 3 : 2);
  if (shape_of(line) == Shape::percents) {
    const std::string_view penalty = view(line.text.data(), number.data());
    return fmt::format("write the chance in percent: {}{}%", penalty.substr(penalty.find_first_not_of(" \t")),
                       number);
  }
  return fmt::format("write the chance in percent: {} {}%", words::keyword(*line.keyword).word, number);
}

std::string limit_hint(const FailedLine& line, const Failure& failure, std::string_view word) {
  const bool ends = failure.count == 1 && expects(failure, expected::end);
  if (ends && words::same(word, words::at_least))
    return "least stands before most: limit hybrid least 2 most 5";
  if (expects(failure, expected::least) && characters::looks_like_number(word))
    return fmt::format("say whether it is the least or the most: {} most {}", understood(line, failure.where),
                       word);
  return example_hint(line);
}

// ---- lists ----

// "2x thrust-high": how many times, where a code should be.
bool times_before(std::string_view line, const char* at) {
  std::string_view before = without_trailing_blanks(view(line.data(), at));
  before = before.substr(before.find_last_of(" \t,:") + 1);
  if (before.ends_with('x') || before.ends_with('X')) before.remove_suffix(1);
  return !before.empty() && std::all_of(before.begin(), before.end(), characters::is_digit);
}

std::string comma_hint(const FailedLine& line, const Failure& failure, std::string_view word) {
  const std::string list = example_list(line.keyword.value_or(Word::element));
  const bool may_count = expects(failure, expected::times);
  if (may_count && times_before(line.text, failure.where))
    return fmt::format("how many times stands behind: {} x2", word);
  if (line.keyword == Word::penalty && characters::looks_like_number(word))
    return "what a penalty costs is in the value set; more than one is written x2";
  const char* last = end_of(word);
  if (may_count && (word[0] == '*' || characters::times_sign_end(word.data(), last) != word.data()) &&
      std::none_of(word.begin() + 1, word.end(),
                   [](char c) { return (characters::kind(c) & characters::letter) != 0; }))
    return "how many times is a whole number after an x: x2";
  if (line.keyword == Word::element && !may_count && characters::looks_like_times(word))
    return "every lost part is named once: lost spin-720, lost join-foot";
  const std::string hint = fmt::format("put a comma between two of a list: {}", list);
  const bool may_be_one_code = shape_of(line) == Shape::counted || shape_of(line) == Shape::counts;
  return may_be_one_code ? hint + "; a code of several words goes in quotation marks" : hint;
}

std::string list_hint(const FailedLine& line, const Failure& failure, std::string_view word) {
  const std::string list = example_list(line.keyword.value_or(Word::element));
  const bool after_comma = comma_before(line.text, failure.where);
  const bool is_code =
      !word.empty() && (characters::is_bare_code(word) || characters::quotes_at(word.data(), end_of(word)));
  if (after_comma && word.empty())
    return "take the last comma away, or write what follows it on the same line";
  if (after_comma && word == ",") return "one comma is enough";
  if (word == "," && understood(line, failure.where).size() <= line.first_word.size() + 1)
    return "take this comma away";
  if (is_code && expects(failure, expected::comma)) return comma_hint(line, failure, word);
  if (word.empty() || is_code || word == "," || !expects(failure, expected::comma))
    return fmt::format("for example: {}", list);
  return fmt::format(
      "a comma stands between two of a list; a code with other signs than . - _ * / ' goes in quotation "
      "marks: {}",
      list);
}

bool is_list(const FailedLine& line, const Failure& failure) {
  if (expects(failure, expected::comma)) return true;
  switch (shape_of(line).value_or(Shape::alone)) {
    case Shape::counted:
    case Shape::counted_or_none:
    case Shape::counts:
    case Shape::numbers:
    case Shape::percents:
      return true;
    default:
      return false;
  }
}

// The word that the hint ends in can go in the place of what was found.
Hint instead(const char* hint, std::string word) {
  return {hint + word, word};
}

// "\"2026-04-14\"" without its quotation marks, or nothing.
std::string_view quoted_date(std::string_view word) {
  if (word.size() != 12 || word.front() != '"' || !characters::is_digit(word[1])) return {};
  return word.substr(1, 10);
}

// "1,234.5" and "1.234,5" are 1234.5; "7,25,7,50" are two marks.
std::string reading_of(std::string_view figures) {
  const std::size_t last_mark = figures.find_last_of(".,");
  const char other = figures[last_mark] == '.' ? ',' : '.';
  const auto count = [&](char c) { return std::count(figures.begin(), figures.end(), c); };
  std::string text;
  if (count(other) == 0 && count(',') % 2 == 1) {
    std::size_t seen = 0;
    for (char c : figures) text += c != ',' ? c : ++seen % 2 == 1 ? '.' : ' ';
    return text;
  }
  if (figures[last_mark] == '.' && count('.') == count(',') + 1) {
    for (char c : figures) text += c == ',' ? ' ' : c;
    const bool alternate = figures.find('.') < figures.find(',');
    if (alternate) return text;
    text.clear();
  }
  if (count(figures[last_mark]) != 1) return {};
  for (std::size_t i = 0; i < figures.size(); ++i)
    if (characters::is_digit(figures[i]))
      text += figures[i];
    else if (i == last_mark)
      text += '.';
  return text;
}

}  // namespace

std::string example_hint(const FailedLine& line) {
  if (!line.keyword) return "for example: choreography: 7.50 7.75 7.50 7.25 7.50";
  return fmt::format("for example: {}", words::keyword(*line.keyword).example);
}

bool has_title(const FailedLine& line) {
  return shape_of(line) == Shape::title || shape_of(line) == Shape::dated;
}

Hint hint_of(const FailedLine& line, const Failure& failure, std::string_view word) {
  if (!word.empty() && characters::is_control(word.substr(0, 1)))
    return "delete this control character; it came with copying";
  if (word.size() > 1 && (word[0] == '.' || word[0] == ',') && characters::is_digit(word[1]))
    return instead("write a zero before the point: ", fmt::format("0.{}", word.substr(1)));
  if (shape_of(line) == Shape::limit) return limit_hint(line, failure, word);
  const bool is_chance = shape_of(line) == Shape::percent || shape_of(line) == Shape::percents;
  if (is_chance && expects(failure, expected::percent)) return percent_hint(line, failure.where);
  if (expects(failure, expected::date) && !quoted_date(word).empty())
    return instead("write the date without quotation marks: ", std::string(quoted_date(word)));
  if (has_title(line) && expects(failure, expected::title) && characters::is_bare_code(word))
    return quote_the_title(line, failure.where);
  if (failure.count == 1 && expects(failure, expected::end)) return end_hint(line, failure, word);
  if (word == "?" && expects(failure, expected::mark))
    return instead("a judge who is missing is written as ", "-");
  if (line.keyword == Word::element && !expects(failure, expected::comma))
    return element_hint(line, failure, word);
  if (is_list(line, failure)) return list_hint(line, failure, word);
  return example_hint(line);
}

Hint unknown_hint(const FailedLine& line, std::string_view word) {
  const char* last = end_of(line.text);
  if (const auto near = words::nearest_keyword(line.first_word)) {
    const std::string keyword(words::keyword(*near).word);
    return {"the nearest keyword is " + keyword, word == line.first_word ? keyword : ""};
  }
  if (characters::quotes_at(word.data(), end_of(word)) != nullptr)
    return "a title stands on the line of its keyword";
  const std::size_t colon = line.text.find(':', static_cast<std::size_t>(end_of(word) - line.text.data()));
  if (colon != line.text.npos)
    return fmt::format("an aspect of several words goes in quotation marks: \"{}\": 7.50 7.75",
                       view(word.data(), line.text.data() + colon));
  const char* after = characters::skip_blanks(end_of(word), last);
  const char* mark = characters::number_end(after, last);
  if (mark != after && characters::is_bare_code(word))
    return fmt::format("where marks are meant, a colon follows the aspect: {}: {}", word, view(after, mark));
  return "every line starts with its keyword; a note starts with #";
}

std::string close_hint(const FailedLine& line, std::string_view quote) {
  const char* at = quote.data();
  const characters::Quotes* pair = characters::quotes_at(at, end_of(line.text));
  std::string_view rest = rest_of_line(line.text, at + pair->opening.size());
  if (rest.ends_with('"')) rest.remove_suffix(1);
  return rest.size() < 60 && rest.find('"') == rest.npos
             ? fmt::format("write {}{}{}", pair->opening, rest, pair->closing[0])
             : fmt::format("write {} where the title ends", pair->closing[0]);
}

std::string ambiguous_hint(const FailedLine& line, std::string_view figures) {
  const bool marks = !line.keyword || line.keyword == Word::element;
  const std::string reading = reading_of(figures);
  const std::string hint = marks ? "put blanks between marks, and one point or comma into a mark"
                                 : "write a number with one point, and nothing between thousands";
  return reading.empty() ? hint : fmt::format("{}: {}", hint, reading);
}

// "14/04/2026" -> "2026-04-14", when day and month cannot be mistaken for each other.
Hint date_hint(std::string_view text) {
  std::array<std::string, 3> pieces;
  std::size_t count = 0;
  for (char c : text) {
    if (characters::is_digit(c) && pieces[count].size() < 4)
      pieces[count] += c;
    else if (++count == pieces.size())
      break;
  }
  const auto two = [](const std::string& s) { return s.size() == 1 ? "0" + s : s; };
  const auto written = [&](std::size_t y, std::size_t m, std::size_t d) {
    return fmt::format("{}-{}-{}", pieces[y], two(pieces[m]), two(pieces[d]));
  };
  if (text.size() > 10 && text[4] == '-' && text[7] == '-' && text[10] == 'T')
    return instead("write the date without the time: ", std::string(text.substr(0, 10)));
  if (count == 2 && pieces[0].size() == 4 && pieces[1].size() <= 2 && pieces[2].size() <= 2 &&
      !pieces[1].empty() && !pieces[2].empty())
    return instead("write ", written(0, 1, 2));
  const bool year_last = count == 2 && pieces[2].size() == 4 && pieces[0].size() <= 2 &&
                         pieces[1].size() <= 2 && !pieces[0].empty() && !pieces[1].empty();
  if (!year_last) return "write year-month-day, for example 2026-04-14";
  if (two(pieces[0]) > "12") return instead("write ", written(2, 1, 0));
  if (two(pieces[1]) > "12" || pieces[0] == pieces[1]) return instead("write ", written(2, 0, 1));
  return fmt::format("write {} or {}, as you mean it", written(2, 1, 0), written(2, 0, 1));
}

}  // namespace landdrill
