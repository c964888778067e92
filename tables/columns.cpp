#include "tables/columns.h"

#include "tables/ties.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr bool required = true, optional = false;

// What the cells of a choice may say, in the order of the enums of value_set.h.
constexpr std::string_view with_caution[] = {"lift", "throw"}, per_what[] = {"element", "routine"},
                           ways_to_combine[] = {"mean", "sum"},
                           uses[] = {"times-difficulty", "weighted", "plain"},
                           ways_with_missing[] = {"refuse", "mean", "fewer"},
                           what_scatters[] = {"judges", "day"},
                           cautioned[] = {"lift", "throw", "under-water", "any"},
                           estimated[] = {"slip-runs",    "doubt",         "expect-off",
                                          "spread-marks", "noticed-total", "noticed-chance"};

constexpr Column source_column = {"source", Cell::text, required, "where the fact is from"};
constexpr Column status_column = {"status", Cell::choice, required, "how far it can be trusted",
                                  status_words};

constexpr Column code(std::string_view meaning) {
  return {"code", Cell::code, required, meaning};
}
constexpr Column title(std::string_view meaning) {
  return {"title", Cell::text, optional, meaning};
}
constexpr Column number(std::string_view name, std::string_view meaning) {
  return {name, Cell::number, optional, meaning};
}
constexpr Column whole(std::string_view name, std::string_view meaning, int least, int most = 1'000'000) {
  return {.name = name,
          .holds = Cell::whole,
          .required = optional,
          .meaning = meaning,
          .least = least,
          .most = most};
}
constexpr Column choice(std::string_view name, bool needed, std::string_view meaning,
                        std::span<const std::string_view> choices) {
  return {name, Cell::choice, needed, meaning, choices};
}
constexpr Column row_of(std::string_view table, std::string_view name, bool needed,
                        std::string_view meaning) {
  return {.name = name, .holds = Cell::code, .required = needed, .meaning = meaning, .refers_to = table};
}
constexpr Column needed(Column column) {
  column.required = true;
  return column;
}
constexpr Column gap(Column column) {
  column.gap = true;
  return column;
}
constexpr Column above_zero(Column column) {
  column.above_zero = true;
  return column;
}

constexpr Column set_columns[] = {
    {"title", Cell::text, required, "the name of the set as it is printed"},
    {"edition", Cell::text, optional, "the edition of the rules, such as a year"},
    {"note", Cell::text, optional, "what a reader has to know about the set"},
    source_column,
    status_column};

constexpr Column family_columns[] = {
    code("what parts and formulas write for the family"),
    title("the family in words"),
    {"kinds", Cell::codes, optional, "the kinds of element its parts may stand in; empty: any", {}, "kinds"},
    whole("most_in_element", "parts of this family in one element, at most", 1),
    whole("most_in_routine", "parts of this family in the routine, at most", 1),
    source_column,
    status_column};

constexpr Column part_columns[] = {code("what the sheet writes for the part"),
                                   row_of("families", "family", optional, "the family it belongs to"),
                                   title("the part in words"),
                                   gap(number("value", "what it is worth; empty: a gap to fill in")),
                                   source_column,
                                   status_column};

constexpr Column kind_columns[] = {
    code("what the sheet writes for the kind of element"),
    title("the kind in words"),
    gap({"formula", Cell::formula, optional, "the difficulty from the parts; empty: a gap to fill in"}),
    gap(number("base", "the base mark, a difficulty; empty: a gap to fill in")),
    whole("least_parts", "parts in an element, at least", 0),
    whole("most_parts", "parts in an element, at most", 1),
    whole("most_same", "parts of one code in an element, at most", 1),
    whole("places", "decimal places of a declared difficulty; empty: 6", 0, 6),
    choice("rounding", optional, "how a declared difficulty is rounded; empty: half-up", rounding_words),
    number("slip", "the chance of the base mark where no sheet says one, in per cent; empty: 0"),
    choice("caution", optional, "which caution a report prints", with_caution),
    source_column,
    status_column};

constexpr Column event_columns[] = {code("what the sheet writes for the event"),
                                    title("the event in words"),
                                    whole("least_swimmers", "swimmers, at least", 1),
                                    whole("most_swimmers", "swimmers, at most", 1),
                                    above_zero(number("seconds", "how long the routine is to last")),
                                    number("tolerance", "seconds by which it may be longer or shorter"),
                                    source_column,
                                    status_column};

constexpr Column quota_columns[] = {
    row_of("events", "event", required, "the event that wants it"),
    row_of("kinds", "kind", optional, "the kind of element; empty: any"),
    row_of("families", "family", optional, "the family of which the element holds a part; empty: any"),
    whole("least", "elements, at least", 0),
    whole("most", "elements, at most", 0),
    source_column,
    status_column};

