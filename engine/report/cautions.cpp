#include "engine/report/cautions.h"

#include <algorithm>

#include "engine/report/obstacle_words.h"
#include "engine/score/account.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

// What is said once, of one topic or of several.
struct Said {
  std::string_view text;
  std::vector<std::string> topics;

  std::string sentence() const {
    std::string heading = all_of(topics);
    if (heading.empty()) return std::string(text);
    if (heading[0] >= 'a' && heading[0] <= 'z') heading[0] = static_cast<char>(heading[0] - 'a' + 'A');
    return heading + ": " + std::string(text);
  }
};

}  // namespace

std::vector<std::string> sentences_of(const Cautions& cautions) {
  std::vector<Said> all;
  for (const CautionRule& rule : cautions) {
    auto said = std::find_if(all.begin(), all.end(), [&](const Said& one) { return one.text == rule.text; });
    if (said == all.end()) said = all.insert(all.end(), {rule.text, {}});
    if (!rule.topic.empty()) said->topics.push_back(rule.topic);
  }
  std::vector<std::string> sentences;
  for (const Said& one : all) sentences.push_back(one.sentence());
  return sentences;
}

}  // namespace landdrill::report
