#include "engine/report/compare.h"

#include <algorithm>

#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/grid.h"
#include "engine/report/listing.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

// One element with its options, told from top to bottom.
class OptionsText {
 public:
  OptionsText(const Routine& routine, const ComparedElement& compared, const TextWish& wish)
      : comparison_(compared.comparison),
        element_(routine.elements.at(compared.comparison.element)),
        places_(places_of(routine)),
        wish_(wish) {}

  std::string tell() const {
    std::string result = verdicts() + options_table() + notes();
    for (const Duel& duel : comparison_.duels) result += tell(duel);
    return result;
  }

 private:
  std::string name(std::size_t option) const { return comparison_.options.at(option).title; }
  std::string quoted(std::size_t option) const {
    return option == 0 ? name(option) : "\"" + plain(name(option)) + "\"";
  }
  std::string at_start(std::size_t option) const { return option == 0 ? "As written" : quoted(option); }
  std::string mark_text(Mark mark) const { return mark.text(element_.panel->step.places_used()); }
  std::string points_text(Points points) const { return points.text(places_); }
  std::string expected_mark_of(std::size_t option) const {
    const auto& mark = comparison_.options.at(option).mark;
    return mark && mark->mark ? mark_text(*mark->mark) : "";
  }

  std::string verdicts() const;
  std::string options_table() const;
  std::string notes() const;
  std::string tell(const Duel& duel) const;
  std::string verdict(const Duel& duel) const;
  std::string why(const Duel& duel) const;
  std::string mark_clause(const Duel& duel) const;
  std::string chance_clause(const Duel& duel) const;
  std::string without_base(const Duel& duel) const;
  std::string break_even(const Duel& duel) const;
  std::string gain_table(const Duel& duel) const;

  const Comparison& comparison_;
  const Element& element_;
  int places_;
  const TextWish& wish_;
};

std::string OptionsText::verdicts() const {
  std::string result;
  for (const Duel& duel : comparison_.duels) result += paragraph("", verdict(duel), wish_.width);
  return result.empty() ? "" : result + "\n";
}

std::string OptionsText::options_table() const {
  using enum Align;
  const std::string declared = "as declared", base = "base mark", expect = "to expect";
  Listing listing{"",
                  {{"option", words, true},
                   {"mark", amount},
                   {"difficulty", amount, false, declared},
                   {"points", amount, false, declared},
                   {"chance", amount, false, base},
                   {"points", amount, false, base},
                   {"points", amount, false, expect},
                   {"scatter", amount, false, expect}},
                  {}};
  for (const OptionWorth& option : comparison_.options) {
    listing.rows.push_back({(option.breaks.empty() ? "" : "! ") + option.title,
                            expected_mark_of(option.option), option.declared.text(2),
                            text_of(option.clean, places_), given_per_cent(option.chance.percent),
                            text_of(option.on_base, places_), points_text(option.expected),
                            option.spread ? to_places(*option.spread, 2) : ""});
  }
  return as_text(listing, wish_);
}

// "as written from the run of 2026-05-07"
std::string mark_source(const ExpectedMark& mark) {
  if (mark.from == ExpectedMark::From::run)
    return "from the run of " + std::string(mark.runs.front().run->date);
  return "from " + std::to_string(mark.runs.size()) + " runs";
}

std::string OptionsText::notes() const {
  std::string result;
  for (const OptionWorth& option : comparison_.options) {
    const bool run = option.mark && !option.mark->runs.empty();
    if (run)
      result += paragraph(
          "", "The mark of " + quoted(option.option) + " is " + mark_source(*option.mark) + ".", wish_.width);
  }
  for (const OptionWorth& option : comparison_.options) {
    for (const std::string& limit : option.breaks)
      result += paragraph(
          "! ", at_start(option.option) + " breaks a limit, so a plan leaves it out: " + limit + ".",
          wish_.width);
  }
  const OptionWorth& first = comparison_.options.front();
  if (first.base)
    result += paragraph("", "On the base mark the difficulty credited is " + first.base->text(2) + ".",
                        wish_.width);
  if (!first.clean)
    result += paragraph(
        "", "This event weights elements by difficulty together: the points are those of all of them.",
        wish_.width);
  return result.empty() ? "" : "\n" + result;
}

std::string OptionsText::verdict(const Duel& duel) const {
  if (duel.gain == Points()) return at_start(duel.harder) + " and " + quoted(duel.easier) + " give the same.";
  if (duel.gain > Points())
    return at_start(duel.harder) + " gives " + points_text(duel.gain) + " points more than " +
           quoted(duel.easier) + ".";
  return at_start(duel.easier) + " gives " + points_text(Points() - duel.gain) + " points more than " +
         quoted(duel.harder) + ".";
}

std::string OptionsText::why(const Duel& duel) const {
  using enum Align;
  const OptionWorth& from = comparison_.options.at(duel.easier);
  const OptionWorth& to = comparison_.options.at(duel.harder);
  Grid grid(
      {{"why " + quoted(duel.gain >= Points() ? duel.harder : duel.easier) + " gives more", words, true},
       {"change", amount},
       {"total", amount}});
  grid.add({"expected with " + quoted(duel.easier), "", points_text(from.total)}, Look::total);
  for (const WorthStep& step : duel.steps) grid.add({step.label, with_sign(points_text(step.change)), ""});
  grid.add({"expected with " + quoted(duel.harder), with_sign(points_text(duel.gain)), points_text(to.total)},
           Look::total);
  return grid.text(wish_.width, wish_.colour);
}

