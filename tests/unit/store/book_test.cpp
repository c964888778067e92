// The season book: versions, what belongs to what, all or nothing, editions kept byte for byte.
#include "tables/store/book.h"

#include <chrono>
#include <map>
#include <thread>

#include "scene.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using Did = AddedBlock::Did;
using What = Block::What;

Block routine(const std::string& text) {
  return {What::routine, "Low Water", "solo-free", "", "", text, 0};
}
Block panel(const std::string& date, const std::string& text) {
  return {What::panel, "Low Water", "solo-free", date, "Tarn Open", text, 0};
}
const std::string low_water = "routine \"Low Water\"\nevent solo-free\n";

class BookTest : public SeasonTest {
 protected:
  BookTest() : season(std::move(*Season::open(file, Mode::create))), book(season) {}
  std::string add(const std::vector<Block>& blocks, const TableFiles& edition = odd_set()) {
    const auto added = book.add(blocks, {edition});
    if (!added) return added.error().why + " (" + added.error().hint + ")";
    std::string words;
    for (const AddedBlock& one : *added) {
      const char* const did[] = {"added", "new version", "already there"};
      words += std::string(words.empty() ? "" : ", ") + did[static_cast<int>(one.did)] + " " +
               std::to_string(one.version);
    }
    return words;
  }
  std::string found(const BookWish& wish) const {
    std::string words;
    const auto blocks = book.find(wish);
    if (!blocks) return trouble_in(blocks);
    for (const KeptBlock& block : *blocks) {
      words += std::string(word_of(block.what)) + " " + block.routine +
               (block.date.empty() ? "" : " " + block.date) + " " + std::to_string(block.version) + "/" +
               std::to_string(block.versions) + "\n";
    }
    return words;
  }
  // Of every version of every routine, each with a line below it.
  std::string sheets() const {
    std::string text;
    const auto routines = book.find({"", What::routine, "", "", "", true});
    for (const KeptBlock& one : *routines) text += *book.sheet(one.id) + "--\n";
    return text;
  }
  std::int64_t entry_of_version(int number) const {
    const auto routines = book.find({"", What::routine, "", "", "", true});
    return routines->at(static_cast<std::size_t>(number - 1)).id;
  }
  Season season;
  Book book;
};

TEST_F(BookTest, KeepsTheSameTextOnceAndAnotherTextAsANewVersion) {
  EXPECT_EQ(add({routine(low_water), panel("2026-05-09", "panel 2026-05-09\n")}), "added 1, added 1");
  EXPECT_EQ(add({routine(low_water), panel("2026-05-09", "panel 2026-05-09\n")}),
            "already there 1, already there 1");
  EXPECT_EQ(add({routine(low_water + "tempo 120\n")}), "new version 2");
  EXPECT_EQ(found({}), "routine Low Water 2/2\npanel Low Water 2026-05-09 1/1\n");
  BookWish all;
  all.all_versions = true;
  EXPECT_EQ(found(all), "routine Low Water 1/2\nroutine Low Water 2/2\npanel Low Water 2026-05-09 1/1\n");
}

TEST_F(BookTest, GivesASheetWithTheRunsAndPanelsOfThatVersion) {
  add({routine(low_water), panel("2026-05-09", "panel 2026-05-09 \"Tarn Open\"\n")});
  add({routine(low_water + "tempo 120\n"), panel("2026-06-13", "panel 2026-06-13 \"Tarn Open\"\n")});
  BookWish all;
  all.what = What::routine;
  all.all_versions = true;
  const std::vector<KeptBlock> routines = *book.find(all);
  ASSERT_EQ(routines.size(), 2u);
  EXPECT_EQ(*book.sheet(routines[0].id), low_water + "\npanel 2026-05-09 \"Tarn Open\"\n");
  EXPECT_EQ(*book.sheet(routines[1].id), low_water + "tempo 120\n\npanel 2026-06-13 \"Tarn Open\"\n");
}

