// The grammar of each statement, and the only file with Boost.Spirit X3.
#include <boost/fusion/include/adapt_struct.hpp>
#include <boost/spirit/home/x3.hpp>

#include "grammar/ast.h"
#include "grammar/characters.h"
#include "grammar/failure.h"
#include "grammar/leaves.h"
#include "grammar/words.h"

BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::Counted, code, times)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::Count, counts, where)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::NamedNumber, name, number)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::Fault, lost_part, fault, size, times)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::ElementLine, number, kind, title)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::DatedLine, date, title)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::FaultsLine, element, base)
BOOST_FUSION_ADAPT_STRUCT(landdrill::ast::AspectMarksLine, aspect, marks)

namespace landdrill {
namespace {

namespace x3 = boost::spirit::x3;
using leaves::Iterator;
using words::Keyword;
using words::Shape;
using words::Word;

constexpr std::size_t most_items = 10'000;

// ---- words and what surrounds them ----

struct FailureTag;

// One function of leaves.h as a parser; Value is what it sets.
template <class Value, bool (*take)(Iterator&, Iterator, Failure&, Value&)>
struct leaf : x3::parser<leaf<Value, take>> {
  using attribute_type = Value;
  static bool const has_attribute = true;

  template <class Context, class RContext>
  bool parse(Iterator& first, Iterator const& last, const Context& context, RContext&, Value& value) const {
    return take(first, last, x3::get<FailureTag>(context), value);
  }
  // The same where the tree holds a std::optional.
  template <class Context, class RContext>
  bool parse(Iterator& first, Iterator const& last, const Context& context, RContext& rcontext,
             std::optional<Value>& value) const {
    return parse(first, last, context, rcontext, value.emplace());
  }
};

// The same for a function that sets nothing.
template <bool (*take)(Iterator&, Iterator, Failure&)>
struct mark_of : x3::parser<mark_of<take>> {
  using attribute_type = x3::unused_type;
  static bool const has_attribute = false;

  template <class Context, class RContext, class Attribute>
  bool parse(Iterator& first, Iterator const& last, const Context& context, RContext&, Attribute&) const {
    return take(first, last, x3::get<FailureTag>(context));
  }
};

// Skips blanks before its subject, and remembers by its English name what was expected when the subject
// fails.
template <class Subject>
struct named : x3::unary_parser<Subject, named<Subject>> {
  using attribute_type = typename Subject::attribute_type;
  static bool const has_attribute = Subject::has_attribute;

  constexpr named(const Subject& inner, const char* what)
      : x3::unary_parser<Subject, named<Subject>>(inner), name(what) {}

  template <class Context, class RContext, class Attribute>
  bool parse(Iterator& first, Iterator const& last, const Context& context, RContext& rcontext,
             Attribute& attribute) const {
    const Iterator start = characters::skip_blanks(first, last);
    Iterator at = start;
    if (this->subject.parse(at, last, context, rcontext, attribute)) {
      first = at;
      return true;
    }
    x3::get<FailureTag>(context).expect(start, name);
    return false;
  }
  const char* name;
};

// `-subject` for std::optional, which X3 1.81 does not know.
template <class Subject>
struct maybe : x3::unary_parser<Subject, maybe<Subject>> {
  using attribute_type = std::optional<typename Subject::attribute_type>;
  static bool const has_attribute = true;
  constexpr explicit maybe(const Subject& inner) : x3::unary_parser<Subject, maybe<Subject>>(inner) {}

