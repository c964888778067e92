#include "engine/report/cautions.h"

#include <fmt/format.h>

#include "engine/score/account.h"

namespace landdrill::report {

std::vector<std::string> sentences_of(const Cautions& cautions) {
  std::vector<std::string> sentences;
  if (cautions.lifts || cautions.throws) {
    sentences.push_back(
        fmt::format("{}: check the depth and a clear landing, have spotters, and let the bases swim clear "
                    "before the flyer "
                    "comes down.",
                    cautions.lifts && cautions.throws ? "Lifts and throws"
                    : cautions.lifts                  ? "Lifts"
                                                      : "Throws"));
  }
  if (cautions.under_water) {
    sentences.push_back(
        "Breath-hold: never hyperventilate, never drill it alone or unsupervised, rest between tries, stop "
        "at "
        "the first sign of trouble.");
  }
  if (!sentences.empty()) {
    sentences.push_back(
        "This prices a routine; it does not say that anyone can safely swim it. Follow your federation's and "
        "the facility's rules, the law and medical advice.");
  }
  return sentences;
}

}  // namespace landdrill::report
