// A file that is missing, something else, damaged or too new is named for what it is, and stays as it was.
#include "scene.h"
#include "tables/store/database.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;

class NotASeason : public SeasonTest {
 protected:
  std::string trouble(Mode mode) const { return trouble_in(Season::open(file, mode)); }
  // Neither reading nor writing opens it or changes a byte, and nothing appears beside it.
  void expect_refused(const std::string& why) const {
    const std::string before = bytes_on_disk();
    for (const Mode mode : {Mode::read, Mode::write, Mode::create}) {
      EXPECT_EQ(trouble(mode).find(file.string() + ": " + why), 0u) << trouble(mode);
    }
    EXPECT_EQ(bytes_on_disk(), before);
    for (const auto& entry : std::filesystem::directory_iterator(folder)) EXPECT_EQ(entry.path(), file);
  }
};

TEST_F(NotASeason, AMissingFileIsNotMadeByReadingOrWriting) {
  for (const Mode mode : {Mode::read, Mode::write}) {
    EXPECT_EQ(trouble(mode),
              file.string() + ": there is no such file (import a value set or add a sheet to make one)");
    EXPECT_FALSE(std::filesystem::exists(file));
  }
}

TEST_F(NotASeason, AMissingFolderIsNamed) {
  const Result<Season> season = Season::open(folder / "gone" / "club.season", Mode::create);
  EXPECT_NE(trouble_in(season).find("there is no folder " + (folder / "gone").string()), std::string::npos);
}

TEST_F(NotASeason, AFolderOrADeviceIsNoSeason) {
  EXPECT_NE(trouble_in(Season::open(folder, Mode::create)).find("it is a folder"), std::string::npos);
  EXPECT_NE(trouble_in(Season::open("/dev/null", Mode::create)).find("it is a device"), std::string::npos);
}

TEST_F(NotASeason, TextIsNoSeason) {
  write_file("routine \"Harbour Lights\"\nevent duet-free\n");
  expect_refused("it is not a season file, nor any other database");
}

TEST_F(NotASeason, LongTextIsNoSeason) {
  write_file(std::string(100'000, '('));
  expect_refused("it is not a season file, nor any other database");
}

TEST_F(NotASeason, AnEmptyFileIsOnlyFilledByCreate) {
  write_file("");
  for (const Mode mode : {Mode::read, Mode::write}) {
    EXPECT_NE(trouble(mode).find("the file is empty, not a season file"), std::string::npos);
    EXPECT_EQ(bytes_on_disk(), "");
  }
  EXPECT_EQ(trouble(Mode::create), "");
  EXPECT_EQ(trouble(Mode::read), "");
}

TEST_F(NotASeason, AnotherProgramsDatabaseIsLeftAlone) {
  {
    store::Database other(file, store::Database::Access::create);
    other.run("PRAGMA application_id = 77; CREATE TABLE recipe (name TEXT)");
  }
  expect_refused("it is the database of another program");
}

TEST_F(NotASeason, ADatabaseThatSaysNotWhoseItIsIsLeftAlone) {
  {
    store::Database other(file, store::Database::Access::create);
    other.run("CREATE TABLE recipe (name TEXT)");
  }
  expect_refused("it is the database of another program");
}

TEST_F(NotASeason, ASeasonOfANewerProgramIsLeftAlone) {
  season_with_set();
  store::Database(file, store::Database::Access::write).run("PRAGMA user_version = 99");
  expect_refused("it was written by a newer landdrill (season file version 99, this program reads up to 5)");
}

TEST_F(NotASeason, ATruncatedSeasonIsDamaged) {
  season_with_set();
  const std::string whole = bytes_on_disk();
  for (const std::size_t size :
       {whole.size() - 4096, whole.size() / 2, std::size_t{4096}, std::size_t{1000}, std::size_t{60}}) {
    write_file(std::string_view(whole).substr(0, size));
    expect_refused("the file is damaged");
  }
}

// Whatever page is overwritten, nothing crashes; reading gives the right bytes or says that the file is
// damaged.
TEST_F(NotASeason, AnOverwrittenPageIsFoundAndSaid) {
  season_with_set();
  const std::string whole = bytes_on_disk();
  const std::string right = exported();
  int found = 0;
  for (std::size_t page = 4096; page < whole.size(); page += 4096) {
    std::string damaged = whole;
    damaged.replace(page, 4096, 4096, 'x');
    write_file(damaged);
    const Result<Season> season = Season::open(file, Mode::read);
    if (!season) continue;
    const std::string trouble = trouble_in(season->check());
    EXPECT_NE(trouble.find("the file is damaged ("), std::string::npos) << page << ": " << trouble;
    EXPECT_NE(trouble.find("PRAGMA quick_check"), std::string::npos);
    const Result<TableFiles> files = season->export_set("tarn-pool");
    if (files) {
      EXPECT_EQ(bytes_of(*files), right);
    } else {
      EXPECT_NE(trouble_in(files).find("the file is damaged"), std::string::npos) << trouble_in(files);
    }
    ++found;
  }
  EXPECT_GT(found, 5);
}

TEST_F(NotASeason, AWholeSeasonHasNoDamage) {
  Season season = season_with_set();
  EXPECT_EQ(trouble_in(season.check()), "");
}

TEST_F(NotASeason, AFileCalledMemoryIsAFile) {
  const std::filesystem::path here = std::filesystem::current_path();
  std::filesystem::current_path(folder);
  const std::string trouble = trouble_in(Season::open(":memory:", Mode::create));
  std::filesystem::current_path(here);
  EXPECT_EQ(trouble, "");
  EXPECT_TRUE(std::filesystem::exists(folder / ":memory:"));
}

}  // namespace
}  // namespace landdrill
