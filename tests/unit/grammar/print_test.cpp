#include "grammar/print.h"

#include <gtest/gtest.h>

#include "grammar/parse.h"

namespace landdrill {
namespace {

std::string tidy(std::string_view text) {
  const Source source{"a.sheet", text};
  return print(parse(source).lines);
}

TEST(Tidy, IndentsByBlockAndAlignsTheArguments) {
  EXPECT_EQ(
      tidy("routine \"A\"\nEVENT: e\ntempo 128#fast\n\n\n\nelement 1 lift\nparts a,b ×2\nslip "
           "12,5%\ndifficulty 2\n"
           "option \"o\"\nexpect 7,50\npassage \"P\"\ncounts 8 under,3 up\nimpression a 7\nrun 2026-01-01\n"
           "element 1:clean\nsync small\npanel 2026-01-02 \"P\"\nelement 1 base : 7,5; -\na: 7\npenalty "
           "none\nresult 5\n"),
      "routine \"A\"\n"
      "event    e\n"
      "tempo    128  #fast\n"
      "\n"
      "element 1 lift\n"
      "  parts  a, b x2\n"
      "  slip   12.5%\n"
      "  difficulty 2\n"
      "  option \"o\"\n"
      "    expect 7.50\n"
      "passage \"P\"\n"
      "  counts 8 under, 3 up\n"
      "impression a 7\n"
      "run 2026-01-01\n"
      "  element 1: clean\n"
      "  sync: small\n"
      "panel 2026-01-02 \"P\"\n"
      "  element 1 base: 7.5 -\n"
      "  a: 7\n"
      "  penalty: none\n"
      "  result: 5\n");
}
TEST(Tidy, PutsACommentWhereTheNextStatementStands) {
  EXPECT_EQ(tidy("element 1 lift\n # of the parts\n parts a\n # of the option\n\n option \"o\"\n parts b\n # "
                 "of two\nelement 2 lift\n"
                 " parts c\n# last\n"),
            "element 1 lift\n"
            "  # of the parts\n"
            "  parts  a\n"
            "  # of the option\n"
            "\n"
            "  option \"o\"\n"
            "    parts  b\n"
            "# of two\n"
            "element 2 lift\n"
            "  parts  c\n"
            "  # last\n");
}
TEST(Tidy, LeavesALineInErrorAsTyped) {
  EXPECT_EQ(tidy("TEMPO 12\n   tempo  fast #\t \nTEMPO 13\n"),
            "tempo    12\n   tempo  fast #\t \ntempo    13\n");
  EXPECT_EQ(tidy("\n\xFF\xFE x\n"), "\n\xFF\xFE x\n");
}
TEST(Tidy, KeepsZerosBehindThePoint) {
  EXPECT_EQ(tidy("expect 7,50"), "expect 7.50\n");
}
TEST(Tidy, QuotesOnlyWhatNeedsIt) {
  EXPECT_EQ(tidy("parts \"a\", \"a b\", \"a+\", \"a+b\""), "parts  a, \"a b\", a+, \"a+b\"\n");
  EXPECT_EQ(tidy("element 1: \"lost\" \"x2\" x3, \"clean\" s, \"7a\" 7"),
            "element 1: \"lost\" \"x2\" x3, \"clean\" s, \"7a\" 7\n");
  EXPECT_EQ(tidy("penalty \"none\"\nsync \"a\""), "penalty: \"none\"\nsync: a\n");
  EXPECT_EQ(tidy("\"tempo\": 7\n\"sound\": 7"), "\"tempo\": 7\nsound: 7\n");
  EXPECT_EQ(tidy("element 1 \"2nd\" "), "element 1 \"2nd\"\n");
}
TEST(Tidy, ChoosesTheQuotationMarksThatTheTitleDoesNotHold) {
  EXPECT_EQ(tidy("routine „a“"), "routine \"a\"\n");
  EXPECT_EQ(tidy("routine “a \"b\"”"), "routine “a \"b\"”\n");
  EXPECT_EQ(tidy("routine «a \"b” »"), "routine «a \"b”»\n");
  EXPECT_EQ(tidy("routine »a \"b” » c«"), "routine »a \"b” » c«\n");
}
TEST(Tidy, OfNothingIsNothing) {
  EXPECT_EQ(tidy(""), "");
}

TEST(PrintStatement, IsOneLineWithoutIndentation) {
  const Source source{"a.sheet", "  TEMPO:  128\n"};
  EXPECT_EQ(print(parse(source).lines[0].statement), "tempo 128");
}

}  // namespace
}  // namespace landdrill
