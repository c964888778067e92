// Practice sessions: each mark on disk at once, resumed where they were left.
#include "tables/store/practice_book.h"

#include "scene.h"
#include "tables/store/book.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using Did = KeptMark::Did;

class PracticeBookTest : public SeasonTest {
 protected:
  PracticeBookTest() : season(std::move(*Season::open(file, Mode::create))), practice(season) {
    Book book(season);
    const auto added =
        book.add({{Block::What::routine, "Low Water", "solo-free", "", "", "routine \"Low Water\"\n", 0},
                  {Block::What::panel, "Low Water", "solo-free", "2026-05-09", "", "panel 2026-05-09\n", 0}},
                 {odd_set()});
    panel = (*added)[1].id;
  }
  Season season;
  PracticeBook practice;
  std::int64_t panel = 0;
};

TEST_F(PracticeBookTest, KeepsEveryMarkAtOnceSoThatAnotherProgramSeesIt) {
  const auto session = practice.start({"Robin", 30}, {{panel, "1"}, {panel, "choreography"}});
  ASSERT_EQ(trouble_in(session), "");
  ASSERT_EQ(trouble_in(practice.mark(*session, 0, {Did::marked, Decimal::parse("7.25"), true}, {})), "");
  Season another = open(Mode::read);
  const auto paused = PracticeBook(another).paused("Robin");
  ASSERT_EQ(trouble_in(paused), "");
  ASSERT_EQ(paused->size(), 1u);
  const PracticeSession& found = paused->front();
  EXPECT_EQ(found.id, *session);
  EXPECT_EQ(*found.wish.seconds_each, 30);
  ASSERT_EQ(found.lines.size(), 2u);
  EXPECT_EQ(found.lines[1].line, "choreography");
  EXPECT_EQ(found.marks[0].mark->text(), "7.25");
  EXPECT_TRUE(found.marks[0].late);
  EXPECT_EQ(found.marks[1].did, Did::open);
}

TEST_F(PracticeBookTest, LetsAMarkBeGivenAgainOrTakenBackBySkipping) {
  const auto session = practice.start({"Robin", {}}, {{panel, "1"}});
  const KeptMark seven{Did::marked, Decimal::parse("7"), false};
  practice.mark(*session, 0, seven, {});
  practice.mark(*session, 0, {Did::skipped, {}, false}, seven);
  const auto paused = practice.paused("Robin");
  EXPECT_EQ(paused->front().marks[0].did, Did::skipped);
  EXPECT_FALSE(paused->front().marks[0].mark);
  EXPECT_FALSE(paused->front().wish.seconds_each);
}

TEST_F(PracticeBookTest, LeavesAMarkThatCameMeanwhileAndThoseOfAFinishedSession) {
  const auto session = practice.start({"Robin", {}}, {{panel, "1"}});
  const KeptMark seven{Did::marked, Decimal::parse("7"), false},
      eight{Did::marked, Decimal::parse("8"), false};
  EXPECT_EQ(*practice.mark(*session, 0, seven, {}), seven);
  EXPECT_EQ(*practice.mark(*session, 0, eight, {}), seven);
  EXPECT_EQ(practice.paused("Robin")->front().marks[0], seven);
  EXPECT_EQ(*practice.mark(*session, 0, eight, seven), eight);
  practice.finish(*session);
  EXPECT_EQ(*practice.mark(*session, 0, seven, eight), eight);
  EXPECT_EQ(practice.finished("Robin")->front().marks[0], eight);
}

TEST_F(PracticeBookTest, ListsFinishedSessionsOfATraineeOldestFirst) {
  const auto first = practice.start({"Robin", {}}, {{panel, "1"}});
  const auto second = practice.start({"Robin", {}}, {{panel, "1"}});
  practice.start({"Sam", {}}, {{panel, "1"}});
  practice.finish(*first);
  practice.finish(*second);
  const auto sessions = practice.finished("Robin");
  ASSERT_EQ(sessions->size(), 2u);
  EXPECT_EQ((*sessions)[0].id, *first);
  EXPECT_EQ((*sessions)[1].id, *second);
  EXPECT_TRUE(practice.paused("Robin")->empty());
  EXPECT_EQ(*practice.trainees(), (std::vector<std::string>{"Robin", "Sam"}));
}

TEST_F(PracticeBookTest, NumbersTheSessionsOfATraineeByTheirStart) {
  const auto first = practice.start({"Robin", {}}, {{panel, "1"}});
  const auto second = practice.start({"Robin", {}}, {{panel, "1"}});
  practice.start({"Sam", {}}, {{panel, "1"}});
  practice.finish(*second);
  EXPECT_EQ(practice.paused("Robin")->front().number, 1);
  EXPECT_EQ(practice.finished("Robin")->front().number, 2);
  EXPECT_EQ(practice.paused("Sam")->front().number, 1);
  EXPECT_EQ(practice.paused("Robin")->front().id, *first);
}

TEST_F(PracticeBookTest, TellsSessionsThatBeginAtOnceApartByTheirStart) {
  for (int i = 0; i < 3; ++i) practice.start({"Robin", {}}, {{panel, "1"}});
  const auto paused = practice.paused("Robin");
  ASSERT_EQ(paused->size(), 3u);
  EXPECT_LT((*paused)[0].started_at, (*paused)[1].started_at);
  EXPECT_LT((*paused)[1].started_at, (*paused)[2].started_at);
}

