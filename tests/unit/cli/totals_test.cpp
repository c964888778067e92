// The short way to the totals, for long streams, and the long way through the account never differ.
#include "engine/cli/totals.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "engine/score/account.h"
#include "engine/report/amount_text.h"
#include "engine/score/objections.h"
#include "grammar/blocks.h"
#include "scratch.h"
#include "tables/folder.h"

namespace landdrill::cli {
namespace {

namespace fs = std::filesystem;

void expect_same_totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  const Totals quick = totals(routine, wish, panel);
  const Account told = account(routine, wish, panel);
  using report::signed_text, report::text_of;
  EXPECT_EQ(quick.difficulty, told.credited.text(2));
  EXPECT_EQ(quick.estimate, text_of(told.total.estimate, told.places));
  EXPECT_EQ(quick.recorded, text_of(told.total.recorded, told.places));
  EXPECT_EQ(quick.difference, signed_text(told.total.difference, told.places));
  EXPECT_EQ(quick.announced, text_of(told.announced, told.places));
}

TEST(Totals, AreThoseOfTheAccountForEveryExample) {
  std::size_t compared = 0;
  for (const auto& entry : fs::directory_iterator(EXAMPLES)) {
    if (entry.path().extension() != ".sheet") continue;
    const std::string text = test::text_of(entry.path().string());
    const Source source{entry.path().filename().string(), text};
    Assembled assembled;
    assemble(source, assembled);
    for (const ast::Sheet& sheet : assembled.sheets) {
      const Loaded loaded = load(*read_folder(fs::path(SHIPPED_SETS) / sheet.routine.values->text));
      const Resolved resolved = understood(sheet, *loaded.set);
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
}  // namespace landdrill::cli