TEST_F(BookTest, PutsAPanelThatComesAloneToTheLatestVersion) {
  add({routine(low_water)});
  add({routine(low_water + "tempo 120\n")});
  EXPECT_EQ(add({panel("2026-05-09", "panel 2026-05-09 \"Tarn Open\"\n")}), "added 1");
  const KeptBlock latest = book.find({"", What::routine, "", "", "", false})->front();
  EXPECT_EQ(latest.version, 2);
  EXPECT_EQ(*book.sheet(latest.id), low_water + "tempo 120\n\npanel 2026-05-09 \"Tarn Open\"\n");
}

TEST_F(BookTest, LeavesAPanelThatComesAgainWithAChangedRoutineWhereItWas) {
  add({routine(low_water), panel("2026-05-09", "a\n")});
  EXPECT_EQ(add({routine(low_water + "tempo 120\n"), panel("2026-05-09", "a\n")}),
            "new version 2, already there 1");
  const std::vector<KeptBlock> panels = *book.find({"", What::panel, "", "", "", true});
  ASSERT_EQ(panels.size(), 1u);
  EXPECT_EQ(panels[0].of_version, 1);
  EXPECT_EQ(sheets(), low_water + "\na\n--\n" + low_water + "tempo 120\n--\n");
}

TEST_F(BookTest, SaysWhichVersionAPanelBelongsToAndWhichStoodBesideIt) {
  add({routine(low_water), panel("2026-05-09", "a\n")});
  const auto added = book.add({routine(low_water + "tempo 120\n"), panel("2026-05-09", "a\n")}, {odd_set()});
  ASSERT_EQ(trouble_in(added), "");
  EXPECT_EQ((*added)[1].of_version, 1);
  EXPECT_EQ((*added)[1].beside, 2);
}

TEST_F(BookTest, PutsNewWordsOfAPanelToTheVersionBesideThem) {
  add({routine(low_water), panel("2026-05-09", "a\n")});
  EXPECT_EQ(add({routine(low_water + "tempo 120\n"), panel("2026-05-09", "b\n")}),
            "new version 2, new version 2");
  EXPECT_EQ(sheets(), low_water + "--\n" + low_water + "tempo 120\n\nb\n--\n");
}

TEST_F(BookTest, LeavesNewWordsOfAPanelThatComeAloneWithItsVersion) {
  add({routine(low_water), panel("2026-05-09", "a\n")});
  add({routine(low_water + "tempo 120\n")});
  EXPECT_EQ(add({panel("2026-05-09", "b\n")}), "new version 2");
  EXPECT_EQ(sheets(), low_water + "\nb\n--\n" + low_water + "tempo 120\n--\n");
}

TEST_F(BookTest, PutsNewWordsOfAPanelToTheVersionThatIsSaid) {
  add({routine(low_water), panel("2026-05-09", "a\n")});
  Block corrected = panel("2026-05-09", "b\n");
  corrected.of = entry_of_version(1);
  EXPECT_EQ(add({routine(low_water + "tempo 120\n"), corrected}), "new version 2, new version 2");
  EXPECT_EQ(sheets(), low_water + "\nb\n--\n" + low_water + "tempo 120\n--\n");
}

TEST_F(BookTest, PutsAPanelInTheSameWordsToAnotherVersionThatIsSaidAndBack) {
  const std::string second = low_water + "tempo 120\n";
  add({routine(low_water), panel("2026-05-09", "a\n"), routine(second)});
  Block moved = panel("2026-05-09", "a\n");
  moved.of = entry_of_version(2);
  EXPECT_EQ(add({moved}), "new version 2");
  EXPECT_EQ(sheets(), low_water + "--\n" + second + "\na\n--\n");
  EXPECT_EQ(add({moved}), "already there 2");
  EXPECT_EQ(add({routine(second), panel("2026-05-09", "a\n")}), "already there 2, already there 2");
  moved.of = entry_of_version(1);
  EXPECT_EQ(add({moved}), "new version 3");
  EXPECT_EQ(sheets(), low_water + "\na\n--\n" + second + "--\n");
}

