// One cell changes, and not a byte beside it; what cannot be is refused with the nearest words.
#include "scene.h"
#include "tables/csv.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;

class EditCell : public SeasonTest {
 protected:
  Season season = season_with_set();
  Edit wish(std::string table, std::string key, std::string column, std::string value) const {
    return {"tarn-pool",       std::move(table), std::move(key),
            std::move(column), std::move(value), "new catalogue"};
  }
  // What the history says of it.
  EditRecord edited(const Edit& edit) {
    EXPECT_EQ(trouble_in(season.edit(edit)), "");
    return season.history("tarn-pool")->back();
  }
  std::string refusal(const Edit& edit) {
    const std::string before = exported();
    const std::string trouble = trouble_in(season.edit(edit));
    EXPECT_NE(trouble, "");
    EXPECT_EQ(exported(), before);
    return trouble;
  }
};

TEST_F(EditCell, ChangesTheBytesOfThatCellOnly) {
  const EditRecord record = edited(wish("parts", "spin-360", "value", "1.0"));
  EXPECT_EQ(exported(), with_change(bytes_of(odd_set()), "\"Spin, 360\",0.9,", "\"Spin, 360\",1.0,"));
  EXPECT_EQ(record.before, "0.9");
  EXPECT_EQ(record.after, "1.0");
  EXPECT_EQ(record.table, "parts");
  EXPECT_EQ(record.key, "spin-360");
  EXPECT_EQ(record.column, "value");
  EXPECT_EQ(record.why, "new catalogue");
  EXPECT_EQ(record.did, EditRecord::Did::edit);
}

TEST_F(EditCell, QuotesAValueThatHoldsASeparator) {
  ASSERT_TRUE(season.edit(wish("parts", "spin-720", "title", "Spin, \"720\"")));
  EXPECT_EQ(exported(), with_change(bytes_of(odd_set()), ",Spin 720,", ",\"Spin, \"\"720\"\"\","));
}

TEST_F(EditCell, KnowsTheSeparatorOfTheFile) {
  ASSERT_TRUE(season.edit(wish("set", "", "note", "one, two")));
  EXPECT_EQ(exported(), with_change(bytes_of(odd_set()), "\"for tests; invented\"", "one, two"));
}

TEST_F(EditCell, ReachesTheCoachsOwnColumn) {
  const EditRecord record = edited(wish("parts", "spin-360", "seen", "no"));
  EXPECT_EQ(record.before, "said \"yes\"");
  EXPECT_EQ(exported(), with_change(bytes_of(odd_set()), "\"said \"\"yes\"\"\"", "no"));
}

