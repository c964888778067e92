#include "grammar/diagnostics.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <string_view>
#include <unordered_map>

#include "grammar/characters.h"

namespace landdrill {
namespace {

constexpr std::size_t longest_excerpt = 160;

std::size_t count_characters(std::string_view text) {
  std::size_t count = 0;
  const char* last = text.data() + text.size();
  for (const char* at = text.data(); at < last; at += characters::character_length(at, last)) ++count;
  return count;
}

// The 400 bytes of a long line that hold the piece, cut between characters.
struct Excerpt {
  std::string_view text;
  std::size_t offset;
};
Excerpt excerpt(std::string_view line, std::size_t piece_at) {
  const auto inside = [&](std::size_t at) {
    return at < line.size() && (static_cast<unsigned char>(line[at]) & 0xC0) == 0x80;
  };
  constexpr std::size_t before = longest_excerpt / 2;
  std::size_t start = line.size() <= longest_excerpt || piece_at <= before ? 0 : piece_at - before;
  for (int i = 0; i < 3 && inside(start); ++i) ++start;
  std::size_t end = std::min(line.size(), start + longest_excerpt - 3);
  if (line.size() - start <= longest_excerpt) end = line.size();
  for (int i = 0; i < 3 && inside(end); ++i) --end;
  return {line.substr(start, end - start), start};
}

// One character as it is shown on a terminal: bytes that could change the terminal are spelled out.
std::string shown(std::string_view character) {
  const bool bad = character.size() == 1 && static_cast<unsigned char>(character[0]) >= 0x80;
  if (character == "\t" || (!bad && !characters::is_control(character))) return std::string(character);
  std::string bytes;
  for (char byte : character) bytes += fmt::format("\\x{:02X}", static_cast<unsigned char>(byte));
  return bytes;
}

std::string shown_all(std::string_view text) {
  std::string all;
  const char* last = text.data() + text.size();
  for (const char* at = text.data(); at < last;) {
    const std::size_t length = characters::character_length(at, last);
    all += shown({at, length});
    at += length;
  }
  return all;
}

// The line and, below it, the caret: tabs under tabs, so that both are indented alike.
struct Picture {
  std::string line;
  std::string caret;
};
Picture picture(const Diagnostic& diagnostic) {
  const std::size_t column = diagnostic.at.column > 0 ? diagnostic.at.column - 1 : 0;
  const std::size_t skip = column > diagnostic.cut ? column - diagnostic.cut : 0;
  Picture result{diagnostic.cut > 0 ? "..." : "", diagnostic.cut > 0 ? "   " : ""};
  std::size_t index = 0;
  const char* last = diagnostic.line.data() + diagnostic.line.size();
  for (const char* at = diagnostic.line.data(); at < last; ++index) {
    const std::size_t length = characters::character_length(at, last);
    const std::string text = shown({at, length});
    const std::size_t width = count_characters(text);
    if (index < skip)
      result.caret += text == "\t" ? "\t" : std::string(width, ' ');
    else if (index == skip)
      result.caret += '^' + std::string(width - 1, '~');
    else if (index < skip + diagnostic.length)
      result.caret += std::string(width, '~');
    result.line += text;
    at += length;
  }
  if (index <= skip) result.caret += '^';
  return result;
}

std::string place_of(const Diagnostic& diagnostic) {
  if (diagnostic.at.line == 0) return shown_all(diagnostic.file);
  return fmt::format("{}:{}:{}", shown_all(diagnostic.file), diagnostic.at.line, diagnostic.at.column);
}

}  // namespace

Diagnostic diagnostic_at(const Source& source, std::string_view piece, Complaint complaint) {
  const std::string_view line = line_around(source, piece);
  const std::size_t piece_at = static_cast<std::size_t>(std::max(piece.data(), line.data()) - line.data());
  const Excerpt part = excerpt(line, piece_at);
  const std::string_view underlined = line.substr(std::min(piece_at, line.size()), piece.size());
  std::string fix = std::move(complaint.hint.instead);
  Diagnostic diagnostic = diagnostic_about(source.name, std::move(complaint));
  diagnostic.at = position_of(source, piece);
  diagnostic.line = part.text;
  if (part.offset + part.text.size() < line.size()) diagnostic.line += "...";
  diagnostic.cut = count_characters(line.substr(0, part.offset));
  diagnostic.length = std::max<std::size_t>(1, count_characters(underlined));
  if (!underlined.empty()) diagnostic.fix = std::move(fix);
  return diagnostic;
}

Diagnostic diagnostic_at(const Sources& sources, std::string_view piece, Complaint complaint) {
  const std::string_view typed = sources.typed(piece);
  return diagnostic_at(sources.of(typed), typed, std::move(complaint));
}

Diagnostic diagnostic_about(std::string_view file, Complaint complaint) {
  return {.problem = complaint.problem,
          .file = std::string(file),
          .at = {},
          .line = {},
          .found = std::move(complaint.found),
          .expected = std::move(complaint.expected),
          .hint = std::move(complaint.hint.words)};
}

std::string to_string(const Diagnostic& diagnostic) {
  std::string text = fmt::format("{}: {}: found {}", place_of(diagnostic), severity_word(diagnostic.problem),
                                 shown_all(diagnostic.found));
  if (!diagnostic.expected.empty()) text += "; expected " + shown_all(diagnostic.expected);
  text += fmt::format(" [{}]\n", code_of(diagnostic.problem));
  if (diagnostic.at.line > 0) {
    const Picture seen = picture(diagnostic);
    text += fmt::format("  {}\n  {}\n", seen.line, seen.caret);
  }
  if (!diagnostic.hint.empty()) text += "  hint: " + shown_all(diagnostic.hint) + "\n";
  return text;
}

void Diagnostics::add(Diagnostic diagnostic) {
  count_only(severity_of(diagnostic.problem));
  if (wants_more()) list_.push_back(std::move(diagnostic));
}

void Diagnostics::count_only(Severity severity) {
  ++counts_[static_cast<std::size_t>(severity)];
}

void Diagnostics::append(Diagnostics other) {
  for (std::size_t i = 0; i < counts_.size(); ++i) counts_[i] += other.counts_[i];
  const std::size_t room = std::min(most - list_.size(), other.list_.size());
  std::move(other.list_.begin(), other.list_.begin() + static_cast<std::ptrdiff_t>(room),
            std::back_inserter(list_));
}

void Diagnostics::sort() {
  std::unordered_map<std::string, std::size_t> order;
  for (const Diagnostic& each : list_) order.try_emplace(each.file, order.size());
  std::stable_sort(list_.begin(), list_.end(), [&](const Diagnostic& a, const Diagnostic& b) {
    if (a.file != b.file) return order.at(a.file) < order.at(b.file);
    return a.at.line != b.at.line ? a.at.line < b.at.line : a.at.column < b.at.column;
  });
}

std::string to_string(const Diagnostics& diagnostics) {
  std::string text;
  for (const Diagnostic& each : diagnostics.list()) text += to_string(each);
  const std::size_t more = diagnostics.all() - diagnostics.list().size();
  if (more > 0) text += fmt::format("and {} more {}\n", more, more == 1 ? "message" : "messages");
  return text;
}

}  // namespace landdrill
