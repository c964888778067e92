// Comparisons of made-up sheets against sheets written out anew: whatever `compare` says of another mark,
// chance or part is written into the text, read, resolved and expected again.
#include <gtest/gtest.h>

#include <random>

#include "engine/choosing/compare.h"
#include "engine/choosing/worth.h"
#include "engine/report/sentences.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;

// The pond with more holds, and a bonus for parts of several families.
const ValueSet& reed_bed() {
  static const ValueSet set =
      kit::Tables()
          .add("parts.csv", "hold-b,holds,B,0.7,invented for tests,invented")
          .add("parts.csv", "hold-c,holds,C,1.1,invented for tests,invented")
          .replace("parts.csv", "5000000000000", "1.9")
          .replace("kinds.csv", "hybrid,Hybrid,base + sum(parts),0.5",
                   "hybrid,Hybrid,\"base + sum(parts) + 0.3 * max(0, families - 1)\",0.5")
          .load();
  return set;
}

// A way to swim element 1, as text.
struct Written {
  std::vector<std::pair<std::string, int>> parts;
  Decimal mark, chance;

  std::string text() const {
    std::string result = "parts ";
    for (const auto& [code, times] : parts) {
      if (result.size() > 6) result += ", ";
      result += code + " x" + std::to_string(times);
    }
    return result + "\nexpect " + mark.text() + "\nslip " + chance.text() + "%\n";
  }
  Written with_more(const std::string& code, int more) const {
    Written then = *this;
    for (auto& [known, times] : then.parts) {
      if (known != code) continue;
      times += more;
      more = 0;
    }
    if (more > 0) then.parts.push_back({code, more});
    std::erase_if(then.parts, [](const auto& part) { return part.second == 0; });
    return then;
  }
};

struct Dealt {
  std::string before, after;  // of the sheet around element 1
  std::vector<Written> options;

  std::string text() const {
    std::string result = before + options.front().text();
    for (std::size_t i = 1; i < options.size(); ++i)
      result += "option \"" + std::to_string(i) + "\"\n" + options[i].text();
    return result + after;
  }
  // The expected total of the sheet with this as its element 1, and nothing beside it.
  Exact total(const Written& only) const {
    const ReadSheet sheet(before + only.text() + after, reed_bed());
    return *expected_total(sheet.routine(), risked(sheet.routine(), {}));
  }
  Points points(const Written& only) const { return Points(round(total(only), 4, Rounding::half_up)); }
};

class Dealer {
 public:
  Dealt deal() {
    const char* events[] = {"open", "session", "mixed", "plain"};
    const std::string event = events[from(0, 3)];
    Dealt dealt;
    dealt.before = "routine \"Dealt\"\nevent " + event + "\nvalues pond\nelement 1 hybrid\n";
    for (int i = from(2, 3); i > 0; --i) dealt.options.push_back(option());
    for (int i = from(0, 3); i > 0; --i) dealt.after += other(i + 1, event);
    if (event == "open") dealt.after += "impression choreography 7.3, performance 8\n";
    if (event == "mixed") dealt.after += "impression choreography 6.1\n";
    return dealt;
  }