TEST_F(EditCell, HoldsAnyTextAsItWasGiven) {
  for (const std::string value : {"", " blanks around ", "\"", "\"quoted\"", "a,b;c\td", "two\nlines",
                                  "two\r\nlines", ";", "caf\xC3\xA9", "'", "#", "=1+1", "\xEF\xBB\xBF"}) {
    ASSERT_EQ(trouble_in(season.edit(wish("parts", "spin-720", "title", value))), "") << value;
    const TableFiles files = season.export_set("tarn-pool").value();
    const CsvTable parts = read_csv({"parts.csv", files.files[1].text}).table;
    ASSERT_EQ(parts.rows.size(), 4u) << value;
    EXPECT_EQ(parts.rows[1].cells[2].text, value);
  }
  while (season.undo("tarn-pool")) {
  }
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

TEST_F(EditCell, ReachesTheLastRowWithoutALineEnding) {
  ASSERT_TRUE(season.edit(wish("parts", "join-foot", "value", "0.3")));
  EXPECT_EQ(exported(), with_change(bytes_of(odd_set()), "  0.2", "0.3"));
}

TEST_F(EditCell, FindsARowByAKeyOfSeveralColumns) {
  ASSERT_TRUE(season.edit(wish("panels", "solo-free execution hybrid", "step", "0.5")));
  EXPECT_EQ(exported(), with_change(bytes_of(odd_set()), "mean,0.1,", "mean,0.5,"));
  ASSERT_TRUE(season.edit(wish("panels", "solo-free execution -", "weight", "0.8")));
  EXPECT_EQ(edited(wish("panels", "solo-free execution", "weight", "0.7")).before, "0.8");
}

TEST_F(EditCell, AKeyThatNamesTwoRowsIsRefusedWithTheKeysThatNameOne) {
  TableFiles twins = odd_set();
  twins.name = "twins";
  twins.files.push_back({"families.csv", "code,source,status\nhybrid,invented,invented\n"});
  twins.files[1].text = with_change(twins.files[1].text, "spin-360,,", "spin-360,hybrid,");
  twins.files.push_back({"quotas.csv",
                         "event,kind,family,least,most,source,status\n"
                         "solo-free,hybrid,,1,5,invented,invented\n"
                         "solo-free,,hybrid,1,5,invented,invented\n"});
  ASSERT_EQ(trouble_in(season.import_set(twins, "")), "");
  EXPECT_EQ(trouble_in(season.edit({"twins", "quotas", "solo-free hybrid", "most", "6", ""})),
            "twins quotas: \"solo-free hybrid\" names 2 rows (write \"solo-free hybrid -\" or \"solo-free - "
            "hybrid\")");
  ASSERT_EQ(trouble_in(season.edit({"twins", "quotas", "solo-free - hybrid", "most", "6", ""})), "");
  EXPECT_EQ(bytes_of(season.export_set("twins").value()),
            with_change(bytes_of(twins), "solo-free,,hybrid,1,5", "solo-free,,hybrid,1,6"));
}

TEST_F(EditCell, TheValueThatIsThereAlreadyWritesNothing) {
  ASSERT_TRUE(season.edit(wish("parts", "spin-720", "value", "1.5")));
  EXPECT_EQ(exported(), bytes_of(odd_set()));
  EXPECT_EQ(season.history("tarn-pool")->size(), 1u);
}

TEST_F(EditCell, TheFileNameDoesForTheTable) {
  EXPECT_EQ(trouble_in(season.edit(wish("parts.csv", "spin-360", "Value", "1.0"))), "");
}

TEST_F(EditCell, RefusesAnUnknownTableWithTheNearest) {
  EXPECT_EQ(refusal(wish("part", "spin-360", "value", "1.0")),
            "tarn-pool: it has no table \"part\" (the nearest is parts)");
}

TEST_F(EditCell, RefusesAnUnknownRowWithTheNearest) {
  EXPECT_EQ(refusal(wish("parts", "spin-730", "value", "1.0")),
            "tarn-pool parts: it has no row \"spin-730\" (the nearest are spin-720, spin-360)");
}

TEST_F(EditCell, RefusesAnUnknownColumnWithTheNearest) {
  EXPECT_EQ(refusal(wish("parts", "spin-360", "valu", "1.0")),
            "tarn-pool parts: it has no column \"valu\" (the nearest is value)");
}

TEST_F(EditCell, RefusesAnUnknownSet) {
  EXPECT_EQ(trouble_in(season.edit({"kingfisher", "parts", "spin-360", "value", "1.0", ""})),
            file.string() + ": it holds no value set \"kingfisher\" (it holds tarn-pool)");
}

TEST_F(EditCell, RefusesWhatTheLoaderRefusesWithItsMessage) {
  const std::string trouble = refusal(wish("parts", "spin-360", "value", "much"));
  EXPECT_EQ(trouble.find("tarn-pool parts spin-360 value: with \"much\" the set could no longer be used:\n"),
            0u)
      << trouble;
  EXPECT_NE(trouble.find("club.season/tarn-pool/parts.csv:2:23: error: "), std::string::npos) << trouble;
  EXPECT_EQ(season.history("tarn-pool")->size(), 1u);
}

TEST_F(EditCell, RefusesANameThatAnotherRowHas) {
  EXPECT_NE(refusal(wish("parts", "spin-360", "code", "spin-720")).find("could no longer be used"),
            std::string::npos);
}

TEST_F(EditCell, RefusesBytesThatAreNoText) {
  EXPECT_NE(refusal(wish("parts", "spin-360", "title", "Spin \xFF")).find("could no longer be used"),
            std::string::npos);
  EXPECT_NE(
      refusal(wish("parts", "spin-360", "title", std::string("a\0b", 3))).find("could no longer be used"),
      std::string::npos);
}

TEST_F(EditCell, ARenamedRowIsFoundByItsNewName) {
  ASSERT_TRUE(season.edit(wish("parts", "spin-360", "code", "spin-365")));
  EXPECT_EQ(edited(wish("parts", "spin-365", "value", "1.0")).before, "0.9");
  EXPECT_NE(refusal(wish("parts", "spin-360", "value", "1.1")).find("spin-365"), std::string::npos);
}

TEST_F(EditCell, ASeasonOpenedForReadingRefusesEdits) {
  Season reader = open(Mode::read);
  EXPECT_NE(trouble_in(reader.edit(wish("parts", "spin-360", "value", "1.0"))).find("read-only"),
            std::string::npos);
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

class EditTogether : public EditCell {
 protected:
  // The source, then the value; the second may be one that is refused.
  Result<void> source_and_value(const std::string& value) {
    return season.together([&]() -> Result<void> {
      EXPECT_EQ(trouble_in(season.edit(wish("parts", "spin-360", "source", "typed in"))), "");
      during = exported();
      if (const auto one = season.edit(wish("parts", "spin-360", "value", value)); !one)
        return tl::unexpected(one.error());
      return {};
    });
  }
  std::string during;
};

TEST_F(EditTogether, AllOfThemStand) {
  EXPECT_EQ(trouble_in(source_and_value("1.0")), "");
  EXPECT_NE(exported().find("1.0,"), std::string::npos);
  EXPECT_NE(exported().find("typed in"), std::string::npos);
  EXPECT_EQ(season.history("tarn-pool")->size(), 3u);
}

TEST_F(EditTogether, NoneOfThemStandsWhenOneIsRefused) {
  EXPECT_NE(trouble_in(source_and_value("much")).find("could no longer be used"), std::string::npos);
  EXPECT_EQ(exported(), bytes_of(odd_set()));
  EXPECT_EQ(season.history("tarn-pool")->size(), 1u);
  EXPECT_EQ(trouble_in(source_and_value("1.0")), "");  // and the season goes on
}

TEST_F(EditTogether, OthersSeeNoneOfThemUntilAllAreDone) {
  EXPECT_EQ(trouble_in(source_and_value("1.0")), "");
  EXPECT_EQ(during, bytes_of(odd_set()));
}

}  // namespace
}  // namespace landdrill
