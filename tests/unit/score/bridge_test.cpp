#include "engine/score/bridge.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::points;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

Bridge bridge_of(const ReadSheet& sheet, const Wish& wish = {}) {
  const Routine& routine = sheet.routine();
  return bridge(routine, scored(routine, expected(routine, wish)),
                scored(routine, recorded(routine, routine.panels.front(), wish)));
}

// "difficulty 2 Hybrid 2.70 > 0.50: -15.4" for each step.
std::string told(const Bridge& bridge) {
  std::string text;
  for (const BridgeStep& step : bridge.steps) {
    text += std::string(word_of(step.cause)) + " " + step.label + " " + step.before.text(step.places) +
            " > " + step.after.text(step.places) + ": " + step.change.text() + "\n";
  }
  return text;
}

const std::string tarn_open =
    "panel 2026-05-09\n"
    "element 1: 7.25 7.50 7.25 7.00 7.75\n"
    "element 2 base: 6.75 7.00 6.50 7.00 6.75\n"
    "choreography: 7 7 7 7 7\n"
    "performance: 8 8 8.25 8.25 8\n"
    "sync: small x4\n"
    "penalty: bottom\n";

TEST(Bridge, LeadsFromTheEstimateToThePanelLineByLineEachWithItsCause) {
  EXPECT_EQ(told(bridge_of(ReadSheet(reeds + tarn_open, pond()))),
            "execution 1 Ripple 7.5000 > 7.3333: -0.3\n"
            "difficulty 2 Hybrid 2.70 > 0.50: -15.4\n"
            "execution 2 Hybrid 7.0000 > 6.8333: -0.0833\n"
            "impression Choreography 7.5000 > 7.0000: -2\n"
            "impression Performance 8.0000 > 8.0833: 0.25\n"
            "sync Sync errors 0 > -0.4: -0.4\n"
            "penalty Penalties 0 > -2: -2\n");
}

TEST(Bridge, SumsUpByCause) {
  const Bridge steps = bridge_of(ReadSheet(reeds + tarn_open, pond()));
  EXPECT_EQ(steps.from, points("86.4"));
  EXPECT_EQ(steps.to, points("66.4667"));
  EXPECT_EQ(steps.by_cause(Cause::difficulty), points("-15.4"));
  EXPECT_EQ(steps.by_cause(Cause::execution), points("-0.3833"));
  EXPECT_EQ(steps.by_cause(Cause::impression), points("-1.75"));
  EXPECT_EQ(steps.by_cause(Cause::sync), points("-0.4"));
  EXPECT_EQ(steps.by_cause(Cause::penalty), points("-2"));
}

TEST(Bridge, TellsWhichElementAStepIsAbout) {
  const Bridge steps = bridge_of(ReadSheet(reeds + tarn_open, pond()));
  EXPECT_EQ(steps.steps[0].element, 0u);
  EXPECT_EQ(steps.steps[1].element, 1u);
  EXPECT_EQ(steps.steps[2].element, 1u);
  EXPECT_FALSE(steps.steps[3].element.has_value());
}

TEST(Bridge, LeavesOutWhatIsTheSameOnBothSides) {
  const ReadSheet sheet(reeds +
                            "panel 2026-05-09\nelement 1: 7.5 7.5 7.5 7.5 7.5\nelement 2: 7 7 7 7 8\n"
                            "choreography: 7.5 7.5 7.5 7.5 7.5\nperformance: 8 8 8 8 8.25\n",
                        pond());
  EXPECT_EQ(told(bridge_of(sheet)), "");
  EXPECT_EQ(bridge_of(sheet).from, bridge_of(sheet).to);
}

TEST(Bridge, GivesSyncErrorsOfARunBackWhenThePanelSawNone) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nsync: clear\n" + replaced(tarn_open, "sync: small x4\n", ""),
                        pond());
  EXPECT_EQ(bridge_of(sheet).by_cause(Cause::sync), points("0.5"));
}

TEST(Bridge, LeadsFromOneOptionToAnother) {
  const ReadSheet sheet(
      replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"safer\"\nparts hold x2\nexpect 8\n"), pond());
  const Routine& routine = sheet.routine();
  EXPECT_EQ(told(bridge(routine, scored(routine, expected(routine, {})),
                        scored(routine, expected(routine, {{1}, {}})))),
            "difficulty 1 Ripple 1.80 > 1.30: -3.75\n"
            "execution 1 Ripple 7.5000 > 8.0000: 0.65\n");
}