constexpr Column panel_columns[] = {
    row_of("events", "event", required, "the event that is marked"),
    {"aspect", Cell::code, required, "what the panel marks: execution, choreography ..."},
    row_of("kinds", "kind", optional, "for this kind of element only; empty: every kind"),
    title("the aspect in words"),
    choice("per", required, "marked for each element, or once for the routine", per_what),
    needed(whole("judges", "judges of the panel", 1, 99)),
    whole("drop_high", "highest marks that do not count", 0, 99),
    whole("drop_low", "lowest marks that do not count", 0, 99),
    choice("combine", required, "what is made of the kept marks", ways_to_combine),
    needed(above_zero(number("step", "from one mark to the next"))),
    needed(number("least", "the least mark")),
    needed(above_zero(number("most", "the highest mark"))),
    choice("use", required, "how the marks become points", uses),
    gap(number("weight", "what the rule multiplies by; empty: a gap to fill in")),
    whole("places", "decimal places of the points; empty: 4", 0, 6),
    choice("rounding", optional, "how the points are rounded; empty: half-up", rounding_words),
    choice("missing", optional,
           "when a judge is missing: an error, the mean of the others, or fewer marks; empty: refuse",
           ways_with_missing),
    above_zero(number("missing_step", "the step to which that mean is rounded")),
    choice("missing_rounding", optional, "how that mean is rounded; empty: as the points", rounding_words),
    choice("run_rounding", optional,
           "how the mark of a run, or the mean of several, is rounded to the step; empty: as the points",
           rounding_words),
    number("best",
           "the mark of a faultless showing, from which a run's deductions are taken; empty: the highest"),
    number("run_base", "of averaged runs, the share above which the base mark is credited; empty: 0.5"),
    source_column,
    status_column};

constexpr Column fault_columns[] = {code("what the sheet writes for the fault"),
                                    title("the fault in words"),
                                    number("small", "what a small one takes from the mark"),
                                    number("medium", "what a medium one takes"),
                                    number("large", "what a large one takes"),
                                    number("cap", "what it takes from one element at most"),
                                    source_column,
                                    status_column};

constexpr Column sync_columns[] = {
    code("what the sheet writes for the class of sync error"), title("the class in words"),
    gap(number("points", "points taken off for each; empty: a gap to fill in")), source_column,
    status_column};

constexpr Column penalty_columns[] = {
    code("what the sheet writes for the penalty"),
    title("the penalty in words"),
    gap(number("points", "points taken off for each; empty: a gap to fill in")),
    whole("most", "counted at most so often", 1),
    source_column,
    status_column};

constexpr Column spread_columns[] = {
    choice("what", required,
           "the marks of the judges of one panel, or the good or bad day that all marks share",
           what_scatters),
    {"aspect", Cell::code, optional, "for this aspect only; empty: every aspect"},
    row_of("kinds", "kind", optional, "for this kind of element only; empty: every kind"),
    needed(number("spread", "how far they scatter, as a standard deviation in marks")),
    source_column,
    status_column};

constexpr Column caution_columns[] = {
    code("names the caution; the code of a usual one puts this row in its place"),
    choice("when", required,
           "said of a routine with a lift, with a throw, with time under water, or with any of these",
           cautioned),
    {"topic", Cell::text, optional, "the words before the colon; rows with the same text share it"},
    {"text", Cell::text, required, "what to take care of"},
    source_column,
    status_column};

constexpr Column estimate_columns[] = {
    choice("code", required, "what the value is for; the row stands in the place of the usual one",
           estimated),
    needed(number("value", "the value")),
    {"text", Cell::text, optional, "what it does"},
    source_column,
    status_column};

constexpr Table all_tables[] = {
    {"set", "what the set is, in one row", set_columns, 0, required},
    {"families", "the families of parts and their limits", family_columns, 1, optional},
    {"parts", "the parts of elements and what they are worth", part_columns, 1, optional},
    {"kinds", "the kinds of element and how their difficulty is worked out", kind_columns, 1, optional},
    {"events", "the events, their swimmers and their time", event_columns, 1, required},
    {"quotas", "how many elements of which kind an event wants", quota_columns, 3, optional},
    {"panels", "who marks what, and how marks become points", panel_columns, 3, required},
    {"faults", "what the coach takes from the mark for a fault", fault_columns, 1, optional},
    {"sync", "the classes of sync error", sync_columns, 1, optional},
    {"penalties", "points off for breaking a rule", penalty_columns, 1, optional},
    {"spreads", "how far the marks of judges and the days of swimmers scatter", spread_columns, 3, optional},
    {"cautions", "what swimmers have to take care of, beside or in the place of what is always said",
     caution_columns, 1, optional},
    {"estimates", "how much run-throughs say, beside or in the place of the usual values", estimate_columns,
     1, optional},
};

}  // namespace

std::span<const Table> value_tables() {
  return all_tables;
}

const Table* find_table(std::string_view name) {
  for (const Table& table : all_tables) {
    if (table.name == name) return &table;
  }
  return nullptr;
}

std::string file_of(const Table& table) {
  return std::string(table.name) + ".csv";
}

const Column* find_column(const Table& table, std::string_view name) {
  for (const Column& column : table.columns) {
    if (column.name == name) return &column;
  }
  return nullptr;
}

}  // namespace landdrill
