#include "engine/report/render.h"

#include "engine/report/page.h"
#include "engine/report/render_csv.h"
#include "engine/report/render_json.h"

namespace landdrill::report {

std::string render(const Page& page, Format format, const TextWish& wish) {
  if (format == Format::csv) return render_csv(page);
  return format == Format::json ? render_json(page) : render_text(page, wish);
}

}  // namespace landdrill::report
