#include "tests/bench/hand_parser.h"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <optional>

#include "grammar/characters.h"
#include "grammar/words.h"
#include "tests/bench/hand_scan.h"

namespace landdrill::bench {
namespace {

using namespace ast;
using words::Shape;
using words::Word;

constexpr std::size_t longest_line = 64 * 1024;
constexpr std::size_t most_lines = 2'000'000;
constexpr std::size_t most_items = 10'000;

void optional_colon(Scan& scan) {
  scan.sign(':');
}

// One item after the other, with a comma between; then the end of the line.
template <class List, class Read>
bool list(Scan& scan, List& items, Read read) {
  do {
    if (!read(items.emplace_back())) return false;
  } while (scan.sign(','));
  return scan.end() && items.size() <= most_items;
}

bool marks(Scan& scan, JudgeMarks& marks) {
  do {
    if (!scan.mark(marks.emplace_back())) return false;
  } while (scan.between_marks());
  return scan.end();
}

bool optional_title(Scan& scan, std::optional<Name>& title) {
  if (scan.end()) return true;
  return scan.title(title.emplace()) && scan.end();
}

bool dated(Scan& scan, Date& date, std::optional<Name>& title) {
  return scan.date(date) && optional_title(scan, title);
}

bool one_fault(Scan& scan, Fault& fault) {
  if (scan.word("lost")) return scan.code(fault.lost_part.emplace());
  return scan.fault_code(fault.fault) && scan.size_code(fault.size) && scan.times(fault.times);
}

template <class Faults>
bool faults(Scan& scan, Faults& faults) {
  const Scan start = scan;
  if (scan.word("clean")) return scan.end();
  scan = start;
  return list(scan, faults, [&](Fault& fault) { return one_fault(scan, fault); });
}

bool element_of_run_or_panel(Scan& scan, Number number, bool base, Statement& statement) {
  if (!scan.starts_mark()) {
    auto& line = statement.emplace<FaultsLine>();
    line.element = number;
    line.base = base;
    return faults(scan, line.faults);
  }
  auto& line = statement.emplace<ElementMarksLine>();
  line.element = number;
  line.base = base;
  return marks(scan, line.marks) && line.marks.size() <= most_items;
}

bool element(Scan& scan, Statement& statement) {
  Number number;
  if (!scan.whole(number)) return false;
  const Scan kind = scan;
  const bool base = scan.word("base");
  if (scan.sign(':')) return element_of_run_or_panel(scan, number, base, statement);
  scan = kind;
  auto& line = statement.emplace<ElementLine>();
  line.number = number;
  return scan.code_but_number(line.kind) && optional_title(scan, line.title);
}

bool counted(Scan& scan, CountedList& items) {
  const Scan start = scan;
  if (scan.word("none")) return scan.end();
  scan = start;
  return list(scan, items,
              [&](Counted& item) { return scan.code_but_none(item.code) && scan.times(item.times); });
}

bool parts(Scan& scan, CountedList& items) {
  return list(scan, items, [&](Counted& item) { return scan.code(item.code) && scan.times(item.times); });
}

bool counts(Scan& scan, Counts& items) {
  return list(scan, items,
              [&](Count& item) { return scan.number(item.counts) && scan.code_but_number(item.where); });
}

bool named_numbers(Scan& scan, NamedNumbers& items, bool percent) {
  return list(scan, items, [&](NamedNumber& item) {
    if (!scan.code_but_number(item.name)) return false;
    optional_colon(scan);
    return scan.number(item.number) && (!percent || scan.sign('%'));
  });
}

bool bound(Scan& scan, std::string_view word, std::optional<Number>& number) {
  return !scan.word(word) || scan.number(number.emplace());
}

bool limit(Scan& scan, LimitLine& line) {
  if (!scan.code(line.name)) return false;
  if (!line.name.quoted && (spells(line.name.text, "least") || spells(line.name.text, "most"))) return false;
  return bound(scan, "least", line.least) && bound(scan, "most", line.most) && (line.least || line.most) &&
         scan.end();
}

bool aspect(Scan& scan, Statement& statement) {
  auto& line = statement.emplace<AspectMarksLine>();
  return scan.code(line.aspect) && scan.sign(':') && marks(scan, line.marks);
}

std::optional<Word> keyword(std::string_view word) {
  const auto is = [&](std::string_view wanted, Word key) {
    return spells(word, wanted) ? std::optional(key) : std::nullopt;
  };
  switch (word.size() < 3 ? 0 : (word[0] | 0x20)) {
    case 'c':
      return is("counts", Word::counts);
    case 'd':
      return word.size() == 3 ? is("day", Word::day) : is("difficulty", Word::difficulty);
    case 'e':
      switch (word[1] | 0x20) {
        case 'l':
          return is("element", Word::element);
        case 'x':
          return is("expect", Word::expect);
        case 'r':
          return is("errors", Word::errors);
        default:
          return is("event", Word::event);
      }
    case 'i':
      return is("impression", Word::impression);
    case 'l':
      return is("limit", Word::limit);
    case 'o':
      return word.size() == 6 ? is("option", Word::option) : is("optional", Word::optional);
    case 'p':
      switch (word[2] | 0x20) {
        case 'r':
          return is("parts", Word::parts);
        case 's':
          return is("passage", Word::passage);
        case 'n':
          return (word[1] | 0x20) == 'a' ? is("panel", Word::panel) : is("penalty", Word::penalty);
        default:
          return std::nullopt;
      }
    case 'r':
      switch (word[1] | 0x20) {
        case 'o':
          return is("routine", Word::routine);
        case 'u':
          return is("run", Word::run);
        case 'i':
          return is("risk", Word::risk);
        default:
          return is("result", Word::result);
      }
    case 's':
      switch (word[1] | 0x20) {
        case 'l':
          return is("slip", Word::slip);
        case 'w':
          return is("swimmers", Word::swimmers);
        case 'p':
          return is("spread", Word::spread);
        case 't':
          return is("stays", Word::stays);
        default:
          return is("sync", Word::sync);
      }
    case 't':
      return is("tempo", Word::tempo);
    case 'v':
      return is("values", Word::values);
    default:
      return std::nullopt;
  }
}

template <class Kind>
Kind& start(Statement& statement, Word word) {
  Kind& kind = statement.emplace<Kind>();
  kind.word = word;
  return kind;
}

bool statement_of(Word word, Scan& scan, Statement& statement) {
  const words::Keyword& keyword = words::keyword(word);
  if (keyword.colon != words::Colon::aspect) optional_colon(scan);
  switch (keyword.shape) {
    case Shape::title:
      return scan.title(start<TitleLine>(statement, word).title) && scan.end();
    case Shape::code:
      return scan.code(start<CodeLine>(statement, word).code) && scan.end();
    case Shape::number:
      return scan.number(start<NumberLine>(statement, word).number) && scan.end();
    case Shape::percent:
      return scan.number(start<NumberLine>(statement, word).number) && scan.sign('%') && scan.end();
    case Shape::alone:
      return start<WordLine>(statement, word), scan.end();
    case Shape::dated: {
      auto& line = start<DatedLine>(statement, word);
      return dated(scan, line.date, line.title);
    }
    case Shape::counted:
      return parts(scan, start<CountedLine>(statement, word).items);
    case Shape::counted_or_none:
      return counted(scan, start<CountedLine>(statement, word).items);
    case Shape::counts:
      return counts(scan, start<CountsLine>(statement, word).counts);
    case Shape::numbers:
    case Shape::percents:
      return named_numbers(scan, start<NamedNumbersLine>(statement, word).numbers,
                           keyword.shape == Shape::percents);
    case Shape::element:
      return element(scan, statement);
    case Shape::limit:
      return limit(scan, statement.emplace<LimitLine>());
  }
  return false;
}

std::string_view without_trailing_blanks(std::string_view text) {
  while (!text.empty() && class_of(text.back()) == space) text.remove_suffix(1);
  return text;
}

// Plain: neither NUL nor beyond ASCII, eight bytes at a time.
bool is_plain(std::string_view text) {
  constexpr std::uint64_t ones = 0x0101010101010101, highs = 0x8080808080808080;
  std::uint64_t seen = 0, eight = 0;
  std::size_t i = 0;
  for (; i + 8 <= text.size(); i += 8) {
    std::memcpy(&eight, text.data() + i, 8);
    seen |= eight | (eight - ones);
  }
  if (i < text.size()) {
    eight = ones;
    std::memcpy(&eight, text.data() + i, text.size() - i);
    seen |= eight | (eight - ones);
  }
  return (seen & highs) == 0;
}

bool is_sound(std::string_view text) {
  if (is_plain(text)) return true;
  const char* last = text.data() + text.size();
  return characters::first_bad_byte(text.data(), last) == last;
}

class HandReader {
 public:
  explicit HandReader(HandParsed& parsed) : parsed_(parsed) {}

