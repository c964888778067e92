// What swimmers have to take care of, in whole sentences.
//
//   sentences_of(account.cautions)      // {"Lifts and throws: check the depth ...", "This prices a routine ..."}
//
// The words are rows of the set or of tables/data/usual-cautions.csv.
#pragma once

#include <string>
#include <vector>

#include "engine/chances/obstacle.h"
#include "engine/score/account.h"

namespace landdrill::report {

std::vector<std::string> sentences_of(const Cautions& cautions);

// Sentences for what stands in the way of an answer, each with what to do.
//
//   words_of({Obstacle::Of::elements_unmarked, {.elements = {1, 3}}})
//   // "elements 1 and 3 have no expected mark: add `expect`, or a run"

std::string words_of(const Obstacle& obstacle);
std::vector<std::string> words_of(const Obstacles& obstacles);

// "element 2 has", "elements 1, 3 and 5 have", or nothing: what a sentence can start with.
std::string elements_have(const std::vector<int>& numbers);
// "element 2 has no marks, nor has choreography"; empty when nothing is missing.
std::string in_words(const Unmarked& missing);

}  // namespace landdrill::report
