#include "tests/outside/made_up_routines.h"

namespace landdrill {

const std::vector<MadeUpRoutine>& made_up_routines() {
  static const std::vector<MadeUpRoutine> routines = {
      {"pond",
       "routine \"Made up\"\n"
       "event open\n"
       "values pond\n"
       "spread 0.4\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "expect 7.5\n"
       "element 2 hybrid\n"
       "parts spin-b, hold x2\n"
       "expect 7\n"
       "impression choreography 7.5, performance 8\n",
       "86"},
      {"pond",
       "routine \"Made up\"\n"
       "event open\n"
       "values pond\n"
       "spread 0.35\n"
       "day 0.3\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "expect 7.5\n"
       "slip 10%\n"
       "element 2 hybrid\n"
       "parts spin-b, hold x2\n"
       "expect 7\n"
       "slip 25%\n"
       "impression choreography 7.5, performance 8\n",
       "80"},
      {"pond",
       "routine \"Made up\"\n"
       "event open\n"
       "values pond\n"
       "spread 0.15\n"
       "day 0.1\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "expect 8.25\n"
       "spread 0.1\n"
       "element 2 hybrid\n"
       "parts spin-b, hold x2\n"
       "expect 6.75\n"
       "slip 3%\n"
       "spread 0.9\n"
       "impression choreography 9, performance 9.5\n",
       "92"},
      {"pond",
       "routine \"Made up\"\n"
       "event open\n"
       "values pond\n"
       "spread 10\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "expect 5\n"
       "slip 50%\n"
       "impression choreography 5, performance 5\n",
       "45"},
      {"pond",
       "routine \"Made up\"\n"
       "event open\n"
       "values pond\n"
       "spread 0.5\n"
       "day 0.25\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "expect 9.75\n"
       "impression choreography 9.75, performance 10\n"
       "errors small 2.5, clear 0.4\n"
       "risk overtime 10%, bottom 2%\n",
       "86"},
      {"pond",
       "routine \"Made up\"\n"
       "event session\n"
       "values pond\n"
       "spread 0.3\n"
       "day 0.2\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "expect 6.8\n"
       "slip 15%\n"
       "element 2 hybrid\n"
       "parts spin-b, hold\n"
       "expect 7.2\n"
       "slip 5%\n",
       "70"},
      {"pond",
       "routine \"Made up\"\n"
       "event plain\n"
       "values pond\n"
       "spread 0.6\n"
       "day 0.4\n"
       "element 1 figure\n"
       "parts heron\n"
       "expect 7\n"
       "element 2 figure\n"
       "parts otter\n"
       "expect 6.5\n"
       "element 3 figure\n"
       "parts otter\n"
       "expect 8\n",
       "128"},
      {"pond",
       "routine \"Made up\"\n"
       "event mixed\n"
       "values pond\n"
       "spread 0.45\n"
       "day 0.15\n"
       "element 1 figure\n"
       "parts heron\n"
       "expect 6.3\n"
       "element 2 hybrid\n"
       "parts spin-a, hold\n"
       "expect 7.1\n"
       "slip 12%\n"
       "impression choreography 7.7\n",
       "60"},
      {"springboard-later",
       "routine \"Made up\"\n"
       "event springboard\n"
       "values springboard-later\n"
       "spread 0.5\n"
       "day 0.5\n"
       "element 1 dive\n"
       "difficulty 2.8\n"
       "expect 7\n"
       "element 2 dive\n"
       "difficulty 3.1\n"
       "expect 6.5\n"
       "element 3 dive\n"
       "difficulty 3.4\n"
       "expect 7.5\n",
       "190"},
      {"pond",
       "routine \"Made up\"\n"
       "event whole\n"
       "values pond\n"
       "spread 0.25\n"
       "day 0.6\n"
       "element 1 hybrid\n"
       "parts spin-a, hold\n"
       "impression choreography 7.3, performance 6.9\n",
       "70"},
  };
  return routines;
}

}  // namespace landdrill