  void read(std::string_view text) {
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) return complain();
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    const auto estimate = 1 + static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
    parsed_.lines.reserve(std::min(most_lines, estimate));
    std::size_t count = 0;
    while (!text.empty()) {
      if (count++ == most_lines) return complain();
      read_line(take_line(text));
    }
    if (!parsed_.lines.empty() && is_empty(parsed_.lines.back())) parsed_.lines.pop_back();
  }

 private:
  void complain() { ++parsed_.errors; }

  static bool is_empty(const Line& line) {
    return line.comment.empty() && std::holds_alternative<EmptyLine>(line.statement);
  }

  // A text with a "\r" anywhere is looked through for it line by line; any other is not looked through again.
  std::string_view take_line(std::string_view& text) {
    if (newline_ < text.data()) {
      const void* found = std::memchr(text.data(), '\n', text.size());
      newline_ = found != nullptr ? static_cast<const char*>(found) : text.data() + text.size();
    }
    auto length = static_cast<std::size_t>(newline_ - text.data());
    if (const void* found = std::memchr(text.data(), '\r', length); found != nullptr)
      length = static_cast<std::size_t>(static_cast<const char*>(found) - text.data());
    const std::string_view line = text.substr(0, length);
    text.remove_prefix(length);
    if (!text.empty() && text[0] == '\r') text.remove_prefix(1);
    if (!text.empty() && text[0] == '\n' && text.data() == newline_) text.remove_prefix(1);
    return line;
  }

