#include <algorithm>
#include <map>
#include <string>

#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/fill.h"
#include "tables/problems.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

constexpr std::size_t none = static_cast<std::size_t>(-1);

// What people write over a column of codes, and over one of values, in the languages of the pool deck.
constexpr std::string_view code_words[] = {
    "code", "codes", "part",  "parts", "element", "movement", "symbol", "abbreviation",
    "nr",   "no",    "kode",  "teil",  "kürzel",  "codigo",   "código", "codice",
    "kod",  "kód",   "koodi", "код",   "Код",     "コード",   "代码"};
constexpr std::string_view value_words[] = {"value",
                                            "values",
                                            "difficulty",
                                            "dd",
                                            "degree_of_difficulty",
                                            "nv",
                                            "numerical_value",
                                            "points",
                                            "wert",
                                            "werte",
                                            "schwierigkeit",
                                            "punkte",
                                            "valeur",
                                            "difficulté",
                                            "difficulte",
                                            "valor",
                                            "dificultad",
                                            "dificuldade",
                                            "valore",
                                            "difficoltà",
                                            "difficolta",
                                            "waarde",
                                            "värde",
                                            "arvo",
                                            "wartość",
                                            "hodnota",
                                            "значение",
                                            "Значение",
                                            "値",
                                            "难度"};

// Over a column of what the codes stand for.
constexpr std::string_view title_words[] = {
    "title",       "name",        "description", "meaning", "titel",       "bezeichnung", "beschreibung",
    "titre",       "nom",         "désignation", "titulo",  "título",      "nombre",      "descripción",
    "descripcion", "nome",        "descrição",   "titolo",  "descrizione", "naam",        "omschrijving",
    "namn",        "beskrivning", "nimi",        "nazwa",   "название",    "Название",    "名称"};

// "Wert (2026)" is the word "wert" as well.
bool is_one_of(std::span<const std::string_view> words, std::string_view header) {
  const std::string name = normal_name(header);
  return std::any_of(words.begin(), words.end(), [&](std::string_view word) {
    return name.starts_with(word) &&
           (name.size() == word.size() || name[word.size()] == '_' || name[word.size()] == '(');
  });
}

bool has_digit(std::string_view text) {
  return text.find_first_of("0123456789") != std::string_view::npos;
}
// Capital letters matter only where two codes differ in nothing else.
class KnownCodes {
 public:
  explicit KnownCodes(const std::vector<std::string_view>& codes) : codes_(codes) {
    for (std::string_view code : codes) alike_[words::lower(code)].push_back(code);
  }
  // As the set spells it; empty when there is none.
  std::string_view find(std::string_view code) const {
    const auto found = alike_.find(words::lower(code));
    if (found == alike_.end()) return {};
    const auto& alike = found->second;
    const auto exact = std::find(alike.begin(), alike.end(), code);
    if (exact != alike.end()) return *exact;
    return alike.size() == 1 ? alike.front() : std::string_view();
  }
  Hint nearest_hint(std::string_view code) const { return words::nearest_hint(code, codes_); }

 private:
  const std::vector<std::string_view>& codes_;
  std::map<std::string, std::vector<std::string_view>> alike_;
};

// Which cell of a row is the code, which the value, and whether the first row is a header.
struct Shape {
  std::size_t code = none, value = none, title = none;
  bool has_header = false;
};

// The column, other than `taken`, in which most cells fit; none when no cell does.
template <class Fits>
std::size_t fullest_column(const CsvTable& list, std::size_t taken, Fits fits) {
  std::map<std::size_t, std::size_t> count;
  const auto count_row = [&](const CsvRow& row) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      if (i != taken && fits(trimmed(row.cells[i].text))) ++count[i];
    }
  };
  count_row(list.header);
  for (const CsvRow& row : list.rows) count_row(row);
  const auto best = std::max_element(count.begin(), count.end(),
                                     [](const auto& a, const auto& b) { return a.second < b.second; });
  return best == count.end() ? none : best->first;
}

Shape shape_of(const CsvTable& list, const KnownCodes& known) {
  Shape shape;
  const auto& names = list.header.cells;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (shape.code == none && is_one_of(code_words, names[i].text)) shape.code = i;
    if (shape.value == none && is_one_of(value_words, names[i].text)) shape.value = i;
    if (shape.title == none && is_one_of(title_words, names[i].text)) shape.title = i;
  }
  shape.has_header = shape.code != none || shape.value != none;
  const auto is_known = [&](std::string_view text) { return !known.find(text).empty(); };
  const auto is_number = [](std::string_view text) { return Decimal::parse(text).has_value(); };
  const auto is_word = [&](std::string_view text) { return !text.empty() && !is_number(text); };
  if (shape.code == none) shape.code = fullest_column(list, shape.value, is_known);
  if (shape.value == none) shape.value = fullest_column(list, shape.code, is_number);
  if (shape.value == none) shape.value = fullest_column(list, shape.code, has_digit);
  if (shape.code == none) shape.code = fullest_column(list, shape.value, is_word);
  // Without a known word, a first row is a header only if it could not be a row like the others.
  if (!shape.has_header)
    shape.has_header =
        !is_known(text_at(list.header, shape.code)) && !has_digit(text_at(list.header, shape.value));
  return shape;
}

