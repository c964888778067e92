#include <algorithm>

#include "engine/chances/what_if.h"
#include "engine/choosing/plan.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/forecast.h"
#include "engine/report/pages/plan.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

// "3 (2 safer)": the choice as the list of the next best has it.
std::string choice_words(const Routine& routine, const ToldPlan& told, std::size_t choice) {
  const std::vector<PlanChoice>& choices = told.plan.choices;
  if (choice == 0) return "this programme";
  if (choice >= choices.size()) return "what is written";
  return "number " + std::to_string(choice + 1) + " (" + differences(routine, choices[choice], choices[0]) +
         ")";
}

std::string joined(std::vector<std::string> several) {
  if (several.size() > 1 && several[1] == what_if_words(WhatIf::base_rarer)) {
    several[0] += " or rarer";
    several.erase(several.begin() + 1);
  }
  std::string words;
  for (std::size_t i = 0; i < several.size(); ++i)
    words += (i == 0 ? "" : i + 1 == several.size() ? ", or " : ", ") + several[i];
  return words;
}

std::vector<std::string> otherwise_sentences(const Routine& routine, const ToldPlan& told) {
  std::vector<std::string> stays, sentences;
  for (const PlanDoubt::Otherwise& one : told.plan.doubt.otherwise) {
    if (one.best == 0) {
      stays.emplace_back(what_if_words(one.what));
    } else {
      sentences.push_back("With " + std::string(what_if_words(one.what)) + ", " +
                          choice_words(routine, told, one.best) + " would be best.");
    }
  }
  if (!stays.empty())
    sentences.insert(sentences.begin(), "With " + joined(stays) + " it would still be best.");
  return sentences;
}

std::string turn_sentence(const Routine& routine, const ToldPlan& told, const PlanDoubt::Turn& turn) {
  const Element& element = routine.elements.at(turn.element);
  const std::size_t option = told.plan.choices.front().options.at(turn.element);
  const int places = element.panel->step.places_used();
  std::vector<std::string> turns;
  if (turn.at_mark)
    turns.push_back("a mark of " + turn.at_mark->text(places) + " or less (" +
                    turn.expected.text(std::max(places, turn.expected.value().places_used())) + " expected)");
  if (turn.at_chance)
    turns.push_back("a base mark in " + turn.at_chance->text() + " % or more of performances (" +
                    turn.chance.text() + " % expected)");
  const std::string name = name_of(element) + ", " + choice_name(element, option) + ": ";
  if (turns.empty())
    return name + "best of these whatever its mark, and however often it falls to its base mark.";
  return name + "another of these is better from " + joined(turns) + ".";
}

std::string draws_sentence(const Routine& routine, const ToldPlan& told) {
  const PlanDoubt& doubt = told.plan.doubt;
  std::size_t next = 1;
  for (std::size_t i = 1; i < doubt.best.size(); ++i)
    if (doubt.best[i] > doubt.best[next]) next = i;
  std::string words = told.aim == PlanWish::For::expected ? "Base marks and expected marks"
                                                          : "Base marks, expected marks and scatter";
  words += " drawn from what they rest on: it is the best of these in " + std::to_string(doubt.best.front()) +
           " of " + std::to_string(doubt.draws) + " draws";
  if (next < doubt.best.size() && doubt.best[next] > 0)
    words += ", " + choice_words(routine, told, next) + " in " + std::to_string(doubt.best[next]);
  return words + ".";
}

}  // namespace

void put_doubt(PageParts& page, const Routine& routine, const ToldPlan& told) {
  const PlanDoubt& doubt = told.plan.doubt;
  if (told.plan.choices.size() < 2) return;
  std::vector<std::string> sentences = otherwise_sentences(routine, told);
  for (const PlanDoubt::Turn& turn : doubt.turns) sentences.push_back(turn_sentence(routine, told, turn));
  if (doubt.draws > 0) sentences.push_back(draws_sentence(routine, told));
  if (sentences.empty()) return;
  page.heading("How sure that is, among these");
  page.list("doubt", sentences);
  page.fact("draws", doubt.draws);
  page.fact("draws_best", doubt.draws == 0 ? 0 : doubt.best.front());
}

}  // namespace landdrill::report
