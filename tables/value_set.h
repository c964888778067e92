// A value set: one edition of all tables of numbers that the rules of a competition consist of.
//
//   const Part* part = set.parts.find("spin-360");   // nullptr when there is none
//   part->value            // Difficulty 0.9, or empty: a gap the coach has to fill
//   part->from.status      // Status::invented
//
// A value set is read by load.h and never changed afterwards. Pointers to rows live as long as the set.
#pragma once

#include <algorithm>
#include <cstdint>
#include <numeric>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/words.h"
#include "tables/decimal.h"
#include "tables/formula.h"
#include "tables/quantity.h"

namespace landdrill {

enum class Status { published, practice, memory, invented };
inline constexpr std::string_view status_words[] = {"published", "practice", "memory",
                                                    "invented"};  // in their order
inline std::string_view word_of(Status status) {
  return status_words[static_cast<std::size_t>(status)];
}

// Where a fact comes from: the row of a table, and what the row says of itself.
struct Provenance {
  std::string_view table;  // "parts"
  std::string key;         // of the row: "spin-360", "duet-free execution"
  std::size_t line = 0;    // of the CSV file, the header is 1
  std::string source;      // "FINA Manual 2009-2013, p. 88"
  Status status = Status::invented;
};

// Where a row stands in its table. What a row says of another is looked for once, when the set is loaded, so
// that nobody compares codes again for every sheet.
inline constexpr std::size_t no_row = static_cast<std::size_t>(-1);

struct SetInfo {
  std::string title, edition, note;
  Provenance from;
};
// The family of a part: spins, thrusts ...
struct Family {
  std::string code, title;
  std::vector<std::string> kinds;      // the kinds of element it may stand in; empty: any
  std::optional<int> most_in_element;  // parts of this family in one element
  std::optional<int> most_in_routine;
  Provenance from;
};
struct Part {
  std::string code, family, title;
  std::optional<Difficulty> value;  // empty: a gap
  Provenance from;
  std::size_t family_row = no_row;
};
enum class Caution { lift, thrown, none };
struct Kind {
  std::string code, title;
  std::optional<Formula> formula;    // parts -> declared difficulty; empty: a gap
  std::optional<Difficulty> base;    // credited when what was declared was not shown; empty: a gap
  std::optional<Decimal> slip = {};  // per cent: the chance of the base mark where no sheet says one
  std::optional<int> least_parts, most_parts, most_same;  // most_same: of one code in an element
  int places = 6;                                         // decimal places of a declared difficulty
  Rounding rounding = Rounding::half_up;
  Caution caution = Caution::none;
  Provenance from;
};
struct Event {
  std::string code, title;
  std::optional<int> least_swimmers, most_swimmers;
  std::optional<Decimal> seconds, tolerance;  // of the routine
  Provenance from;
};
// How many elements of a kind (empty: any), holding a part of a family (empty: any), an event wants.
struct Quota {
  std::string event, kind, family;
  std::optional<int> least, most;
  Provenance from;
  std::size_t event_row = no_row, kind_row = no_row, family_row = no_row;
};
enum class Combine { mean, sum };
// times_difficulty: marks x credited difficulty x weight, per element.
// weighted: sum(marks x credited difficulty) / sum(credited difficulty) x weight, over the routine.
// plain: marks x weight.
enum class Use { times_difficulty, weighted, plain };
// What a judge who is missing gets: refuse (an error), mean (of the other judges, to missing_step), fewer
// (fewer marks kept).
enum class Missing { refuse, mean, fewer };
struct PanelRule {
  std::string event, aspect;
  std::string kind;  // for this kind of element only; empty: for every kind
  std::string title;
  bool per_element = false;  // else marked once per routine
  int judges = 0, drop_high = 0, drop_low = 0;
  Combine combine = Combine::mean;
  Decimal step;
  Mark least, most;
  Use use = Use::plain;
  std::optional<Factor> weight;  // empty: a gap
  int places = 4;
  Rounding rounding = Rounding::half_up;
  Missing missing = Missing::refuse;
  std::optional<Decimal> missing_step;
  // Empty: as the points, as in every set from before there were columns for it.
  std::optional<Rounding> missing_rounding, run_rounding;
  std::optional<Mark> best;  // of a faultless showing, where no sheet says another; empty: nobody says
  // Of averaged runs, the share above which an element gets its base mark; empty: half.
  std::optional<Decimal> run_base;
  Provenance from;
  std::size_t event_row = no_row, kind_row = no_row;

