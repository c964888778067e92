// Laws over random trees: printing and reading again keeps the tree; printing twice is printing once.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <deque>

#include "dump.h"
#include "grammar/parse.h"
#include "grammar/print.h"
#include "grammar/words.h"

namespace landdrill {
namespace {

using rc::Gen;
namespace gen = rc::gen;

// Texts outlive the trees that point into them.
std::string_view keep(std::string text) {
  static std::deque<std::string> kept;
  if (kept.size() > 1'000'000) kept.clear();
  return kept.emplace_back(std::move(text));
}

std::string joined(const std::vector<std::string>& pieces) {
  std::string all;
  for (const std::string& piece : pieces) all += piece;
  return all;
}

// Pieces that are awkward next to each other: signs, keywords, blanks, all kinds of quotation marks but
// straight ones.
Gen<std::string> text_of(std::vector<std::string> pieces) {
  return gen::map(gen::nonEmpty(gen::container<std::vector<std::string>>(gen::elementOf(pieces))), joined);
}

Gen<ast::Name> any_name() {
  const auto text =
      gen::suchThat(text_of({"a", "B", "7", "x2",       "lost", "clean", "none", "base", " ", "-", "+",
                             ".", ",", ";", ":",        "#",    "%",     "(",    "×",    "ö", "–", "“",
                             "”", "„", "«", "\xC2\xA0", "\t",   "tempo", "*",    "/",    "'", "\\"}),
                    [](const std::string& s) { return s.find_first_not_of(" \t\xC2\xA0") != s.npos; });
  return gen::map(text, [](std::string s) { return ast::Name{keep(std::move(s)), true}; });
}

Gen<ast::Number> any_number() {
  return gen::map(
      gen::tuple(gen::element(std::string(""), std::string("-"), std::string("+")), gen::inRange(0, 100000),
                 gen::element(std::string(""), std::string(".0"), std::string(".50"), std::string(",25"),
                              std::string(",125"))),
      [](const auto& t) {
        return ast::Number{keep(std::get<0>(t) + std::to_string(std::get<1>(t)) + std::get<2>(t))};
      });
}
Gen<ast::Number> any_whole() {
  return gen::map(gen::inRange(0, 100000), [](int n) { return ast::Number{keep(std::to_string(n))}; });
}

template <class T>
Gen<std::optional<T>> maybe(Gen<T> gen_t) {
  return gen::oneOf(gen::just(std::optional<T>()),
                    gen::map(gen_t, [](T t) { return std::optional<T>(std::move(t)); }));
}
template <class T>
Gen<std::vector<T>> some(Gen<T> gen_t) {
  return gen::nonEmpty(gen::container<std::vector<T>>(gen_t));
}
template <class T, class... Parts>
Gen<ast::Statement> statement(Gen<Parts>... parts) {
  return gen::map(gen::tuple(parts...), [](std::tuple<Parts...> t) {
    return std::apply([](auto&&... p) { return ast::Statement(T{std::move(p)...}); }, std::move(t));
  });
}

Gen<ast::Counted> any_counted() {
  return gen::construct<ast::Counted>(any_name(), maybe(any_whole()));
}
Gen<ast::Fault> any_fault() {
  return gen::oneOf(gen::construct<ast::Fault>(gen::just(std::optional<ast::Name>()), any_name(), any_name(),
                                               maybe(any_whole())),
                    gen::map(any_name(), [](ast::Name part) {
                      return ast::Fault{part, {}, {}, {}};
                    }));
}
Gen<ast::Date> any_date() {
  return gen::map(gen::inRange(1000, 9999),
                  [](int year) { return ast::Date{keep(std::to_string(year) + "-04-14")}; });
}

Gen<words::Word> word_of(words::Shape shape) {
  std::vector<words::Word> words;
  for (const words::Keyword& each : words::keywords())
    if (each.shape == shape) words.push_back(*words::find(each.word));
  return gen::elementOf(words);
}

Gen<ast::Statement> any_statement() {
  using words::Shape;
  const auto count = gen::construct<ast::Count>(any_number(), any_name());
  const auto numbers = some(gen::construct<ast::NamedNumber>(any_name(), any_number()));
  const auto marks = some(maybe(any_number()));
  const auto any_items = gen::container<std::vector<ast::Counted>>(any_counted());
  return gen::oneOf(statement<ast::TitleLine>(word_of(Shape::title), any_name()),
                    statement<ast::CodeLine>(word_of(Shape::code), any_name()),
                    statement<ast::NumberLine>(word_of(Shape::number), any_number()),
                    statement<ast::NumberLine>(word_of(Shape::percent), any_number()),
                    statement<ast::WordLine>(word_of(Shape::alone)),
                    statement<ast::DatedLine>(word_of(Shape::dated), any_date(), maybe(any_name())),
                    statement<ast::CountedLine>(word_of(Shape::counted), some(any_counted())),
                    statement<ast::CountedLine>(word_of(Shape::counted_or_none), any_items),
                    statement<ast::CountsLine>(word_of(Shape::counts), some(count)),
                    statement<ast::NamedNumbersLine>(word_of(Shape::numbers), numbers),
                    statement<ast::NamedNumbersLine>(word_of(Shape::percents), numbers),
                    statement<ast::ElementLine>(any_whole(), any_name(), maybe(any_name())),
                    statement<ast::FaultsLine>(any_whole(), gen::arbitrary<bool>(),
                                               gen::container<std::vector<ast::Fault>>(any_fault())),
                    statement<ast::ElementMarksLine>(any_whole(), gen::arbitrary<bool>(), marks),
                    statement<ast::AspectMarksLine>(any_name(), marks));
}

Gen<ast::Line> any_line() {
  const auto comment =
      gen::element(std::string_view(), std::string_view("#"), std::string_view("# \"note\" , x2"));
  const auto of = [](const auto& t) { return ast::Line{std::get<0>(t), std::get<1>(t), {}}; };
  const auto spoken = gen::map(gen::tuple(any_statement(), comment), of);
  const auto silent =
      gen::map(gen::element(std::string_view("# alone"), std::string_view("#")), [](std::string_view c) {
        return ast::Line{ast::EmptyLine{}, c, {}};
      });
  return gen::weightedOneOf<ast::Line>({{9, spoken}, {1, silent}});
}

std::string dump_all(const ast::Lines& lines) {
  std::string all;
  for (const ast::Line& line : lines) all += test::dump(line) + "\n";
  return all;
}

RC_GTEST_PROP(PrintLaw, ReadingWhatWasPrintedGivesTheSameTree, ()) {
  const auto lines = *gen::container<ast::Lines>(any_line());
  const std::string text = print(lines);
  const Source source{"printed", text};
  const Parsed parsed = parse(source);
  RC_LOG() << text << "\n" << to_string(parsed.diagnostics) << dump_all(lines) << dump_all(parsed.lines);
  RC_ASSERT(parsed.diagnostics.ok());
  RC_ASSERT(parsed.lines.size() == lines.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    RC_ASSERT(parsed.lines[i].statement == lines[i].statement);
    RC_ASSERT(parsed.lines[i].comment == lines[i].comment);
  }
  RC_ASSERT(print(parsed.lines) == text);
}

RC_GTEST_PROP(PrintLaw, OneStatementPrintedReadsTheSame, ()) {
  const auto said = *any_statement();
  const std::string text = print(said);
  const Source source{"printed", text};
  const Parsed parsed = parse(source);
  RC_LOG() << text << "\n" << to_string(parsed.diagnostics);
  RC_ASSERT(parsed.lines.size() == 1u);
  RC_ASSERT(parsed.lines[0].statement == said);
}

RC_GTEST_PROP(PrintLaw, TidyingAnyTextTwiceIsTidyingItOnce, ()) {
  const std::string text = *text_of(
      {"tempo",        "parts", "element",    "run", "sync", " ", " ", " ", "\n", "\n", "1",  "7,5", "a",
       "x2",           ":",     ":",          ",",   "\"",   "“", "”", "#", "-",  "\t", "\r", "(",   "lost",
       "\xEF\xBB\xBF", "\xFF",  "2026-01-01", "%"});
  const Source source{"typed", text};
  const ast::Lines lines = parse(source).lines;
  const std::string once = print(lines);
  const Source again{"printed", once};
  const ast::Lines read = parse(again).lines;
  RC_LOG() << text << "\n--\n" << once;
  RC_ASSERT(read.size() == lines.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    RC_ASSERT(read[i].statement == lines[i].statement);
    RC_ASSERT(read[i].comment == lines[i].comment);
  }
  RC_ASSERT(print(read) == once);
}

}  // namespace
}  // namespace landdrill
