#include "grammar/span.h"

#include <algorithm>
#include <cassert>
#include <functional>

#include "grammar/characters.h"

namespace landdrill {
namespace {

// Line endings ("\n", "\r\n", "\r") in [first, last); a "\r" before a "\n" is no ending of its own.
std::size_t line_endings(const char* first, const char* last) {
  // Blocks of fixed length, so that the compiler counts many bytes at a time.
  constexpr std::size_t block = 128;
  std::size_t count = 0;
  for (; last - first > static_cast<std::ptrdiff_t>(block); first += block) {
    unsigned char in_block = 0;
    for (std::size_t i = 0; i < block; ++i)
      in_block +=
          static_cast<unsigned char>((first[i] == '\n') | ((first[i] == '\r') & (first[i + 1] != '\n')));
    count += in_block;
  }
  for (; first != last; ++first)
    count += *first == '\n' || (*first == '\r' && (first + 1 == last || first[1] != '\n'));
  return count;
}

bool ends_line(char c) {
  return c == '\n' || c == '\r';
}

const char* line_start(const Source& source, const char* at) {
  while (at != source.text.data() && !ends_line(at[-1])) --at;
  const bool byte_order_mark = at == source.text.data() && source.text.starts_with("\xEF\xBB\xBF");
  return byte_order_mark ? at + 3 : at;
}

bool is_inside(const Source& source, std::string_view piece) {
  const std::less_equal<const char*> ordered;
  return ordered(source.text.data(), piece.data()) &&
         ordered(piece.data() + piece.size(), source.text.data() + source.text.size());
}

}  // namespace

Position position_of(const Source& source, std::string_view piece) {
  assert(is_inside(source, piece));
  const char* start = line_start(source, piece.data());
  Position position{source.first_line + line_endings(source.text.data(), start), 1};
  for (const char* at = start; at < piece.data(); at += characters::character_length(at, piece.data()))
    ++position.column;
  return position;
}

std::string_view line_around(const Source& source, std::string_view piece) {
  assert(is_inside(source, piece));
  const char* start = line_start(source, piece.data());
  const char* last = source.text.data() + source.text.size();
  const char* end = start;
  while (end != last && !ends_line(*end)) ++end;
  return {start, static_cast<std::size_t>(end - start)};
}

std::string_view Spellings::add(std::string_view spelling, std::string_view typed) {
  if (spelling == typed) return typed;
  return all_.emplace_back(Spelled{std::string(spelling), typed}).spelling;
}

std::string_view Spellings::typed(std::string_view piece) const {
  const auto at = std::find_if(all_.begin(), all_.end(), [&](const Spelled& one) {
    return is_inside({{}, one.spelling}, piece);
  });
  return at == all_.end() ? piece : at->typed;
}

const Source& Sources::of(std::string_view piece) const {
  const auto at =
      std::find_if(all_.begin(), all_.end(), [&](const Source* source) { return is_inside(*source, piece); });
  assert(at != all_.end());
  return **at;
}

}  // namespace landdrill
