#include "tables/load.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <utility>

#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/formula.h"
#include "tables/problems.h"
#include "tables/quantity.h"
#include "tables/read_table.h"
#include "usual_cautions.h"
#include "usual_estimates.h"

namespace landdrill {
namespace {

// One row of a table, its cells as values, after check_cells has found nothing wrong with them.
class RowReader {
 public:
  RowReader(const ReadTable& read, const CsvRow& row, Diagnostics& diagnostics)
      : read_(read), row_(row), diagnostics_(diagnostics) {}

  std::string text(std::string_view column) const { return std::string(read_.text(row_, column)); }
  template <class Enum>
  std::optional<Enum> choice(std::string_view column) const {
    return words::value_of<Enum>(known(column).choices, normal_choice(read_.text(row_, column)));
  }
  std::optional<int> whole(std::string_view column) const {
    return whole_from(known(column), read_.text(row_, column));
  }
  std::optional<Decimal> number(std::string_view column) const {
    return number_from(known(column), read_.text(row_, column));
  }
  template <class Quantity>
  std::optional<Quantity> quantity(std::string_view column) const {
    const auto value = number(column);
    return value ? std::optional(Quantity(*value)) : std::nullopt;
  }
  Rounding rounding() const { return choice<Rounding>("rounding").value_or(Rounding::half_up); }

  std::vector<std::string> codes(std::string_view column) const {
    std::vector<std::string> result;
    std::string_view rest = read_.text(row_, column);
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find_first_of(" \t\r\n"), rest.size());
      result.emplace_back(rest.substr(0, end));
      rest = trimmed(rest.substr(end));
    }
    return result;
  }

  std::optional<Formula> formula(std::string_view column) const {
    std::string_view text = read_.piece(row_, column);
    if (read_.text(row_, column).empty()) return std::nullopt;
    if (text.size() >= 2 && text.front() == '"') text = text.substr(1, text.size() - 2);
    FormulaRead formula = read_formula(read_.source, text);
    const bool ok = formula.diagnostics.ok();
    diagnostics_.append(std::move(formula.diagnostics));
    return ok ? std::optional(std::move(formula.formula)) : std::nullopt;
  }

  Provenance from() const {
    return {read_.table->name, read_.key(row_), row_.line, text("source"),
            choice<Status>("status").value_or(Status::memory)};
  }

 private:
  const Column& known(std::string_view column) const { return *find_column(*read_.table, column); }

  const ReadTable& read_;
  const CsvRow& row_;
  Diagnostics& diagnostics_;
};

void add_info(const RowReader& row, ValueSet& set) {
  set.info = {row.text("title"), row.text("edition"), row.text("note"), row.from()};
}

void add_family(const RowReader& row, ValueSet& set) {
  set.families.add({row.text("code"), row.text("title"), row.codes("kinds"), row.whole("most_in_element"),
                    row.whole("most_in_routine"), row.from()});
}

void add_part(const RowReader& row, ValueSet& set) {
  set.parts.add({row.text("code"), row.text("family"), row.text("title"), row.quantity<Difficulty>("value"),
                 row.from()});
}

void add_kind(const RowReader& row, ValueSet& set) {
  set.kinds.add({.code = row.text("code"),
                 .title = row.text("title"),
                 .formula = row.formula("formula"),
                 .base = row.quantity<Difficulty>("base"),
                 .slip = row.number("slip"),
                 .least_parts = row.whole("least_parts"),
                 .most_parts = row.whole("most_parts"),
                 .most_same = row.whole("most_same"),
                 .places = row.whole("places").value_or(Kind().places),
                 .rounding = row.rounding(),
                 .caution = row.choice<Caution>("caution").value_or(Caution::none),
                 .from = row.from()});
}

void add_event(const RowReader& row, ValueSet& set) {
  set.events.add({row.text("code"), row.text("title"), row.whole("least_swimmers"),
                  row.whole("most_swimmers"), row.number("seconds"), row.number("tolerance"), row.from()});
}

void add_quota(const RowReader& row, ValueSet& set) {
  set.quotas.push_back({row.text("event"), row.text("kind"), row.text("family"), row.whole("least"),
                        row.whole("most"), row.from()});
}

enum class Per { element, routine };

