#include "grammar/explain.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "grammar/characters.h"

namespace landdrill {
namespace {

using words::Word;

std::string_view view(const char* first, const char* last) {
  return {first, static_cast<std::size_t>(last - first)};
}
const char* end_of(std::string_view text) {
  return text.data() + text.size();
}

// ---- what was found ----

// Up to the comment, without trailing blanks; `from` is outside any quotation marks.
std::string_view rest_of_line(std::string_view line, const char* from) {
  std::string_view rest = view(from, end_of(line));
  bool quoted = false;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    quoted ^= rest[i] == '"';
    if (rest[i] == '#' && !quoted) rest = rest.substr(0, i);
  }
  while (!rest.empty() && (rest.back() == ' ' || rest.back() == '\t')) rest.remove_suffix(1);
  return rest;
}

// The word at `at`: a text in quotation marks, a code, a number, or one character; empty at the end of the
// line.
std::string_view word_at(std::string_view line, const char* at) {
  const char* last = end_of(line);
  if (at == last || *at == '#') {
    while (at != line.data() && (at[-1] == ' ' || at[-1] == '\t')) --at;
    return view(at, at);
  }
  if (const characters::Quotes* pair = characters::quotes_at(at, last)) {
    const char* inner = at + pair->opening.size();
    const characters::Closing closing = characters::closing_of(*pair, view(inner, last));
    return view(at, closing.length == 0 ? inner : inner + closing.at + closing.length);
  }
  const char* end = std::max(characters::code_end(at, last), characters::number_end(at, last));
  return view(at, end != at ? end : at + characters::character_length(at, last));
}

std::string in_quotes(std::string_view text) {
  constexpr std::size_t longest = 60;
  if (text.size() > longest) {
    std::size_t cut = longest - 3;
    while ((static_cast<unsigned char>(text[cut]) & 0xC0) == 0x80) --cut;
    return in_quotes(fmt::format("{}...", text.substr(0, cut)));
  }
  const characters::Quotes* pair = characters::quotes_at(text.data(), end_of(text));
  const bool has_own = pair != nullptr && text.size() > pair->opening.size();
  if (has_own) return std::string(text);
  return text == "\"" ? "'\"'" : fmt::format("\"{}\"", text);
}

std::string found_at(std::string_view word) {
  return word.empty() ? "the end of the line" : in_quotes(word);
}

std::string expected_of(const Failure& failure) {
  std::string text;
  for (std::size_t i = 0; i < failure.count; ++i) {
    if (i > 0) text += i + 1 == failure.count ? " or " : ", ";
    text += failure.expected[i];
  }
  return text;
}

bool expects(const Failure& failure, std::string_view what) {
  const auto* last = failure.expected.begin() + failure.count;
  return std::find(failure.expected.begin(), last, what) != last;
}

// ---- hints ----

std::string example_of(const FailedLine& line) {
  if (!line.keyword) return "for example: choreography: 7.50 7.75 7.50 7.25 7.50";
  return fmt::format("for example: {}", words::keyword(*line.keyword).example);
}

bool has_title(const FailedLine& line) {
  return line.keyword == Word::routine || line.keyword == Word::option || line.keyword == Word::passage ||
         line.keyword == Word::run || line.keyword == Word::panel;
}

// `found` starts an unquoted title: the whole rest of the line was meant.
std::string quote_the_title(const FailedLine& line, const char* from) {
  std::string_view title = rest_of_line(line.text, from);
  if (title.size() > 2 && title.front() == '\'' && title.back() == '\'')
    title = title.substr(1, title.size() - 2);
  const bool plain = title.find('"') == title.npos && title.size() < 60;
  return plain ? fmt::format("put the title in quotation marks: \"{}\"", title)
               : std::string("put the title in quotation marks");
}

std::string_view example_list(Word word) {
  switch (word) {
    case Word::parts:
      return "parts thrust-high, split-hold x2";
    case Word::counts:
      return "counts 8 under, 3 up";
    case Word::impression:
      return "impression choreography 7.50, performance 7.75";
    case Word::sync:
      return "sync: small x3, clear x1";
    case Word::penalty:
      return "penalty: overtime, bottom";
    default:
      return "element 2: bent-knee small, travel small x2";
  }
}

std::string element_hint(const FailedLine& line, const Failure& failure, std::string_view word) {
  if (expects(failure, "the number of the element"))
    return "number the elements in order, for example: element 1 hybrid \"Undertow\"";
  if (expects(failure, "a title in quotation marks") && !word.empty() && word != ":")
    return fmt::format(
        "a title goes in quotation marks: element 2 hybrid \"Undertow\"; in a run or a panel a colon "
        "follows the number: element 2: 7.25 7.50");
  if (word == ":" && expects(failure, "a title in quotation marks"))
    return "no colon follows the kind of element; marks and faults follow the number: element 2: 7.25 7.50";
  if (expects(failure, "the size of the fault, such as small"))
    return "every fault has its size, for example: element 2: bent-knee small x2";
  return example_of(line);
}

bool comma_before(std::string_view line, const char* at) {
  while (at != line.data() && (at[-1] == ' ' || at[-1] == '\t')) --at;
  return at != line.data() && at[-1] == ',';
}

std::string percent_hint(const FailedLine& line, const char* at) {
  while (at != line.text.data() && (at[-1] == ' ' || at[-1] == '\t')) --at;
  const char* start = at;
  while (start != line.text.data() &&
         (characters::is_digit(start[-1]) || start[-1] == '.' || start[-1] == ','))
    --start;
  std::string_view number = view(start, at);
  if (number.size() == 4 && (number.starts_with("0.") || number.starts_with("0,")))
    return fmt::format("write the chance in percent: slip {}%", number.substr(number[2] == '0' ? 3 : 2));
  return fmt::format("write the chance in percent: slip {}%", number);
}

std::string list_hint(const FailedLine& line, const char* at, std::string_view word) {
  const std::string_view list = example_list(line.keyword.value_or(Word::element));
  if (comma_before(line.text, at))
    return word.empty() ? "take the last comma away, or write what follows it" : "one comma is enough";
  if (characters::is_bare_code(word) ||
      (!word.empty() && characters::quotes_at(word.data(), end_of(word)) != nullptr))
    return fmt::format("put a comma between two of a list: {}", list);
  if (word.empty()) return fmt::format("for example: {}", list);
  return "a code of other characters than letters, digits and . - _ * / ' goes in quotation marks; a comma "
         "stands "
         "between two of a list";
}

bool is_list(const FailedLine& line, const Failure& failure) {
  return expects(failure, "a comma") || line.keyword == Word::parts || line.keyword == Word::counts ||
         line.keyword == Word::impression || line.keyword == Word::sync || line.keyword == Word::penalty;
}

std::string hint_of(const FailedLine& line, const Failure& failure, std::string_view word) {
  if (word.size() > 1 && (word[0] == '.' || word[0] == ',') && characters::is_digit(word[1]))
    return fmt::format("write a zero before the point: 0.{}", word.substr(1));
  if (line.keyword == Word::slip && expects(failure, "a percent sign"))
    return percent_hint(line, failure.where);
  if (has_title(line) && expects(failure, "a title in quotation marks") && characters::is_bare_code(word))
    return quote_the_title(line, failure.where);
  if (line.keyword == Word::element && !expects(failure, "a comma")) return element_hint(line, failure, word);
  if (is_list(line, failure)) return list_hint(line, failure.where, word);
  return example_of(line);
}

// ---- mistakes ----

std::string repeat_closing(const char* at, std::string_view line) {
  const characters::Quotes* pair = characters::quotes_at(at, end_of(line));
  const std::string rest(rest_of_line(line, at + pair->opening.size()));
  return rest.size() < 60 && rest.find('"') == rest.npos
             ? fmt::format("{}{}{}", pair->opening, rest, pair->closing[0])
             : std::string(pair->closing[0]);
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
  if (count(figures[last_mark]) != 1) return {};
  for (std::size_t i = 0; i < figures.size(); ++i)
    if (characters::is_digit(figures[i]))
      text += figures[i];
    else if (i == last_mark)
      text += '.';
  return text;
}

std::string ambiguous_hint(std::string_view figures) {
  const std::string reading = reading_of(figures);
  std::string hint = "put blanks between marks, and one point or comma into a number";
  return reading.empty() ? hint : fmt::format("{}: {}", hint, reading);
}

// "14/04/2026" -> "2026-04-14", when day and month cannot be mistaken for each other.
std::string date_hint(std::string_view text) {
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
  if (count == 2 && pieces[0].size() == 4 && pieces[1].size() <= 2 && pieces[2].size() <= 2 &&
      !pieces[1].empty() && !pieces[2].empty())
    return "write " + written(0, 1, 2);
  const bool year_last = count == 2 && pieces[2].size() == 4 && pieces[0].size() <= 2 &&
                         pieces[1].size() <= 2 && !pieces[0].empty() && !pieces[1].empty();
  if (!year_last) return "write year-month-day, for example 2026-04-14";
  if (two(pieces[0]) > "12") return "write " + written(2, 1, 0);
  if (two(pieces[1]) > "12" || pieces[0] == pieces[1]) return "write " + written(2, 0, 1);
  return fmt::format("write {} or {}, as you mean it", written(2, 1, 0), written(2, 0, 1));
}

Complaint complaint_of(const FailedLine& line, const Failure& failure, std::string_view piece) {
  switch (failure.mistake) {
    case Mistake::unclosed_quote:
      return {Problem::unclosed_quote, "a quotation mark that is not closed",
              "a closing one on the same line",
              fmt::format("write {}", repeat_closing(piece.data(), line.text))};
    case Mistake::empty_quote:
      return {Problem::syntax, "quotation marks with nothing between them", "a title or a code",
              example_of(line)};
    case Mistake::control_character:
      return {Problem::syntax, "a control character inside quotation marks", "text",
              "type the title again; the character came with copying"};
    case Mistake::ambiguous_number:
      return {Problem::syntax, fmt::format("\"{}\", which can be read in two ways", piece), "a number",
              ambiguous_hint(piece)};
    case Mistake::long_number:
      return {Problem::too_long,
              fmt::format("a number of {} digits",
                          std::count_if(piece.begin(), piece.end(), characters::is_digit)),
              "at most 18 digits", example_of(line)};
    case Mistake::bare_point:
      return {Problem::syntax, fmt::format("\"{}\"", piece), "digits after the point",
              "leave the point away, or write the digits after it"};
    case Mistake::no_blank_after_comma:
      return {Problem::syntax, "a comma with no blank after it", "a blank after a comma between marks",
              "put blanks between marks: 7.25 7.50, or 7,25 7,50"};
    case Mistake::wrong_date:
      return {Problem::bad_date, in_quotes(piece), "a date written year-month-day", date_hint(piece)};
    case Mistake::long_list:
      return {Problem::too_long, "a list of more than 10,000", "a list as a person would type it",
              "is this the right file?"};
    case Mistake::none:
      break;
  }
  return {Problem::syntax, found_at(piece), expected_of(failure), hint_of(line, failure, piece)};
}

// A keyword that takes no marks was misspelled, or an aspect is followed by something else than marks.
bool is_misspelled(const FailedLine& line, const Failure& failure) {
  return !line.keyword && expects(failure, "a mark") && words::nearest_keyword(line.first_word).has_value();
}

}  // namespace