// "down to a mark of 5.75 (7.00 is expected)"
std::string OptionsText::mark_clause(const Duel& duel) const {
  const bool pays = duel.gain >= Points();
  if (*duel.lowest_mark <= element_.panel->least) return "whatever its mark";
  return (pays ? "down to a mark of " : "from a mark of ") + mark_text(*duel.lowest_mark) +
         (pays ? "" : " on") + " (" + expected_mark_of(duel.harder) + " is expected)";
}

std::string OptionsText::chance_clause(const Duel& duel) const {
  if (*duel.highest_chance >= Decimal::whole(100)) return "however often it gets its base mark";
  return (duel.gain >= Points() ? "up to a chance of " : "with a chance of at most ") +
         given_per_cent(*duel.highest_chance) + " for its base mark (" +
         given_per_cent(comparison_.options.at(duel.harder).chance.percent) + " is expected)";
}

// Where the kind has no base mark, only the mark can decide.
std::string OptionsText::without_base(const Duel& duel) const {
  if (!duel.lowest_mark) return "would not be the better one at any mark.";
  return std::string(duel.gain >= Points() ? "stays" : "would be") + " the better one " + mark_clause(duel) +
         ", with all else as it is.";
}

std::string OptionsText::break_even(const Duel& duel) const {
  const bool equally_hard =
      comparison_.options.at(duel.harder).declared == comparison_.options.at(duel.easier).declared;
  const std::string start = at_start(duel.harder) + (equally_hard ? " " : ", the harder one, ");
  if (!comparison_.options.at(duel.harder).base) return start + without_base(duel);
  if (duel.gain >= Points())
    return start + "stays the better one " + mark_clause(duel) + ", or " + chance_clause(duel) +
           ", with all else as it is.";
  if (!duel.lowest_mark && !duel.highest_chance)
    return start + "would not be the better one at any mark, nor if it never got its base mark.";
  if (!duel.lowest_mark)
    return start + "would be the better one " + chance_clause(duel) +
           ", but at no mark, with all else as it is.";
  if (!duel.highest_chance)
    return start + "would be the better one " + mark_clause(duel) +
           ", but not if it only never got its base mark, with all else as it is.";
  return start + "would be the better one " + mark_clause(duel) + ", or " + chance_clause(duel) +
         ", with all else as it is.";
}

std::string OptionsText::gain_table(const Duel& duel) const {
  if (duel.marks.empty() || duel.chances.empty()) return "";
  using enum Align;
  const OptionWorth& harder = comparison_.options.at(duel.harder);
  Listing listing{"", {{"mark", amount}}, {}};
  for (const Decimal chance : duel.chances)
    listing.columns.push_back(
        {(chance == harder.chance.percent ? ">" : "") + given_per_cent(chance), amount});
  auto cell = duel.table.begin();
  for (const Mark mark : duel.marks) {
    const bool expected = harder.mark && harder.mark->mark == mark;
    listing.rows.push_back({(expected ? "> " : "") + mark_text(mark)});
    for (std::size_t i = 0; i < duel.chances.size(); ++i, ++cell)
      listing.rows.back().push_back(with_sign(to_places(cell->value(), 2)));
  }
  return "\n" +
         paragraph("",
                   "Points that " + quoted(duel.harder) + " gives more, by its mark" +
                       (harder.base ? " and the chance of its base mark:" : ":"),
                   wish_.width) +
         as_text(listing, wish_) +
         paragraph("", "> as expected now; where it says -, " + quoted(duel.easier) + " gives more.",
                   wish_.width);
}

std::string OptionsText::tell(const Duel& duel) const {
  return "\n" + why(duel) + "\n" + paragraph("", break_even(duel), wish_.width) + gain_table(duel);
}

std::string comparison_text(const Routine& routine, const Face& face,
                            const std::vector<ComparedElement>& elements, const TextWish& asked) {
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  std::string result = title_section(face, wish);
  for (const ComparedElement& one : elements) {
    const ElementLine& line = face.elements.at(one.comparison.element);
    result += heading(name_of(line) + ", " + plain(line.kind), wish);
    result += OptionsText(routine, one, wish).tell() + parts_section(routine, one, wish);
  }
  result +=
      heading("How to read it", wish) +
      bullets({"to expect: what the element brings on average, as declared and on the base mark by their "
               "chances, at the mark expected.",
               "scatter: how far from that it usually lies (standard deviation), judges, day and base "
               "mark together.",
               "total: the whole routine, its other elements as they are."},
              wish);
  return result + objection_section(face.objections, wish) + caution_section(face, wish) +
         values_section(face, wish);
}

}  // namespace

std::string option_name(const Element& element, std::size_t option) {
  const std::string_view title = element.options.at(option).title;
  return title.empty() ? "as written" : plain(title);
}

std::string comparison_report(const Routine& routine, const Face& face,
                              const std::vector<ComparedElement>& elements, Format format,
                              const TextWish& wish) {
  if (format == Format::csv) return comparison_csv(routine, elements);
  if (format == Format::json) return comparison_json(routine, face, elements);
  return comparison_text(routine, face, elements, wish);
}

}  // namespace landdrill::report
