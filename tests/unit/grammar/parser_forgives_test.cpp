// What a coach may type differently and mean the same.
#include <gtest/gtest.h>

#include "dump.h"

namespace landdrill::test {
namespace {

struct Row {
  const char* text;
  const char* tree;
};

class ParserForgives : public testing::TestWithParam<Row> {};

TEST_P(ParserForgives, ADifferentSpelling) {
  EXPECT_EQ(dump_text(GetParam().text), GetParam().tree) << GetParam().text;
}

constexpr Row case_and_colons[] = {
    {"TEMPO 128", "tempo(128)"},
    {"Tempo: 128", "tempo(128)"},
    {"tempo : 128", "tempo(128)"},
    {"tempo:128", "tempo(128)"},
    {"routine: \"Tarn\"", "routine('Tarn')"},
    {"element: 1 hybrid", "element(1 hybrid)"},
    {"ELEMENT 1 BASE : CLEAN", "faults(1 base: )"},
    {"element 1:LOST a", "faults(1: lost:a)"},
    {"sync small x3", "sync(small*3)"},
    {"sync NONE", "sync()"},
    {"penalty overtime", "penalty(overtime)"},
    {"result 187.3425", "result(187.3425)"},
    {"impression: choreography: 7.5, performance 8", "impression(choreography=7.5, performance=8)"},
};
constexpr Row blanks[] = {
    {"\ttempo\t128\t", "tempo(128)"},
    {"   parts a ,b,c", "parts(a, b, c)"},
    {"counts 8 under,3 up", "counts(8@under, 3@up)"},
    {"counts 8under,3up", "counts(8@under, 3@up)"},
    {"tempo\xC2\xA0"
     "128\xE2\x80\xAF",
     "tempo(128)"},
    {"\xEF\xBB\xBFtempo 128", "tempo(128)"},
    {"tempo 1\r\ntempo 2\r\n", "tempo(1) | tempo(2)"},
    {"tempo 1\rtempo 2\r", "tempo(1) | tempo(2)"},
    {"tempo 1\r\rtempo 2\n\rtempo 3", "tempo(1) | empty | tempo(2) | empty | tempo(3)"},
};
constexpr Row numbers[] = {
    {"expect 7,50", "expect(7,50)"},
    {"element 1: 7,25 7,50", "marks(1: 7,25, 7,50)"},
    {"element 1: 7,25; 7,50;8", "marks(1: 7,25, 7,50, 8)"},
    {"element 1: 7.25, 7.50,  - , 8", "marks(1: 7.25, 7.50, missing, 8)"},
    {"element 1: 7,8", "marks(1: 7,8)"},
    {"element 1: 7, 8", "marks(1: 7, 8)"},
    {"element 1: – 7 — 8 − 9", "marks(1: missing, 7, missing, 8, missing, 9)"},
    {"impression a 7,50, b 7,75,c 8", "impression(a=7,50, b=7,75, c=8)"},
    {"counts 8,5 under, 3 up", "counts(8,5@under, 3@up)"},
    {"slip 12,5%", "slip(12,5)"},
};
constexpr Row times[] = {
    {"parts a x 2", "parts(a*2)"},
    {"parts a ×2, b × 3, c X4", "parts(a*2, b*3, c*4)"},
    {"parts a×2", "parts(a*2)"},
    {"parts a ×2,b", "parts(a*2, b)"},
};
constexpr Row quotes[] = {
    {"routine “Harbour Lights”", "routine('Harbour Lights')"},
    {"routine „Hafenlichter“", "routine('Hafenlichter')"},
    {"routine „Hafenlichter”", "routine('Hafenlichter')"},
    {"routine «Lumières»", "routine('Lumières')"},
    {"routine «\xC2\xA0Lumières \xE2\x80\xAF»", "routine('Lumières')"},
    {"routine »Lichter«", "routine('Lichter')"},
    {"routine ”Hamnljus”", "routine('Hamnljus')"},
    {"routine “the \"Tarn\"”", "routine('the \"Tarn\"')"},
    {"parts “a+b”, c", "parts('a+b', c)"},
};

INSTANTIATE_TEST_SUITE_P(CaseAndColons, ParserForgives, testing::ValuesIn(case_and_colons));
INSTANTIATE_TEST_SUITE_P(Blanks, ParserForgives, testing::ValuesIn(blanks));
INSTANTIATE_TEST_SUITE_P(Numbers, ParserForgives, testing::ValuesIn(numbers));
INSTANTIATE_TEST_SUITE_P(Times, ParserForgives, testing::ValuesIn(times));
INSTANTIATE_TEST_SUITE_P(Quotes, ParserForgives, testing::ValuesIn(quotes));

class ParserNeverMisreads : public testing::TestWithParam<const char*> {};

TEST_P(ParserNeverMisreads, WhatCanBeReadInTwoWays) {
  EXPECT_EQ(dump_text(GetParam()), "error") << GetParam();
}

INSTANTIATE_TEST_SUITE_P(Numbers, ParserNeverMisreads,
                         testing::Values("expect 1,234.5", "expect 1.234,5", "expect 7.2.5",
                                         "element 1: 7,25,7,50", "element 1: 7.25,7.50", "element 1: 7 ,8",
                                         "element 1: -,8", "expect 7.", "expect .5", "expect ,5",
                                         "tempo 12 8", "expect 7..5"));

}  // namespace
}  // namespace landdrill::test
