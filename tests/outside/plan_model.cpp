#include "tests/outside/plan_model.h"

#include <algorithm>
#include <array>
#include <vector>

namespace landdrill {
namespace {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15 + 1) {}
  int from_to(int least, int most) {
    state_ = state_ * 6364136223846793005 + 1442695040888963407;
    return least + static_cast<int>((state_ >> 33) % static_cast<std::uint64_t>(most - least + 1));
  }

 private:
  std::uint64_t state_;
};

// Used by one option: counts, counts under water, uses of three parts, and one element of its kind.
constexpr std::size_t sorts = 6;
using Uses = std::array<int, sorts>;
constexpr std::array<const char*, sorts> names = {"seconds", "under",    "spin-720",
                                                  "lift",    "spin-360", "split-hold"};
// Counts at 120 beats a minute are half seconds.
constexpr std::array<int, sorts> in_a_unit = {2, 2, 1, 1, 1, 1};

struct Way {
  int tenths = 0, quarters = 0;  // difficulty and mark
  int slip = 0;                  // per cent
  Uses uses{};
  // Thousandths of a point: difficulty x mark.
  int worth() const { return tenths * 25 * quarters; }
};
struct Swum {
  bool lift = false, optional = false;
  std::vector<Way> ways;
};

Way way(Dice& dice, bool lift) {
  Way made{dice.from_to(15, 45), 0, {}};
  // What is harder is held longer and marked lower, as a rule.
  made.quarters = std::clamp(38 - made.tenths / 4 + dice.from_to(-4, 4), 12, 40);
  made.uses[1] = 4 * dice.from_to(1, 3) + made.tenths / 8;
  made.uses[0] = made.uses[1] + 4 * dice.from_to(1, 4);
  made.uses[3] = lift ? 1 : 0;
  if (lift) return made;  // no spins and no splits in a lift
  made.uses[2] = dice.from_to(0, 2);
  made.uses[4] = dice.from_to(0, 2);
  made.uses[5] = dice.from_to(0, 1);
  return made;
}

std::string text_of(const Way& way) {
  std::string parts;
  for (const std::size_t sort : {2, 4, 5}) {
    if (way.uses[sort] == 0) continue;
    parts += (parts.empty() ? "parts " : ", ") + std::string(names[sort]);
    if (way.uses[sort] > 1) parts += " x" + std::to_string(way.uses[sort]);
  }
  static const char* const hundredths[] = {".00", ".25", ".50", ".75"};
  return (parts.empty() ? "" : parts + "\n") + "difficulty " + std::to_string(way.tenths / 10) + "." +
         std::to_string(way.tenths % 10) + "\ncounts " + std::to_string(way.uses[1]) + " under, " +
         std::to_string(way.uses[0] - way.uses[1]) + " surface\nexpect " + std::to_string(way.quarters / 4) +
         hundredths[way.quarters % 4] + "\n" +
         (way.slip == 0 ? "" : "slip " + std::to_string(way.slip) + "%\n");
}

std::string variable(std::size_t element, std::size_t way) {
  return "x" + std::to_string(element) + "_" + std::to_string(way);
}

}  // namespace

PlanModel::PlanModel(std::uint64_t seed, const PlanShape& shape) {
  Dice dice(seed);
  std::vector<Swum> elements(static_cast<std::size_t>(shape.elements));
  std::array<int, sorts> low{}, high{};
  for (Swum& element : elements) {
    element.lift = dice.from_to(0, 2) == 0;
    element.optional = dice.from_to(0, 3) == 0;
    for (int i = 0; i < shape.options; ++i) element.ways.push_back(way(dice, element.lift));
    for (std::size_t sort = 0; sort < sorts; ++sort) {
      const auto fewer = [&](const Way& a, const Way& b) { return a.uses[sort] < b.uses[sort]; };
      const auto [least, most] = std::minmax_element(element.ways.begin(), element.ways.end(), fewer);
      low[sort] += element.optional ? 0 : least->uses[sort];
      high[sort] += most->uses[sort];
    }
  }

  // Dice of its own, so that the rest is the same with and without.
  Dice slips(seed + 1'000'000);
  for (Swum& element : elements) {
    // What is harder is lost more often, as a rule.
    for (Way& one : element.ways)
      one.slip = shape.odds ? std::clamp(one.tenths / 2 - 6 + slips.from_to(-5, 5), 0, 30) : 0;
  }

  sheet = "routine \"Made up\"\nevent duet-free\nvalues kingfisher-2026\ntempo 120\n";
  if (shape.odds) sheet += "spread 0.4\nday 0.3\nerrors small 2\n";
  std::string rows;
  for (std::size_t sort = 0; sort < static_cast<std::size_t>(shape.limits); ++sort) {
    const int room = high[sort] - low[sort];
    const int share = shape.tight ? dice.from_to(-6, 50) : dice.from_to(25, 60);
    const int most = std::max(0, (low[sort] + room * share / 100) / in_a_unit[sort]);
    const int least = std::max(0, most - (sort == 0 ? 10 : 2));
    const bool both = sort == 0 || (shape.tight && sort == 2);
    sheet += "limit " + std::string(names[sort]) + (both ? " least " + std::to_string(least) : "") +
             " most " + std::to_string(most) + "\n";
    std::string sum;
    for (std::size_t i = 0; i < elements.size(); ++i) {
      for (std::size_t c = 0; c < elements[i].ways.size(); ++c) {
        const int uses = elements[i].ways[c].uses[sort];
        if (uses != 0) sum += " + " + std::to_string(uses) + " " + variable(i, c) + "\n";
      }
    }
    if (sum.empty()) sum = " 0 x0_0\n";
    rows +=
        " most" + std::to_string(sort) + ":" + sum + " <= " + std::to_string(most * in_a_unit[sort]) + "\n";
    if (both)
      rows += " least" + std::to_string(sort) + ":" + sum + " >= " + std::to_string(least * in_a_unit[sort]) +
              "\n";
  }

  std::string worth, binary;
  for (std::size_t i = 0; i < elements.size(); ++i) {
    sheet += "element " + std::to_string(i + 1) + (elements[i].lift ? " lift\n" : " hybrid\n") +
             text_of(elements[i].ways[0]);
    if (elements[i].optional) sheet += "optional\n";
    std::string one;
    for (std::size_t c = 0; c < elements[i].ways.size(); ++c) {
      if (c > 0) sheet += "option \"way " + std::to_string(c) + "\"\n" + text_of(elements[i].ways[c]);
      worth += " + " + std::to_string(elements[i].ways[c].worth()) + " " + variable(i, c) + "\n";
      one += " + " + variable(i, c) + "\n";
      binary += " " + variable(i, c) + "\n";
    }
    rows += " one" + std::to_string(i) + ":" + one + (elements[i].optional ? " <= 1\n" : " = 1\n");
  }
  const std::string marks = shape.odds ? "7.5" : "0";
  sheet += "impression choreography " + marks + ", performance " + marks + ", transitions " + marks + "\n";
  lp = "Maximize\n worth:" + worth + "Subject To\n" + rows + "Binary\n" + binary + "End\n";
}

}  // namespace landdrill
