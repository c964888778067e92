// Puts one line after another into the block where it belongs: the work behind blocks.h.
//
// What has no place, or stands below a line in error, goes to a spare block that is thrown away, so that one
// mistake is one message. The builder_*.cpp hold a part each.
#pragma once

#include <compare>
#include <map>
#include <string>
#include <string_view>

#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "grammar/words.h"

namespace landdrill {

// What was said already in a block, so that a second time is found, and with it the place of the first.
//
//   Once seen;
//   seen.first({Word::element, "2"}, piece)   // nullptr: it is new
//   seen.first({Word::element, "2"}, again)   // points at the first piece

class Once {
 public:
  struct Key {
    words::Word word;
    std::string_view which = {};
    bool of_code = false;  // `limit "under"`, a code, is not `limit under`
    auto operator<=>(const Key&) const = default;
  };

  // The piece that said it first, or nullptr, and then `piece` is the first.
  const std::string_view* first(Key key, std::string_view piece) {
    const auto [at, is_new] = said_.try_emplace(key, piece);
    return is_new ? nullptr : &at->second;
  }
  void clear() { said_.clear(); }

 private:
  std::map<Key, std::string_view> said_;
};

}  // namespace landdrill

namespace landdrill::ast {

// Where the reading stands, and with it which lines may follow.
enum class Place { outside, header, element, passage, after_elements, run, panel };

// "01" is 1.
inline std::string_view without_zeros(std::string_view number) {
  while (number.size() > 1 && number.front() == '0') number.remove_prefix(1);
  return number;
}

class Builder {
 public:
  Builder(const Source& source, Assembled& out);
  void add(Line& line);

 private:
  // ---- what begins a block ----
  void put(EmptyLine&) {}
  void put(TitleLine& line);
  void put(DatedLine& line);
  void put(ElementLine& line);
  void put_routine(TitleLine& line);
  void put_option(TitleLine& line);
  void put_passage(TitleLine& line);
  void start_routine(const TitleLine& line);
  // Everything but runs and panels belongs to a routine of the same text; without one, it is said once.
  void need_routine();
  void start_lost_routine();
  bool may_start(const Date& date);

  // ---- what is said in a block once: the tables of blocks.h ----
  void put(CodeLine& line) { put_said(line.word, line.code); }
  void put(NumberLine& line) { put_said(line.word, line.number); }
  void put(CountedLine& line) { put_said(line.word, line.items); }
  void put(CountsLine& line) { put_said(line.word, line.counts); }
  template <class Argument>
  void put_said(Word word, Argument& argument);
  // Where it goes; nullptr where it has no place here.
  template <class Argument>
  std::optional<Argument>* place_for(Word word);
  Once& seen_here();
  void misplaced(Word word);
  std::string variant_hint() const;
  void put(WordLine& line);
  void complain_of_option();

  // ---- what is said of the whole, by code ----
  void put(NamedNumbersLine& line);
  void put(LimitLine& line);
  // False when the line stands in a run or a panel; it ends the element above it.
  bool may_speak_of_the_whole();

  // ---- runs and panels ----
  void put(FaultsLine& line);
  void put(ElementMarksLine& line);
  std::string faults_hint() const;
  std::string marks_hint() const;
  void put(AspectMarksLine& line);
  bool put_stated(const AspectMarksLine& line);
  void complain_of_run_marks(const AspectMarksLine& line);
  static std::string aspect_hint(const AspectMarksLine& line);

  // ---- lines in error ----
  void put(BadLine& line);
  void put_bad_item(Opens opens);
  void mark_incomplete();

  // ---- where we are ----
  bool in_option() const { return place_ == Place::element && variant_ != &element_->variants.front(); }
  bool in_block() const { return place_ == Place::run || place_ == Place::panel; }
  void start(Place place);
  void start_element(Element& element);
  void start_variant(Variant& variant);
  void start_passage();
  // The first of a list makes room for as many as there usually are.
  template <std::size_t usual = 8, class List, class Line>
  static void add(List& list, Line& line) {
    if (list.empty()) list.reserve(usual);
    list.push_back(std::move(line));
  }
  template <class Kind>
  Kind& new_item() {
    if (routine_->items.empty()) routine_->items.reserve(8);
    return std::get<Kind>(routine_->items.emplace_back(std::in_place_type<Kind>));
  }

  // ---- complaints ----
  std::string_view first_word() const;
  std::string_view name_of_place() const;
  // Says it once: the lines below a misplaced one are mostly misplaced with it.
  void misplaced(std::string_view expected, std::string hint, std::string_view what = {});
  static bool is_header(std::string_view word);
  // `piece`: what is complained of the second time; without one, the word that begins the line.
  bool once(Once& seen, Once::Key key, std::string_view piece = {});
  void complain_of_repeat(Once::Key key, std::string_view piece, std::string_view first);
  Complaint repeated(Once::Key key, std::string_view piece, std::string_view first) const;
  std::string_view once_in(Word word) const;
  bool wants_more();
  void complain(std::string_view piece, Complaint complaint);

  const Source& source_;
  Assembled& out_;
  std::string_view line_;
  Place place_ = Place::outside;
  bool forgiving_ = false;

  Sheet* sheet_ = nullptr;      // where runs and panels go, also of a text before
  Routine* routine_ = nullptr;  // where everything else goes: a routine of this text only
  Element* element_ = nullptr;
  Variant* variant_ = nullptr;
  Passage* passage_ = nullptr;
  Run* run_ = nullptr;
  Panel* panel_ = nullptr;

  Sheet spare_sheet_;
  Element spare_element_;
  Variant spare_variant_;
  Passage spare_passage_;
  Run spare_run_;
  Panel spare_panel_;

  Once in_routine_, in_element_, in_variant_, in_block_;
};

}  // namespace landdrill::ast