  void read_line(std::string_view text) {
    if (text.size() > longest_line) return bad_line(text);
    Scan scan(text.data(), text.data() + text.size());
    scan.blanks();
    if (scan.rest().empty()) return empty_line(text);
    if (!is_sound(text)) return bad_line(text);
    Line& line = parsed_.lines.emplace_back();
    line.text = text;
    const Read read = *scan.at == '#' ? Read::whole : statement(scan, line.statement);
    if (read != Read::whole) {
      parsed_.lines.pop_back();
      if (read == Read::unknown && goes_on_from_above()) return keep_bad_line(text);
      return bad_line(text);
    }
    line.comment = without_trailing_blanks(scan.rest());
  }

  enum class Read { whole, wrong, unknown };

  static Read statement(Scan& scan, Statement& statement) {
    const Scan start = scan;
    const std::string_view word = scan.bare();
    const std::optional<Word> key = keyword(word);
    const bool is_aspect = is_aspect_line(key, scan);
    if (key && !is_aspect) return statement_of(*key, scan, statement) ? Read::whole : Read::wrong;
    scan = start;
    if (is_aspect || characters::quotes_at(start.at, start.rest().data() + start.rest().size()) != nullptr)
      return aspect(scan, statement) ? Read::whole : Read::wrong;
    return Read::unknown;
  }

  // Before a colon some keywords may name an aspect: `difficulty` whatever follows, the others where marks follow.
  static bool is_aspect_line(std::optional<Word> key, Scan scan) {
    if ((key && !words::may_be_an_aspect(*key)) || !scan.sign(':')) return false;
    return !key || key == Word::difficulty || scan.starts_mark();
  }

  // A list that ends in a comma is the mistake; the rest of it on the next line is no second one.
  bool goes_on_from_above() const {
    if (parsed_.lines.empty() || !std::holds_alternative<BadLine>(parsed_.lines.back().statement))
      return false;
    return without_trailing_blanks(parsed_.lines.back().text).ends_with(',');
  }

  void empty_line(std::string_view text) {
    if (parsed_.lines.empty() || is_empty(parsed_.lines.back())) return;
    parsed_.lines.emplace_back().text = text;
  }

  void keep_bad_line(std::string_view text) {
    Line& line = parsed_.lines.emplace_back();
    line.text = text;
    line.statement.emplace<BadLine>().text = text;
  }

  void bad_line(std::string_view text) {
    complain();
    keep_bad_line(text);
  }

  HandParsed& parsed_;
  const char* newline_ = nullptr;
};

}  // namespace

HandParsed hand_parse(std::string_view text) {
  HandParsed parsed;
  HandReader(parsed).read(text);
  return parsed;
}

}  // namespace landdrill::bench
