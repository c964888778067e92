#include "grammar/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdint>

#include "grammar/characters.h"

namespace landdrill::words {
namespace {

constexpr Keyword keyword_list[] = {
#define KEYWORD(word, shape, colon, expected, second, help, example) \
  {#word, Shape::shape, Colon::colon, expected, second, help, example},
#include "grammar/word_list.inc"
#undef KEYWORD
};

constexpr std::size_t longest = 64;

// First letter, last letter and length tell all keywords apart, so that one switch finds a keyword; the
// compiler would complain of two equal cases.
constexpr std::uint32_t fold(std::string_view text) {
  if (text.empty()) return 0;
  const auto byte = [](char c) { return static_cast<std::uint32_t>(static_cast<unsigned char>(lower(c))); };
  return byte(text.front()) | byte(text.back()) << 8 | static_cast<std::uint32_t>(text.size() & 0xFFFF) << 16;
}

// Edit distance where two swapped neighbours count once; any answer above `limit` means "further than that".
std::size_t distance(std::string_view a, std::string_view b, std::size_t limit) {
  using Row = std::array<std::size_t, longest + 1>;
  Row before_last{}, last{}, row{};
  for (std::size_t j = 0; j <= b.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    std::size_t best = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const bool equal = lower(a[i - 1]) == lower(b[j - 1]);
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (equal ? 0 : 1)});
      const bool swapped =
          i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1]);
      if (swapped) row[j] = std::min(row[j], before_last[j - 2] + 1);
      best = std::min(best, row[j]);
    }
    if (best > limit) return limit + 1;
    before_last = last;
    last = row;
  }
  return last[b.size()];
}

}  // namespace

std::span<const Keyword> keywords() {
  return keyword_list;
}

const Keyword& keyword(Word word) {
  return keyword_list[static_cast<std::size_t>(word)];
}

std::optional<Word> find(std::string_view text) {
  const auto if_same = [&](Word word) -> std::optional<Word> {
    const std::string_view known = keyword(word).word;
    if (text == known || same(text, known)) return word;  // nearly always typed as it is listed
    return std::nullopt;
  };
  switch (fold(text)) {
#define KEYWORD(word, ...) \
  case fold(#word):        \
    return if_same(Word::word);
#include "grammar/word_list.inc"
#undef KEYWORD
  }
  return std::nullopt;
}

bool may_be_an_aspect(Word word) {
  const Colon colon = keyword(word).colon;
  return colon == Colon::unless_marks || colon == Colon::aspect;
}

std::vector<std::string_view> nearest(std::string_view word, std::span<const std::string_view> known,
                                      std::size_t most) {
  struct Candidate {
    std::size_t distance;
    std::string_view word;
  };
  std::vector<Candidate> candidates;
  if (word.empty() || word.size() > longest) return {};
  for (std::string_view candidate : known) {
    if (candidate.size() > longest) continue;
    const auto [shorter, longer] = std::minmax({word.size(), candidate.size()});
    const std::size_t limit = longer / 3;
    if (longer - shorter > limit) continue;
    const std::size_t apart = distance(word, candidate, limit);
    if (apart <= limit) candidates.push_back({apart, candidate});
  }
  std::stable_sort(candidates.begin(), candidates.end(),
                   [](const Candidate& a, const Candidate& b) { return a.distance < b.distance; });
  std::vector<std::string_view> result;
  for (const Candidate& candidate : candidates) {
    if (result.size() == most) break;
    result.push_back(candidate.word);
  }
  return result;
}

std::optional<Word> nearest_keyword(std::string_view word) {
  std::vector<std::string_view> list;
  for (const Keyword& each : keywords()) list.push_back(each.word);
  const auto found = nearest(word, list, 1);
  return found.empty() ? std::nullopt : find(found.front());
}

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& letter : result) letter = lower(letter);
  return result;
}

std::string alternatives(std::span<const std::string_view> words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i)
    text.append(i == 0 ? "" : i + 1 == words.size() ? " or " : ", ").append(words[i]);
  return text;
}

Hint nearest_hint(std::string_view word, std::span<const std::string_view> known) {
  const auto found = nearest(word, known);
  if (found.empty()) return {};
  if (found.size() > 1) return fmt::format("the nearest are {}", fmt::join(found, ", "));
  const bool stands_alone = characters::is_bare_code(found.front());
  return {fmt::format("the nearest is {}", found.front()), std::string(stands_alone ? found.front() : "")};
}

}  // namespace landdrill::words
