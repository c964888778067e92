#include "tables/formula.h"

#include <algorithm>
#include <array>
#include <boost/spirit/home/x3.hpp>
#include <functional>

#include "grammar/characters.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/problems.h"

// So that "expected" names the parser inside, not the type of the action around it.
template <class Subject, class Action>
struct boost::spirit::x3::get_info<boost::spirit::x3::action<Subject, Action>> {
  using result_type = std::string;
  std::string operator()(const action<Subject, Action>& parser) const { return what(parser.subject); }
};

namespace landdrill {
namespace {

namespace x3 = boost::spirit::x3;
using Slice = boost::iterator_range<const char*>;

constexpr std::size_t longest_formula = 4'000;
constexpr std::size_t deepest_nesting = 64;

std::string_view view_of(const Slice& slice) {
  return {slice.begin(), slice.size()};
}

// Puts the steps in the order in which they are carried out.
struct StepList {
  void put(Operation does, int takes = 0) { steps.push_back({does, {}, {}, takes}); }
  void put_number(std::string_view digits) {
    const auto number = Decimal::parse(digits);
    if (!number) bad_numbers.push_back(digits);
    steps.push_back({Operation::number, number.value_or(Decimal()), {}, 0});
  }
  void put_of(Operation of_parts, Operation of_family, std::string_view name) {
    if (name == "parts") return put(of_parts);
    steps.push_back({of_family, {}, std::string(name), 0});
  }
  void put_rounding(std::string_view word) {
    const auto rounding = words::value_of<Rounding>(rounding_words, words::lower(word));
    if (!rounding) bad_roundings.push_back(word);
    steps.back().rounding = rounding.value_or(Rounding::half_up);
  }
  void open_list() { list_sizes.push_back(1); }
  void next_in_list() { ++list_sizes.back(); }
  void close_list(Operation does) {
    put(does, list_sizes.back());
    list_sizes.pop_back();
  }

