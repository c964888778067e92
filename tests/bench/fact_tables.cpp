#include "tests/bench/fact_tables.h"

#include <algorithm>
#include <stdexcept>

namespace landdrill::bench {
namespace {

constexpr std::int64_t hundredth = Decimal::one / 100;
constexpr std::int64_t tenth = Decimal::one / 10;
constexpr std::int64_t ten_thousandth = Decimal::one / 10'000;
constexpr std::size_t aspect_lines = 1000;  // lines of a panel from here on are aspects

std::int64_t whole(Decimal value, std::int64_t unit) {
  if (value.units() % unit != 0) throw std::runtime_error("a value of the set does not fit the fact tables");
  return value.units() / unit;
}

std::size_t row_of_family(const ValueSet& set, std::string_view code) {
  return static_cast<std::size_t>(set.families.find(code) - set.families.all().data());
}

}  // namespace

std::FILE* FactTables::file(const std::string& table) {
  std::FILE*& file = files_[table];
  if (file == nullptr) file = std::fopen((folder_ / (table + ".csv")).c_str(), "w");
  if (file == nullptr) throw std::runtime_error("cannot write into " + folder_.string());
  return file;
}

template <class... Numbers>
void FactTables::row(const char* table, Numbers... numbers) {
  std::string line;
  ((line += std::to_string(numbers), line += ','), ...);
  line.back() = '\n';
  std::fputs(line.c_str(), file(table));
}

FactTables::FactTables(const std::filesystem::path& folder, const ValueSet& set) : folder_(folder) {
  std::filesystem::create_directories(folder);
  write_set(set);
}

FactTables::~FactTables() {
  for (auto& [table, file] : files_) std::fclose(file);
}

// Formulas, bases and dropping rules of this set are written out in facts.sql and facts.R; values are not.
void FactTables::write_set(const ValueSet& set) {
  for (std::size_t i = 0; i < set.parts.size(); ++i) {
    const Part& part = set.parts.all()[i];
    row("part", i, row_of_family(set, part.family), part.family == "flights" ? 1 : 0,
        whole(part.value->value(), hundredth));
  }
  for (std::size_t i = 0; i < set.kinds.size(); ++i) {
    const Kind& kind = set.kinds.all()[i];
    const int formula = kind.code == "hybrid" ? 1 : kind.code == "lift" ? 2 : kind.code == "throw" ? 3 : 0;
    row("kind", i, formula, whole(kind.base->value(), hundredth));
  }
  for (std::size_t event = 0; event < set.events.size(); ++event) {
    for (std::size_t kind = 0; kind < set.kinds.size(); ++kind) {
      const PanelRule* rule = set.element_panel(set.events.all()[event].code, set.kinds.all()[kind].code);
      if (rule != nullptr) row("element_weight", event, kind, whole(rule->weight->value(), tenth));
    }
    std::size_t aspect = 0;
    for (const PanelRule* rule : set.routine_panels(set.events.all()[event].code))
      row("aspect_weight", event, aspect++, whole(rule->weight->value(), tenth));
  }
  for (std::size_t i = 0; i < set.faults.size(); ++i) {
    const FaultRule& fault = set.faults.all()[i];
    const std::optional<Mark> sizes[] = {fault.small, fault.medium, fault.large};
    for (std::size_t size = 0; size < 3; ++size)
      if (sizes[size])
        row("fault", i, size, whole(sizes[size]->value(), hundredth), whole(fault.cap->value(), hundredth));
  }
  for (std::size_t i = 0; i < set.sync.size(); ++i)
    row("sync", i, whole(set.sync.all()[i].points->value(), ten_thousandth));
  for (std::size_t i = 0; i < set.penalties.size(); ++i) {
    const Penalty& penalty = set.penalties.all()[i];
    row("penalty", i, whole(penalty.points->value(), ten_thousandth), penalty.most.value_or(1000));
  }
}

void FactTables::add(std::uint64_t sheet, const MadeSheet& made) {
  row("routine", sheet, made.event, made.panel ? 1 : 0);
  for (std::size_t i = 0; i < made.elements.size(); ++i) {
    const MadeElement& element = made.elements[i];
    row("element", sheet, i, element.kind, element.expect * 25);
    for (const MadeUse& use : element.parts) row("part_use", sheet, i, use.row, use.times);
  }
  for (std::size_t i = 0; i < made.impressions.size(); ++i)
    row("impression", sheet, i, made.impressions[i] * 25);
  for (std::size_t i = 0; i < made.runs.size(); ++i) add_run(sheet, i + 1, made.runs[i]);
  if (made.panel) add_panel(sheet, *made.panel);
}

void FactTables::add_run(std::uint64_t sheet, std::size_t run, const MadeRun& made) {
  row("run", sheet, run, made.says_sync ? 1 : 0, made.says_penalties ? 1 : 0);
  for (const MadeRunElement& seen : made.elements) {
    row("run_element", sheet, run, seen.element, seen.base ? 1 : 0);
    for (const MadeFault& fault : seen.faults)
      row("fault_use", sheet, run, seen.element, fault.fault, fault.size, fault.times);
  }
  for (std::size_t i = 0; i < made.aspects.size(); ++i)
    row("run_aspect", sheet, run, i, made.aspects[i] * 25);
  add_uses(sheet, run, made.sync, made.penalties);
}

void FactTables::add_panel(std::uint64_t sheet, const MadePanel& made) {
  for (std::size_t i = 0; i < made.elements.size(); ++i)
    add_marks(sheet, i, made.elements[i].base, made.elements[i].marks);
  for (std::size_t i = 0; i < made.aspects.size(); ++i)
    add_marks(sheet, aspect_lines + i, false, made.aspects[i]);
  add_uses(sheet, 0, made.sync, made.penalties);
}

// A panel's sync errors and penalties are those of run 0.
void FactTables::add_uses(std::uint64_t sheet, std::size_t run, const std::vector<MadeUse>& sync,
                          const std::vector<MadeUse>& penalties) {
  for (const MadeUse& use : sync) row("sync_use", sheet, run, use.row, use.times);
  for (const MadeUse& use : penalties) row("penalty_use", sheet, run, use.row, use.times);
}

void FactTables::add_marks(std::uint64_t sheet, std::size_t line, bool base, const MadeMarks& marks) {
  if (line < aspect_lines) row("recorded_element", sheet, line, base ? 1 : 0);
  for (std::size_t judge = 0; judge < marks.size(); ++judge)
    if (marks[judge] != no_mark) row("mark", sheet, line, judge, marks[judge] * 25);
}

}  // namespace landdrill::bench
