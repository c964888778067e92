// Text -> lines: splits, dispatches on the first word, and goes on after every mistake.
#include <algorithm>
#include <cstring>

#include "grammar/ast.h"
#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/explain.h"
#include "grammar/failure.h"
#include "grammar/leaves.h"
#include "grammar/parse.h"
#include "grammar/problem_code.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

using words::Word;
using Iterator = const char*;

constexpr std::size_t longest_line = 64 * 1024;
constexpr std::size_t most_lines = 2'000'000;

bool colon_follows(Iterator at, Iterator last) {
  at = characters::skip_blanks(at, last);
  return at != last && *at == ':';
}

// `difficulty:` is decided in the blocks.
bool is_aspect_line(std::optional<Word> word, Iterator at, Iterator last) {
  if (word && !words::may_be_an_aspect(*word)) return false;
  if (!colon_follows(at, last)) return false;
  if (!word || words::keyword(*word).colon == words::Colon::aspect) return true;
  const Iterator colon = characters::skip_blanks(at, last);
  return leaves::starts_marks(characters::skip_blanks(colon + 1, last), last);
}

ast::Opens opens(std::optional<Word> word) {
  if (!word) return ast::Opens::unknown;
  switch (*word) {
    case Word::routine:
      return ast::Opens::routine;
    case Word::element:
      return ast::Opens::element;
    case Word::option:
      return ast::Opens::option;
    case Word::passage:
      return ast::Opens::passage;
    case Word::run:
      return ast::Opens::run;
    case Word::panel:
      return ast::Opens::panel;
    default:
      return ast::Opens::nothing;
  }
}

class Reader {
 public:
  Reader(const Source& source, const std::function<void(ast::Line&)>& take, Diagnostics& diagnostics)
      : source_(source), take_(take), diagnostics_(diagnostics) {}

