// CSV texts -> a value set: what the cells become, what is forgiven, and that every mistake is told in one
// run.
#include "tables/load.h"

#include <gtest/gtest.h>

#include "kit.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;
using test::base_set;
using test::d;
using test::edited;
using test::messages;

ValueSet base() {
  Loaded loaded = load(base_set());
  EXPECT_TRUE(loaded.set) << to_string(loaded.diagnostics);
  return std::move(loaded.set).value();
}

TEST(Load, ReadsARowOfEveryTable) {
  const ValueSet set = base();
  EXPECT_EQ(set.name, "base");
  EXPECT_EQ(set.info.title, "Tarn Pool practice set");
  EXPECT_EQ(set.info.edition, "2026");

  const Family& spins = *set.families.find("spins");
  EXPECT_EQ(spins.kinds, (std::vector<std::string>{"hybrid", "figure"}));
  EXPECT_EQ(spins.most_in_element, 3);
  EXPECT_EQ(spins.most_in_routine, std::nullopt);

  const Part& thrust = *set.parts.find("thrust-high");
  EXPECT_EQ(thrust.title, "Thrust, high");
  EXPECT_EQ(thrust.value, Difficulty(d("0.7")));
  EXPECT_EQ(thrust.from.table, "parts");
  EXPECT_EQ(thrust.from.key, "thrust-high");
  EXPECT_EQ(thrust.from.line, 3u);
  EXPECT_EQ(thrust.from.source, "made up for the tests");
  EXPECT_EQ(thrust.from.status, Status::invented);

  const Kind& hybrid = *set.kinds.find("hybrid");
  EXPECT_EQ(print(*hybrid.formula), "base + sum(parts) + 0.1 * max(0, families - 1)");
  EXPECT_EQ(hybrid.base, Difficulty(d("0.5")));
  EXPECT_EQ(hybrid.least_parts, 2);
  EXPECT_EQ(hybrid.most_parts, 8);
  EXPECT_EQ(hybrid.most_same, 3);
  EXPECT_EQ(hybrid.places, 2);
  EXPECT_EQ(set.kinds.find("lift")->caution, Caution::lift);

  const Event& duet = *set.events.find("duet");
  EXPECT_EQ(duet.least_swimmers, 2);
  EXPECT_EQ(duet.seconds, d("150"));
  EXPECT_EQ(duet.tolerance, d("5"));

  ASSERT_EQ(set.quotas.size(), 4u);
  EXPECT_EQ(set.quotas[2].family, "thrusts");
  EXPECT_EQ(set.quotas[2].least, 1);
  EXPECT_EQ(set.quotas[2].most, std::nullopt);

  ASSERT_EQ(set.panels.size(), 4u);
  const PanelRule& execution = set.panels[0];
  EXPECT_TRUE(execution.per_element);
  EXPECT_EQ(execution.judges, 5);
  EXPECT_EQ(execution.drop_high, 1);
  EXPECT_EQ(execution.combine, Combine::mean);
  EXPECT_EQ(execution.step, d("0.25"));
  EXPECT_EQ(execution.most, Mark(d("10")));
  EXPECT_EQ(execution.use, Use::times_difficulty);
  EXPECT_EQ(execution.weight, Factor(d("1.2")));
  EXPECT_EQ(execution.missing, Missing::mean);
  EXPECT_EQ(execution.missing_step, d("0.25"));
  EXPECT_EQ(set.panels[3].combine, Combine::sum);
  EXPECT_EQ(set.panels[3].missing, Missing::fewer);

  EXPECT_EQ(set.faults.find("bent-knee")->large, Mark(d("0.5")));
  EXPECT_EQ(set.faults.find("travel")->medium, std::nullopt);
  EXPECT_EQ(set.sync.find("small")->points, Points(d("0.1")));
  EXPECT_EQ(set.penalties.find("overtime")->most, 1);

  ASSERT_EQ(set.spreads.size(), 2u);
  EXPECT_EQ(set.judges_spread("execution", "hybrid")->spread, d("0.3"));
  EXPECT_EQ(set.day_spread()->spread, d("0.2"));
  EXPECT_EQ(set.day_spread()->from.key, "day");
}

