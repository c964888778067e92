// A season file of version 1 is brought to the present version without losing a set, an edit or an undo.
#include <sys/stat.h>
#include <unistd.h>

#include "scene.h"
#include "tables/store/database.h"
#include "tables/store/kept_tables.h"

namespace landdrill {
namespace {

using Mode = Season::Mode;
using Did = EditRecord::Did;
using store::Database;

// In version 1: 0.9 -> 1.0 stands; 1.0 -> 1.1, undone, was followed by 1.0 -> 1.2, which stands; 1.2 -> 1.3
// -> 1.4 are both undone.
const char* const edits_of_version_1 = R"sql(
  INSERT INTO change (set_id, at, did, why) VALUES (1, '2025-09-01T08:00:00Z', 'import', 'first import');
  INSERT INTO change (set_id, at, did, why, file, row, column, row_key, column_name, before, after, before_raw,
                      after_raw, undone)
    SELECT 1, at, 'edit', why, 'parts.csv', 1, 3, 'spin-360', 'value', before, after, before, after, undone
    FROM (SELECT '2025-09-02T08:00:00Z' AS at, 'a' AS why, '0.9' AS before, '1.0' AS after, 0 AS undone
          UNION ALL SELECT '2025-09-03T08:00:00Z', 'b', '1.0', '1.1', 1
          UNION ALL SELECT '2025-09-04T08:00:00Z', 'c', '1.0', '1.2', 0
          UNION ALL SELECT '2025-09-05T08:00:00Z', 'd', '1.2', '1.3', 1
          UNION ALL SELECT '2025-09-06T08:00:00Z', 'e', '1.3', '1.4', 1);
  UPDATE cell SET raw = '1.2'
    WHERE row = 1 AND column = 3 AND file_id = (SELECT id FROM table_file WHERE file = 'parts.csv');
)sql";

class Version1 : public SeasonTest {
 protected:
  Version1() {
    Database db(file, Database::Access::create);
    store::Transaction transaction(db, store::Transaction::Kind::write);
    db.run(text_of(STORE_TESTS "/season_version_1.sql").c_str());
    const store::SetId set =
        store::Statement(db, "INSERT INTO value_set (name) VALUES (?)", "tarn-pool").new_row();
    store::put_files(db, set, odd_set().files);
    db.run(edits_of_version_1);
    transaction.commit();
  }
  std::string at(const std::string& value) const {
    return with_change(bytes_of(odd_set()), "\",0.9,", "\"," + value + ",");
  }
};

std::string schema_of(const std::filesystem::path& file) {
  Database db(file, Database::Access::read);
  store::Statement rows(db, "SELECT type, name, sql FROM sqlite_schema ORDER BY type, name");
  std::string schema;
  while (rows.next()) schema += rows.text(0) + " " + rows.text(1) + ": " + rows.text(2) + "\n";
  return schema;
}

std::int64_t version_of(const std::filesystem::path& file) {
  return Database(file, Database::Access::read).number("PRAGMA user_version");
}

TEST_F(Version1, HasTheSchemaOfANewFileAfterwards) {
  ASSERT_EQ(version_of(file), 1);
  open(Mode::write);
  const std::filesystem::path fresh = folder / "new.season";
  ASSERT_TRUE(Season::open(fresh, Mode::create));
  EXPECT_EQ(version_of(file), version_of(fresh));
  EXPECT_EQ(schema_of(file), schema_of(fresh));
  EXPECT_EQ(trouble_in(open(Mode::read).check()), "");
}

TEST_F(Version1, KeepsTheSetAndEveryEdit) {
  Season season = open(Mode::write);
  EXPECT_EQ(bytes_of(season.export_set("tarn-pool").value()), at("1.2"));
  const std::vector<EditRecord> history = season.history("tarn-pool").value();
  ASSERT_EQ(history.size(), 9u);
  std::string told;
  for (std::size_t i = 0; i < 6; ++i) told += history[i].why + (history[i].undone ? "- " : " ");
  EXPECT_EQ(told, "first import a b- c d- e- ");
  EXPECT_EQ(history[1].number, 2);
  EXPECT_EQ(history[1].at, "2025-09-02T08:00:00Z");
  EXPECT_EQ(history[6].did, Did::undo);
  EXPECT_EQ(history[6].why, "undone before this season file was brought to version 2");
}

TEST_F(Version1, GoesOnFromWhereItWas) {
  Season season = open(Mode::write);
  for (const char* value : {"1.3", "1.4"}) {
    ASSERT_EQ(trouble_in(season.redo("tarn-pool")), "");
    EXPECT_EQ(exported(), at(value));
  }
  EXPECT_NE(trouble_in(season.redo("tarn-pool")), "");
  for (const char* value : {"1.3", "1.2", "1.0", "0.9"}) {
    ASSERT_EQ(trouble_in(season.undo("tarn-pool")), "");
    EXPECT_EQ(exported(), at(value));
  }
  EXPECT_NE(trouble_in(season.undo("tarn-pool")), "");
}

TEST_F(Version1, IsReadWithoutBeingChanged) {
  const std::string before = bytes_on_disk();
  Season season = open(Mode::read);
  EXPECT_EQ(bytes_of(season.export_set("tarn-pool").value()), at("1.2"));
  EXPECT_EQ(season.history("tarn-pool")->size(), 9u);
  EXPECT_NE(trouble_in(season.edit({"tarn-pool", "parts", "spin-360", "value", "1.0", ""})), "");
  EXPECT_EQ(bytes_on_disk(), before);
  for (const auto& entry : std::filesystem::directory_iterator(folder)) EXPECT_EQ(entry.path(), file);
}

TEST_F(Version1, IsReadInAReadOnlyFolder) {
  ASSERT_EQ(chmod(file.c_str(), 0444), 0);
  ASSERT_EQ(chmod(folder.c_str(), 0555), 0);
  EXPECT_EQ(in_child([&]() -> std::string {
              if (geteuid() == 0 && setuid(65534) != 0) return "cannot stop being root";
              return exported();
            }),
            at("1.2"));
}

TEST_F(Version1, ThatIsDamagedStaysVersion1) {
  Database(file, Database::Access::write).run("PRAGMA foreign_keys = OFF; DELETE FROM value_set");
  EXPECT_NE(trouble_in(Season::open(file, Mode::write)).find("belongs to nothing"), std::string::npos);
  EXPECT_EQ(version_of(file), 1);
}

}  // namespace
}  // namespace landdrill
