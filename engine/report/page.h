// What a report says, in which order, and under which keys other programs find it. A report is one function from a
// value to a Page; text, JSON, CSV and whatever comes later are renderers over it.
//
//   Page page("train");
//   page.title("Harbour Lights");
//   page.fact("total_expected", "187.34", Seen::by_programs);
//   page.say("What would it be more with one thing a little better:");
//   PageTable gains("gains", {{"line", "line", Align::words, Wraps::yes}, {"points", "points", Align::amount}});
//   gains.add({"Undertow", "+1.0500"});
//   page.add(std::move(gains));
//
// Knows no width, colour, escape or tag; holds texts as they were written, which renderers make safe.
#pragma once

#include <concepts>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "engine/score/build_up.h"

namespace landdrill::report {

// Who gets a piece: people who asked for everything, or not; programs (JSON and CSV) always get what is in full.
enum class Seen { always, by_people, by_programs, in_full, in_brief };
bool is_for_people(Seen seen, bool full);
bool is_for_programs(Seen seen);

struct Datum;
using Record = std::vector<std::pair<std::string, Datum>>;
using Data = std::vector<Datum>;

// What programs get: nothing (null), a truth, a whole number, a text (amounts are texts, so that they stay exact), or
// several of them.
struct Datum {
  std::variant<std::monostate, bool, std::int64_t, std::string, Record, Data> is;

  Datum() = default;
  Datum(bool truth) : is(truth) {}
  Datum(int number) : is(std::int64_t{number}) {}
  Datum(std::int64_t number) : is(number) {}
  Datum(std::size_t number) : is(static_cast<std::int64_t>(number)) {}
  Datum(std::string text);  // nothing when it is empty
  Datum(std::string_view text) : Datum(std::string(text)) {}
  Datum(const char* text) : Datum(std::string(text)) {}
  Datum(Record record) : is(std::move(record)) {}
  Datum(Data data) : is(std::move(data)) {}
  static Datum texts(const std::vector<std::string>& list);
};

// As people read it; and as programs do, where that is another (more digits, a code, a truth). A number of things is the
// same for both; a truth, a record or a list is for programs alone.
struct Entry {
  std::string text;
  std::optional<Datum> datum;

  Entry() = default;
  Entry(std::string shown) : text(std::move(shown)) {}
  Entry(std::string_view shown) : text(shown) {}
  Entry(const char* shown) : text(shown) {}
  Entry(std::integral auto number) : text(std::to_string(number)), datum(number) {}
  Entry(bool truth) : datum(truth) {}
  Entry(Datum told) : datum(std::move(told)) {}
  Entry(Record told) : datum(std::move(told)) {}
  Entry(Data told) : datum(std::move(told)) {}
  Entry(std::string shown, Datum told) : text(std::move(shown)), datum(std::move(told)) {}
  Datum data() const { return datum ? *datum : Datum(text); }
};

enum class Align { words, amount };  // amounts stand with their points in one line
enum class Wraps { no, yes };        // a column that gives way on a narrow page
// How a row looks beside its words: nothing rests on it.
enum class Look { usual, total, worst };

struct PageColumn {
  std::string key;      // in JSON and CSV; empty: people alone get it
  std::string heading;  // on the page
  Align align = Align::words;
  Wraps wraps = Wraps::no;
  Seen seen = Seen::always;
  std::string group = {};  // a heading above those that follow each other with the same one
  int gap = 2;             // blanks before it on a page of text, unless it is the first
  int from_width = 0;      // left out on a page of fewer columns
  std::string csv = {};    // its name in CSV, where that is not the key; without a key it is in CSV alone
};
PageColumn for_programs(std::string key, std::string csv = {});
std::vector<PageColumn> program_columns(std::initializer_list<std::string_view> keys);
PageColumn amount_column(std::string key, std::string heading, std::string group = {}, std::string csv = {});

struct PageRow {
  std::vector<Entry> cells;  // one for each column
  Look look = Look::usual;
  Seen seen = Seen::always;
  bool rule_above = false;
};

using Facts = std::vector<std::pair<std::string, Entry>>;

struct PageTable {
  PageTable(std::string name, std::vector<PageColumn> all) : key(std::move(name)), columns(std::move(all)) {}
  void add(std::vector<Entry> cells, Look look = Look::usual, Seen seen = Seen::always);
  void add_rule() { rule_next_ = true; }  // a line across, above the next row

