// The declared-difficulty system, as far as it is published: who swims what, for how long, judged by whom.
// Its factors and the values of its catalogues were not found, so the shipped set has gaps there; these
// checks put a 1 for each factor.
#include "tests/outside/published.h"

namespace landdrill {
namespace {

using kit::ReadSheet;
using kit::shipped;

const ValueSet& with_factors() {
  static const ValueSet set = [] {
    ValueSet filled = shipped("declared-2024");
    for (PanelRule& rule : filled.panels) rule.weight = kit::factor("1");
    return filled;
  }();
  return set;
}

using Elements = std::vector<std::pair<std::string, int>>;

// What the engine warns of in a routine of these elements that lasts so many seconds.
std::string warnings(const std::string& event, const Elements& elements, int seconds) {
  std::string text = published::head(event, "declared-2024") + "tempo 60\npassage \"All of it\"\ncounts " +
                     std::to_string(seconds) + " surface\n";
  int number = 0;
  for (const auto& [kind, times] : elements) {
    for (int i = 0; i < times; ++i)
      text += "element " + std::to_string(++number) + " " + kind + "\ndifficulty 2\n";
  }
  const ReadSheet sheet(text, with_factors());
  sheet.routine();  // throws when there is an error
  std::string said;
  for (const Diagnostic& one : sheet.sheet().messages().list())
    said += std::string(code_of(one.problem)) + " ";
  return said;
}

// Exactly these elements, and the time to the second where it is known.
void expect_composition(const std::string& event, const Elements& elements, int seconds) {
  const int time = seconds == 0 ? 200 : seconds;
  EXPECT_EQ(warnings(event, elements, time), "") << event;
  if (seconds != 0) {
    EXPECT_EQ(warnings(event, elements, seconds + 5), "") << event;
    EXPECT_EQ(warnings(event, elements, seconds + 6), "over-time ") << event;
    EXPECT_EQ(warnings(event, elements, seconds - 5), "") << event;
    EXPECT_EQ(warnings(event, elements, seconds - 6), "under-time ") << event;
  }
  for (std::size_t i = 0; i < elements.size(); ++i) {
    Elements fewer = elements, more = elements;
    --fewer[i].second;
    ++more[i].second;
    EXPECT_NE(warnings(event, fewer, time).find("quota"), std::string::npos)
        << event << " less a " << elements[i].first;
    EXPECT_NE(warnings(event, more, time).find("quota"), std::string::npos)
        << event << " and a " << elements[i].first;
  }
}

// Source: World Aquatics terminology page, 2024: 7 acrobatics, one at least of each group A, B, C, P; 3:00
// +-5 s.
TEST(DeclaredDifficulty, WantsSevenAcrobaticsWithOneOfEachGroup) {
  const Elements all = {{"acrobatic-a", 2}, {"acrobatic-b", 2}, {"acrobatic-c", 2}, {"acrobatic-p", 1}};
  expect_composition("acrobatic", all, 180);
  for (std::size_t i = 0; i < all.size(); ++i) {
    Elements without = all;
    without[i == 0 ? 1 : 0].second += without[i].second;
    without[i].second = 0;
    EXPECT_EQ(warnings("acrobatic", without, 180), "quota ") << "seven, none of " << all[i].first;
  }
}

// Source: Russian sport rules of 24.01.2025 no. 56, App. 3.
TEST(DeclaredDifficulty, WantsTheElementsOfTheNationalAgeGroups) {
  expect_composition("solo-free-under-13", {{"hybrid", 4}}, 120);
  expect_composition("solo-free-13-15", {{"hybrid", 5}}, 120);
  expect_composition("duet-free-under-13", {{"hybrid", 4}, {"pair-acrobatic", 1}}, 150);
  expect_composition("duet-free-13-15", {{"hybrid", 5}, {"pair-acrobatic", 1}}, 150);
}

// Secondary: pages of 2023-24.
TEST(DeclaredDifficulty, WantsTheElementsOfTheSeniorRoutines) {
  expect_composition("solo-technical", {{"required", 5}, {"hybrid", 1}}, 120);
  expect_composition("duet-technical", {{"required", 5}, {"hybrid", 2}, {"pair-acrobatic", 1}}, 140);
  expect_composition("mixed-duet-technical", {{"required", 4}, {"hybrid", 1}, {"pair-acrobatic", 2}}, 140);
  expect_composition("duet-free", {{"hybrid", 7}, {"pair-acrobatic", 2}}, 0);
  expect_composition("team-technical", {{"required", 5}, {"hybrid", 3}, {"acrobatic-b", 1}}, 0);
  expect_composition("team-free", {{"hybrid", 7}, {"acrobatic-a", 4}}, 0);
}

// Source: World Aquatics pages, 2022-2024: two panels of five, execution and artistic impression;
// choreography and musicality, performance, transitions.
TEST(DeclaredDifficulty, IsMarkedByPanelsOfFiveForExecutionAndForTheThreeSidesOfImpression) {
  const ValueSet& set = shipped("declared-2024");
  for (const Event& event : set.events) {
    std::string aspects;
    for (const PanelRule* rule : set.routine_panels(event.code)) aspects += rule->aspect + " ";
    EXPECT_EQ(aspects, "choreography performance transitions ") << event.code;
    ASSERT_NE(set.element_panel(event, *set.kinds.find("hybrid")), nullptr) << event.code;
  }
  for (const PanelRule& rule : set.panels) EXPECT_EQ(rule.judges, 5) << rule.event << " " << rule.aspect;
}

// Source: World Aquatics hybrid catalogue v5.1, 1 Sept 2024 (contents): six families. Five or more leg
// movements: Russian sport rules of 24.01.2025 no. 56, App. 7. Secondary: at most 5 of a family, 3
// connections, 3 of a code, base mark 0.5.
TEST(DeclaredDifficulty, BuildsAHybridFromSixFamilies) {
  const ValueSet& set = shipped("declared-2024");
  std::string families;
  for (const Family& family : set.families) {
    if (family.kinds != std::vector<std::string>{"hybrid"}) continue;
    families += family.code + " ";
    EXPECT_EQ(family.most_in_element, family.code == "connections" ? 3 : 5) << family.code;
  }
  EXPECT_EQ(families, "thrusts spins twists airborne-weight flexibility connections ");
  EXPECT_EQ(set.kinds.find("hybrid")->least_parts, 5);
  EXPECT_EQ(set.kinds.find("hybrid")->most_same, 3);
  EXPECT_EQ(set.kinds.find("hybrid")->base, kit::difficulty("0.5"));
}

// Not found anywhere: the program says so and scores nothing, rather than guess.
TEST(DeclaredDifficulty, ScoresNothingUntilTheCoachFillsInTheFactors) {
  const ReadSheet sheet(
      published::head("solo-technical", "declared-2024") + "element 1 required\nparts solo-1\n",
      shipped("declared-2024"));
  EXPECT_FALSE(sheet.sheet().routine().has_value());
  std::string gaps;
  for (const Gap& gap : sheet.sheet().gaps())
    gaps += std::string(gap.key) + " " + std::string(gap.column) + ", ";
  EXPECT_EQ(gaps,
            "solo-technical execution weight, solo-technical choreography weight, solo-technical performance "
            "weight, "
            "solo-technical transitions weight, solo-1 value, ");
}

}  // namespace
}  // namespace landdrill
