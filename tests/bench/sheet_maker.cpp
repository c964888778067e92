#include "tests/bench/sheet_maker.h"

#include <algorithm>
#include <cassert>
#include <string_view>

#include "tests/bench/sheet_writer.h"

namespace landdrill::bench {
namespace {

// What an event of the set asks for, and how often the sheets swim it.
struct Programme {
  std::string_view event;
  int share;  // per cent
  int least_hybrids, most_hybrids, least_lifts, most_lifts, throws;
  std::string_view required;  // the family of its five required elements, if any
  bool joined;                // hybrids with connections
};
constexpr Programme programmes[] = {
    {"duet-free", 40, 4, 5, 2, 2, 0, {}, true},
    {"solo-free", 25, 5, 6, 0, 0, 0, {}, false},
    {"team-free", 20, 4, 5, 2, 2, 1, {}, true},
    {"duet-technical", 15, 1, 1, 1, 1, 0, "duet-set", false},
};

constexpr int most_of_a_family = 4;  // what the set allows in a hybrid

template <class Row>
std::size_t row_of(const Rows<Row>& rows, std::string_view code) {
  const Row* found = rows.find(code);
  assert(found != nullptr);
  return static_cast<std::size_t>(found - rows.all().data());
}

class Making {
 public:
  Making(const ValueSet& set, std::uint64_t number) : set_(set), dice_(Dice(number).next()) {}

  MadeSheet make(std::uint64_t number) {
    const Programme& programme = pick_programme();
    made_.event = row_of(set_.events, programme.event);
    add_elements(programme);
    aspects_ = set_.routine_panels(programme.event).size();
    quality_ = dice_.from_to(24, 33);
    for (std::size_t i = 0; i < aspects_; ++i) made_.impressions.push_back(near(quality_, 2));
    const int runs = dice_.percent(25) ? 0 : dice_.from_to(1, 2);
    for (int i = 0; i < runs; ++i) add_run();
    if (dice_.percent(92)) add_panel();
    made_.text = SheetWriter(set_, made_, dice_).write(number);
    return std::move(made_);
  }

 private:
  const Programme& pick_programme() {
    int left = dice_.below(100);
    const Programme* programme = programmes;
    while (left >= programme->share) left -= programme++->share;
    return *programme;
  }

  // ---- elements ----

  std::size_t part_of(std::string_view family) {
    std::vector<std::size_t> rows;
    for (std::size_t i = 0; i < set_.parts.size(); ++i)
      if (set_.parts.all()[i].family == family) rows.push_back(i);
    assert(!rows.empty());
    return rows[static_cast<std::size_t>(dice_.below(static_cast<int>(rows.size())))];
  }

  void add_part(MadeElement& element, std::string_view family, int times = 1) {
    const std::size_t row = part_of(family);
    int of_family = times;
    for (const MadeUse& use : element.parts) {
      if (use.row == row) return;
      if (set_.parts.all()[use.row].family == family) of_family += use.times;
    }
    if (of_family <= most_of_a_family) element.parts.push_back({row, times});
  }

  MadeElement& add_element(std::string_view kind) {
    MadeElement& element = made_.elements.emplace_back();
    element.kind = row_of(set_.kinds, kind);
    element.expect = dice_.from_to(24, 33);
    return element;
  }

  void add_hybrid(bool joined) {
    constexpr std::string_view others[] = {"twists", "airborne", "flexibility"};
    MadeElement& element = add_element("hybrid");
    add_part(element, "thrusts");
    add_part(element, "spins");
    add_part(element, others[dice_.below(3)], dice_.percent(15) ? 2 : 1);
    for (int more = dice_.from_to(0, 3); more > 0; --more) add_part(element, others[dice_.below(3)]);
    if (joined) add_part(element, "connections");
  }

  void add_lift() {
    MadeElement& element = add_element("lift");
    for (const std::string_view family : {"stands", "rises", "grips"}) add_part(element, family);
    for (const std::string_view family : {"turns", "shapes", "landings"})
      if (dice_.percent(50)) add_part(element, family);
  }

