#include "dump.h"

#include <fstream>
#include <sstream>

namespace landdrill::test {
namespace {

std::string show(const ast::Name& name) {
  return name.quoted ? "'" + std::string(name.text) + "'" : std::string(name.text);
}
std::string show(const ast::Number& number) {
  return std::string(number.text);
}
std::string show(const ast::JudgeMark& mark) {
  return mark ? show(*mark) : "missing";
}
std::string show(const ast::Counted& item) {
  return show(item.code) + (item.times ? "*" + show(*item.times) : "");
}
std::string show(const ast::Count& count) {
  return show(count.counts) + "@" + show(count.where);
}
std::string show(const ast::ExpectedAspect& each) {
  return show(each.aspect) + "=" + show(each.mark);
}
std::string show(const ast::ExpectedErrors& each) {
  return show(each.sync) + "=" + show(each.number);
}
std::string show(const ast::ExpectedPenalty& each) {
  return show(each.penalty) + "=" + show(each.percent);
}
std::string show(const ast::Fault& fault) {
  if (fault.lost_part) return "lost:" + show(*fault.lost_part);
  return show(fault.fault) + "/" + show(fault.size) + (fault.times ? "*" + show(*fault.times) : "");
}

template <class Items>
std::string list(const Items& items) {
  std::string text;
  for (const auto& item : items) text += (text.empty() ? "" : ", ") + show(item);
  return text;
}

std::string title(const std::optional<ast::Name>& name) {
  return name ? " " + show(*name) : "";
}
std::string base(bool is_base) {
  return is_base ? " base" : "";
}

struct Show {
  std::string operator()(const ast::EmptyLine&) const { return "empty"; }
  std::string operator()(const ast::BadLine&) const { return "error"; }
  std::string operator()(const ast::RoutineLine& l) const { return "routine(" + show(l.title) + ")"; }
  std::string operator()(const ast::EventLine& l) const { return "event(" + show(l.event) + ")"; }
  std::string operator()(const ast::ValuesLine& l) const { return "values(" + show(l.set) + ")"; }
  std::string operator()(const ast::TempoLine& l) const { return "tempo(" + show(l.beats_a_minute) + ")"; }
  std::string operator()(const ast::SwimmersLine& l) const { return "swimmers(" + show(l.swimmers) + ")"; }
  std::string operator()(const ast::ElementLine& l) const {
    return "element(" + show(l.number) + " " + show(l.kind) + title(l.title) + ")";
  }
  std::string operator()(const ast::OptionLine& l) const { return "option(" + show(l.title) + ")"; }
  std::string operator()(const ast::PartsLine& l) const { return "parts(" + list(l.parts) + ")"; }
  std::string operator()(const ast::CountsLine& l) const { return "counts(" + list(l.counts) + ")"; }
  std::string operator()(const ast::DifficultyLine& l) const {
    return "difficulty(" + show(l.difficulty) + ")";
  }
  std::string operator()(const ast::ExpectLine& l) const { return "expect(" + show(l.mark) + ")"; }
  std::string operator()(const ast::SlipLine& l) const { return "slip(" + show(l.percent) + ")"; }
  std::string operator()(const ast::PassageLine& l) const { return "passage(" + show(l.title) + ")"; }
  std::string operator()(const ast::ImpressionLine& l) const { return "impression(" + list(l.marks) + ")"; }
  std::string operator()(const ast::RunLine& l) const {
    return "run(" + std::string(l.date.text) + title(l.title) + ")";
  }
  std::string operator()(const ast::PanelLine& l) const {
    return "panel(" + std::string(l.date.text) + title(l.title) + ")";
  }
  std::string operator()(const ast::FaultsLine& l) const {
    return "faults(" + show(l.element) + base(l.base) + ": " + list(l.faults) + ")";
  }
  std::string operator()(const ast::ElementMarksLine& l) const {
    return "marks(" + show(l.element) + base(l.base) + ": " + list(l.marks) + ")";
  }
  std::string operator()(const ast::AspectMarksLine& l) const {
    return "aspect(" + show(l.aspect) + ": " + list(l.marks) + ")";
  }
  std::string operator()(const ast::SyncLine& l) const { return "sync(" + list(l.errors) + ")"; }
  std::string operator()(const ast::PenaltyLine& l) const { return "penalty(" + list(l.penalties) + ")"; }
  std::string operator()(const ast::ResultLine& l) const { return "result(" + show(l.result) + ")"; }
  std::string operator()(const ast::SpreadLine& l) const { return "spread(" + show(l.spread) + ")"; }
  std::string operator()(const ast::DayLine& l) const { return "day(" + show(l.day) + ")"; }
  std::string operator()(const ast::ErrorsLine& l) const { return "errors(" + list(l.errors) + ")"; }
  std::string operator()(const ast::RiskLine& l) const { return "risk(" + list(l.penalties) + ")"; }
  std::string operator()(const ast::OptionalLine&) const { return "optional"; }
  std::string operator()(const ast::StaysLine&) const { return "stays"; }
  std::string operator()(const ast::LimitLine& l) const {
    return "limit(" + show(l.name) + (l.word().empty() ? " code" : "") +
           (l.least ? " least " + show(*l.least) : "") + (l.most ? " most " + show(*l.most) : "") + ")";
  }
};

}  // namespace

std::string dump(const ast::Statement& statement) {
  return std::visit(Show{}, statement);
}

std::string dump(const ast::Line& line) {
  return dump(line.statement) + (line.comment.empty() ? "" : " #\"" + std::string(line.comment) + "\"");
}

std::string dump_text(std::string_view text) {
  const Source source{"a.sheet", text};
  std::string all;
  for (const ast::Line& line : parse(source).lines) all += (all.empty() ? "" : " | ") + dump(line);
  return all;
}

std::string messages(std::string_view text, std::string_view name) {
  const Source source{std::string(name), text};
  Assembled assembled;
  assemble(source, assembled);
  assembled.diagnostics.sort();
  return to_string(assembled.diagnostics);
}

std::string read_file(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace landdrill::test