  std::vector<FormulaStep> steps;
  std::vector<int> list_sizes;
  std::vector<std::string_view> bad_numbers, bad_roundings;
};

struct StepsTag {};
const auto steps = [](auto& context) -> StepList& { return x3::get<StepsTag>(context).get(); };

const auto put = [](Operation does) { return [does](auto& context) { steps(context).put(does); }; };
const auto put_of = [](Operation of_parts, Operation of_family) {
  return [=](auto& context) { steps(context).put_of(of_parts, of_family, view_of(x3::_attr(context))); };
};
const auto put_list = [](Operation does) {
  return [does](auto& context) { steps(context).close_list(does); };
};
const auto put_number = [](auto& context) { steps(context).put_number(view_of(x3::_attr(context))); };
const auto put_round = [](auto& context) { steps(context).put(Operation::round, x3::_attr(context) - '0'); };
const auto put_rounding = [](auto& context) { steps(context).put_rounding(view_of(x3::_attr(context))); };
const auto open_list = [](auto& context) { steps(context).open_list(); };
const auto next_in_list = [](auto& context) { steps(context).next_in_list(); };

// ---- the formula language ----
constexpr const char* a_value = "a number, a bracket, or one of base, families, sum, count, min, max, round";
constexpr const char* a_rounding = "half-up, half-even, down or up";
const x3::rule<struct Sum> sum = a_value;
const x3::rule<struct Product> product = a_value;
const x3::rule<struct Signed> signed_value = a_value;
const x3::rule<struct Value> value = a_value;

const auto word = [](const char* text) {
  return x3::lexeme[x3::no_case[x3::lit(text)] >> !(x3::ascii::alnum | x3::char_('_'))];
};
const auto opening = x3::rule<struct Opening>{"\"(\""} = x3::lit('(');
const auto closing = x3::rule<struct Closing>{"one of + - * / or \")\""} = x3::lit(')');
const auto comma = x3::rule<struct Comma>{"one of + - * / or \",\""} = x3::lit(',');
const auto end = x3::rule<struct End>{"one of + - * / or the end of the formula"} = x3::eoi;
const auto list_end = x3::rule<struct ListEnd>{"one of + - * /, or \",\" or \")\""} = x3::lit(')');
const auto name_end = x3::rule<struct NameEnd>{"\")\""} = x3::lit(')');
const auto name = x3::rule<struct Name, Slice>{"parts or the code of a family"} =
    x3::raw[x3::lexeme[+~x3::char_("(),\" \t\r\n")]];
const auto digits = x3::raw[x3::lexeme[+x3::ascii::digit >> -('.' >> +x3::ascii::digit)]];
const auto places = x3::rule<struct Places, char>{"a number of decimal places from 0 to 6"} =
    x3::lexeme[x3::char_('0', '6') >> !(x3::ascii::alnum | '.')];
const auto rounding = x3::rule<struct RoundingName, Slice>{a_rounding} =
    x3::raw[x3::lexeme[+~x3::char_("(),\" \t\r\n")]];
const auto round_end = x3::rule<struct RoundEnd>{"\",\" or \")\""} = x3::lit(')');

const auto list = x3::rule<struct List>{"\"(\""} = opening[open_list] > sum > comma[next_in_list] > sum >
                                                   *(',' > sum)[next_in_list] > list_end;
const auto group = '(' > sum > closing;
const auto rounded = x3::rule<struct Rounded>{"\"(\""} = opening > sum > comma > places[put_round] >
                                                         (')' | (',' > rounding[put_rounding] > name_end) |
                                                          x3::expect[round_end]);

const auto sum_def = product >>
                     *(('+' > product)[put(Operation::add)] | ('-' > product)[put(Operation::subtract)]);
const auto product_def = signed_value >> *(('*' > signed_value)[put(Operation::multiply)] |
                                           ('/' > signed_value)[put(Operation::divide)]);
const auto signed_value_def = ('-' > signed_value)[put(Operation::negate)] | value;
const auto value_def =
    digits[put_number] |
    (word("sum") > opening > name[put_of(Operation::sum_parts, Operation::sum_family)] > name_end) |
    (word("count") > opening > name[put_of(Operation::count_parts, Operation::count_family)] > name_end) |
    word("base")[put(Operation::base)] | word("families")[put(Operation::families)] |
    (word("min") > list[put_list(Operation::min)]) | (word("max") > list[put_list(Operation::max)]) |
    (word("round") > rounded) | group;
const auto whole_formula = x3::eps > sum > end;

BOOST_SPIRIT_DEFINE(sum, product, signed_value, value)

// ---- what is wrong ----
constexpr std::array<std::string_view, 8> formula_words = {"base", "families", "sum",   "count",
                                                           "min",  "max",      "round", "parts"};

bool is_letter(char c) {
  return characters::kind(c) == characters::letter;
}
bool is_word_byte(char c) {
  return characters::kind(c) & (characters::letter | characters::digit) || c == '_';
}

std::string_view token_at(std::string_view rest) {
  std::size_t size = 0;
  while (size < rest.size() && is_word_byte(rest[size])) ++size;
  if (size == 0 && !rest.empty()) size = characters::character_length(rest.data(), rest.data() + rest.size());
  return rest.substr(0, size);
}

struct SignHint {
  std::string_view sign, hint;
};
constexpr std::array<SignHint, 12> sign_hints = {
    {{"×", "write * for times"},
     {"·", "write * for times"},
     {"x", "write * for times"},
     {"÷", "write / for divided by"},
     {":", "write / for divided by"},
     {"−", "write the minus sign as -"},
     {"–", "write the minus sign as -"},
     {"[", "write brackets as ( and )"},
     {"{", "write brackets as ( and )"},
     {"=", "write the formula without ="},
     {"%", "write a share as a number: 0.3 for 30 %"},
     {";", "write , between the numbers of min, max and round"}}};

bool starts_value(std::string_view token) {
  return token == "(" || characters::is_digit(token[0]) ||
         std::find(formula_words.begin(), formula_words.end(), token) != formula_words.end();
}

std::string hint_for(std::string_view text, std::string_view token) {
  if (token.empty()) return {};
  for (const SignHint& known : sign_hints) {
    if (known.sign == token) return std::string(known.hint);
  }
  const std::size_t at = static_cast<std::size_t>(token.data() - text.data());
  if (token == "," && at > 0 && characters::is_digit(text[at - 1])) return "write decimals with a point: 0.5";
  if (starts_value(token)) return {};
  return is_letter(token[0]) ? words::nearest_hint(token, formula_words) : "";
}

Diagnostic unexpected(const Source& source, std::string_view text, const char* where, std::string expected) {
  const char* last = text.data() + text.size();
  while (where != last && std::string_view(" \t\r\n\v\f").find(*where) != std::string_view::npos) ++where;
  const std::string_view token = token_at({where, static_cast<std::size_t>(last - where)});
  std::string found =
      token.empty() ? "the end of the formula" : "\"" + std::string(token) + "\" in the formula";
  std::string hint = hint_for(text, token);
  const bool two_values = expected.starts_with("one of +") && !token.empty() && starts_value(token);
  if (two_values) hint = "write a sign between the two, such as *";
  return diagnostic_at(source, token,
                       {Problem::formula, std::move(found), std::move(expected), std::move(hint)});
}

// Brackets and minus signs are what the grammar goes deeper for. Empty: nowhere too deep.
std::string_view too_deep(std::string_view text) {
  std::vector<std::size_t> levels = {0};  // for each open bracket the depth inside it
  std::size_t depth = 0;
  bool after_value = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '(') levels.push_back(++depth);
    if (c == '-' && !after_value) ++depth;
    if (depth > deepest_nesting) return text.substr(i, 1);
    if (c == ')' && levels.size() > 1) levels.pop_back();
    if (c == ')' || is_word_byte(c)) depth = levels.back();
    if (characters::kind(c) != characters::blank) after_value = is_word_byte(c) || c == ')';
  }
  return {};
}

