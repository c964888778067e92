#include "grammar/builder.h"

#include "grammar/ast.h"
#include "grammar/tree.h"

namespace landdrill::ast {

Builder::Builder(const Source& source, Assembled& out) : source_(source), out_(out) {
  if (out.sheets.empty() && !out.routine_lost) return;
  sheet_ = out.routine_lost ? &spare_sheet_ : &out.sheets.back();
  sheet_->sources.add(source);
}

void Builder::add(Line& line) {
  line_ = line.text;
  std::visit([this](auto& statement) { put(statement); }, line.statement);
}

void Builder::put(BadLine& line) {
  mark_incomplete();
  switch (line.opens) {
    case Opens::nothing:
      return;
    case Opens::routine:
      return start_lost_routine();
    case Opens::run:
      if (sheet_ == nullptr) start_lost_routine();
      run_ = &(spare_run_ = {});
      return start(Place::run);
    case Opens::panel:
      if (sheet_ == nullptr) start_lost_routine();
      panel_ = &(spare_panel_ = {});
      return start(Place::panel);
    case Opens::unknown:
      forgiving_ = true;
      return;
    default:
      if (!in_block()) put_bad_item(line.opens);
  }
}

void Builder::put_bad_item(Opens opens) {
  if (routine_ == nullptr) start_lost_routine();
  if (opens == Opens::passage) {
    passage_ = &(spare_passage_ = {});
    start_passage();
  } else if (opens == Opens::option && place_ == Place::element) {
    start_variant(spare_variant_ = {});
  } else {
    start_element(spare_element_ = {});
  }
}

void Builder::mark_incomplete() {
  if (place_ == Place::run) run_->incomplete = true;
  if (place_ == Place::panel) panel_->incomplete = true;
  if (place_ == Place::element) variant_->incomplete = true;
  if (routine_ != nullptr && !in_block()) routine_->incomplete = true;
}

void Builder::start(Place place) {
  place_ = place;
  forgiving_ = false;
  in_block_.clear();
}

void Builder::start_element(Element& element) {
  element_ = &element;
  in_element_.clear();
  element.variants.reserve(2);  // as written, and mostly one option at most
  start_variant(element.variants.emplace_back());
}

void Builder::start_variant(Variant& variant) {
  variant_ = &variant;
  in_variant_.clear();
  start(Place::element);
}

void Builder::start_passage() {
  in_variant_.clear();
  start(Place::passage);
}

}  // namespace landdrill::ast