TEST(Load, TakesTheSpreadOfTheRowThatSaysMost) {
  const std::string end = ",made up for the tests,invented\n";
  const Loaded loaded =
      load(test::with(base_set(), "spreads.csv",
                      "what,aspect,kind,spread,source,status\nJudges,,,0.1" + end + "judges,,lift,0.2" + end +
                          "judges,execution,,0.3" + end + "judges,execution,lift,0.4" + end));
  EXPECT_EQ(to_string(loaded.diagnostics), "");
  EXPECT_EQ(loaded.set->judges_spread("execution", "lift")->spread, d("0.4"));
  EXPECT_EQ(loaded.set->judges_spread("execution", "hybrid")->spread, d("0.3"));
  EXPECT_EQ(loaded.set->judges_spread("choreography", "lift")->spread, d("0.2"));
  EXPECT_EQ(loaded.set->judges_spread("choreography", "")->spread, d("0.1"));
  EXPECT_EQ(loaded.set->day_spread(), nullptr);
}

TEST(Load, RoundsFilledInMarksAndRunsAsThePointsUnlessAColumnSaysOtherwise) {
  const std::string panels =
      "event,aspect,kind,per,judges,combine,step,least,most,use,weight,rounding,missing,missing_step,"
      "missing_rounding,run_rounding,source,status\n"
      "solo,execution,,element,5,mean,0.25,0,10,times-difficulty,1,down,mean,0.25,half-even,up,made "
      "up,invented\n"
      "duet,execution,,element,5,mean,0.25,0,10,times-difficulty,1,down,mean,0.25,,,made up,invented\n";
  const Loaded loaded = load(test::with(base_set(), "panels.csv", panels));
  ASSERT_TRUE(loaded.set) << to_string(loaded.diagnostics);
  const PanelRule &told = loaded.set->panels[0], &silent = loaded.set->panels[1];
  EXPECT_EQ(told.rounding_of_missing(), Rounding::half_even);
  EXPECT_EQ(told.rounding_of_runs(), Rounding::up);
  EXPECT_EQ(silent.rounding_of_missing(), Rounding::down);
  EXPECT_EQ(silent.rounding_of_runs(), Rounding::down);
  // A set from before there were columns for it.
  EXPECT_EQ(base().panels[0].rounding_of_runs(), Rounding::half_up);
}

std::string cautions_of(const ValueSet& set) {
  std::string list;
  for (const CautionRule& rule : set.cautions) list += rule.code + ": " + rule.text.substr(0, 17) + "\n";
  return list;
}

TEST(Load, SaysTheUsualCautionsWhereTheSetHasNoOther) {
  EXPECT_EQ(cautions_of(*load(test::without(base_set(), "cautions.csv")).set),
            "lifts: agree on the call\nblow-in-a-lift: After a blow to t\nthrows: agree on the call\n"
            "blow-in-a-throw: After a blow to t\nbreath-hold: never hyperventil\n"
            "only-a-price: This prices a rou\n");
  EXPECT_EQ(cautions_of(base()),
            "lifts: have two spotters\nblow-in-a-lift: After a blow to t\nthrows: agree on the call\n"
            "blow-in-a-throw: After a blow to t\nbreath-hold: never hyperventil\n"
            "only-a-price: This prices a rou\nafter-a-blow: After a blow to t\n");
  EXPECT_EQ(base().cautions.front().from.line, 2u);
  EXPECT_EQ(base().cautions[1].from.status, Status::practice);
}

