// agreement_reference.csv, read: marks of a panel, and what R says about them.
//
//   references().at("springboard").results.at("w")      // 0.538102, 0.0000434
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

#include "engine/judging/statistics/agreement.h"

namespace landdrill::published {

using Numbers = std::vector<std::optional<double>>;
struct Reference {
  MarkTable marks;
  double confidence = 0;
  std::map<std::string, Numbers> results;
};

inline Numbers numbers_in(const std::string& text) {
  Numbers numbers;
  std::istringstream words(text);
  for (std::string word; words >> word;) {
    numbers.push_back(word == "-" ? std::optional<double>() : std::stod(word));
  }
  return numbers;
}

// case,what,numbers; nothing is quoted.
inline std::map<std::string, Reference> read_references() {
  std::ifstream file(LANDDRILL_AGREEMENT_REFERENCE);
  std::map<std::string, Reference> references;
  std::string name, what, text;
  while (std::getline(file, name, ',') && std::getline(file, what, ',') && std::getline(file, text)) {
    Reference& one = references[name];
    const Numbers numbers = numbers_in(text);
    if (what == "confidence") one.confidence = *numbers[0];
    if (what != "marks") {
      one.results[what] = numbers;
      continue;
    }
    one.marks.judges = numbers.size();
    one.marks.marks.insert(one.marks.marks.end(), numbers.begin(), numbers.end());
  }
  return references;
}
inline const std::map<std::string, Reference>& references() {
  static const std::map<std::string, Reference> read = read_references();
  return read;
}

inline void expect_number(std::optional<double> found, std::optional<double> expected,
                          const std::string& what) {
  ASSERT_EQ(found.has_value(), expected.has_value())
      << what << (found ? " found " + std::to_string(*found) : "");
  if (!found) return;
  EXPECT_NEAR(*found, *expected, 1e-8 * std::max(1.0, std::abs(*expected))) << what;
}

}  // namespace landdrill::published
