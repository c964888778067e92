#include "dump.h"

#include <fstream>
#include <sstream>

#include "grammar/words.h"

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
std::string show(const ast::NamedNumber& each) {
  return show(each.name) + "=" + show(each.number);
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

std::string called(words::Word word, const std::string& argument) {
  return std::string(words::keyword(word).word) + "(" + argument + ")";
}

struct Show {
  std::string operator()(const ast::EmptyLine&) const { return "empty"; }
  std::string operator()(const ast::BadLine&) const { return "error"; }
  std::string operator()(const ast::TitleLine& l) const { return called(l.word, show(l.title)); }
  std::string operator()(const ast::CodeLine& l) const { return called(l.word, show(l.code)); }
  std::string operator()(const ast::NumberLine& l) const { return called(l.word, show(l.number)); }
  std::string operator()(const ast::WordLine& l) const { return std::string(words::keyword(l.word).word); }
  std::string operator()(const ast::DatedLine& l) const {
    return called(l.word, std::string(l.date.text) + title(l.title));
  }
  std::string operator()(const ast::CountedLine& l) const { return called(l.word, list(l.items)); }
  std::string operator()(const ast::CountsLine& l) const { return called(l.word, list(l.counts)); }
  std::string operator()(const ast::NamedNumbersLine& l) const { return called(l.word, list(l.numbers)); }
  std::string operator()(const ast::ElementLine& l) const {
    return "element(" + show(l.number) + " " + show(l.kind) + title(l.title) + ")";
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