  void add_throw() {
    MadeElement& element = add_element("throw");
    for (const std::string_view family : {"stands", "rises", "flights", "landings"})
      add_part(element, family);
    if (dice_.percent(40)) add_part(element, "turns");
  }

  void add_elements(const Programme& programme) {
    for (const Part& part : set_.parts)
      if (!programme.required.empty() && part.family == programme.required)
        add_element("required").parts.push_back({row_of(set_.parts, part.code), 1});
    const int hybrids = dice_.from_to(programme.least_hybrids, programme.most_hybrids);
    // The set wants connections in one to three or four of the hybrids.
    for (int i = 0; i < hybrids; ++i) add_hybrid(programme.joined && i < 2);
    const int lifts = dice_.from_to(programme.least_lifts, programme.most_lifts);
    for (int i = 0; i < lifts; ++i) add_lift();
    for (int i = 0; i < programme.throws; ++i) add_throw();
  }

  // ---- runs and panels ----

  int near(int mark, int spread) { return std::clamp(mark + dice_.from_to(-spread, spread), 0, 40); }

  std::vector<MadeUse> some(std::size_t rows, int chance, int most_times) {
    std::vector<MadeUse> uses;
    for (std::size_t row = 0; row < rows; ++row)
      if (dice_.percent(chance)) uses.push_back({row, dice_.from_to(1, most_times)});
    return uses;
  }

  void add_fault(MadeRunElement& seen) {
    const auto fault = static_cast<std::size_t>(dice_.below(static_cast<int>(set_.faults.size())));
    const int size = dice_.percent(60) ? 0 : dice_.percent(80) ? 1 : 2;
    const bool has_size = size < 2 || set_.faults.all()[fault].large;
    seen.faults.push_back({fault, has_size ? size : 0, dice_.percent(10) ? 2 : 1});
  }

  void add_run() {
    MadeRun& run = made_.runs.emplace_back();
    for (std::size_t i = 0; i < made_.elements.size(); ++i) {
      if (dice_.percent(4)) continue;
      MadeRunElement& seen = run.elements.emplace_back();
      seen.element = i;
      seen.base = dice_.percent(4);
      for (int faults = dice_.from_to(0, 3); faults > 0; --faults) add_fault(seen);
    }
    if (dice_.percent(30))
      for (std::size_t i = 0; i < aspects_; ++i) run.aspects.push_back(near(quality_, 2));
    run.sync = some(set_.sync.size(), 35, 4);
    run.penalties = some(set_.penalties.size(), 2, 2);
    run.says_sync = !run.sync.empty() || dice_.percent(30);
    run.says_penalties = !run.penalties.empty() || dice_.percent(30);
  }

  MadeMarks marks_near(int mark) {
    MadeMarks marks;
    for (int& one : marks) one = near(mark, 2);
    if (dice_.percent(2)) marks[static_cast<std::size_t>(dice_.below(5))] = no_mark;
    return marks;
  }

  void add_panel() {
    MadePanel& panel = made_.panel.emplace();
    for (std::size_t i = 0; i < made_.elements.size(); ++i) {
      MadePanelElement& seen = panel.elements.emplace_back();
      seen.base = dice_.percent(5);
      seen.marks = marks_near(near(quality_, 3));
    }
    for (std::size_t i = 0; i < aspects_; ++i) panel.aspects.push_back(marks_near(quality_));
    panel.sync = some(set_.sync.size(), 40, 4);
    panel.penalties = some(set_.penalties.size(), 2, 2);
  }

  const ValueSet& set_;
  Dice dice_;
  MadeSheet made_;
  std::size_t aspects_ = 0;
  int quality_ = 28;
};

}  // namespace

// The published constants of SplitMix64 (Steele, Lea and Flood 2014).
std::uint64_t Dice::next() {
  std::uint64_t z = (state_ += 0x9E3779B97F4A7C15);
  z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
  z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
  return z ^ (z >> 31);
}

SheetMaker::SheetMaker(const ValueSet& set) : set_(set) {}

MadeSheet SheetMaker::make(std::uint64_t number) const {
  return Making(set_, number).make(number);
}

}  // namespace landdrill::bench