  void read_all() {
    std::string_view text = source_.text;
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) return complain_of_utf16();
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    at_ = text.data();
    last_ = at_ + text.size();
    for (std::size_t count = 0; at_ != last_; ++count) {
      if (count == most_lines)
        return complain_of_length(view(at_, at_), "a file of more than 2,000,000 lines");
      read_line(next_line());
    }
  }

 private:
  // The first `wanted` from `at` on, or the end. Both line endings are looked for through the whole text, not
  // line by line.
  Iterator find(char wanted, Iterator at) const {
    const void* found = std::memchr(at, wanted, static_cast<std::size_t>(last_ - at));
    return found != nullptr ? static_cast<Iterator>(found) : last_;
  }

  std::string_view next_line() {
    if (newline_ == nullptr || newline_ < at_) newline_ = find('\n', at_);
    if (return_ == nullptr || return_ < at_) return_ = find('\r', at_);
    const Iterator end = std::min(newline_, return_);
    const std::string_view line = view(at_, end);
    at_ = end;
    if (at_ != last_ && *at_ == '\r') ++at_;
    if (at_ != last_ && *at_ == '\n') ++at_;
    return line;
  }

  // The first bad byte of the line, or its end.
  Iterator bad_byte_in(std::string_view line) {
    if (bad_byte_ == nullptr || bad_byte_ < line.data())
      bad_byte_ = characters::first_bad_byte(line.data(), last_);
    return std::min(bad_byte_, line.data() + line.size());
  }

  void read_line(std::string_view text) {
    const Iterator last = text.data() + text.size();
    const Iterator start = characters::skip_blanks(text.data(), last);
    if (text.size() > longest_line) return bad_line_too_long(text);
    if (start == last) return add_empty_line(text);
    if (const Iterator bad = bad_byte_in(text); bad != last)
      return bad_line(text, start, [&](const FailedLine&) { return explain_bad_byte(bad); });
    if (*start == '#') return add_comment(text, start);
    read_statement(text, start);
  }

  void hand_over(std::string_view text, std::string_view comment = {}) {
    line_.text = text;
    line_.comment = comment;
    const auto* bad = std::get_if<ast::BadLine>(&line_.statement);
    list_goes_on_ = bad != nullptr && without_trailing_blanks(text).ends_with(',');
    take_(line_);
  }

  void add_empty_line(std::string_view text) {
    line_.statement.emplace<ast::EmptyLine>();
    hand_over(text);
  }

  void add_comment(std::string_view text, Iterator start) {
    line_.statement.emplace<ast::EmptyLine>();
    hand_over(text, without_trailing_blanks(view(start, text.data() + text.size())));
  }

  void read_statement(std::string_view text, Iterator start) {
    const Iterator last = text.data() + text.size();
    const Iterator word_end = characters::code_end(start, last);
    const std::optional<Word> word = words::find(view(start, word_end));
    const bool is_aspect = is_aspect_line(word, word_end, last);
    LineRest reading{word && !is_aspect ? word_end : start, last};
    const bool quoted = characters::quotes_at(start, last) != nullptr;
    if (!word && !is_aspect && !quoted) return unknown_line(text, start);
    if (word && !is_aspect ? read_keyword(*word, reading, line_.statement)
                           : read_aspect(reading, line_.statement)) {
      const Iterator comment = characters::skip_blanks(reading.at, last);
      return hand_over(text, without_trailing_blanks(view(comment, last)));
    }
    bad_line(text, start, [&](const FailedLine& failed) { return explain(failed, reading.failure); });
  }

  void unknown_line(std::string_view text, Iterator start) {
    // The line above was in error for the comma at its end: this one is the rest of its list, and no second
    // mistake.
    if (list_goes_on_) return add_bad_line(text, ast::Opens::nothing);
    bad_line(text, start, [](const FailedLine& failed) { return explain_unknown(failed); });
  }

  void add_bad_line(std::string_view text, ast::Opens opens) {
    line_.statement.emplace<ast::BadLine>(ast::BadLine{text, opens});
    hand_over(text);
  }

  // Keeps the line as typed and complains of it; once the list is full, only counts.
  template <class Explain>
  void bad_line(std::string_view text, Iterator start, Explain explain_it) {
    if (!diagnostics_.wants_more()) {
      diagnostics_.count_only(Severity::error);
      return add_bad_line(text, ast::Opens::unknown);
    }
    const Iterator last = text.data() + text.size();
    const std::string_view word = view(start, characters::code_end(start, last));
    const FailedLine failed{text, word, words::find(word)};
    const Explained explained = explain_it(failed);
    diagnostics_.add(diagnostic_at(source_, explained.piece, explained.complaint));
    add_bad_line(text, opens(failed.keyword ? failed.keyword : words::nearest_keyword(word)));
  }

  void bad_line_too_long(std::string_view text) {
    add_bad_line(text, ast::Opens::unknown);
    complain_of_length(text.substr(0, 1), "a line of more than 65,536 bytes");
  }

  void complain_of_length(std::string_view piece, const char* found) {
    diagnostics_.complain(
        source_, piece,
        {Problem::too_long, found, "a sheet as a person would type it", "is this the right file?"});
  }

  void complain_of_utf16() {
    diagnostics_.add(diagnostic_about(source_.name, {Problem::not_utf8, "text in UTF-16", "text in UTF-8",
                                                     "save the file again as plain text in UTF-8"}));
  }

  const Source& source_;
  const std::function<void(ast::Line&)>& take_;
  Diagnostics& diagnostics_;
  Iterator at_ = nullptr;
  Iterator last_ = nullptr;
  Iterator newline_ = nullptr, return_ = nullptr, bad_byte_ = nullptr;  // the next ones, once looked for
  ast::Line line_;
  bool list_goes_on_ = false;  // the line before was in error, and ends in a comma
};

bool says_nothing(const ast::Line& line) {
  return line.comment.empty() && std::holds_alternative<ast::EmptyLine>(line.statement);
}

}  // namespace

Parsed parse(const Source& source) {
  Parsed parsed;
  ast::Lines& lines = parsed.lines;
  const auto keep = [&](ast::Line& line) {
    if (!says_nothing(line) || (!lines.empty() && !says_nothing(lines.back())))
      lines.push_back(std::move(line));
  };
  parse(source, keep, parsed.diagnostics);
  if (!lines.empty() && says_nothing(lines.back())) lines.pop_back();
  return parsed;
}

void parse(const Source& source, const std::function<void(ast::Line&)>& take, Diagnostics& diagnostics) {
  Reader(source, take, diagnostics).read_all();
}

}  // namespace landdrill
