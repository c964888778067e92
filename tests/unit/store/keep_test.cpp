// A set goes in and comes out with the same bytes.
#include "scene.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;

class Keep : public SeasonTest {};

TEST_F(Keep, ExportHasTheBytesThatWereImported) {
  season_with_set();
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

TEST_F(Keep, ExportNamesTheSeasonFileForMessages) {
  season_with_set();
  const TableFiles files = open(Mode::read).export_set("tarn-pool").value();
  EXPECT_EQ(files.name, "tarn-pool");
  EXPECT_EQ(files.place, "club.season/tarn-pool/");
}

TEST_F(Keep, EveryShippedSetComesOutAsItWentIn) {
  Season season = open(Mode::create);
  int sets = 0;
  for (const auto& entry : std::filesystem::directory_iterator(SHIPPED_SETS)) {
    if (!entry.is_directory()) continue;
    const Result<TableFiles> files = read_folder(entry.path());
    ASSERT_TRUE(files) << trouble_in(files);
    ASSERT_EQ(trouble_in(season.import_set(*files, "")), "") << entry.path();
    const Result<TableFiles> again = season.export_set(files->name);
    ASSERT_TRUE(again) << trouble_in(again);
    EXPECT_EQ(bytes_of(*again), bytes_of(*files)) << entry.path();
    ++sets;
  }
  EXPECT_GE(sets, 5);
}

TEST_F(Keep, SetsAreListedWithTitleRowsAndStandingEdits) {
  Season season = season_with_set();
  ASSERT_TRUE(season.edit({"tarn-pool", "parts", "spin-360", "value", "1.0", ""}));
  ASSERT_TRUE(season.edit({"tarn-pool", "parts", "spin-360", "value", "1.1", ""}));
  ASSERT_TRUE(season.undo("tarn-pool"));
  const std::vector<SeasonSet> sets = season.sets().value();
  ASSERT_EQ(sets.size(), 1u);
  EXPECT_EQ(sets[0].name, "tarn-pool");
  EXPECT_EQ(sets[0].title, "Tarn Pool trial");
  EXPECT_EQ(sets[0].edition, "2026");
  EXPECT_EQ(sets[0].rows, 8u);  // 1 + 3 + 1 + 1 + 2; the empty line is none
  EXPECT_EQ(sets[0].edits, 1u);
  EXPECT_EQ(sets[0].imported_at.size(), std::string("2026-04-14T18:03:11Z").size());
}

TEST_F(Keep, TheSameBytesAgainAreNothingToDo) {
  Season season = season_with_set();
  const auto again = season.import_set(odd_set(), "again").value();
  EXPECT_TRUE(again.already_there);
  EXPECT_EQ(again.rows, 8u);
  EXPECT_EQ(season.history("tarn-pool")->size(), 1u);
}

TEST_F(Keep, OtherBytesUnderTheNameAreRefusedUnlessTheyReplace) {
  Season season = season_with_set();
  TableFiles other = odd_set();
  other.files[2].text = with_change(other.files[2].text, "0.5", "0.4");
  EXPECT_EQ(trouble_in(season.import_set(other, "")),
            file.string() +
                ": it holds another value set \"tarn-pool\" already (replace it (that can be undone; 0 edits "
                "stand in it), or import under another name)");
  EXPECT_EQ(exported(), bytes_of(odd_set()));
  EXPECT_FALSE(season.import_set(other, "new catalogue", true).value().already_there);
  EXPECT_EQ(exported(), bytes_of(other));
}

TEST_F(Keep, ASetThatDoesNotLoadIsRefusedWithTheLoadersMessage) {
  Season season = open(Mode::create);
  TableFiles broken = odd_set();
  broken.files[1].text = with_change(broken.files[1].text, "0.9", "o.9");
  const std::string trouble = trouble_in(season.import_set(broken, ""));
  EXPECT_NE(trouble.find("parts.csv:2:23: error: "), std::string::npos) << trouble;
  EXPECT_TRUE(season.sets()->empty());
}

TEST_F(Keep, ANameThatIsNoFolderNameIsRefused) {
  Season season = open(Mode::create);
  for (const char* name : {"", ".", "../elsewhere", "a/b", "a\nb"}) {
    TableFiles files = odd_set();
    files.name = name;
    EXPECT_NE(trouble_in(season.import_set(files, "")).find("cannot be called that"), std::string::npos)
        << name;
  }
}

TEST_F(Keep, ARemovedSetIsGoneAndTheOthersStay) {
  Season season = season_with_set();
  TableFiles other = odd_set();
  other.name = "tarn-pool-2027";
  ASSERT_TRUE(season.import_set(other, ""));
  ASSERT_TRUE(season.edit({"tarn-pool", "parts", "spin-360", "value", "1.0", ""}));
  ASSERT_TRUE(season.undo("tarn-pool"));
  ASSERT_EQ(trouble_in(season.remove_set("tarn-pool")), "");
  EXPECT_EQ(season.sets()->size(), 1u);
  EXPECT_EQ(bytes_of(season.export_set("tarn-pool-2027").value()), bytes_of(other));
  EXPECT_EQ(trouble_in(season.export_set("tarn-pool")),
            file.string() + ": it holds no value set \"tarn-pool\" (it holds tarn-pool-2027)");
  EXPECT_EQ(trouble_in(season.check()), "");
}

TEST_F(Keep, AnUnknownSetIsAnsweredWithTheNearest) {
  Season season = season_with_set();
  EXPECT_EQ(trouble_in(season.export_set("tarn-pol")),
            file.string() + ": it holds no value set \"tarn-pol\" (the nearest is tarn-pool)");
}

TEST_F(Keep, OneFileIsAllThereIs) {
  Season season = season_with_set();
  ASSERT_TRUE(season.edit({"tarn-pool", "parts", "spin-360", "value", "1.0", ""}));
  for (const auto& entry : std::filesystem::directory_iterator(folder)) EXPECT_EQ(entry.path(), file);
}

}  // namespace
}  // namespace landdrill
