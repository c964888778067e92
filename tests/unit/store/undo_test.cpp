// Every change is in the history with its time and why, can be taken back and brought back, and is never
// lost.
#include "scene.h"
#include "tables/store/database.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using Did = EditRecord::Did;

class Undo : public SeasonTest {
 protected:
  Season season = season_with_set();
  EditRecord set_value(const std::string& value, std::string why = "") {
    EXPECT_EQ(trouble_in(season.edit({"tarn-pool", "parts", "spin-360", "value", value, std::move(why)})),
              "");
    return season.history("tarn-pool")->back();
  }
  std::string value() const { return season_value("spin-360"); }
  std::string season_value(const std::string& key) const {
    const std::string bytes = exported();
    const std::size_t row = bytes.find("\n" + key + ",");
    const std::size_t title = bytes.find("\",", row);
    return bytes.substr(title + 2, bytes.find(',', title + 2) - title - 2);
  }
  std::string no_undo() { return trouble_in(season.undo("tarn-pool")); }
  std::string no_redo() { return trouble_in(season.redo("tarn-pool")); }
};

const char* const nothing_to_undo = "tarn-pool: there is no edit to undo ()";
const char* const nothing_to_redo = "tarn-pool: there is no undone edit to bring back ()";

TEST_F(Undo, TakesTheLastEditBackToTheByte) {
  ASSERT_TRUE(season.edit({"tarn-pool", "parts", "spin-720", "value", "1.6", ""}));
  const EditRecord undone = season.undo("tarn-pool", "the old catalogue holds").value();
  EXPECT_EQ(exported(), bytes_of(odd_set()));  // the quotation marks around 1.5 too
  EXPECT_EQ(undone.did, Did::undo);
  EXPECT_EQ(undone.before, "1.6");
  EXPECT_EQ(undone.after, "1.5");
  EXPECT_EQ(undone.why, "the old catalogue holds");
}

TEST_F(Undo, GoesBackStepByStepAndForthAgain) {
  for (const char* value : {"1.0", "1.1", "1.2"}) set_value(value);
  for (const char* before : {"1.1", "1.0", "0.9"}) {
    ASSERT_TRUE(season.undo("tarn-pool"));
    EXPECT_EQ(value(), before);
  }
  EXPECT_EQ(no_undo(), nothing_to_undo);
  for (const char* after : {"1.0", "1.1", "1.2"}) {
    ASSERT_TRUE(season.redo("tarn-pool"));
    EXPECT_EQ(value(), after);
  }
  EXPECT_EQ(no_redo(), nothing_to_redo);
}

TEST_F(Undo, ANewEditEndsWhatCouldBeBroughtBack) {
  set_value("1.0");
  set_value("1.1");
  ASSERT_TRUE(season.undo("tarn-pool"));
  set_value("2.0");
  EXPECT_EQ(no_redo(), nothing_to_redo);
  ASSERT_TRUE(season.undo("tarn-pool"));
  EXPECT_EQ(value(), "1.0");
  ASSERT_TRUE(season.redo("tarn-pool"));
  EXPECT_EQ(value(), "2.0");
  EXPECT_EQ(no_redo(), nothing_to_redo);
}

TEST_F(Undo, BeforeAnyEditThereIsNothingToTakeBackOrForth) {
  EXPECT_EQ(no_undo(), nothing_to_undo);
  EXPECT_EQ(no_redo(), nothing_to_redo);
}

TEST_F(Undo, NeverForgetsWhatWasDone) {
  set_value("1.0", "first thought");
  ASSERT_TRUE(season.undo("tarn-pool", "too much"));
  ASSERT_TRUE(season.redo("tarn-pool", "no, it was right"));
  ASSERT_TRUE(season.undo("tarn-pool"));
  set_value("0.8", "second thought");
  const std::vector<EditRecord> history = season.history("tarn-pool").value();
  ASSERT_EQ(history.size(), 6u);
  const Did did[] = {Did::import, Did::edit, Did::undo, Did::redo, Did::undo, Did::edit};
  const char* why[] = {"first import", "first thought", "too much", "no, it was right", "", "second thought"};
  const char* after[] = {"", "1.0", "0.9", "1.0", "0.9", "0.8"};
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_EQ(history[i].did, did[i]) << i;
    EXPECT_EQ(history[i].why, why[i]) << i;
    EXPECT_EQ(history[i].after, after[i]) << i;
    EXPECT_EQ(history[i].set, "tarn-pool");
    EXPECT_EQ(history[i].at.size(), 20u);
    EXPECT_EQ(history[i].at.back(), 'Z');
    EXPECT_GT(history[i].number, i == 0 ? 0 : history[i - 1].number);
  }
  EXPECT_TRUE(history[1].undone);
  EXPECT_EQ(history[4].target, history[1].number);
  EXPECT_FALSE(history[5].undone);
}

TEST_F(Undo, EachSetHasItsOwnHistory) {
  TableFiles other = odd_set();
  other.name = "tarn-pool-2027";
  ASSERT_TRUE(season.import_set(other, ""));
  set_value("1.0");
  EXPECT_EQ(trouble_in(season.undo("tarn-pool-2027")), "tarn-pool-2027: there is no edit to undo ()");
  ASSERT_TRUE(season.undo("tarn-pool"));
  EXPECT_EQ(season.history("tarn-pool-2027")->size(), 1u);
}

TEST_F(Undo, AReplacedSetComesBackWithItsEdits) {
  set_value("1.0");
  const std::string edited = exported();
  TableFiles other = odd_set();
  other.files[1].text = "code,value,source,status\nspin-360,3,invented for a test,invented\n";
  ASSERT_TRUE(season.import_set(other, "new catalogue", true));
  EXPECT_EQ(exported(), bytes_of(other));
  ASSERT_TRUE(season.undo("tarn-pool"));
  EXPECT_EQ(exported(), edited);
  ASSERT_TRUE(season.redo("tarn-pool"));
  EXPECT_EQ(exported(), bytes_of(other));
  ASSERT_TRUE(season.undo("tarn-pool"));
  ASSERT_TRUE(season.undo("tarn-pool"));
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

TEST_F(Undo, AnEditOfARenamedRowIsTakenBackByPlace) {
  set_value("1.0");
  ASSERT_TRUE(season.edit({"tarn-pool", "parts", "spin-360", "code", "spin-365", ""}));
  ASSERT_TRUE(season.undo("tarn-pool"));
  ASSERT_TRUE(season.undo("tarn-pool"));
  EXPECT_EQ(exported(), bytes_of(odd_set()));
}

TEST_F(Undo, ACellThatWasChangedBehindTheHistoryIsNotOverwritten) {
  set_value("1.0");
  store::Database(file, store::Database::Access::write).run("UPDATE cell SET raw = '7' WHERE raw = '1.0'");
  EXPECT_EQ(no_undo(), file.string() +
                           ": change 2 does not fit: the cell was changed outside the history (edit the "
                           "cell instead)");
  EXPECT_EQ(value(), "7");
}

}  // namespace
}  // namespace landdrill
