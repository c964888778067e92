// Where training buys most, ranked.
//
//   render_text(*train(asked, routine, messages), {})
//   //   1  4 Skylark    chance of the base mark  20 % to 10 %  +1.9250
#pragma once

#include "engine/choosing/next_point.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// `messages`: about its sheet.
ChoosingAnswer train(const Asked& asked, const Routine& routine, const Diagnostics& messages);

// `top`: so many lines; 0: all. `face`: the account of the routine as it is.
Page train_page(const NextPoints& next, const Face& face, std::size_t top = 0);

}  // namespace landdrill::report