TEST(Bridge, GivesADifficultyItsShareWhereMarksAreWeighed) {
  const std::string session =
      "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 ratio\nparts spin-a\nexpect 7\n"
      "element 2 ratio\nparts spin-b\nexpect 8\n"
      "panel 2026-05-09\nelement 1: 7 7 7 7 7\nelement 2 base: 8 8 8 8 8\n";
  const Bridge steps = bridge_of(ReadSheet(session, pond()));
  // (7 x 0.9 + 8 x 1.4) / 2.3 x 10 = 76.0870; (7 x 0.9 + 8 x 0.3) / 1.2 x 10 = 72.5
  EXPECT_EQ(told(steps), "difficulty 2 Ratio 1.40 > 0.30: -3.587\n");
}

// A sheet with random marks in an event of the pond; `random` decides everything.
class RandomSheet {
 public:
  explicit RandomSheet(std::mt19937& random) : random_(random) {}

  std::string in(const std::string& event, int judges, const std::string& kind, int steps,
                 const std::string& base) {
    std::string routine = "routine \"Reeds\"\nevent " + event + "\nvalues pond\n",
                panel = "panel 2026-05-09\n";
    const int elements = 1 + up_to(4);
    for (int i = 1; i <= elements; ++i) {
      const std::string name = "element " + std::to_string(i);
      const std::string what = event == "mixed" && up_to(1) == 0 ? "figure" : kind;
      routine += name + " " + what + "\ndifficulty " + std::to_string(up_to(3)) + "." +
                 std::to_string(up_to(99)) + "\n";
      routine += "expect " + mark(steps) + "\n";
      panel += name + (what == "figure" || up_to(2) > 0 ? "" : base) + ":" + marks(judges, steps) + "\n";
    }
    std::string run;
    if (event == "open" || event == "mixed") {
      routine += "impression choreography " + mark(steps) +
                 (event == "open" ? ", performance " + mark(steps) : "") + "\n";
      panel += "choreography:" + marks(judges, steps) + "\n";
      if (event == "open") panel += "performance:" + marks(judges, steps) + "\n";
      run = "run 2026-04-14\nsync: small x" + std::to_string(1 + up_to(4)) + "\n";
    }
    return routine + run + panel + "sync: small x" + std::to_string(1 + up_to(9)) +
           ", clear\npenalty: bottom\n";
  }

 private:
  int up_to(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }
  std::string mark(int steps) {
    return Decimal::from_units(up_to(10 * steps) * (Decimal::one / steps)).text();
  }
  std::string marks(int judges, int steps) {
    std::string text;
    for (int i = 0; i < judges; ++i) text += " " + mark(steps);
    return text;
  }
  std::mt19937& random_;
};

TEST(Bridge, SumsExactlyOnRandomSheetsUnderEveryWayOfCounting) {
  std::mt19937 random(20261125);
  RandomSheet sheets(random);
  int bridges = 0;
  for (int round = 0; round < 300; ++round) {
    for (const std::string& text :
         {sheets.in("open", 5, "hybrid", 4, " base"), sheets.in("session", 5, "hybrid", 10, " base"),
          sheets.in("plain", 5, "hybrid", 2, " base"), sheets.in("mixed", 3, "hybrid", 10, " base")}) {
      const ReadSheet sheet(text, pond());
      const Routine& routine = sheet.routine();
      const Score before = score(routine, expected(routine, {}));
      const Score after = score(routine, recorded(routine, routine.panels.front(), {}));
      if (!before.total || !after.total) continue;  // every credited difficulty happened to be 0
      ++bridges;
      const Bridge steps = bridge_of(sheet);
      ASSERT_EQ(steps.from, *before.total) << text;
      ASSERT_EQ(steps.to, *after.total) << text;
      Points reached = steps.from, causes;
      for (const BridgeStep& step : steps.steps) {
        reached += step.change;
        ASSERT_EQ(step.reached, reached) << text;
      }
      ASSERT_EQ(reached, *after.total) << text;
      for (Cause cause :
           {Cause::difficulty, Cause::execution, Cause::impression, Cause::sync, Cause::penalty}) {
        causes += steps.by_cause(cause);
      }
      ASSERT_EQ(steps.from + causes, steps.to) << text;
    }
  }
  EXPECT_GT(bridges, 1'000);
}

}  // namespace
}  // namespace landdrill