TEST_F(BookTest, RefusesToPutAPanelToWhatIsNoVersionOfItsRoutine) {
  Block other = routine(low_water);
  other.routine = "High Water";
  add({routine(low_water), panel("2026-05-09", "a\n"), other});
  Block moved = panel("2026-05-09", "a\n");
  for (const std::int64_t of : {2, 3, 99}) {  // the panel, the other routine, nothing
    moved.of = of;
    EXPECT_EQ(add({moved}),
              "entry " + std::to_string(of) + " is no version of \"Low Water\" (look it up in the list)");
  }
}

TEST_F(BookTest, SaysOfARunTheVersionThatHadItFirstAndOfAllHowManyVersionsThereAre) {
  const Block tuesday{What::run, "Low Water", "solo-free", "2026-04-14", "", "a\n", 0};
  Block later = tuesday;
  later.text = "b\n";
  add({routine(low_water), tuesday, routine(low_water + "tempo 120\n"), later});
  const std::vector<KeptBlock> latest = *book.find({"", What::run, "", "", "", false});
  ASSERT_EQ(latest.size(), 1u);
  EXPECT_EQ(latest[0].version, 2);
  EXPECT_EQ(latest[0].of_version, 1);
  EXPECT_EQ(latest[0].of_routine, entry_of_version(1));
  EXPECT_EQ(latest[0].routine_versions, 2);
  const std::vector<KeptBlock> all = *book.find({"", What::run, "", "", "", true});
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all[1].of_version, 2);
  const auto again = book.add({tuesday}, {odd_set()});
  EXPECT_EQ(again->front().routine_versions, 2);
}

TEST_F(BookTest, KeepsARunWithEveryVersionWhoseSheetHadIt) {
  const Block tuesday{What::run, "Low Water", "solo-free", "2026-04-14", "", "run 2026-04-14\n", 0};
  add({routine(low_water), tuesday});
  add({routine(low_water + "tempo 120\n"), tuesday});
  EXPECT_EQ(add({routine(low_water + "tempo 120\n"), tuesday}), "already there 2, already there 2");
  EXPECT_EQ(sheets(), low_water + "\nrun 2026-04-14\n--\n" + low_water + "tempo 120\n\nrun 2026-04-14\n--\n");
}

TEST_F(BookTest, KnowsVersionsAgainThatComeInTheirOrderAndAnOldOneAloneIsInForceAgain) {
  const Block first = routine(low_water), second = routine(low_water + "tempo 120\n");
  add({first, panel("2026-05-09", "a\n"), second});
  EXPECT_EQ(add({first, panel("2026-05-09", "a\n"), second}),
            "already there 1, already there 1, already there 2");
  EXPECT_EQ(add({first, panel("2026-05-09", "b\n"), second}),
            "already there 1, new version 2, already there 2");
  EXPECT_EQ(add({first}), "new version 3");
  EXPECT_EQ(add({first, second, first}), "already there 1, already there 2, already there 3");
}

TEST_F(BookTest, OlderVersionsKeepTheirEditionWhenTheTablesChange) {
  const Block first = routine(low_water), second = routine(low_water + "tempo 120\n");
  add({first, second});
  TableFiles changed = odd_set();
  changed.files.front().text += "\n";
  EXPECT_EQ(add({first, second}, changed), "already there 1, new version 3");
}

TEST_F(BookTest, RefusesAPanelOfNoRoutineAndKeepsNothingOfThatCall) {
  Block stray = panel("2026-05-09", "panel 2026-05-09\n");
  stray.routine = "Low Watr";
  EXPECT_EQ(add({routine(low_water), stray}),
            "it has no routine \"Low Watr\" in solo-free, to which the panel of 2026-05-09 could belong (the "
            "nearest "
            "is Low Water)");
  EXPECT_EQ(found({}), "");
}