TEST(Load, ReadsTheShareOfLostRunsAndTakesHalfWithoutOne) {
  const std::string panels =
      "event,aspect,kind,per,judges,combine,step,least,most,use,weight,run_base,source,status\n"
      "solo,execution,,element,5,mean,0.25,0,10,times-difficulty,1,0.25,made up,invented\n"
      "duet,execution,,element,5,mean,0.25,0,10,times-difficulty,1,,made up,invented\n";
  const Loaded loaded = load(test::with(base_set(), "panels.csv", panels));
  ASSERT_TRUE(loaded.set) << to_string(loaded.diagnostics);
  EXPECT_EQ(loaded.set->panels[0].base_share(), d("0.25"));
  EXPECT_EQ(loaded.set->panels[1].base_share(), d("0.5"));
  EXPECT_EQ(base().panels[0].base_share(), d("0.5"));
}

TEST(Load, LeavesGapsOpenAndGivesEmptyCellsTheirMeaning) {
  const ValueSet set = base();
  EXPECT_EQ(set.parts.find("stand-feet")->value, std::nullopt);
  EXPECT_EQ(set.kinds.find("lift")->formula, std::nullopt);
  EXPECT_EQ(set.kinds.find("lift")->places, 6);
  EXPECT_EQ(set.kinds.find("figure")->base, std::nullopt);
  EXPECT_EQ(set.sync.find("clear")->points, std::nullopt);
  const PanelRule& with_gaps = set.panels[2];
  EXPECT_EQ(with_gaps.weight, std::nullopt);
  EXPECT_EQ(with_gaps.places, 4);
  EXPECT_EQ(with_gaps.rounding, Rounding::half_up);
  EXPECT_EQ(with_gaps.missing, Missing::refuse);
}

TEST(Load, FindsThePanelOfAnElement) {
  ValueSet set = base();
  const auto title = [&](std::string_view event, std::string_view kind) {
    const PanelRule* rule = set.element_panel(*set.events.find(event), *set.kinds.find(kind));
    return rule == nullptr ? "none" : rule->title;
  };
  EXPECT_EQ(title("duet", "lift"), "Execution of lifts");
  EXPECT_EQ(title("duet", "hybrid"), "Execution");
  EXPECT_EQ(title("solo", "hybrid"), "Execution");
  ASSERT_EQ(set.routine_panels("solo").size(), 1u);
  EXPECT_EQ(set.routine_panels("solo")[0]->aspect, "choreography");
  EXPECT_TRUE(set.routine_panels("duet").empty());
  set.panels.clear();
  EXPECT_EQ(title("solo", "hybrid"), "none");
}

TEST(Load, IsForgivingInWhatASpreadsheetChanges) {
  const auto loads_as_base = [](const TableFiles& files) {
    const Loaded loaded = load(files);
    return to_string(loaded.diagnostics) +
           (loaded.set && loaded.set->parts.find("spin-360")->value == Difficulty(d("0.9")) ? "same"
                                                                                            : "not the same");
  };
  const std::string header = "code,family,title,value,source,status",
                    row = "spin-360,spins,Spin of a full turn,0.9";
  EXPECT_EQ(loads_as_base(edited(base_set(), "parts.csv", header, "Code, FAMILY ,title,Value,Source,Status")),
            "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "parts.csv", header, "\xEF\xBB\xBF" + header)), "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "parts.csv", row, "spin-360,spins,Spin of a full turn, 0.90 ")),
            "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "parts.csv", row, "spin-360,spins,Spin of a full turn,\"0,9\"")),
            "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "parts.csv", row, "\n,,,,,\n" + row)), "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "parts.csv", "0.9,made up for the tests,invented",
                                 "0.9,made up for the tests,Invented,,")),
            "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "families.csv", "most_in_element,most_in_routine",
                                 "Most in element,most-in-routine")),
            "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "kinds.csv", "half-up", "Half up")), "same");
  EXPECT_EQ(loads_as_base(edited(base_set(), "families.csv", "hybrid,2,6", "hybrid,2.0,6")), "same");
  EXPECT_EQ(loads_as_base(test::with(base_set(), "notes.csv", "whatever,\"is in it")), "same");

  std::string semicolons = test::text_of(base_set(), "sync.csv");
  std::replace(semicolons.begin(), semicolons.end(), ',', ';');
  semicolons.replace(semicolons.find("0.1"), 3, "0,1");
  const Loaded loaded = load(test::with(base_set(), "sync.csv", semicolons));
  EXPECT_EQ(loaded.set->sync.find("small")->points, Points(d("0.1")));

  std::string crlf = test::text_of(base_set(), "parts.csv");
  for (std::size_t at = 0; (at = crlf.find('\n', at)) != std::string::npos; at += 2) crlf.insert(at, "\r");
  EXPECT_EQ(loads_as_base(test::with(base_set(), "parts.csv", crlf)), "same");
}

