#include "grammar/explain.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "grammar/characters.h"
#include "grammar/failure.h"
#include "grammar/problems.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

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

Complaint complaint_of(const FailedLine& line, const Failure& failure, std::string_view piece) {
  switch (failure.mistake) {
    case Mistake::unclosed_quote:
      return {Problem::unclosed_quote, "a quotation mark that is not closed",
              "a closing one on the same line", close_hint(line, piece)};
    case Mistake::empty_quote:
      return {Problem::syntax, "quotation marks with nothing between them",
              has_title(line) ? "a title" : "a title or a code", example_hint(line)};
    case Mistake::control_character:
      return {Problem::syntax, "a control character inside quotation marks", "text",
              "type the title again; the character came with copying"};
    case Mistake::ambiguous_number:
      return {Problem::syntax, fmt::format("\"{}\", which can be read in two ways", piece), "a number",
              ambiguous_hint(line, piece)};
    case Mistake::long_number:
      return {Problem::too_long,
              fmt::format("a number of {} digits",
                          std::count_if(piece.begin(), piece.end(), characters::is_digit)),
              "at most 18 digits", example_hint(line)};
    case Mistake::bare_point:
      return {Problem::syntax, fmt::format("\"{}\"", piece), "digits after the point",
              "leave the point away, or write the digits after it"};
    case Mistake::no_blank_after_comma:
      return {Problem::syntax, "a comma with no blank after it", "a blank after a comma between marks",
              "put blanks between marks: 7.25 7.50, or 7,25 7,50"};
    case Mistake::wrong_date:
      return {Problem::bad_date, in_quotes(piece), "a date written year-month-day", date_hint(piece)};
    case Mistake::long_list:
      return {Problem::too_long, "a list of more than 10,000 items", "a list as a person would type it",
              "is this the right file?"};
    case Mistake::none:
      break;
  }
  return {Problem::syntax, found_at(piece), words::alternatives({failure.expected.data(), failure.count}),
          hint_of(line, failure, piece)};
}

// No keyword, and no marks either: a misspelled keyword, or a title that lost its keyword.
bool is_no_aspect(const FailedLine& line, const Failure& failure) {
  if (line.keyword) return false;
  if (expects(failure, expected::colon)) return true;
  return expects(failure, expected::mark) && words::nearest_keyword(line.first_word).has_value();
}

}  // namespace

Explained explain(const FailedLine& line, const Failure& failure) {
  if (is_no_aspect(line, failure)) return explain_unknown(line);
  const std::string_view piece =
      failure.mistake == Mistake::none ? word_at(line.text, failure.where) : view(failure.where, failure.to);
  return {piece, complaint_of(line, failure, piece)};
}

Explained explain_unknown(const FailedLine& line) {
  const std::string_view word =
      word_at(line.text, characters::skip_blanks(line.text.data(), end_of(line.text)));
  return {word,
          {Problem::unknown_keyword, found_at(word),
           "a keyword such as routine, element, parts, run or panel", unknown_hint(line, word)}};
}

Explained explain_bad_byte(const char* bad) {
  const std::string_view piece = view(bad, bad + 1);
  const unsigned char byte = static_cast<unsigned char>(*bad);
  if (byte == 0)
    return {piece, {Problem::nul_byte, "a NUL byte", "text", "save the file again as plain text in UTF-8"}};
  std::string hint = "save the file again as plain text in UTF-8";
  if (byte < 0xA0) hint += "; it looks like a text from Windows, with typographic signs";
  if (byte >= 0xA0) {
    const char latin[] = {static_cast<char>(0xC0 | (byte >> 6)), static_cast<char>(0x80 | (byte & 0x3F)),
                          '\0'};
    hint += fmt::format("; if it is Latin-1 (Windows), this character is {}", latin);
  }
  return {piece, {Problem::not_utf8, fmt::format("the byte \\x{:02X}", byte), "text in UTF-8", hint}};
}

}  // namespace landdrill