class ListReader {
 public:
  ListReader(const Source& source, const ListWish& wish, Diagnostics& diagnostics)
      : source_(source), takes_new_(wish.takes_new), known_(wish.codes), diagnostics_(diagnostics) {}

  std::vector<ListedValue> read() {
    CsvRead csv = read_csv(source_);
    const bool ok = csv.diagnostics.ok();
    diagnostics_.append(std::move(csv.diagnostics));
    if (!ok) return {};
    list_ = std::move(csv.table);
    shape_ = shape_of(list_, known_);
    if (!has_columns()) return {};
    if (!shape_.has_header) read_row(list_.header);
    for (const CsvRow& row : list_.rows) read_row(row);
    return std::move(values_);
  }

 private:
  bool has_columns() {
    if (shape_.code != none && shape_.value != none) return true;
    const bool one_column = list_.header.cells.size() == 1;
    const bool no_code = shape_.code == none;
    const std::string found = one_column ? "one column"
                              : no_code  ? "no column of codes"
                                         : "no column of numbers";
    diagnostics_.add(diagnostic_about(
        source_.name,
        {no_code ? Problem::no_code_column : Problem::no_value_column,
         list_.header.cells.empty() ? "an empty list" : found, "two columns, code and value",
         one_column ? "put a comma, a semicolon or a tab between the code and its value" : ""}));
    return false;
  }

  std::string_view piece(const CsvRow& row, std::size_t place) const {
    return piece_of(source_, row.cells[std::min(place, row.cells.size() - 1)]);
  }

  void complain(std::string_view at, Complaint complaint) {
    diagnostics_.complain(source_, at, std::move(complaint));
  }

  void read_row(const CsvRow& row) {
    if (is_blank(row)) return;
    const std::string_view code = text_at(row, shape_.code), value = text_at(row, shape_.value);
    if (code.empty()) {
      return complain(piece(row, shape_.code),
                      {Problem::missing_cell, "a value without a code", "a code of parts.csv"});
    }
    const std::string_view known = known_.find(code);
    if (known.empty() && !takes_new_) return complain_of_unknown(row, code);
    if (value.empty()) return;
    if (known.empty() && !may_be_code(code)) return complain_of_code(row);
    if (is_split(row)) return complain_of_split(row);
    const auto number = number_from(*find_column(*find_table("parts"), "value"), value);
    if (!number) return complain_of_number(row, value);
    add({known.empty() ? spelt_before(code) : std::string(known), known.empty(),
         std::string(text_at(row, shape_.title)), *number, piece(row, shape_.value), row.line});
  }

  // A new code in the spelling that the list has for it first.
  std::string spelt_before(std::string_view code) {
    return new_codes_.try_emplace(words::lower(code), code).first->second;
  }

  // "SP-360,0,9" in a list with commas between the cells.
  bool is_split(const CsvRow& row) const {
    const std::size_t next = shape_.value + 1;
    const bool next_is_a_column = shape_.has_header && next < list_.header.cells.size();
    return list_.separator == ',' && !next_is_a_column &&
           characters::all_digits(text_at(row, shape_.value)) && characters::all_digits(text_at(row, next));
  }

  void complain_of_split(const CsvRow& row) {
    const CsvCell &first = row.cells[shape_.value], &last = row.cells[shape_.value + 1];
    const std::string number = std::string(trimmed(first.text)) + "." + std::string(trimmed(last.text));
    complain(source_.text.substr(first.offset, last.offset + last.raw.size() - first.offset),
             {Problem::cell_count, "a number in two cells", "code and value",
              "a decimal comma splits the cell here: write " + number + ", or put it in quotation marks"});
  }

  void complain_of_unknown(const CsvRow& row, std::string_view code) {
    complain(piece(row, shape_.code), {Problem::unknown_name, in_quotes(code), "a code of parts.csv",
                                       diagnostics_.wants_more() ? known_.nearest_hint(code) : ""});
  }

  void complain_of_code(const CsvRow& row) {
    complain(piece(row, shape_.code),
             {Problem::bad_code, "a code with a quotation mark, a tab or a line break in it",
              "a code in one line"});
  }

  void complain_of_number(const CsvRow& row, std::string_view value) {
    const bool negative = Decimal::parse(value).has_value();
    complain(piece(row, shape_.value),
             {negative ? Problem::out_of_range : Problem::bad_number, in_quotes(value),
              negative ? "a value not below 0" : "a value such as 0.9", negative ? "" : number_hint(value)});
  }

  void add(ListedValue value) {
    const auto [first, is_new] = first_.emplace(value.code, values_.size());
    if (is_new) return values_.push_back(std::move(value));
    const ListedValue& before = values_[first->second];
    if (before.value == value.value) return;
    complain(value.piece,
             {Problem::two_values, value.value.text() + " for " + in_quotes(value.code),
              "one value, and line " + std::to_string(before.line) + " gives " + before.value.text()});
  }

  const Source& source_;
  bool takes_new_;
  KnownCodes known_;
  Diagnostics& diagnostics_;
  CsvTable list_;
  Shape shape_;
  std::vector<ListedValue> values_;
  std::map<std::string, std::size_t> first_;      // code -> place in values_
  std::map<std::string, std::string> new_codes_;  // in lower case -> as spelt first
};

}  // namespace

std::vector<ListedValue> read_value_list(const Source& list, const ListWish& wish, Diagnostics& diagnostics) {
  return ListReader(list, wish, diagnostics).read();
}

}  // namespace landdrill
