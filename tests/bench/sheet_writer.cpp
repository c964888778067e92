#include "tests/bench/sheet_writer.h"

#include <algorithm>

namespace landdrill::bench {
namespace {

constexpr std::string_view titles[] = {"Lantern",     "Undertow",    "Weathervane", "Anchor chain",
                                       "Slack Water", "Beacon",      "Mooring",     "Sluice",
                                       "Mill pond",   "First frost", "Ferryman",    "Reed bed",
                                       "Low bridge",  "Rain gauge",  "Night boat",  "Long shadow"};
constexpr std::string_view places[] = {"arms", "travel", "surface", "float", "scull", "boost"};
constexpr std::string_view comments[] = {"# ask again after the next run", "# as agreed with the swimmers",
                                         "# the music slows down here"};
constexpr std::string_view sizes[] = {"small", "medium", "large"};

std::string_view code_of_kind(const ValueSet& set, const MadeElement& element) {
  return set.kinds.all()[element.kind].code;
}

}  // namespace

void SheetWriter::mark(int quarters) {
  constexpr std::string_view after[] = {".00", ".25", ".50", ".75"};
  number(quarters / 4);
  text_ += after[quarters % 4];
}

void SheetWriter::title() {
  text_.append(" \"").append(titles[dice_.below(16)]).append("\"\n");
}

void SheetWriter::header(std::uint64_t number) {
  const Event& event = set_.events.all()[made_.event];
  const int tempo = dice_.from_to(116, 152);
  std::string seven = std::to_string(number);
  seven.insert(0, 7 - std::min<std::size_t>(7, seven.size()), '0');
  if (dice_.percent(30)) text_.append(comments[dice_.below(3)]).append("\n\n");
  text_.append("routine  \"")
      .append(titles[dice_.below(16)])
      .append(" ")
      .append(seven)
      .append("\"\nevent    ");
  text_.append(event.code).append("\nvalues   kingfisher-2026\ntempo    ").append(std::to_string(tempo));
  text_ += dice_.percent(20) ? "  # beats a minute\n" : "\n";
  text_.append("swimmers ").append(std::to_string(*event.most_swimmers)).append("\n\n");
  counts_left_ = static_cast<int>(event.seconds->units() / Decimal::one) * tempo / 60;
}

// Parts, counts, expected mark and chance: of an element as written.
void SheetWriter::variant(const MadeElement& element, std::string_view indent) {
  text_.append(indent).append("parts  ");
  for (std::size_t i = 0; i < element.parts.size(); ++i) {
    if (i > 0) text_ += ", ";
    text_ += set_.parts.all()[element.parts[i].row].code;
    if (element.parts[i].times > 1) text_.append(" x").append(std::to_string(element.parts[i].times));
  }
  const int under = dice_.from_to(4, 20), up = dice_.from_to(2, 8);
  text_.append("\n").append(indent).append("counts ").append(std::to_string(under)).append(" under, ");
  text_.append(std::to_string(up)).append(" surface\n").append(indent).append("expect ");
  mark(element.expect);
  text_ += dice_.percent(10) ? "  # to be seen\n" : "\n";
  if (dice_.percent(50))
    text_.append(indent).append("slip   ").append(std::to_string(dice_.from_to(1, 25))).append("%\n");
  if (indent.size() == 2) counts_left_ -= under + up;
}

void SheetWriter::option(const MadeElement& element) {
  MadeElement other = element;
  // Every kind of the set can do with four parts, and not every one with fewer.
  if (other.parts.size() > 4) other.parts.pop_back();
  other.expect = std::min(other.expect + 2, 40);
  text_ += "  option \"safer\"\n";
  variant(other, "    ");
}

void SheetWriter::element(std::size_t index) {
  const MadeElement& element = made_.elements[index];
  text_.append("element ").append(std::to_string(index + 1)).append(" ").append(code_of_kind(set_, element));
  title();
  variant(element, "  ");
  if (dice_.percent(20)) option(element);
  text_ += "\n";
}

void SheetWriter::passage(int counts) {
  text_ += "passage";
  title();
  const int first = counts / 2;
  text_.append("  counts ")
      .append(std::to_string(first))
      .append(" ")
      .append(places[dice_.below(6)])
      .append(", ");
  text_.append(std::to_string(counts - first)).append(" ").append(places[dice_.below(6)]).append("\n\n");
}

void SheetWriter::routine() {
  for (std::size_t i = 0; i < made_.elements.size(); ++i) {
    element(i);
    if (i + 1 == made_.elements.size() || !dice_.percent(35)) continue;
    const int counts = dice_.from_to(8, 24);
    passage(counts);
    counts_left_ -= counts;
  }
  if (counts_left_ > 0) passage(counts_left_);
  text_ += "impression ";
  const auto panels = set_.routine_panels(set_.events.all()[made_.event].code);
  for (std::size_t i = 0; i < panels.size(); ++i) {
    if (i > 0) text_ += ", ";
    text_.append(panels[i]->aspect).append(" ");
    mark(made_.impressions[i]);
  }
  text_ += "\n";
}

// ---- runs and panels ----

template <class Row>
void SheetWriter::uses(std::string_view keyword, const std::vector<MadeUse>& uses, const Rows<Row>& rows) {
  text_.append("  ").append(keyword).append(": ");
  if (uses.empty()) text_ += "none";
  for (std::size_t i = 0; i < uses.size(); ++i) {
    if (i > 0) text_ += ", ";
    text_ += rows.all()[uses[i].row].code;
    if (uses[i].times > 1) text_.append(" x").append(std::to_string(uses[i].times));
  }
  text_ += "\n";
}

void SheetWriter::run_element(const MadeRunElement& seen) {
  // A lost part means the base mark, as the word `base` does.
  const bool lost = seen.base && dice_.percent(50);
  text_.append("  element ")
      .append(std::to_string(seen.element + 1))
      .append(seen.base && !lost ? " base: " : ": ");
  if (seen.faults.empty() && !lost) text_ += "clean";
  for (std::size_t i = 0; i < seen.faults.size(); ++i) {
    const MadeFault& fault = seen.faults[i];
    if (i > 0) text_ += ", ";
    text_.append(set_.faults.all()[fault.fault].code).append(" ").append(sizes[fault.size]);
    if (fault.times > 1) text_.append(" x").append(std::to_string(fault.times));
  }
  const auto& parts = made_.elements[seen.element].parts;
  if (lost)
    text_.append(seen.faults.empty() ? "lost " : ", lost ").append(set_.parts.all()[parts[0].row].code);
  text_ += "\n";
}

void SheetWriter::run(const MadeRun& run, int day) {
  text_.append("\nrun 2026-04-").append(std::to_string(day));
  title();
  for (const MadeRunElement& seen : run.elements) run_element(seen);
  const auto panels = set_.routine_panels(set_.events.all()[made_.event].code);
  for (std::size_t i = 0; i < run.aspects.size(); ++i) {
    text_.append("  ").append(panels[i]->aspect).append(": ");
    mark(run.aspects[i]);
    text_ += "\n";
  }
  if (run.says_sync) uses("sync", run.sync, set_.sync);
  if (run.says_penalties) uses("penalty", run.penalties, set_.penalties);
}

void SheetWriter::marks(const MadeMarks& marks) {
  for (const int one : marks) {
    text_ += " ";
    if (one == no_mark) {
      text_ += "-";
    } else {
      mark(one);
    }
  }
  text_ += "\n";
}

void SheetWriter::panel(const MadePanel& panel) {
  text_ += "\npanel 2026-05-09";
  title();
  for (std::size_t i = 0; i < panel.elements.size(); ++i) {
    text_.append("  element ").append(std::to_string(i + 1)).append(panel.elements[i].base ? " base:" : ":");
    marks(panel.elements[i].marks);
  }
  const auto rules = set_.routine_panels(set_.events.all()[made_.event].code);
  for (std::size_t i = 0; i < panel.aspects.size(); ++i) {
    text_.append("  ").append(rules[i]->aspect).append(":");
    marks(panel.aspects[i]);
  }
  if (!panel.sync.empty()) uses("sync", panel.sync, set_.sync);
  if (!panel.penalties.empty()) uses("penalty", panel.penalties, set_.penalties);
}

std::string SheetWriter::write(std::uint64_t number) {
  text_.reserve(4096);
  header(number);
  routine();
  int day = dice_.from_to(10, 15);
  for (const MadeRun& one : made_.runs) run(one, day += 5);
  if (made_.panel) panel(*made_.panel);
  text_ += "\n";
  return std::move(text_);
}

}  // namespace landdrill::bench