TEST_F(BookTest, FindsByWordsDatesAndEvent) {
  add({routine(low_water), panel("2026-05-09", "a\n"), panel("2026-06-13", "b\n")});
  EXPECT_EQ(found({"LOW open", {}, "", "", "", false}),
            "panel Low Water 2026-05-09 1/1\npanel Low Water 2026-06-13 1/1\n");
  EXPECT_EQ(found({"", {}, "", "2026-06-01", "", false}), "panel Low Water 2026-06-13 1/1\n");
  EXPECT_EQ(found({"", {}, "", "", "2026-06-01", false}), "panel Low Water 2026-05-09 1/1\n");
  EXPECT_EQ(found({"", {}, "duet-free", "", "", false}), "");
  EXPECT_EQ(found({"lo_ \"\\ %", {}, "", "", "", false}), "");
}

TEST_F(BookTest, KeepsTheEditionByteForByteAndASecondOneWhenAByteDiffers) {
  add({routine(low_water)});
  TableFiles changed = odd_set();
  changed.files.front().text += "\n";
  EXPECT_EQ(add({routine(low_water)}, changed), "new version 2");
  EXPECT_EQ(add({routine(low_water)}, changed), "already there 2");
  BookWish all;
  all.all_versions = true;
  const std::vector<KeptBlock> routines = *book.find(all);
  EXPECT_EQ(bytes_of(*book.edition(routines[0].edition)), bytes_of(odd_set()));
  EXPECT_EQ(bytes_of(*book.edition(routines[1].edition)), bytes_of(changed));
}

TEST_F(BookTest, GivesASheetWithoutItsPanelsButWithTheRunsOfThatVersion) {
  const Block run{What::run, "Low Water", "solo-free", "2026-04-14", "Tuesday", "run 2026-04-14\n", 0};
  add({routine(low_water), run, panel("2026-05-09", "panel 2026-05-09\n")});
  add({routine(low_water + "tempo 120\n"), panel("2026-06-13", "panel 2026-06-13\n")});
  const std::vector<KeptBlock> routines = *book.find({"", What::routine, "", "", "", true});
  ASSERT_EQ(routines.size(), 2u);
  EXPECT_EQ(*book.sheet_without_panels(routines[0].id), low_water + "\nrun 2026-04-14\n");
  EXPECT_EQ(*book.sheet_without_panels(routines[1].id), low_water + "tempo 120\n");
}

TEST_F(BookTest, SaysWhatCountsWithEachVersionOfARoutine) {
  const auto run = [](const std::string& date, const std::string& text) {
    return Block{What::run, "Low Water", "solo-free", date, "Tuesday", text, 0};
  };
  const auto other_panel = [](const std::string& date, const std::string& title, const std::string& text) {
    return Block{What::panel, "Low Water", "solo-free", date, title, text, 0};
  };
  add({routine(low_water), run("2026-04-14", "a\n"), panel("2026-06-13", "b\n"), panel("2026-05-09", "c\n")});
  add({routine(low_water + "tempo 120\n"),
       run("2026-04-14", "d\n"),
       run("2026-04-21", "e\n"),
       panel("2026-05-09", "f\n"),
       other_panel("2026-07-04", "Heron Cup", "g\n"),
       other_panel("2026-05-09", "Open Reed", "h\n"),
       {What::run, "Low Water", "solo-free", "2026-07-04", "Heron Cup", "k\n", 0}});
  const auto swum = [&](const BookWish& wish) {
    std::map<std::int64_t, std::string> runs, panels;
    const std::vector<KeptBlock> found = *book.find(wish);
    for (const KeptBlock& one : found) {
      if (one.what == What::run) runs[one.of_routine] += one.date + " " + one.title + ", ";
      if (one.what == What::panel) panels[one.of_routine] += book.text(one.id)->substr(0, 1) + ", ";
    }
    std::string words;
    const std::vector<KeptBlock> routines = *book.find({"", What::routine, "", "", "", true});
    for (const KeptBlock& one : routines) words += runs[one.id] + panels[one.id] + "; ";
    return words;
  };
  EXPECT_EQ(swum({}), "2026-04-14 Tuesday, b, ; 2026-04-21 Tuesday, 2026-07-04 Heron Cup, h, f, g, ; ");
  EXPECT_EQ(swum({"tuesday", {}, "", "", "", false}), "2026-04-14 Tuesday, ; 2026-04-21 Tuesday, ; ");
  EXPECT_EQ(swum({"WATER open", {}, "", "", "", false}), "b, ; h, f, ; ");
  EXPECT_EQ(swum({"", What::panel, "", "2026-06-01", "", false}), "b, ; g, ; ");
  EXPECT_EQ(swum({"", {}, "", "", "2026-05-09", false}),
            "2026-04-14 Tuesday, ; 2026-04-21 Tuesday, h, f, ; ");
  EXPECT_EQ(swum({"", What::routine, "", "", "", false}), "; ; ");
}

