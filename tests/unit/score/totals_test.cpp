// The short way to the totals, for long streams, and the long way through the account never differ.
#include "engine/score/totals.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "engine/score/account.h"
#include "engine/score/objections.h"
#include "grammar/blocks.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

namespace fs = std::filesystem;

void expect_same_totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  const Totals quick = totals(routine, wish, panel);
  const Account told = account(routine, wish, panel);
  EXPECT_EQ(quick.difficulty, told.credited);
  EXPECT_EQ(quick.estimate, told.total.estimate);
  EXPECT_EQ(quick.recorded, told.total.recorded);
  EXPECT_EQ(quick.difference, told.total.difference);
  EXPECT_EQ(quick.announced, told.announced);
  EXPECT_EQ(quick.places, told.places);
}

TEST(Totals, AreThoseOfTheAccountForEveryExample) {
  std::size_t compared = 0;
  for (const auto& entry : fs::directory_iterator(LANDDRILL_EXAMPLES)) {
    if (entry.path().extension() != ".sheet") continue;
    std::ifstream in(entry.path(), std::ios::binary);
    const std::string text(std::istreambuf_iterator<char>(in), {});
    const Source source{entry.path().filename().string(), text};
    Assembled assembled;
    assemble(source, assembled);
    for (const ast::Sheet& sheet : assembled.sheets) {
      const Resolved resolved = understood(sheet, kit::shipped(sheet.routine.values->text));
      if (!resolved.routine) continue;  // a sheet whose set has gaps
      SCOPED_TRACE(source.name);
      ++compared;
      expect_same_totals(*resolved.routine, {}, {});
      for (std::size_t i = 0; i < resolved.routine->panels.size(); ++i)
        expect_same_totals(*resolved.routine, {}, i);
      for (const auto which : {RunWish::Which::mean, RunWish::Which::none})
        expect_same_totals(*resolved.routine, {{}, {which, {}}}, {});
    }
  }
  EXPECT_GE(compared, 8u);
}

}  // namespace
}  // namespace landdrill
