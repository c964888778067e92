// How routines were weighed from 1996 to 2021, which penalties and which times: through the shipped tables
// alone.
#include "engine/score/problems.h"
#include "tests/outside/published.h"

namespace landdrill {
namespace {

using kit::expected_total;
using kit::ReadSheet;
using kit::recorded_total;
using kit::replaced;
using kit::shipped;

// The total with a ten for `aspect` and a nought for the others: its share of a hundred.
std::string share(const std::string& event, const std::string& set, const std::string& aspect) {
  std::string marks;
  for (const PanelRule* rule : shipped(set).routine_panels(event)) {
    marks += (marks.empty() ? "" : ", ") + rule->aspect + (rule->aspect == aspect ? " 10" : " 0");
  }
  return expected_total(
      ReadSheet(published::head(event, set) + "impression " + marks + "\n", shipped(set)).routine());
}

// Secondary: the rules of the 1996 Games as reported: of five marks the highest and the lowest dropped, the
// mean of three; technical merit x 6 + artistic impression x 4.
TEST(Routines1996, WeighTechnicalMeritBySixAndArtisticImpressionByFour) {
  EXPECT_EQ(share("free-routine", "routines-1996", "technical-merit"), "60");
  EXPECT_EQ(share("free-routine", "routines-1996", "artistic-impression"), "40");
  const ReadSheet sheet(published::head("technical-routine", "routines-1996") +
                            "panel 1996-06-01\ntechnical-merit: 8.7 8.9 8.8 9.0 8.6\nartistic-impression: "
                            "9.1 9.0 8.9 9.2 9.0\n",
                        shipped("routines-1996"));
  EXPECT_EQ(recorded_total(sheet.routine()), "88.9333");  // 26.4/3 x 6 + 27.1/3 x 4 = 52.8 + 36.1333...
}

// Source: FINA Manual for Judges, Coaches & Referees 2009-2013, p. 153 ff.: execution / synchronisation /
// difficulty.
TEST(Routines2009, WeighTechnicalMeritByItsPrintedShares) {
  EXPECT_EQ(share("technical-merit-solo", "routines-2009", "execution"), "50");
  EXPECT_EQ(share("technical-merit-solo", "routines-2009", "synchronisation"), "10");
  EXPECT_EQ(share("technical-merit-solo", "routines-2009", "difficulty"), "40");
  for (const char* event : {"technical-merit-duet", "technical-merit-team"}) {
    EXPECT_EQ(share(event, "routines-2009", "execution"), "40");
    EXPECT_EQ(share(event, "routines-2009", "synchronisation"), "30");
    EXPECT_EQ(share(event, "routines-2009", "difficulty"), "30");
  }
}

// What a penalty leaves of a hundred.
std::string left_of_a_hundred(const std::string& penalty) {
  const std::string tens = ": 10 10 10 10 10\n";
  const ReadSheet sheet(published::head("technical-merit-team", "routines-2009") +
                            "panel 2010-03-20\nexecution" + tens + "synchronisation" + tens + "difficulty" +
                            tens + "penalty: " + penalty + "\n",
                        shipped("routines-2009"));
  return recorded_total(sheet.routine());
}

// Source: FINA Synchronised Swimming Rules 2009-2013, SS 18.1-18.3.
TEST(Routines2009, TakeThePrintedPenalties) {
  EXPECT_EQ(left_of_a_hundred("fewer-swimmers"), "99.5");  // 0.5 for each member fewer than eight
  EXPECT_EQ(left_of_a_hundred("fewer-swimmers x3"), "98.5");
  EXPECT_EQ(left_of_a_hundred("deck-time"), "99");  // 1: deck movements, walk-on, time
  EXPECT_EQ(left_of_a_hundred("walk-on"), "99");
  EXPECT_EQ(left_of_a_hundred("overtime"), "99");
  EXPECT_EQ(left_of_a_hundred("undertime"), "99");
  EXPECT_EQ(left_of_a_hundred("bottom"), "98");  // 2: the bottom, helping off it, restart, stacks on deck
  EXPECT_EQ(left_of_a_hundred("helped-bottom"), "98");
  EXPECT_EQ(left_of_a_hundred("restart"), "98");
  EXPECT_EQ(left_of_a_hundred("tower-on-deck"), "98");
  EXPECT_EQ(left_of_a_hundred("omitted-element"), "98");
  EXPECT_EQ(left_of_a_hundred("omitted-part"), "99");
  EXPECT_EQ(left_of_a_hundred("omitted-by-one"), "99.5");  // 0.5 a competitor, 2 at most
  EXPECT_EQ(left_of_a_hundred("omitted-by-one x7"), "98");
  EXPECT_EQ(left_of_a_hundred("deck-time, bottom, omitted-by-one x2"), "96");
}

// What is said of a routine of so many seconds: one count is one second at 60 beats a minute.
std::string time_of(const std::string& event, const std::string& set, int seconds) {
  const ReadSheet sheet(published::head(event, set) + "tempo 60\npassage \"All of it\"\ncounts " +
                            std::to_string(seconds) + " surface\n",
                        shipped(set));
  std::string said;
  for (const Diagnostic& one : sheet.sheet().messages().list()) {
    if (one.problem == Problem::over_time) said += "over";
    if (one.problem == Problem::under_time) said += "under";
  }
  return said;
}

void expect_time(const std::string& event, const std::string& set, int seconds, int tolerance) {
  EXPECT_EQ(time_of(event, set, seconds + tolerance), "") << event;
  EXPECT_EQ(time_of(event, set, seconds + tolerance + 1), "over") << event;
  EXPECT_EQ(time_of(event, set, seconds - tolerance), "") << event;
  EXPECT_EQ(time_of(event, set, seconds - tolerance - 1), "under") << event;
}

// Source: FINA Synchronised Swimming Rules 2009-2013, SSAG 6; +-15 s.
TEST(Routines2009, KeepToThePrintedTimesOfTheAgeGroups) {
  const struct {
    const char* age;
    int solo, duet, team, combination;
  } rows[] = {
      {"12-and-under", 120, 150, 180, 210}, {"13-15", 150, 180, 210, 240}, {"16-18", 180, 210, 240, 270}};
  for (const auto& row : rows) {
    expect_time(std::string("solo-") + row.age, "routines-2009", row.solo, 15);
    expect_time(std::string("duet-") + row.age, "routines-2009", row.duet, 15);
    expect_time(std::string("team-") + row.age, "routines-2009", row.team, 15);
    expect_time(std::string("combination-") + row.age, "routines-2009", row.combination, 15);
  }
}

// Three panels of five: FINA SS 16.1 (2013-2017). Secondary: execution 30, artistic impression 40,
// difficulty 30.
TEST(Routines2013, WeighAFreeRoutineThirtyFortyThirty) {
  for (const char* event : {"solo-free", "duet-free", "team-free"}) {
    EXPECT_EQ(shipped("routines-2013").routine_panels(event).size(), 3u);
    for (const PanelRule* rule : shipped("routines-2013").routine_panels(event)) EXPECT_EQ(rule->judges, 5);
    EXPECT_EQ(share(event, "routines-2013", "execution"), "30");
    EXPECT_EQ(share(event, "routines-2013", "artistic-impression"), "40");
    EXPECT_EQ(share(event, "routines-2013", "difficulty"), "30");
  }
}

// Secondary: 2020 Games pages: execution 30, impression 30, elements 40. With one mark for all elements their
// share does not hang on how they are weighed against each other, which is known from memory only.
TEST(Routines2013, WeighATechnicalRoutineThirtyThirtyForty) {
  const std::string sheet =
      published::head("team-technical", "routines-2013") +
      "element 1 required\nparts team-1\nexpect 0\nelement 2 required\nparts team-2\nexpect 0\n"
      "impression execution 10, overall-impression 0\n";
  const auto total = [](const std::string& text) {
    return expected_total(ReadSheet(text, shipped("routines-2013")).routine());
  };
  EXPECT_EQ(total(sheet), "30");
  EXPECT_EQ(
      total(replaced(sheet, "execution 10, overall-impression 0", "execution 0, overall-impression 10")),
      "30");
  std::string tens = replaced(sheet, "execution 10", "execution 0");
  for (const char* part : {"team-1\nexpect ", "team-2\nexpect "})
    tens = replaced(tens, part + std::string("0"), part + std::string("10"));
  EXPECT_EQ(total(tens), "40");
}

// Source: FINA SS 16.4 (2013-2017): a missing mark is the mean of the other judges, to the nearest 0.1. None
// of these is a tie.
TEST(Routines2013, GiveAMissingJudgeTheMeanOfTheOthersToATenth) {
  const auto filled = [](const std::string& marks) {
    const ReadSheet sheet(
        published::head("solo-free", "routines-2013") + "panel 2015-07-04\nexecution: " + marks + "\n",
        shipped("routines-2013"));
    const RecordedAspect& seen = sheet.routine().panels.front().aspects.front();
    for (const JudgeMark& one : judge(*seen.rule, seen.marks).judges) {
      if (one.filled) return one.mark.text(1);
    }
    return std::string("nobody was missing");
  };
  EXPECT_EQ(filled("8.0 8.2 - 7.9 8.3"), "8.1");  // 32.4 / 4
  EXPECT_EQ(filled("8.0 8.1 7.9 - 8.3"), "8.1");  // 32.3 / 4 = 8.075
  EXPECT_EQ(filled("- 7.3 7.4 7.3 7.3"), "7.3");  // 29.3 / 4 = 7.325
}

}  // namespace
}  // namespace landdrill