TEST_F(BookTest, SaysThatAnEntryIsNotThere) {
  EXPECT_EQ(trouble_in(book.text(7)), file.string() + ": it has no entry 7 (look it up in the list)");
  EXPECT_EQ(trouble_in(book.edition(7)), file.string() + ": it has no edition 7 (look it up in the list)");
}

TEST_F(BookTest, BacksUpWhileAnotherHasItOpenAndRestoresWhatItWas) {
  add({routine(low_water)});
  Season another = open(Mode::write);
  ASSERT_EQ(trouble_in(book.back_up(folder / "copy.season")), "");
  add({routine(low_water + "tempo 120\n")});
  ASSERT_EQ(trouble_in(Book(another).restore(folder / "copy.season")), "");
  EXPECT_EQ(found({}), "routine Low Water 1/1\n");
  EXPECT_EQ(trouble_in(book.back_up(folder / "copy.season")),
            (folder / "copy.season").string() +
                ": there is a file of this name already (name a new file for the backup)");
}

TEST_F(BookTest, KeepsWhatIsAddedWhileItIsHeldOnlyWhenThatIsCommitted) {
  add({routine(low_water)});
  {
    auto hold = book.hold();
    ASSERT_EQ(trouble_in(hold), "");
    add({routine(low_water + "tempo 120\n")});
    EXPECT_EQ(found({}), "routine Low Water 2/2\n");
    Season another = open(Mode::read);
    EXPECT_EQ(Book(another).find({})->size(), 1u);
    EXPECT_EQ(Book(another).find({})->front().versions, 1);
  }
  EXPECT_EQ(found({}), "routine Low Water 1/1\n");
  auto hold = book.hold();
  add({routine(low_water + "tempo 130\n")});
  ASSERT_EQ(trouble_in(hold->commit()), "");
  EXPECT_EQ(found({}), "routine Low Water 2/2\n");
}

TEST_F(BookTest, IsHeldByOneAtATime) {
  add({routine(low_water)});
  auto hold = std::make_unique<Book::Hold>(std::move(*book.hold()));
  std::string order;
  std::thread other([&] {
    Season same_file = open(Mode::write);
    Book theirs(same_file);
    const auto held = theirs.hold();  // waits
    order += held ? "then other" : "other refused";
  });
  std::this_thread::sleep_for(std::chrono::milliseconds(50));
  order += "one, ";
  hold.reset();
  other.join();
  EXPECT_EQ(order, "one, then other");
}

TEST_F(BookTest, DoesNotRestoreFromAFileThatIsNoSeason) {
  add({routine(low_water)});
  EXPECT_NE(trouble_in(book.restore(folder / "none.season")), "");
  EXPECT_EQ(trouble_in(book.restore(file)),
            file.string() + ": it is the season file itself (name the backup)");
  EXPECT_EQ(trouble_in(book.back_up(folder / "nowhere" / "copy.season")),
            (folder / "nowhere" / "copy.season").string() + ": there is no folder " +
                (folder / "nowhere").string() + " (make the folder first)");
  EXPECT_EQ(found({}), "routine Low Water 1/1\n");
}

}  // namespace
}  // namespace landdrill
