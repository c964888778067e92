// Which set a sheet gets, and what is said of where it is from.
#include "engine/cli/call_sheets.h"

#include <gtest/gtest.h>

#include "engine/cli/command_table.h"
#include "tests/unit/kit/scratch.h"

namespace landdrill::cli {
namespace {

namespace fs = std::filesystem;
using test::Scratch;

const Command& any_command() {
  const std::vector<std::string> line = {"values", "list"};
  return *find_command(line).command;
}

std::string make_set(const Scratch& scratch, const std::string& folder) {
  fs::copy(fs::path(SHIPPED_SETS) / "kingfisher-2026", scratch.path(folder), fs::copy_options::recursive);
  return scratch.path(folder);
}

TEST(ValuesPlaceOf, TellsOfASecondSetOfThatNameHoweverOftenItIsAskedFor) {
  const Scratch scratch;
  fs::create_directories(scratch.path("values"));
  const std::string near = make_set(scratch, "kingfisher-2026"),
                    far = make_set(scratch, "values/kingfisher-2026");
  Streams streams;
  const Call call{any_command(), report::Asked("values list"), streams};
  Values values(call);
  for (int i = 0; i < 2; ++i) {
    const auto set = values.of_sheets().of_sheet("kingfisher-2026", scratch.path("duet.sheet"));
    ASSERT_TRUE(set);
    const report::ValuesPlace place = values_place(**set);
    EXPECT_EQ(place.name, "kingfisher-2026");
    EXPECT_EQ(place.folder, near);
    ASSERT_FALSE(place.hidden.empty());
    EXPECT_EQ(place.hidden.front(), far);
    EXPECT_EQ(place.season, "");
  }
}

TEST(ValuesPlaceOf, NamesTheSeasonFile) {
  const Scratch scratch;
  const std::string file = scratch.path("club.season");
  const auto files = read_folder(fs::path(SHIPPED_SETS) / "kingfisher-2026");
  ASSERT_TRUE(Season::open(file, Season::Mode::create)->import_set(*files, "", false));
  Streams streams;
  Call call{any_command(), report::Asked("values list"), streams};
  call.given.add("--season", {file});
  Values values(call);
  const auto set = values.of_sheets().of_sheet("kingfisher-2026", "duet.sheet");
  ASSERT_TRUE(set);
  EXPECT_EQ(values_place(**set).season, file);
  EXPECT_EQ(values_place(**set).folder, "");
}

}  // namespace
}  // namespace landdrill::cli
