#include "tests/unit/kit/planning_kit.h"

#include <algorithm>

#include "engine/chances/risk.h"
#include "engine/routine/timing.h"

namespace landdrill::kit {
namespace {

std::string quarter(std::int64_t quarters) {
  return Decimal::from_units(quarters * 250'000).text();
}

std::string counts(Dice& dice) {
  const std::string eights = std::to_string(8 * dice.from_to(1, 4)),
                    more = std::to_string(8 * dice.from_to(1, 3));
  switch (dice.from_to(0, 4)) {
    case 0:
      return "counts " + eights + " under\n";
    case 1:
      return "counts " + eights + " surface\n";
    case 2:
      return "counts " + eights + " under, " + more + " surface\n";
    case 3:
      return "counts " + more + " surface, " + eights + " under\n";
    default:
      return "counts " + eights + " under, 8 surface, " + more + " under\n";
  }
}

MadeSheet::Way way(Dice& dice, const std::string& kind, const std::string& event) {
  static const char* const hybrids[] = {"spin-a, hold", "spin-b, hold", "hold x2", "spin-a, spin-b",
                                        "spin-b x2", "spin-a x2, hold", "spin-b, hold x2",
                                        // These two break a limit within the element.
                                        "spin-a x2, spin-b", "spin-a, hold x3"};
  MadeSheet::Way made;
  if (kind == "hybrid") {
    made.lines = std::string("parts ") + hybrids[dice.from_to(0, 8)] + "\n";
  } else if (kind == "figure") {
    made.lines = dice.from_to(0, 1) == 0 ? "parts heron\n" : "parts otter\n";
  } else {
    made.lines = "difficulty " + Decimal::from_units(dice.from_to(10, 30) * 100'000).text() + "\n";
  }
  if (event == "open") made.lines += counts(dice);
  made.lines += "expect " +
                (event == "session" ? Decimal::from_units(dice.from_to(50, 90) * 100'000).text()
                                    : quarter(dice.from_to(20, 36))) +
                "\n";
  if (kind != "figure" && dice.from_to(0, 1) == 0)
    made.lines += "slip " + std::to_string(dice.from_to(1, 60)) + "%\n";
  return made;
}

void add_limits(Dice& dice, MadeSheet& made) {
  const auto some = [&] { return dice.from_to(0, 2) == 0; };
  const auto number = [&](std::int64_t least, std::int64_t most) {
    return std::to_string(dice.from_to(least, most));
  };
  if (some()) made.limits.push_back("limit throw most " + number(0, 1));
  if (some()) made.limits.push_back("limit hybrid least " + number(0, 2));
  if (some()) made.limits.push_back("limit spins most " + number(1, 3));
  if (some()) made.limits.push_back("limit spin-b most " + number(0, 3));
  if (some()) made.limits.push_back("limit elements least " + number(1, 3) + " most " + number(3, 4));
  if (some()) made.limits.push_back("limit seconds most " + number(55, 64) + ".5");
  if (some()) made.limits.push_back("limit under least " + number(4, 12) + " most " + number(16, 50));
  if (some()) made.limits.push_back("limit breath most " + number(8, 24));
}

Decimal half_seconds(int at_120) {
  return Decimal::from_units(std::int64_t{at_120} * 500'000);
}

// Counted by hand from the sheet that holds only this programme; the tempo is 120.
Decimal counted(const OwnLimit& own, const Routine& routine) {
  using Of = OwnLimit::Of;
  const Timing time = timing(routine, {});
  if (own.of == Of::seconds) return half_seconds(time.counts);
  if (own.of == Of::under) return half_seconds(time.under);
  if (own.of == Of::breath) return half_seconds(time.longest_under);
  std::int64_t number = 0;
  for (const Element& element : routine.elements) {
    if (own.of == Of::elements) ++number;
    if (own.of == Of::kind && element.kind->code == own.name) ++number;
    bool holds = false;
    for (const PartUse& use : element.options.front().parts) {
      holds |= use.part->family == own.name;
      if (own.of == Of::part && use.part->code == own.name) number += use.times;
    }
    if (own.of == Of::family && holds) ++number;
  }
  return Decimal::whole(number);
}

}  // namespace

std::string MadeSheet::text() const {
  std::string result = head;
  for (const std::string& limit : limits) result += limit + "\n";
  for (std::size_t i = 0; i < elements.size(); ++i) {
    const Swum& element = elements[i];
    result += "element " + std::to_string(i + 1) + " " + element.kind + "\n" + element.ways.front().lines;
    if (element.optional) result += "optional\n";
    if (element.stays) result += "stays\n";
    for (std::size_t way = 1; way < element.ways.size(); ++way) {
      result += "option \"way " + std::to_string(way) + "\"\n" + element.ways[way].lines;
    }
    if (i == 1) result += passage;
  }
  return result + tail;
}

std::string MadeSheet::text(const std::vector<std::size_t>& options) const {
  std::string result = head;
  for (std::size_t i = 0; i < elements.size(); ++i) {
    if (options[i] != leave_out) {
      result += "element " + std::to_string(i + 1) + " " + elements[i].kind + "\n" +
                elements[i].ways[options[i]].lines;
    }
    if (i == 1) result += passage;
  }
  return result + tail;
}

MadeSheet made_up_sheet(Dice& dice, std::string_view event) {
  MadeSheet made;
  const std::string of(event);
  made.head = "routine \"Made up\"\nevent " + of + "\nvalues pond\n" + (of == "open" ? "tempo 120\n" : "");
  const std::int64_t size = dice.from_to(3, 4);
  for (std::int64_t i = 0; i < size; ++i) {
    auto& element = made.elements.emplace_back();
    element.kind = of == "session" ? "figure" : dice.from_to(0, 2) == 0 ? "throw" : "hybrid";
    for (std::int64_t way_number = dice.from_to(1, 3); way_number > 0; --way_number) {
      element.ways.push_back(way(dice, element.kind, of));
    }
    element.optional = i > 0 && dice.from_to(0, 2) == 0;
    element.stays = !element.optional && dice.from_to(0, 4) == 0;
  }
  if (of == "open") {
    made.passage = "passage \"Across\"\ncounts " + std::to_string(8 * dice.from_to(1, 6)) +
                   (dice.from_to(0, 2) == 0 ? " under" : " surface") + "\n";
    made.tail = "impression choreography 7.5, performance 8\n";
    add_limits(dice, made);
  }
  return made;
}

MadeSheet made_up_weighted(Dice& dice, std::string_view event) {
  const bool mixed = event == "mixed";
  MadeSheet made;
  made.head = "routine \"Made up\"\nevent " + std::string(event) + "\nvalues pond\n";
  if (mixed) made.tail = "impression choreography 7.5\n";
  static const char* const hybrids[] = {"spin-a, hold", "spin-b, hold", "hold x2", "spin-a, spin-b",
                                        "spin-a x2, spin-b"};
  const std::int64_t size = dice.from_to(3, 5);
  for (std::int64_t i = 0; i < size; ++i) {
    auto& element = made.elements.emplace_back();
    // A session has two figures; what else is swum there is weighted with them.
    element.kind = i < 2 || (mixed && dice.from_to(0, 1) == 0) ? "figure" : "hybrid";
    for (std::int64_t number = dice.from_to(1, 4); number > 0; --number) {
      std::string lines = element.kind == "hybrid"  ? std::string("parts ") + hybrids[dice.from_to(0, 4)]
                          : dice.from_to(0, 1) == 0 ? "parts heron"
                                                    : "parts otter";
      lines += "\nexpect " + Decimal::from_units(dice.from_to(30, 95) * 100'000).text() + "\n";
      static const char* const slips[] = {"0%", "100%", "7%", "12.5%", "33.333333%", "60%"};
      if (element.kind == "hybrid") lines += std::string("slip ") + slips[dice.from_to(0, 5)] + "\n";
      element.ways.push_back({lines});
    }
    element.optional = (mixed || i > 1) && dice.from_to(0, 2) == 0;
    element.stays = !element.optional && dice.from_to(0, 4) == 0;
  }
  if (dice.from_to(0, 2) == 0)
    made.limits.push_back("limit spins most " + std::to_string(dice.from_to(1, 2)));
  if (dice.from_to(0, 2) == 0)
    made.limits.push_back("limit spin-b most " + std::to_string(dice.from_to(0, 1)));
  if (dice.from_to(0, 2) == 0)
    made.limits.push_back("limit elements most " + std::to_string(dice.from_to(2, 4)));
  return made;
}

bool keeps_limits(const ReadSheet& programme, const Routine& whole) {
  if (!programme.complaints().empty()) return false;
  return std::all_of(whole.limits.begin(), whole.limits.end(), [&](const OwnLimit& own) {
    const Decimal found = counted(own, programme.routine());
    return (!own.least || found >= *own.least) && (!own.most || found <= *own.most);
  });
}

std::vector<Tried> all_programmes(const MadeSheet& made, const ValueSet& set, bool only_allowed) {
  const ReadSheet whole(made.text(), set);
  std::vector<std::vector<std::size_t>> lists;
  for (const MadeSheet::Swum& element : made.elements) {
    auto& list = lists.emplace_back();
    for (std::size_t i = 0; i < (element.stays ? 1 : element.ways.size()); ++i) list.push_back(i);
    if (element.optional) list.push_back(leave_out);
  }
  std::vector<Tried> all;
  std::vector<std::size_t> at(lists.size());
  for (bool more = true; more;) {
    std::vector<std::size_t> options;
    for (std::size_t i = 0; i < at.size(); ++i) options.push_back(lists[i][at[i]]);
    const ReadSheet programme(made.text(options), set);
    if (!only_allowed || keeps_limits(programme, whole.routine())) {
      const std::optional<Exact> total = expected_total(programme.routine(), risked(programme.routine(), {}));
      if (total) all.push_back({options, *total});
    }
    more = false;
    for (std::size_t i = at.size(); i-- > 0 && !more;) {
      more = ++at[i] < lists[i].size();
      if (!more) at[i] = 0;
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const Tried& a, const Tried& b) { return a.total > b.total; });
  return all;
}

}  // namespace landdrill::kit