std::optional<Diagnostic> too_large(const Source& source, std::string_view text) {
  const auto blanks = std::count_if(text.begin(), text.end(), [](char c) { return c == ' '; });
  if (text.size() - static_cast<std::size_t>(blanks) > longest_formula) {
    return diagnostic_at(source, text.substr(0, 1),
                         {Problem::too_long, "a formula of more than 4,000 signs", "a shorter one"});
  }
  if (const auto piece = too_deep(text); !piece.empty()) {
    return diagnostic_at(source, piece,
                         {Problem::formula, "brackets nested more than 64 deep", "a simpler formula"});
  }
  return std::nullopt;
}

}  // namespace

FormulaRead read_formula(const Source& source, std::string_view text) {
  FormulaRead read;
  if (auto diagnostic = too_large(source, text)) {
    read.diagnostics.add(std::move(*diagnostic));
    return read;
  }
  StepList list_of_steps;
  const char* first = text.data();
  try {
    x3::phrase_parse(first, text.data() + text.size(),
                     x3::with<StepsTag>(std::ref(list_of_steps))[whole_formula], x3::ascii::space);
  } catch (const x3::expectation_failure<const char*>& failure) {
    read.diagnostics.add(unexpected(source, text, failure.where(), failure.which()));
  }
  for (std::string_view digits : list_of_steps.bad_numbers) {
    read.diagnostics.add(
        diagnostic_at(source, digits,
                      {Problem::formula, "\"" + std::string(digits) + "\" in the formula",
                       "a number with at most six decimal places, below 9,000,000,000,000"}));
  }
  for (std::string_view word : list_of_steps.bad_roundings) {
    read.diagnostics.add(diagnostic_at(source, word,
                                       {Problem::formula, "\"" + std::string(word) + "\" in the formula",
                                        a_rounding, words::nearest_hint(word, rounding_words)}));
  }
  if (read.diagnostics.ok()) read.formula.steps = std::move(list_of_steps.steps);
  return read;
}

std::vector<std::string> Formula::families_named() const {
  std::vector<std::string> families;
  for (const FormulaStep& step : steps) {
    if (step.family.empty() || std::find(families.begin(), families.end(), step.family) != families.end())
      continue;
    families.push_back(step.family);
  }
  return families;
}

}  // namespace landdrill
