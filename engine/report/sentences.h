// Sentences for what stands in the way of an answer, each with what to do, and for what swimmers have to take care of.
//
//   words_of({Obstacle::Of::elements_unmarked, {.elements = {1, 3}}})
//   // "elements 1 and 3 have no expected mark: add `expect`, or a run"
//   sentences_of(account.cautions)      // {"Lifts and throws: agree on the call ...", "This prices a routine ..."}
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/chances/obstacle.h"
#include "engine/score/account.h"

namespace landdrill::report {

std::string words_of(const Obstacle& obstacle);
std::vector<std::string> words_of(const Obstacles& obstacles);

// "1, 2 and 3".
std::string all_of(const std::vector<std::string>& names, std::string_view last = " and ");
// "element 2 has", "elements 1, 3 and 5 have", or nothing: what a sentence can start with.
std::string elements_have(const std::vector<int>& numbers);
// "element 2 has no marks, nor has choreography"; empty when nothing is missing.
std::string in_words(const Unmarked& missing);
// "Lifts and throws: agree on the call"; the words are rows of the set or of tables/data/usual-cautions.csv.
std::vector<std::string> sentences_of(const Cautions& cautions);
// With a capital letter in front.
std::string capitalised(std::string sentence);

}  // namespace landdrill::report