void add_panel(const RowReader& row, ValueSet& set) {
  set.panels.push_back({.event = row.text("event"),
                        .aspect = row.text("aspect"),
                        .kind = row.text("kind"),
                        .title = row.text("title"),
                        .per_element = row.choice<Per>("per") == Per::element,
                        .judges = row.whole("judges").value_or(0),
                        .drop_high = row.whole("drop_high").value_or(0),
                        .drop_low = row.whole("drop_low").value_or(0),
                        .combine = row.choice<Combine>("combine").value_or(Combine::mean),
                        .step = row.number("step").value_or(Decimal()),
                        .least = row.quantity<Mark>("least").value_or(Mark()),
                        .most = row.quantity<Mark>("most").value_or(Mark()),
                        .use = row.choice<Use>("use").value_or(Use::plain),
                        .weight = row.quantity<Factor>("weight"),
                        .places = row.whole("places").value_or(PanelRule().places),
                        .rounding = row.rounding(),
                        .missing = row.choice<Missing>("missing").value_or(Missing::refuse),
                        .missing_step = row.number("missing_step"),
                        .missing_rounding = row.choice<Rounding>("missing_rounding"),
                        .run_rounding = row.choice<Rounding>("run_rounding"),
                        .best = row.quantity<Mark>("best"),
                        .run_base = row.number("run_base"),
                        .from = row.from()});
}

void add_fault(const RowReader& row, ValueSet& set) {
  set.faults.add({row.text("code"), row.text("title"), row.quantity<Mark>("small"),
                  row.quantity<Mark>("medium"), row.quantity<Mark>("large"), row.quantity<Mark>("cap"),
                  row.from()});
}

void add_sync_class(const RowReader& row, ValueSet& set) {
  set.sync.add({row.text("code"), row.text("title"), row.quantity<Points>("points"), row.from()});
}

void add_penalty(const RowReader& row, ValueSet& set) {
  set.penalties.add(
      {row.text("code"), row.text("title"), row.quantity<Points>("points"), row.whole("most"), row.from()});
}

void add_spread(const RowReader& row, ValueSet& set) {
  set.spreads.push_back({.what = row.choice<SpreadRule::What>("what").value_or(SpreadRule::What::judges),
                         .aspect = row.text("aspect"),
                         .kind = row.text("kind"),
                         .spread = row.number("spread").value_or(Decimal()),
                         .from = row.from()});
}

void add_caution(const RowReader& row, ValueSet& set) {
  set.cautions.push_back({row.choice<CautionRule::When>("when").value_or(CautionRule::When::any),
                          row.text("code"), row.text("topic"), row.text("text"), row.from()});
}

void add_estimate(const RowReader& row, ValueSet& set) {
  set.estimates.push_back({row.text("code"), row.number("value").value_or(Decimal()), row.from()});
}

struct RowAdder {
  std::string_view table;
  void (*add)(const RowReader&, ValueSet&);
};
constexpr std::array<RowAdder, 13> row_adders = {{{"set", add_info},
                                                  {"families", add_family},
                                                  {"parts", add_part},
                                                  {"kinds", add_kind},
                                                  {"events", add_event},
                                                  {"quotas", add_quota},
                                                  {"panels", add_panel},
                                                  {"faults", add_fault},
                                                  {"sync", add_sync_class},
                                                  {"penalties", add_penalty},
                                                  {"spreads", add_spread},
                                                  {"cautions", add_caution},
                                                  {"estimates", add_estimate}}};

void add_rows(const ReadTable& read, ValueSet& set, Diagnostics& diagnostics) {
  const auto adder = std::find_if(row_adders.begin(), row_adders.end(), [&](const RowAdder& candidate) {
    return candidate.table == read.table->name;
  });
  for (std::size_t i = 0; i < read.csv.rows.size(); ++i) {
    const CsvRow& row = read.csv.rows[i];
    if (!is_blank(row) && !row.broken && !read.in_error[i])
      adder->add(RowReader(read, row, diagnostics), set);
  }
}

// A row of the set stands in the place of the usual one of its code.
template <class Row>
void add_usual(const std::vector<Row>& usual, std::vector<Row>& rows) {
  for (Row& own : std::exchange(rows, usual)) {
    const auto same =
        std::find_if(rows.begin(), rows.end(), [&](const Row& one) { return one.code == own.code; });
    same == rows.end() ? rows.push_back(std::move(own)) : void(*same = std::move(own));
  }
}

// What every set says that has no row of its own for it.
const ValueSet& usual() {
  static const ValueSet usual = [] {
    ValueSet set;
    for (const TableFile& file :
         {TableFile{"cautions", usual_cautions_csv}, TableFile{"estimates", usual_estimates_csv}}) {
      Diagnostics diagnostics;
      const Source source{"usual-" + file.file + ".csv", file.text};
      ReadTable table = read_table(*find_table(file.file), source, diagnostics);
      check_cells(table, diagnostics);
      add_rows(table, set, diagnostics);
      assert(diagnostics.list().empty());
    }
    return set;
  }();
  return usual;
}