 private:
  int from(int least, int most) {
    return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1));
  }
  Decimal mark() { return Decimal::from_units(from(0, 40) * 250'000); }
  Decimal chance() {
    const int tenths[] = {0, 30, 125, 200, 333, 1000};
    return Decimal::from_units(tenths[from(0, 5)] * 100'000);
  }
  Written option() {
    Written written{{}, mark(), chance()};
    for (const char* code : {"spin-a", "spin-b", "hold", "hold-b", "hold-c"}) {
      const int times = from(0, 2);
      if (times > 0) written.parts.push_back({code, times});
    }
    if (written.parts.empty()) written.parts.push_back({"hold", 1});
    return written;
  }
  std::string other(int number, std::string_view event) {
    const bool figure = event != "plain" && from(0, 1) == 0;
    std::string text = "element " + std::to_string(number) + (figure ? " figure" : " lift") + "\ndifficulty ";
    text += Decimal::from_units(from(1, 60) * 50'000).text() + "\nexpect " + mark().text() + "\n";
    return figure ? text : text + "slip " + chance().text() + "%\n";
  }

  std::mt19937 random_{20261125};
};

const Exact none;

void check_worth(const Dealt& dealt, const Comparison& comparison) {
  for (std::size_t i = 0; i < dealt.options.size(); ++i) {
    const OptionWorth& worth = comparison.options.at(i);
    const Written& written = dealt.options[i];
    ASSERT_EQ(worth.total, dealt.points(written)) << dealt.text();
    ASSERT_EQ(worth.parts.size(), written.parts.size());
    for (const PartWorth& part : worth.parts) {
      const Written without = written.with_more(part.code, -1);
      if (!without.parts.empty()) {
        ASSERT_EQ(worth.total + *part.dropping, dealt.points(without)) << part.code << "\n" << dealt.text();
      }
      for (const auto& exchange : {part.easier, part.harder}) {
        if (!exchange) continue;
        ASSERT_EQ(worth.total + exchange->change, dealt.points(without.with_more(exchange->code, 1)))
            << part.code << " -> " << exchange->code << "\n"
            << dealt.text();
      }
    }
  }
}

void check_steps(const Comparison& comparison, const Duel& duel) {
  Points sum;
  for (const WorthStep& step : duel.steps) sum += step.change;
  EXPECT_EQ(sum, duel.gain);
  EXPECT_EQ(comparison.options.at(duel.harder).total - comparison.options.at(duel.easier).total, duel.gain);
}

void check_table(const Dealt& dealt, const Duel& duel) {
  const Points easier = dealt.points(dealt.options[duel.easier]);
  ASSERT_EQ(duel.table.size(), duel.marks.size() * duel.chances.size());
  auto cell = duel.table.begin();
  for (Mark mark : duel.marks) {
    for (Decimal chance : duel.chances) {
      Written then = dealt.options[duel.harder];
      then.mark = mark.value();
      then.chance = chance;
      ASSERT_EQ(*cell++, dealt.points(then) - easier) << mark.text() << " " << chance.text() << "\n"
                                                      << dealt.text();
    }
  }
}

// Every step of the scale is tried, from the top.
void check_marks(const Dealt& dealt, const Duel& duel, const PanelRule& rule) {
  const Exact easier = dealt.total(dealt.options[duel.easier]);
  const auto gain = [&](Decimal mark) {
    Written then = dealt.options[duel.harder];
    then.mark = mark;
    return dealt.total(then) - easier;
  };
  std::optional<Mark> lowest;
  for (Mark mark = rule.most; mark >= rule.least && gain(mark.value()) >= none; mark -= Mark(rule.step))
    lowest = mark;
  ASSERT_EQ(duel.lowest_mark, lowest) << dealt.text();
  if (!duel.even_mark) return;
  // At the even mark nothing is gained but for the rounding of points; a hundredth to each side decides.
  const Decimal even = *duel.even_mark->decimal(), hundredth = Decimal::from_units(10'000);
  const Exact rounding(Decimal::from_units(rule.places == 2 ? 10'000 : 200));
  EXPECT_LE(gain(even), rounding) << dealt.text();
  EXPECT_GE(gain(even), none - rounding) << dealt.text();
  if (even + hundredth <= rule.most.value()) {
    EXPECT_GT(gain(even + hundredth), none) << dealt.text();
  }
  if (even - hundredth >= rule.least.value()) {
    EXPECT_LT(gain(even - hundredth), none) << dealt.text();
  }
}

void check_chances(const Dealt& dealt, const Duel& duel) {
  const Exact easier = dealt.total(dealt.options[duel.easier]);
  const auto pays = [&](Decimal chance) {
    Written then = dealt.options[duel.harder];
    then.chance = chance;
    return dealt.total(then) >= easier;
  };
  if (!duel.highest_chance) {
    EXPECT_FALSE(pays(Decimal())) << dealt.text();
    return;
  }
  const Decimal hundredth = Decimal::from_units(10'000);
  EXPECT_TRUE(pays(Decimal())) << dealt.text();
  EXPECT_TRUE(pays(*duel.highest_chance)) << dealt.text();
  if (*duel.highest_chance >= hundredth) {
    EXPECT_TRUE(pays(*duel.highest_chance - hundredth)) << dealt.text();
  }
  if (*duel.highest_chance < Decimal::whole(100)) {
    EXPECT_FALSE(pays(*duel.highest_chance + hundredth)) << dealt.text();
  }
}

TEST(CompareLaw, SaysOfEveryOtherMarkChanceAndPartWhatTheSheetWrittenAnewGives) {
  Dealer dealer;
  int even_marks = 0, chances_between = 0;
  for (int i = 0; i < 150; ++i) {
    const Dealt dealt = dealer.deal();
    const ReadSheet sheet(dealt.text(), reed_bed());
    const Comparison comparison = compare(sheet.routine(), 0, {}, {});
    ASSERT_TRUE(comparison.obstacles.empty()) << report::words_of(comparison.obstacles.front()) << "\n"
                                              << dealt.text();
    check_worth(dealt, comparison);
    ASSERT_EQ(comparison.duels.size() + 1, dealt.options.size());
    for (const Duel& duel : comparison.duels) {
      check_steps(comparison, duel);
      check_table(dealt, duel);
      check_marks(dealt, duel, *sheet.routine().elements.front().panel);
      check_chances(dealt, duel);
      even_marks += duel.even_mark ? 1 : 0;
      chances_between += duel.highest_chance && *duel.highest_chance < Decimal::whole(100) ? 1 : 0;
    }
    if (HasFatalFailure() || HasNonfatalFailure()) return;
  }
  EXPECT_GT(even_marks, 50);
  EXPECT_GT(chances_between, 20);
}

}  // namespace
}  // namespace landdrill