  std::string key;  // in JSON; empty: not there
  std::vector<PageColumn> columns;
  std::vector<PageRow> rows;
  bool in_csv = false;
  Facts given = {};  // of every row, in CSV
  bool hides_empty_columns = false;
  std::size_t keys = 0;  // when it is too wide, cut into several tables, each with the first so many columns

 private:
  bool rule_next_ = false;
};

// The rows as programs get them, for a list inside a row.
Data records_of(const PageTable& table);

struct Title {
  std::string text;
};
struct Heading {
  std::string text;
};
struct Sentence {
  std::string first;  // before its first line; the others stand as far to the right
  std::string text;
};
// An empty key: not in JSON.
struct Bullets {
  std::string key;
  std::vector<std::pair<std::string, Seen>> items;
};
// A line of its own that is only for programs, or that people find in a sentence.
struct Fact {
  std::string key;
  Entry cell;
};
// How a score comes about, down to the rows of the tables.
struct Tree {
  std::string key;
  Step step;
  std::string set;  // whose rows they are
};
// Lines that stay as they are.
struct Verbatim {
  std::string key, text;
};
// A file or a folder, in a line of its own that is never broken, so that it can be copied.
struct Path {
  std::string before, path;
};

struct Section;
struct Either;
using What =
    std::variant<Title, Heading, Sentence, Bullets, Fact, PageTable, Tree, Verbatim, Path, Section, Either>;
struct PagePart;

class PageParts {
 public:
  void title(std::string text);
  void heading(std::string text, Seen seen = Seen::by_people);  // with an empty line above
  void say(std::string text, Seen seen = Seen::by_people);
  void say(std::string first, std::string text, Seen seen = Seen::by_people);
  void list(std::string key, const std::vector<std::string>& items, Seen seen = Seen::always);
  // The first `most`, and how many more there are; all of them in full and for programs.
  void short_list(std::string key, const std::vector<std::string>& items, std::size_t most);
  void fact(std::string key, Entry cell, Seen seen = Seen::by_programs);
  void add(PageTable table, Seen seen = Seen::always);
  void tree(std::string key, Step step, std::string set, Seen seen = Seen::always);
  void verbatim(std::string key, std::string text);
  void path(std::string before, std::string path);
  // One of several: in JSON an entry of the list `key`. As many as one knows without a list: `single`.
  void section(std::string key, PageParts inside, Seen seen = Seen::always);
  void single(std::string key, PageParts inside, Seen seen = Seen::always);
  // A list `key` in JSON even when no section follows.
  void no_sections(std::string key);
  // The first where it fits the page with wrapped columns of `readable`, otherwise the second.
  void either(PageTable wide, int readable, PageParts narrow);
  void append(PageParts more);
  // An empty line before what comes next.
  void apart() { apart_ = true; }

  const std::vector<PagePart>& all() const { return parts_; }
  bool empty() const { return parts_.empty(); }

 private:
  void put(What what, Seen seen);

  std::vector<PagePart> parts_;
  bool apart_ = false;
};

struct Section {
  std::string key;
  PageParts inside;
  enum class In { list, single, empty_list } in = In::list;
};
struct Either {
  PageTable wide;
  int readable = 0;
  PageParts narrow;
};
struct PagePart {
  What what;
  Seen seen = Seen::always;
  bool apart = false;
};

struct Page : PageParts {
  explicit Page(std::string asked) : question(std::move(asked)) {}
  std::string question;          // "score", "values list": the command that asks it
  std::vector<std::string> csv;  // the columns in their order; empty: those of the only table
};
// What was done, in lines that stay as they are, and the same in facts.
Page brief_page(std::string question, std::string lines, Facts facts);

}  // namespace landdrill::report