TEST_F(PracticeBookTest, KnowsATraineeInAnyCase) {
  practice.start({"Zo\xC3\xAB", {}}, {{panel, "1"}});
  EXPECT_EQ(*practice.known_as("ZO\xC3\x8B"), "Zo\xC3\xAB");
  EXPECT_EQ(*practice.known_as("Zoe"), "Zoe");
  practice.start({"zo\xC3\xAB", {}}, {{panel, "1"}});  // of an older book
  EXPECT_EQ(*practice.known_as("zo\xC3\xAB"), "zo\xC3\xAB");
}

PracticeSession session_of(const std::string& trainee, std::int64_t panel, const std::string& mark) {
  return {0,    {trainee, {}},  "2026-05-10T00:00:00Z",
          true, {{panel, "1"}}, {{Did::marked, Decimal::parse(mark), false}}};
}

TEST_F(PracticeBookTest, KeepsSessionsFromElsewhereOnce) {
  PracticeSession session = session_of("Robin", panel, "7.25");
  auto added = practice.add({session});
  ASSERT_EQ(trouble_in(added), "");
  EXPECT_EQ((*added)[0][0].did, AddedMark::Did::added);
  session.lines.push_back({panel, "2"});
  session.marks.push_back({Did::skipped, {}, false});
  added = practice.add({session});
  EXPECT_EQ((*added)[0][0].did, AddedMark::Did::already_there);
  EXPECT_EQ((*added)[0][1].did, AddedMark::Did::added);
  const auto sessions = practice.finished("Robin");
  ASSERT_EQ(sessions->size(), 1u);
  EXPECT_EQ(sessions->front().started_at, "2026-05-10T00:00:00Z");
  ASSERT_EQ(sessions->front().marks.size(), 2u);
  EXPECT_EQ(sessions->front().marks[0].mark->text(), "7.25");
  EXPECT_EQ(sessions->front().marks[1].did, Did::skipped);
}

TEST_F(PracticeBookTest, KeepsNothingWhereAMarkDiffersFromWhatIsKept) {
  practice.add({session_of("Robin", panel, "7.25")});
  const auto added = practice.add({session_of("Sam", panel, "7"), session_of("Robin", panel, "7.5")});
  ASSERT_EQ(trouble_in(added), "");
  EXPECT_EQ((*added)[1][0].did, AddedMark::Did::differs);
  EXPECT_EQ((*added)[1][0].kept->text(), "7.25");
  EXPECT_EQ(practice.finished("Sam")->size(), 0u);
  EXPECT_EQ(practice.all()->size(), 1u);
}

TEST_F(PracticeBookTest, PutsACorrectedMarkInThePlaceOfTheKeptOneWhenAskedTo) {
  practice.add({session_of("Robin", panel, "7.25")});
  const auto added = practice.add({session_of("Robin", panel, "7.5")}, true);
  ASSERT_EQ(trouble_in(added), "");
  EXPECT_EQ((*added)[0][0].did, AddedMark::Did::corrected);
  EXPECT_EQ((*added)[0][0].kept->text(), "7.25");
  EXPECT_EQ(practice.finished("Robin")->front().marks[0].mark->text(), "7.5");
}

TEST_F(PracticeBookTest, LeavesASessionOutAndCountsItAgainUnderItsNumber) {
  practice.add({session_of("Robin", panel, "7.25")});
  const auto second = practice.start({"Robin", {}}, {{panel, "1"}});
  const std::int64_t first = practice.finished("Robin")->front().id;
  ASSERT_EQ(trouble_in(practice.omit(first)), "");
  EXPECT_TRUE(practice.finished("Robin")->empty());
  EXPECT_EQ(practice.of("Robin")->size(), 1u);
  EXPECT_TRUE(practice.all()->front().left_out);
  EXPECT_EQ(practice.paused("Robin")->front().number, 2);
  ASSERT_EQ(trouble_in(practice.omit(*second)), "");
  EXPECT_TRUE(practice.paused("Robin")->empty());
  ASSERT_EQ(trouble_in(practice.include(first)), "");
  EXPECT_EQ(practice.finished("Robin")->front().marks[0].mark->text(), "7.25");
}

TEST_F(PracticeBookTest, KeepsThatASessionTellsThePanelsMarks) {
  practice.start({"Robin", {}, true}, {{panel, "1"}});
  practice.start({"Sam", {}}, {{panel, "1"}});
  EXPECT_TRUE(practice.paused("Robin")->front().wish.tells_panel);
  EXPECT_FALSE(practice.paused("Sam")->front().wish.tells_panel);
}

TEST_F(PracticeBookTest, KnowsAMarkAgainAlsoAfterThePanelWasCorrected) {
  practice.add({session_of("Robin", panel, "7.25")});
  Book book(season);
  const auto corrected = book.add(
      {{Block::What::panel, "Low Water", "solo-free", "2026-05-09", "", "panel 2026-05-09 # again\n", 0}},
      {odd_set()});
  ASSERT_NE((*corrected)[0].id, panel);
  const auto added = practice.add({session_of("Robin", (*corrected)[0].id, "7.25")});
  EXPECT_EQ((*added)[0][0].did, AddedMark::Did::already_there);
}

TEST_F(PracticeBookTest, RefusesALineThatIsNotThereAndAPanelThatIsNot) {
  const auto session = practice.start({"Robin", {}}, {{panel, "1"}});
  EXPECT_EQ(trouble_in(practice.mark(*session, 4, {}, {})),
            file.string() + ": the session " + std::to_string(*session) + " has no line 5 ()");
  EXPECT_NE(trouble_in(practice.start({"Robin", {}}, {{999, "1"}})), "");
  const auto paused = practice.paused("Robin");
  ASSERT_EQ(paused->size(), 1u);
  EXPECT_EQ(paused->front().id, *session);  // the refused one left nothing behind
}

}  // namespace
}  // namespace landdrill
