#include "tests/bench/hand_scan.h"

#include <cstring>

#include "grammar/characters.h"

namespace landdrill::bench {
namespace {

constexpr std::ptrdiff_t most_figures = 18;

bool looks_like_number(std::string_view text) {
  if (text.empty()) return false;
  if (text[0] == '-' || text[0] == '+') text.remove_prefix(1);
  return !text.empty() && is_figure(text[0]);
}

bool looks_like_times(std::string_view text) {
  if (text.size() < 2 || (text[0] != 'x' && text[0] != 'X')) return false;
  for (const char c : text.substr(1))
    if (!is_figure(c)) return false;
  return true;
}

bool has_too_many_figures(const char* first, const char* end) {
  if (end - first <= most_figures) return false;
  std::ptrdiff_t count = 0;
  for (; first != end; ++first) count += is_figure(*first);
  return count > most_figures;
}

bool is_good_title(std::string_view text) {
  bool blank = true;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if ((byte < 0x20 && c != '\t') || byte == 0x7F) return false;
    blank = blank && class_of(c) == space;
  }
  return !blank && !characters::without_blanks(text).empty();
}

}  // namespace

void Scan::wide_blanks() {
  at = characters::skip_wide_blanks(at, last_);
}

std::string_view Scan::foreign_code(const char* first) {
  at = characters::code_end(first, last_);
  return {first, static_cast<std::size_t>(at - first)};
}

// ---- codes and titles ----

bool Scan::quoted(ast::Name& name) {
  if (at == last_) return false;
  if (*at != '"' && class_of(*at) != foreign) return false;
  const characters::Quotes* pair = characters::quotes_at(at, last_);
  if (pair == nullptr) return false;
  const char* inner = at + pair->opening.size();
  const std::string_view after(inner, static_cast<std::size_t>(last_ - inner));
  const characters::Closing closing = characters::closing_of(*pair, after);
  if (closing.length == 0) return false;
  const std::string_view text = after.substr(0, closing.at);
  if (!is_good_title(text)) return false;
  name = {pair->trimmed ? characters::without_blanks(text) : text, true};
  at = inner + closing.at + closing.length;
  return true;
}

bool Scan::title(ast::Name& name) {
  blanks();
  return quoted(name);
}

bool Scan::code(ast::Name& name) {
  blanks();
  const std::string_view text = bare();
  if (text.empty()) return quoted(name);
  name = {text, false};
  return true;
}

bool Scan::code_but_number(ast::Name& name) {
  return code(name) && (name.quoted || !looks_like_number(name.text));
}

bool Scan::code_but_none(ast::Name& name) {
  return code(name) && (name.quoted || !spells(name.text, "none"));
}

bool Scan::fault_code(ast::Name& name) {
  return code_but_number(name) &&
         (name.quoted || (!spells(name.text, "lost") && !spells(name.text, "clean")));
}

bool Scan::size_code(ast::Name& name) {
  return code(name) && (name.quoted || !looks_like_times(name.text));
}

bool Scan::word(std::string_view wanted) {
  blanks();
  const char* first = at;
  if (spells(bare(), wanted)) return true;
  at = first;
  return false;
}

// ---- numbers ----

const char* Scan::end_of_number() const {
  const char* end = at;
  if (end != last_ && (*end == '-' || *end == '+')) ++end;
  const char* figures = end;
  while (end != last_ && is_figure(*end)) ++end;
  if (end == figures) return at;
  if (goes_on(end))
    for (++end; end != last_ && is_figure(*end);) ++end;
  return end;
}

bool Scan::number(ast::Number& number) {
  blanks();
  const char* end = end_of_number();
  if (end == at || goes_on(end) || (end != last_ && *end == '.') || has_too_many_figures(at, end))
    return false;
  number.text = {at, static_cast<std::size_t>(end - at)};
  at = end;
  return true;
}

bool Scan::whole(ast::Number& number) {
  blanks();
  const char* first = at;
  const char* end = first;
  while (end != last_ && is_figure(*end)) ++end;
  if (end == first || end - first > most_figures || goes_on(end)) return false;
  at = end;
  if (!bare().empty()) return false;
  number.text = {first, static_cast<std::size_t>(end - first)};
  return true;
}

bool Scan::times(std::optional<ast::Number>& times) {
  blanks();
  if (at == last_) return true;
  const char* first = at;
  if (*at == 'x' || *at == 'X') {
    ++at;
  } else if (class_of(*at) == foreign) {
    at = characters::times_sign_end(at, last_);
  }
  if (at == first) return true;
  return whole(times.emplace());
}

const char* Scan::end_of_missing() const {
  if (at == last_ || (*at != '-' && class_of(*at) != foreign)) return at;
  return characters::missing_end(at, last_);
}

bool Scan::mark(ast::JudgeMark& mark) {
  blanks();
  const char* end = end_of_missing();
  if (end == at) return number(mark.emplace());
  mark.reset();
  at = end;
  return true;
}

bool Scan::starts_mark() {
  blanks();
  return end_of_number() != at || end_of_missing() != at;
}

bool Scan::between_marks() {
  const char* first = at;
  blanks();
  if (at == last_ || *at == '#') return false;
  if (*at != ',' && *at != ';') return at != first;
  const char* separator = at++;
  const char* after = at;
  if (*separator == ';') return true;
  if (at == last_ || *at == '#') return true;
  blanks();
  const bool blank_follows = at != after;
  at = blank_follows ? after : separator;
  return blank_follows;
}

bool Scan::date(ast::Date& date) {
  blanks();
  const std::string_view text = bare();
  if (text.size() != 10) return false;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (i == 4 || i == 7 ? text[i] != '-' : !is_figure(text[i])) return false;
  date.text = text;
  return true;
}

}  // namespace landdrill::bench