void add_usual_rows(ValueSet& set) {
  add_usual(usual().cautions, set.cautions);
  add_usual(usual().estimates, set.estimates);
  std::stable_sort(set.cautions.begin(), set.cautions.end(),
                   [](const CautionRule& a, const CautionRule& b) { return a.when < b.when; });
}

void index(ValueSet& set) {
  set.families.index();
  set.parts.index();
  set.kinds.index();
  set.events.index();
  set.faults.index();
  set.sync.index();
  set.penalties.index();
}

// What rows say of other rows; a code that is none is reported by check.
void tie_rows(ValueSet& set) {
  for (Part& part : set.parts.rows()) part.family_row = set.families.place_of(part.family);
  for (Quota& quota : set.quotas) {
    quota.event_row = set.events.place_of(quota.event);
    quota.kind_row = set.kinds.place_of(quota.kind);
    quota.family_row = set.families.place_of(quota.family);
  }
  for (PanelRule& rule : set.panels) {
    rule.event_row = set.events.place_of(rule.event);
    rule.kind_row = set.kinds.place_of(rule.kind);
  }
}

std::string_view stem_of(std::string_view file) {
  return file.substr(0, file.find('.'));
}

bool is_table_file(std::string_view file) {
  return file.ends_with(".csv") && find_table(stem_of(file));
}

// The file that was probably meant to be the table: "event.csv", "Events.csv".
std::string_view nearly_named(const TableFiles& files, const Table& table) {
  std::vector<std::string_view> stems;
  for (const TableFile& file : files.files) {
    if (!is_table_file(file.file)) stems.push_back(stem_of(file.file));
  }
  const auto near = words::nearest(table.name, stems, 1);
  for (const TableFile& file : files.files) {
    if (!near.empty() && stem_of(file.file).data() == near.front().data()) return file.file;
  }
  return {};
}

void complain_of_absent(const TableFiles& files, const Table& table, Diagnostics& diagnostics) {
  const std::string file = file_of(table);
  const std::string_view near = nearly_named(files, table);
  if (table.required) {
    diagnostics.add(diagnostic_about(
        files.place + file, {Problem::missing_table, "no such file", file + ": " + std::string(table.meaning),
                             near.empty() ? "" : "is " + std::string(near) + " meant to be " + file + "?"}));
  } else if (!near.empty()) {
    diagnostics.add(diagnostic_about(files.place + std::string(near),
                                     {Problem::misnamed_table, "the file " + std::string(near), file,
                                      "it is not read as long as it is not called " + file}));
  }
}

std::vector<ReadTable> read_tables(const TableFiles& files, Diagnostics& diagnostics) {
  std::vector<ReadTable> tables;
  for (const Table& table : value_tables()) {
    if (const TableFile* file = files.find(file_of(table))) {
      tables.push_back(read_table(table, {files.place + file->file, file->text}, diagnostics));
    } else {
      complain_of_absent(files, table, diagnostics);
    }
  }
  return tables;
}

}  // namespace

const TableFile* TableFiles::find(std::string_view file) const {
  const auto at =
      std::find_if(files.begin(), files.end(), [&](const TableFile& one) { return one.file == file; });
  return at == files.end() ? nullptr : &*at;
}

bool same_files(std::vector<TableFile> one, std::vector<TableFile> other) {
  const auto by_name = [](const TableFile& a, const TableFile& b) { return a.file < b.file; };
  std::sort(one.begin(), one.end(), by_name);
  std::sort(other.begin(), other.end(), by_name);
  return std::equal(
      one.begin(), one.end(), other.begin(), other.end(),
      [](const TableFile& a, const TableFile& b) { return a.file == b.file && a.text == b.text; });
}

const std::vector<CautionRule>& usual_cautions() {
  return usual().cautions;
}

Loaded load(const TableFiles& files) {
  Loaded loaded;
  ValueSet set;
  set.name = files.name;
  std::vector<ReadTable> tables = read_tables(files, loaded.diagnostics);
  for (ReadTable& table : tables) {
    if (!table.usable) continue;
    check_cells(table, loaded.diagnostics);
    add_rows(table, set, loaded.diagnostics);
  }
  add_usual_rows(set);
  index(set);
  tie_rows(set);
  check(set, tables, loaded.diagnostics);
  loaded.diagnostics.sort();
  if (loaded.diagnostics.ok()) loaded.set = std::move(set);
  return loaded;
}

}  // namespace landdrill
