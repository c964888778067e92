#include "engine/report/sentences.h"

#include <fmt/format.h>

#include <algorithm>

#include "tables/value_set.h"

namespace landdrill::report {

namespace {

std::string no_spread(const ObstacleFacts& facts) {
  std::vector<std::string> lines;
  for (const int element : facts.elements) lines.push_back(fmt::format("element {}", element));
  lines.insert(lines.end(), facts.names.begin(), facts.names.end());
  return fmt::format(
      "nothing says how far judges' marks scatter{}: write `spread 0.4` into the sheet, give --spread, or "
      "add a row to the set's table spreads",
      lines.empty() ? "" : " for " + all_of(lines));
}

std::string unmarked_in_a_plan(const ObstacleFacts& facts) {
  const std::string& title = facts.names.front();
  return fmt::format("element {}{} has no expected mark{}: add `expect`, or a run", facts.elements.front(),
                     title.empty() ? "" : " \"" + title + "\"", facts.most > 1 ? " in any option" : "");
}

std::string missing_words(const Obstacle& obstacle) {
  const ObstacleFacts& facts = obstacle.facts;
  const auto name = [&] { return facts.names.front(); };
  switch (obstacle.of) {
    case Obstacle::Of::elements_unmarked:
      return elements_have(facts.elements) + " no expected mark: add `expect`, or a run";
    case Obstacle::Of::aspect_unmarked:
      return name() + " has no expected mark: add it to a line `impression`";
    case Obstacle::Of::aspects_unmarked:
      return fmt::format("no mark is expected for {}: add `impression`, or a run that has one",
                         all_of(facts.names, ", "));
    case Obstacle::Of::element_unmarked:
      return unmarked_in_a_plan(facts);
    case Obstacle::Of::option_unmarked:
      return fmt::format("the option \"{}\" of element {} has no expected mark: add `expect`", name(),
                         facts.elements.front());
    case Obstacle::Of::own_mark_missing:
      return fmt::format("element {} gets no mark of its own in this event: its options score the same",
                         facts.elements.front());
    case Obstacle::Of::no_spread:
      return no_spread(facts);
    case Obstacle::Of::no_base:
      return fmt::format(
          "element {} has a chance of the base mark, but the kind {} has none in the set: add it to "
          "kinds.csv, or take the chance away",
          facts.elements.front(), name());
    case Obstacle::Of::nothing_expected:
      return "nothing is expected yet: add `expect` to the elements and a line `impression`, or a run";
    case Obstacle::Of::all_credited_zero:
    case Obstacle::Of::all_may_be_zero:
    case Obstacle::Of::bases_too_many:
    case Obstacle::Of::ways_too_many:
    case Obstacle::Of::steps_too_many:
    case Obstacle::Of::spread_too_wide:
    case Obstacle::Of::errors_too_many:
    case Obstacle::Of::share_no_chance:
      break;
  }
  return "";
}

}  // namespace

std::string all_of(const std::vector<std::string>& names, std::string_view last) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? last : ", ";
    text += names[i];
  }
  return text;
}

std::string words_of(const Obstacle& obstacle) {
  const ObstacleFacts& facts = obstacle.facts;
  const auto name = [&] { return facts.names.front(); };
  switch (obstacle.of) {
    case Obstacle::Of::all_credited_zero:
      return name() +
             ": every element can be credited with a difficulty of 0, and then nothing can be divided by it: "
             "give at least one of them no chance of that";
    case Obstacle::Of::all_may_be_zero:
      return "every difficulty that is credited can be 0 at once, and then marks cannot be weighted by it: "
             "look at the difficulties and the base marks";
    case Obstacle::Of::bases_too_many:
      return fmt::format(
          "{} elements that are weighted together can get their base mark, more than {}: leave `slip` out "
          "where it hardly matters",
          facts.amount.text(), facts.most);
    case Obstacle::Of::ways_too_many:
      return name() +
             ": base marks can fall in too many ways to be reckoned with all together: give fewer elements a "
             "slip, or write their difficulties with fewer places";
    case Obstacle::Of::steps_too_many:
      return fmt::format(
          "{}: marks in steps of {} by {} judges are too many to be reckoned with: use a wider step in "
          "panels.csv",
          name(), facts.amount.text(), facts.most);
    case Obstacle::Of::spread_too_wide:
      return fmt::format("a spread of {} marks ({}) is more than {} whole scales: write it in marks, as 0.4",
                         facts.amount.text(), name(), facts.most);
    case Obstacle::Of::errors_too_many:
      return fmt::format("errors {} {}: at most {} on average can be reckoned with", name(),
                         facts.amount.text(), facts.most);
    case Obstacle::Of::share_no_chance:
      return "a plan needs a chance between 0 and 100 %";
    default:
      return missing_words(obstacle);
  }
}

std::vector<std::string> words_of(const Obstacles& obstacles) {
  std::vector<std::string> sentences;
  for (const Obstacle& one : obstacles) sentences.push_back(words_of(one));
  return sentences;
}

std::string elements_have(const std::vector<int>& numbers) {
  if (numbers.empty()) return "";
  if (numbers.size() == 1) return fmt::format("element {} has", numbers.front());
  std::vector<std::string> all;
  for (const int number : numbers) all.push_back(std::to_string(number));
  return "elements " + all_of(all) + " have";
}

std::string in_words(const Unmarked& missing) {
  const std::string aspects = all_of(missing.aspects);
  const std::string have = missing.aspects.size() == 1 ? "has" : "have";
  if (missing.elements.empty()) return aspects.empty() ? "" : aspects + " " + have + " no marks";
  return elements_have(missing.elements) + " no marks" +
         (aspects.empty() ? "" : ", nor " + have + " " + aspects);
}

std::string capitalised(std::string sentence) {
  if (!sentence.empty() && sentence[0] >= 'a' && sentence[0] <= 'z')
    sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
  return sentence;
}

// What is said of several topics is said once.
std::vector<std::string> sentences_of(const Cautions& cautions) {
  std::vector<std::pair<std::string_view, std::vector<std::string>>> all;  // texts with their topics
  for (const CautionRule& rule : cautions) {
    auto said = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == rule.text; });
    if (said == all.end()) said = all.insert(all.end(), {rule.text, {}});
    if (!rule.topic.empty()) said->second.push_back(rule.topic);
  }
  std::vector<std::string> sentences;
  for (const auto& [text, topics] : all)
    sentences.push_back(capitalised(all_of(topics)) + (topics.empty() ? "" : ": ") + std::string(text));
  return sentences;
}

}  // namespace landdrill::report
