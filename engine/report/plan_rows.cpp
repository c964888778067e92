#include "engine/report/chance.h"
#include "engine/report/face_json.h"
#include "engine/report/plan.h"
#include "engine/report/wide_csv.h"

namespace landdrill::report {
namespace {

std::string_view aim_word(PlanWish::For aim) {
  switch (aim) {
    case PlanWish::For::expected:
      return "expected";
    case PlanWish::For::quantile:
      return "quantile";
    case PlanWish::For::target:
      return "target";
  }
  return "";
}

// ---- CSV ----

void add_choice(WideCsv& csv, std::string what, std::string rank, const PlanChoice& choice,
                std::string behind) {
  csv.add({{"what", std::move(what)},
           {"rank", std::move(rank)},
           {"total", choice.total.text()},
           {"quantile", text_of(choice.quantile)},
           {"chance", choice.reaches ? as_number(choice.reaches->chance) : ""},
           {"seconds", text_of(choice.seconds)},
           {"behind", std::move(behind)}});
}

void add_elements(WideCsv& csv, const Routine& routine, const std::string& rank, const PlanChoice& choice) {
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    csv.add({{"what", "element"},
             {"rank", rank},
             {"number", std::to_string(element.number)},
             {"title", std::string(element.title)},
             {"option", choice_name(element, choice.options.at(i))}});
  }
}

void add_limits(WideCsv& csv, const Plan& plan) {
  for (const PlanLimit& limit : plan.limits)
    csv.add({{"what", "limit"},
             {"title", limit.words},
             {"by", limit.from},
             {"least", text_of(limit.least)},
             {"most", text_of(limit.most)},
             {"used", limit.used.text()},
             {"one_more", text_of(limit.one_more)},
             {"one_less", text_of(limit.one_less)}});
  for (const std::string& limit : plan.conflict) csv.add({{"what", "conflict"}, {"title", limit}});
  for (const std::string& note : plan.notes) csv.add({{"what", "note"}, {"title", note}});
}

// ---- JSON ----

json::value reaches_or_null(const std::optional<ChanceBounds>& reaches) {
  if (!reaches) return nullptr;
  return json::object{{"chance", as_number(reaches->chance)},
                      {"least", as_number(reaches->least)},
                      {"most", as_number(reaches->most)}};
}

json::object choice_object(const Routine& routine, const PlanChoice& choice) {
  json::array elements;
  for (std::size_t i = 0; i < choice.options.size(); ++i) {
    const Element& element = routine.elements.at(i);
    const bool out = choice.options[i] == leave_out;
    elements.push_back(json::object{
        {"number", element.number},
        {"title", text_or_null(element.title)},
        {"option", out ? json::value(nullptr) : text_or_null(choice_name(element, choice.options[i]))},
        {"left_out", out}});
  }
  return {{"elements", elements},
          {"total_expected", choice.total.text()},
          {"quantile", value_of(choice.quantile)},
          {"reaches", reaches_or_null(choice.reaches)},
          {"seconds", value_of(choice.seconds)}};
}

json::object limit_object(const PlanLimit& limit) {
  return {{"limit", text_or_null(limit.words)},  {"by", text_or_null(limit.from)},
          {"least", value_of(limit.least)},      {"most", value_of(limit.most)},
          {"used", limit.used.text()},           {"one_more", value_of(limit.one_more)},
          {"one_less", value_of(limit.one_less)}};
}

}  // namespace

std::string plan_csv(const Routine& routine, const ToldPlan& told) {
  WideCsv csv({"what", "rank", "number", "title", "option", "total", "quantile", "chance", "seconds",
               "behind", "by", "least", "most", "used", "one_more", "one_less"});
  for (std::size_t i = 0; i < told.plan.choices.size(); ++i) {
    const std::string rank = std::to_string(i + 1);
    add_choice(csv, "programme", rank, told.plan.choices[i], behind_of(routine, told, told.plan.choices[i]));
    add_elements(csv, routine, rank, told.plan.choices[i]);
  }
  if (told.plan.as_written)
    add_choice(csv, "as written", "", *told.plan.as_written, behind_of(routine, told, *told.plan.as_written));
  add_limits(csv, told.plan);
  if (!told.plan.choices.empty())
    csv.add({{"what", told.plan.proved ? "proved" : "not proved"}, {"behind", text_of(told.plan.gap)}});
  return csv.text();
}

std::string plan_json(const Routine& routine, const ToldPlan& told, const Face& face) {
  json::array choices, limits;
  for (std::size_t i = 0; i < told.plan.choices.size(); ++i) {
    json::object one = choice_object(routine, told.plan.choices[i]);
    one["behind"] = text_or_null(behind_of(routine, told, told.plan.choices[i]));
    choices.push_back(one);
  }
  for (const PlanLimit& limit : told.plan.limits) limits.push_back(limit_object(limit));
  json::object all = face_object(face);
  all["aim"] = json::object{{"for", text_or_null(aim_word(told.aim))},
                            {"per_cent", text_or_null(told.share)},
                            {"target", text_or_null(told.target)}};
  all["programmes"] = choices;
  all["as_written"] = told.plan.as_written ? json::value(choice_object(routine, *told.plan.as_written))
                                           : json::value(nullptr);
  all["as_written_allowed"] = told.plan.as_written_allowed;
  all["proved"] = told.plan.proved;
  all["tried"] = told.plan.tried;
  all["not_told_apart"] = told.plan.not_told_apart;
  all["gap"] = value_of(told.plan.gap);
  all["limits"] = limits;
  all["conflict"] = texts(told.plan.conflict);
  all["notes"] = texts(told.plan.notes);
  return json_text(all, JsonLayout::indented);
}

}  // namespace landdrill::report
