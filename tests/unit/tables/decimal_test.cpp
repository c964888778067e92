// One number: text -> Decimal -> text, sums, and what does not fit.
#include "tables/decimal.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "grammar/words.h"
#include "kit.h"

namespace landdrill {
namespace {

using test::d;

std::string read(std::string_view text) {
  const auto number = Decimal::parse(text);
  return number ? number->text() : "-";
}

TEST(Decimal, ReadsPointsCommasAndSigns) {
  const std::pair<const char*, const char*> table[] = {{"7.25", "7.25"},
                                                       {"7,25", "7.25"},
                                                       {"0", "0"},
                                                       {"-0", "0"},
                                                       {"-3", "-3"},
                                                       {"+0.1", "0.1"},
                                                       {"007.50", "7.5"},
                                                       {"0.000001", "0.000001"},
                                                       {"1.2300000000", "1.23"},
                                                       {"-0.5", "-0.5"},
                                                       {"9000000000000", "9000000000000"},
                                                       {"9000000000000.000000", "9000000000000"},
                                                       {"-9000000000000", "-9000000000000"},
                                                       {"8999999999999.999999", "8999999999999.999999"},
                                                       // Twelve digits are read another way than thirteen.
                                                       {"999999999999", "999999999999"},
                                                       {"-999999.999999", "-999999.999999"},
                                                       {"9999999999,99", "9999999999.99"},
                                                       {"1234567.654321", "1234567.654321"}};
  for (const auto& [text, expected] : table) EXPECT_EQ(read(text), expected) << text;
}

TEST(Decimal, RefusesWhatIsNoPlainNumber) {
  for (const char* text : {"",
                           "+",
                           "-",
                           ".",
                           ",",
                           ".5",
                           "5.",
                           "5,",
                           "1.2.3",
                           "1,2,3",
                           "1.,",
                           "1..0",
                           "--1",
                           "+-1",
                           "1e3",
                           "0x1",
                           " 1",
                           "1 ",
                           "1 000",
                           "7.2500001",
                           "1.0000001000",
                           "9000000000000.000001",
                           "9000000000001",
                           "-9000000000001",
                           "99999999999999999999999999999999999999999999",
                           "1_000",
                           "12a4",
                           "1.2a",
                           "1.a",
                           "123456789012a",
                           "1'000",
                           "nan",
                           "inf",
                           "\xEF\xBC\x91"}) {
    EXPECT_EQ(read(text), "-") << text;
  }
  EXPECT_EQ(read(std::string_view("1\0", 2)), "-");
}

TEST(Decimal, WritesAtLeastTheWantedPlaces) {
  EXPECT_EQ(d("7.5").text(2), "7.50");
  EXPECT_EQ(d("7.125").text(2), "7.125");
  EXPECT_EQ(d("7").text(4), "7.0000");
  EXPECT_EQ(d("-0.1").text(3), "-0.100");
  EXPECT_EQ(d("7").text(9), "7.000000");
  EXPECT_EQ(Decimal().text(), "0");
}

TEST(Decimal, CountsThePlacesItNeeds) {
  EXPECT_EQ(d("7").places_used(), 0);
  EXPECT_EQ(d("70").places_used(), 0);
  EXPECT_EQ(d("7.50").places_used(), 1);
  EXPECT_EQ(d("0.000001").places_used(), 6);
  EXPECT_EQ(Decimal().places_used(), 0);
}

TEST(Decimal, KnowsTheMultiplesOfAStep) {
  EXPECT_TRUE(d("7.25").is_multiple_of(d("0.25")));
  EXPECT_FALSE(d("7.3").is_multiple_of(d("0.25")));
  EXPECT_TRUE(d("-0.5").is_multiple_of(d("0.25")));
  EXPECT_TRUE(Decimal().is_multiple_of(d("0.1")));
}

TEST(Decimal, ThrowsRatherThanLeaveItsRange) {
  const Decimal most = d("9000000000000");
  const Decimal smallest = Decimal::from_units(1);
  EXPECT_THROW(most + smallest, Overflow);
  EXPECT_THROW(-most - smallest, Overflow);
  EXPECT_THROW(most * 2, Overflow);
  EXPECT_THROW(most * std::numeric_limits<std::int64_t>::min(), Overflow);
  EXPECT_THROW(Decimal::whole(9'000'000'000'001), Overflow);
  EXPECT_THROW(Decimal::whole(std::numeric_limits<std::int64_t>::min()), Overflow);
  EXPECT_EQ((most - smallest).text(), "8999999999999.999999");
  EXPECT_EQ(Decimal::whole(-9'000'000'000'000), -most);
}

Decimal any_decimal() {
  const std::int64_t most = 9'000'000'000'000'000'000;
  return Decimal::from_units(*rc::gen::inRange<std::int64_t>(-most, most));
}

TEST(DecimalLaw, WhatIsWrittenReadsAsTheSameNumber) {
  EXPECT_TRUE(rc::check([] {
    const Decimal number = any_decimal();
    const int places = *rc::gen::inRange(0, 7);
    RC_ASSERT(Decimal::parse(number.text(places)) == number);
    std::string with_comma = number.text(places);
    std::replace(with_comma.begin(), with_comma.end(), '.', ',');
    RC_ASSERT(Decimal::parse(with_comma) == number);
  }));
}

TEST(DecimalLaw, NoBytesMakeItThrow) {
  EXPECT_TRUE(rc::check([] {
    const auto text =
        *rc::gen::container<std::string>(rc::gen::elementOf(std::string("0123456789.,+-e \xC2")));
    const auto number = Decimal::parse(text);
    if (number) RC_ASSERT(Decimal::parse(number->text()) == number);
  }));
}

TEST(Rounding, IsNamedByItsWords) {
  for (const char* word : {"half-up", "half-even", "down", "up"}) {
    ASSERT_TRUE(words::value_of<Rounding>(rounding_words, word)) << word;
    EXPECT_EQ(word_of(*words::value_of<Rounding>(rounding_words, word)), word);
  }
  EXPECT_FALSE(words::value_of<Rounding>(rounding_words, "half up"));
  EXPECT_FALSE(words::value_of<Rounding>(rounding_words, ""));
}

}  // namespace
}  // namespace landdrill