Explained explain(const FailedLine& line, const Failure& failure) {
  if (is_misspelled(line, failure)) return explain_unknown(line);
  const std::string_view piece =
      failure.mistake == Mistake::none ? word_at(line.text, failure.where) : view(failure.where, failure.to);
  return {piece, complaint_of(line, failure, piece)};
}

Explained explain_unknown(const FailedLine& line) {
  const char* start = characters::skip_blanks(line.text.data(), end_of(line.text));
  const std::string_view word = word_at(line.text, start);
  const auto near = words::nearest_keyword(line.first_word);
  const char* after = characters::skip_blanks(end_of(word), end_of(line.text));
  const bool marks_follow = characters::number_end(after, end_of(line.text)) != after;
  std::string hint;
  if (near)
    hint = fmt::format("the nearest keyword is {}", words::keyword(*near).word);
  else if (marks_follow && characters::is_bare_code(word))
    hint = fmt::format("a colon stands between an aspect and its marks: {}: {}", word,
                       view(after, characters::number_end(after, end_of(line.text))));
  else
    hint = "every line starts with its keyword; a note starts with #";
  return {word,
          {Problem::unknown_keyword, found_at(word),
           "a keyword such as routine, element, parts, run or panel", hint}};
}

Explained explain_bad_byte(const FailedLine& line, const char* bad) {
  const std::string_view piece = view(bad, bad + 1);
  const unsigned char byte = static_cast<unsigned char>(*bad);
  if (byte == 0)
    return {piece, {Problem::nul_byte, "a NUL byte", "text", "save the file again as plain text in UTF-8"}};
  std::string hint = "save the file again as plain text in UTF-8";
  if (byte >= 0xA0) {
    const char latin[] = {static_cast<char>(0xC0 | (byte >> 6)), static_cast<char>(0x80 | (byte & 0x3F)),
                          '\0'};
    hint += fmt::format("; if it is Latin-1 (Windows), this character is {}", latin);
  }
  static_cast<void>(line);
  return {piece, {Problem::not_utf8, fmt::format("the byte \\x{:02X}", byte), "text in UTF-8", hint}};
}

}  // namespace landdrill