  template <class Context, class RContext>
  bool parse(Iterator& first, Iterator const& last, const Context& context, RContext& rcontext,
             attribute_type& attribute) const {
    if (!this->subject.parse(first, last, context, rcontext, attribute.emplace())) attribute.reset();
    return true;
  }
};

// ---- the grammar ----

template <bool (*refused)(std::string_view)>
using code_unless = leaf<ast::Name, leaves::take_code<refused>>;
using any_code = code_unless<leaves::refuse_nothing>;
using no_number = code_unless<characters::looks_like_number>;
using number = leaf<ast::Number, leaves::take_number>;

constexpr auto end = named{mark_of<leaves::take_end>{}, expected::end};
constexpr auto comma = named{x3::lit(','), expected::comma};
constexpr auto colon = named{x3::lit(':'), expected::colon};
constexpr auto is = mark_of<leaves::take_optional_colon>{};
constexpr auto title = named{leaf<ast::Name, leaves::take_quoted>{}, expected::title};
constexpr auto times = maybe{named{leaf<ast::Number, leaves::take_times>{}, expected::times}};
constexpr auto none = named{mark_of<leaves::take_the<words::none>>{}, "none"};

constexpr auto percent = named{x3::lit('%'), expected::percent};

// ---- the shapes; what a keyword expects is called by its own name ----

constexpr auto title_line = is >> title >> end;
constexpr auto dated_line =
    is >> named{leaf<ast::Date, leaves::take_date>{}, expected::date} >> maybe{title} >> end;
constexpr auto word_alone = is >> end;
constexpr auto no_items = is >> none >> end;

constexpr auto code_line(const Keyword& of) {
  return is >> named{any_code{}, of.expected} >> end;
}
constexpr auto number_line(const Keyword& of) {
  return is >> named{number{}, of.expected} >> end;
}
constexpr auto percent_line(const Keyword& of) {
  return is >> named{number{}, of.expected} >> percent >> end;
}
template <class Code>
constexpr auto counted_line(const Keyword& of, const Code& code) {
  return is >> ((named{code, of.expected} >> times) % comma) >> end;
}
constexpr auto counts_line(const Keyword& of) {
  return is >> ((named{number{}, of.expected} >> named{no_number{}, of.second}) % comma) >> end;
}
constexpr auto numbers_line(const Keyword& of) {
  return is >> ((named{no_number{}, of.expected} >> is >> named{number{}, of.second}) % comma) >> end;
}
constexpr auto percents_line(const Keyword& of) {
  return is >> ((named{no_number{}, of.expected} >> is >> named{number{}, of.second} >> percent) % comma) >>
         end;
}
constexpr auto element_number = named{leaf<ast::Number, leaves::take_whole>{}, expected::element_number};
constexpr auto element_line =
    is >> element_number >> named{no_number{}, expected::kind} >> maybe{title} >> end;

constexpr auto between_marks = mark_of<leaves::take_between_marks>{};
constexpr auto marks =
    (named{leaf<ast::JudgeMark, leaves::take_mark>{}, expected::mark} % between_marks) >> end;
constexpr auto aspect_line = named{any_code{}, "an aspect"} >> colon >> marks;
constexpr auto marked_element = is >> element_number >> leaf<bool, leaves::take_base>{} >> colon;
constexpr auto clean_line = named{mark_of<leaves::take_the<words::clean>>{}, expected::clean} >> end;
using fault_rule = x3::rule<struct FaultTag, ast::Fault>;
constexpr auto lost_part = fault_rule{"fault"} =
    named{mark_of<leaves::take_the<words::lost>>{}, "lost"} >> named{any_code{}, expected::lost_code} >>
    x3::attr(ast::Name{}) >> x3::attr(ast::Name{}) >> x3::attr(std::optional<ast::Number>{});
constexpr auto fault = fault_rule{"fault"} =
    x3::attr(std::optional<ast::Name>{}) >> named{code_unless<leaves::is_no_fault>{}, "a fault"} >>
    named{code_unless<characters::looks_like_times>{}, expected::size} >> times;
constexpr auto faults_line = ((lost_part | fault) % comma) >> end;

constexpr auto limit_name(const Keyword& of) {
  return is >> named{code_unless<leaves::is_bound>{}, of.expected};
}
constexpr auto limit_least = named{leaf<ast::Number, leaves::take_bound<words::at_least>>{}, expected::least};
constexpr auto limit_most = named{leaf<ast::Number, leaves::take_bound<words::at_most>>{}, expected::most};

// ---- one line ----

template <class Parser, class Value>
bool read(LineRest& line, const Parser& parser, Value& value) {
  Iterator at = line.at;
  if (!parser.parse(at, line.last, x3::make_context<FailureTag>(line.failure), x3::unused, value))
    return false;
  line.at = at;
  return true;
}

template <class Parser, class Items>
bool read_list(LineRest& line, const Parser& parser, Items& items) {
  const Iterator start = line.at;
  if (!read(line, parser, items)) return false;
  if (items.size() <= most_items) return true;
  line.failure = Failure{start, line.at, Mistake::long_list};
  return false;
}

bool read_element_marks(LineRest& line, ast::FaultsLine& head, ast::Statement& statement) {
  auto& marked = statement.emplace<ast::ElementMarksLine>();
  marked.element = head.element;
  marked.base = head.base;
  return read_list(line, marks, marked.marks);
}

bool read_element(LineRest& line, ast::Statement& statement) {
  ast::FaultsLine head;
  if (!read(line, marked_element, head))
    return read(line, element_line, statement.emplace<ast::ElementLine>());
  if (leaves::starts_marks(characters::skip_blanks(line.at, line.last), line.last))
    return read_element_marks(line, head, statement);
  auto& faults = statement.emplace<ast::FaultsLine>(std::move(head));
  if (read(line, clean_line, x3::unused)) return true;
  if (read_list(line, faults_line, faults.faults)) return true;
  line.failure.expect(line.at, "marks");
  return false;
}

bool read_bound(LineRest& line, const auto& parser, std::optional<ast::Number>& bound) {
  if (!read(line, parser, bound.emplace())) bound.reset();
  return bound.has_value();
}

bool read_limit(LineRest& line, const Keyword& keyword, ast::LimitLine& limit) {
  if (!read(line, limit_name(keyword), limit.name)) return false;
  const bool has_least = read_bound(line, limit_least, limit.least);
  const bool has_most = read_bound(line, limit_most, limit.most);
  return (has_least || has_most) && read(line, end, x3::unused);
}

template <class Kind>
Kind& start(ast::Statement& statement, Word word) {
  Kind& kind = statement.emplace<Kind>();
  kind.word = word;
  return kind;
}

}  // namespace

bool read_keyword(Word word, LineRest& line, ast::Statement& statement) {
  const Keyword& keyword = words::keyword(word);
  switch (keyword.shape) {
    case Shape::element:
      return read_element(line, statement);
    case Shape::counted:
      return read_list(line, counted_line(keyword, any_code{}),
                       start<ast::CountedLine>(statement, word).items);
    case Shape::counts:
      return read_list(line, counts_line(keyword), start<ast::CountsLine>(statement, word).counts);
    case Shape::number:
      return read(line, number_line(keyword), start<ast::NumberLine>(statement, word).number);
    case Shape::percent:
      return read(line, percent_line(keyword), start<ast::NumberLine>(statement, word).number);
    case Shape::title:
      return read(line, title_line, start<ast::TitleLine>(statement, word).title);
    case Shape::numbers:
      return read_list(line, numbers_line(keyword), start<ast::NamedNumbersLine>(statement, word).numbers);
    case Shape::percents:
      return read_list(line, percents_line(keyword), start<ast::NamedNumbersLine>(statement, word).numbers);
    case Shape::counted_or_none: {
      auto& items = start<ast::CountedLine>(statement, word).items;
      const auto list = counted_line(keyword, code_unless<leaves::is_none>{});
      return read(line, no_items, x3::unused) || read_list(line, list, items);
    }
    case Shape::dated:
      return read(line, dated_line, start<ast::DatedLine>(statement, word));
    case Shape::code:
      return read(line, code_line(keyword), start<ast::CodeLine>(statement, word).code);
    case Shape::alone:
      start<ast::WordLine>(statement, word);
      return read(line, word_alone, x3::unused);
    case Shape::limit:
      return read_limit(line, keyword, statement.emplace<ast::LimitLine>());
  }
  return false;
}

bool read_aspect(LineRest& line, ast::Statement& statement) {
  auto& aspect = statement.emplace<ast::AspectMarksLine>();
  return read(line, aspect_line, aspect);
}

}  // namespace landdrill