TEST(Load, KeepsExtraColumnsWithoutComplaint) {
  EXPECT_EQ(
      messages(test::with(base_set(), "sync.csv",
                          "code,colour,title,points,source,status,page\nsmall,blue,,0.1,x,invented,9\n")),
      "");
}

TEST(Load, DoesWithoutTheFilesThatASetNeedNotHave) {
  TableFiles files = base_set();
  for (const char* file : {"families.csv", "parts.csv", "kinds.csv", "quotas.csv", "faults.csv", "sync.csv",
                           "penalties.csv", "spreads.csv"}) {
    files = test::without(files, file);
  }
  files = edited(files, "panels.csv", "execution,lift,Execution of lifts,element",
                 "performance,,Performance,routine");
  files = edited(files, "panels.csv", "0.5,0,10,times-difficulty", "0.5,0,10,plain");
  const Loaded loaded = load(files);
  EXPECT_EQ(to_string(loaded.diagnostics), "");
  EXPECT_EQ(loaded.set->panels.size(), 4u);
}

TEST(Load, TellsTheMistakesOfAllFilesInOneRun) {
  TableFiles files = edited(base_set(), "parts.csv", "0.4", "x");
  files = edited(files, "parts.csv", "0.9", "y");
  files = edited(files, "events.csv", "duet,Duet,2", "duet,Duet,z");
  files = edited(files, "kinds.csv", "sum(spins)", "sum(spinz)");
  const Loaded loaded = load(files);
  EXPECT_FALSE(loaded.set);
  ASSERT_EQ(loaded.diagnostics.list().size(), 4u) << to_string(loaded.diagnostics);
  EXPECT_EQ(loaded.diagnostics.errors(), 4u);
}

TEST(Load, PutsThePlaceBeforeTheFileName) {
  TableFiles files = edited(base_set(), "sync.csv", "0.1", "x");
  files.place = "sets/club/";
  EXPECT_EQ(messages(files).substr(0, 30), "sets/club/sync.csv:2:13: error");
}

TEST(Load, GivesABoundedAnswerToAMillionMistakes) {
  std::string parts = "code,family,title,value,source,status\n";
  for (int i = 0; i < 20'000; ++i) parts += "a" + std::to_string(i) + ",nowhere,,x,y,z\n";
  const Loaded loaded = load(test::with(base_set(), "parts.csv", parts));
  EXPECT_EQ(loaded.diagnostics.list().size(), Diagnostics::most);
  EXPECT_EQ(loaded.diagnostics.errors(), 60'000u);
}

TEST(Load, NeverThrowsForCellsThatAreTooMuch) {
  const std::string long_text(100'000, 'x');
  EXPECT_NE(messages(edited(base_set(), "parts.csv", "Spin of a full turn", long_text)).find("[too-long]"),
            std::string::npos);
  EXPECT_NE(messages(edited(base_set(), "parts.csv", "0.9", std::string(5'000, '9'))).find("[bad-number]"),
            std::string::npos);
}

TEST(Load, TakesEveryShippedSetWithoutAComplaint) {
  int sets = 0;
  for (const auto& entry : fs::directory_iterator(SHIPPED_SETS)) {
    if (!entry.is_directory()) continue;
    const auto files = read_folder(entry.path());
    ASSERT_TRUE(files) << entry.path();
    EXPECT_EQ(messages(*files), "") << entry.path();
    ++sets;
  }
  EXPECT_GE(sets, 9);
}

}  // namespace
}  // namespace landdrill