  Rounding rounding_of_missing() const { return missing_rounding.value_or(rounding); }
  Rounding rounding_of_runs() const { return run_rounding.value_or(rounding); }
  Decimal base_share() const { return run_base.value_or(Decimal::from_units(Decimal::one / 2)); }
};
// A fault the coach deducts for: what it takes from the mark by size, and the most it can take from one
// element.
struct FaultRule {
  std::string code, title;
  std::optional<Mark> small, medium, large, cap;
  Provenance from;
};
struct SyncClass {
  std::string code, title;
  std::optional<Points> points;  // taken off for each; empty: a gap
  Provenance from;
};
struct Penalty {
  std::string code, title;
  std::optional<Points> points;  // taken off for each; empty: a gap
  std::optional<int> most;       // counted at most so often
  Provenance from;
};
// How far marks scatter, as a standard deviation in marks: those of the judges of one panel around their
// mean, or the good or bad day that all marks of a performance share.
struct SpreadRule {
  enum class What { judges, day } what = What::judges;
  std::string aspect, kind;  // empty: any; always empty for the day
  Decimal spread;
  Provenance from;
};

// What swimmers have to take care of, and of which routines it is said.
struct CautionRule {
  enum class When { lift, thrown, under_water, any } when = When::any;  // any: with any other caution
  std::string code, topic, text;
  Provenance from;
};

// How much run-throughs say: a value of ours or of the set, by its code.
struct EstimateRule {
  std::string code;
  Decimal value;
  Provenance from;
};

// Rows in file order, found by code.
template <class Row>
class Rows {
 public:
  void add(Row row) {
    by_code_.clear();
    rows_.push_back(std::move(row));
  }
  void index();  // after the last add
  const std::vector<Row>& all() const { return rows_; }
  std::vector<Row>& rows() { return rows_; }  // their codes stay as they are
  auto begin() const { return rows_.begin(); }
  auto end() const { return rows_.end(); }
  std::size_t size() const { return rows_.size(); }
  const Row* find(std::string_view code) const;
  std::size_t place(const Row& row) const { return static_cast<std::size_t>(&row - rows_.data()); }
  // The place of the row with this code, or no_row.
  std::size_t place_of(std::string_view code) const {
    const Row* row = find(code);
    return row != nullptr ? place(*row) : no_row;
  }
  std::vector<std::string_view> codes() const;

 private:
  std::vector<Row> rows_;
  std::vector<std::size_t> by_code_;  // places in rows_
};

struct ValueSet {
  std::string name;  // the folder's name: "kingfisher-2026"
  SetInfo info;
  Rows<Family> families;
  Rows<Part> parts;
  Rows<Kind> kinds;
  Rows<Event> events;
  std::vector<Quota> quotas;
  std::vector<PanelRule> panels;
  Rows<FaultRule> faults;
  Rows<SyncClass> sync;
  Rows<Penalty> penalties;
  std::vector<SpreadRule> spreads;
  std::vector<CautionRule>
      cautions;  // by `when`; of a loaded set with the usual ones, as far as it has no other
  std::vector<EstimateRule> estimates;  // of a loaded set with the usual ones, likewise

  // The spread of the judges' marks for this aspect and kind (empty for an aspect of the whole routine): the
  // row that names most of the two, the aspect before the kind; or nullptr.
  const SpreadRule* judges_spread(std::string_view aspect, std::string_view kind) const;
  // Of the table of estimates, where each says what it is: "slip-runs", "doubt". 0 or more; 0 where a set that was put
  // together by hand does not say it.
  Decimal estimate(std::string_view code) const;
  // The spread of the day; or nullptr.
  const SpreadRule* day_spread() const;
  // The rule for an element of `kind` in `event`: the row for that kind, else the row for every kind; or
  // nullptr.
  const PanelRule* element_panel(const Event& event, const Kind& kind) const;
  // The rules of `event` that are marked once per routine, in file order.
  std::vector<const PanelRule*> routine_panels(std::string_view event) const;
};

// How many of its values are still to fill in.
std::size_t gaps_in(const ValueSet& set);

// Of two rows with one code, the first is found.
template <class Row>
void Rows<Row>::index() {
  by_code_.resize(rows_.size());
  std::iota(by_code_.begin(), by_code_.end(), std::size_t{0});
  std::stable_sort(by_code_.begin(), by_code_.end(),
                   [&](std::size_t a, std::size_t b) { return rows_[a].code < rows_[b].code; });
}

template <class Row>
const Row* Rows<Row>::find(std::string_view code) const {
  const auto at =
      std::lower_bound(by_code_.begin(), by_code_.end(), code,
                       [&](std::size_t row, std::string_view wanted) { return rows_[row].code < wanted; });
  return at == by_code_.end() || rows_[*at].code != code ? nullptr : &rows_[*at];
}

template <class Row>
std::vector<std::string_view> Rows<Row>::codes() const {
  std::vector<std::string_view> result;
  result.reserve(rows_.size());
  for (const Row& row : rows_) result.push_back(row.code);
  return result;
}

}  // namespace landdrill
