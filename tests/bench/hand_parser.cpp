#include "tests/bench/hand_parser.h"

#include <algorithm>
#include <cstdint>
#include <cstring>

#include "grammar/characters.h"
#include "tests/bench/hand_scan.h"

namespace landdrill::bench {
namespace {

using namespace ast;

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

template <class Items>
bool counts(Scan& scan, Items& items) {
  return list(scan, items,
              [&](Count& item) { return scan.number(item.counts) && scan.code_but_number(item.where); });
}

template <class Items>
bool impression(Scan& scan, Items& items) {
  return list(scan, items, [&](ExpectedAspect& item) {
    if (!scan.code_but_number(item.aspect)) return false;
    optional_colon(scan);
    return scan.number(item.mark);
  });
}

bool errors(Scan& scan, std::vector<ExpectedErrors>& items) {
  return list(scan, items, [&](ExpectedErrors& item) {
    if (!scan.code_but_number(item.sync)) return false;
    optional_colon(scan);
    return scan.number(item.number);
  });
}

bool risk(Scan& scan, std::vector<ExpectedPenalty>& items) {
  return list(scan, items, [&](ExpectedPenalty& item) {
    if (!scan.code_but_number(item.penalty)) return false;
    optional_colon(scan);
    return scan.number(item.percent) && scan.sign('%');
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

bool number_alone(Scan& scan, Number& number) {
  return scan.number(number) && scan.end();
}
bool code_alone(Scan& scan, Name& name) {
  return scan.code(name) && scan.end();
}
bool title_alone(Scan& scan, Name& name) {
  return scan.title(name) && scan.end();
}

enum class Keyword {
  none,
  routine,
  event,
  values,
  tempo,
  swimmers,
  element,
  option,
  parts,
  counts,
  difficulty,
  expect,
  slip,
  passage,
  impression,
  run,
  panel,
  sync,
  penalty,
  result,
  before_aspects,
  spread,
  day,
  limit,
  errors,
  risk,
  optional,
  stays
};
// Before a colon these may name an aspect: `difficulty` whatever follows, the others where marks follow.
bool may_be_an_aspect(Keyword key) {
  return key == Keyword::none || key == Keyword::difficulty || key > Keyword::before_aspects;
}

Keyword keyword(std::string_view word) {
  const auto is = [&](std::string_view wanted, Keyword key) {
    return spells(word, wanted) ? key : Keyword::none;
  };
  switch (word.size() < 3 ? 0 : (word[0] | 0x20)) {
    case 'c':
      return is("counts", Keyword::counts);
    case 'd':
      return word.size() == 3 ? is("day", Keyword::day) : is("difficulty", Keyword::difficulty);
    case 'e':
      switch (word[1] | 0x20) {
        case 'l':
          return is("element", Keyword::element);
        case 'x':
          return is("expect", Keyword::expect);
        case 'r':
          return is("errors", Keyword::errors);
        default:
          return is("event", Keyword::event);
      }
    case 'i':
      return is("impression", Keyword::impression);
    case 'l':
      return is("limit", Keyword::limit);
    case 'o':
      return word.size() == 6 ? is("option", Keyword::option) : is("optional", Keyword::optional);
    case 'p':
      switch (word[2] | 0x20) {
        case 'r':
          return is("parts", Keyword::parts);
        case 's':
          return is("passage", Keyword::passage);
        case 'n':
          return (word[1] | 0x20) == 'a' ? is("panel", Keyword::panel) : is("penalty", Keyword::penalty);
        default:
          return Keyword::none;
      }
    case 'r':
      switch (word[1] | 0x20) {
        case 'o':
          return is("routine", Keyword::routine);
        case 'u':
          return is("run", Keyword::run);
        case 'i':
          return is("risk", Keyword::risk);
        default:
          return is("result", Keyword::result);
      }
    case 's':
      switch (word[1] | 0x20) {
        case 'l':
          return is("slip", Keyword::slip);
        case 'w':
          return is("swimmers", Keyword::swimmers);
        case 'p':
          return is("spread", Keyword::spread);
        case 't':
          return is("stays", Keyword::stays);
        default:
          return is("sync", Keyword::sync);
      }
    case 't':
      return is("tempo", Keyword::tempo);
    case 'v':
      return is("values", Keyword::values);
    default:
      return Keyword::none;
  }
}

bool statement_of(Keyword key, Scan& scan, Statement& statement) {
  if (key != Keyword::difficulty) optional_colon(scan);
  switch (key) {
    case Keyword::routine:
      return title_alone(scan, statement.emplace<RoutineLine>().title);
    case Keyword::event:
      return code_alone(scan, statement.emplace<EventLine>().event);
    case Keyword::values:
      return code_alone(scan, statement.emplace<ValuesLine>().set);
    case Keyword::tempo:
      return number_alone(scan, statement.emplace<TempoLine>().beats_a_minute);
    case Keyword::swimmers:
      return number_alone(scan, statement.emplace<SwimmersLine>().swimmers);
    case Keyword::element:
      return element(scan, statement);
    case Keyword::option:
      return title_alone(scan, statement.emplace<OptionLine>().title);
    case Keyword::parts:
      return parts(scan, statement.emplace<PartsLine>().parts);
    case Keyword::counts:
      return counts(scan, statement.emplace<CountsLine>().counts);
    case Keyword::difficulty:
      return number_alone(scan, statement.emplace<DifficultyLine>().difficulty);
    case Keyword::expect:
      return number_alone(scan, statement.emplace<ExpectLine>().mark);
    case Keyword::slip:
      return scan.number(statement.emplace<SlipLine>().percent) && scan.sign('%') && scan.end();
    case Keyword::passage:
      return title_alone(scan, statement.emplace<PassageLine>().title);
    case Keyword::impression:
      return impression(scan, statement.emplace<ImpressionLine>().marks);
    case Keyword::run: {
      auto& line = statement.emplace<RunLine>();
      return dated(scan, line.date, line.title);
    }
    case Keyword::panel: {
      auto& line = statement.emplace<PanelLine>();
      return dated(scan, line.date, line.title);
    }
    case Keyword::sync:
      return counted(scan, statement.emplace<SyncLine>().errors);
    case Keyword::penalty:
      return counted(scan, statement.emplace<PenaltyLine>().penalties);
    case Keyword::result:
      return number_alone(scan, statement.emplace<ResultLine>().result);
    case Keyword::spread:
      return number_alone(scan, statement.emplace<SpreadLine>().spread);
    case Keyword::day:
      return number_alone(scan, statement.emplace<DayLine>().day);
    case Keyword::limit:
      return limit(scan, statement.emplace<LimitLine>());
    case Keyword::errors:
      return errors(scan, statement.emplace<ErrorsLine>().errors);
    case Keyword::risk:
      return risk(scan, statement.emplace<RiskLine>().penalties);
    case Keyword::optional:
      return statement.emplace<OptionalLine>(), scan.end();
    case Keyword::stays:
      return statement.emplace<StaysLine>(), scan.end();
    case Keyword::before_aspects:
    case Keyword::none:
      break;
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
    const Keyword key = keyword(word);
    const bool is_aspect = may_be_an_aspect(key) && is_aspect_line(key, scan);
    if (key != Keyword::none && !is_aspect)
      return statement_of(key, scan, statement) ? Read::whole : Read::wrong;
    scan = start;
    if (is_aspect || characters::quotes_at(start.at, start.rest().data() + start.rest().size()) != nullptr)
      return aspect(scan, statement) ? Read::whole : Read::wrong;
    return Read::unknown;
  }

  static bool is_aspect_line(Keyword key, Scan scan) {
    if (!scan.sign(':')) return false;
    return key == Keyword::none || key == Keyword::difficulty || scan.starts_mark();
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
