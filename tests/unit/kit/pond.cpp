// The pond: a small invented set with one event for each way of counting, and its standard sheet.
#include "tests/unit/kit/kit.h"

namespace landdrill::kit {

// open: marks x difficulty, two aspects. session: weighted by difficulty. plain: marks alone. mixed: figures
// weighted, the rest times difficulty. whole: only the routine as a whole is marked.
Tables::Tables() {
  files_.name = "pond";
  files_.files = {
      {"set.csv",
       "title,edition,note,source,status\n"
       "The pond,2026,for tests,invented for tests,invented\n"},
      {"families.csv",
       "code,title,kinds,most_in_element,most_in_routine,source,status\n"
       "spins,Spins,hybrid ratio,2,3,invented for tests,invented\n"
       "holds,Holds,,,,invented for tests,invented\n"
       "figures,Figures,figure unpriced,1,,invented for tests,invented\n"},
      {"parts.csv",
       "code,family,title,value,source,status\n"
       "spin-a,spins,Slow spin,0.9,invented for tests,invented\n"
       "spin-b,spins,Fast spin,1.4,invented for tests,invented\n"
       "hold,holds,A hold,0.4,from memory,memory\n"
       "untold,holds,A hold without a value,,invented for tests,invented\n"
       "untold-too,holds,Another,,invented for tests,invented\n"
       "vast,holds,Worth too much,5000000000000,invented for tests,invented\n"
       "heron,figures,Heron,2.1,\"a page, p. 3\",published\n"
       "otter,figures,Otter,1.4,what clubs do,practice\n"},
      {"kinds.csv",
       "code,title,formula,base,least_parts,most_parts,most_same,places,rounding,caution,source,status\n"
       "hybrid,Hybrid,base + sum(parts),0.5,2,4,2,2,half-up,,invented for tests,invented\n"
       "figure,Figure,sum(parts),,,,,2,half-up,,invented for tests,invented\n"
       "ratio,Ratio,sum(parts) / count(spins),0.3,,,,2,half-up,,invented for tests,invented\n"
       "sunk,Sunk,sum(parts) - 1,0.3,,,,2,half-up,,invented for tests,invented\n"
       "unpriced,Unpriced,,,,,,2,half-up,,invented for tests,invented\n"
       "half-priced,Half priced,base + sum(parts),,,,,2,half-up,,invented for tests,invented\n"
       "lift,Lift,base + sum(parts),0.6,,,,2,half-up,lift,invented for tests,invented\n"
       "throw,Throw,base + sum(parts),0.8,,,,2,half-up,throw,invented for tests,invented\n"},
      {"events.csv",
       "code,title,least_swimmers,most_swimmers,seconds,tolerance,source,status\n"
       "open,Open water,1,2,60,5,invented for tests,invented\n"
       "session,Figure session,,,,,invented for tests,invented\n"
       "plain,Marks alone,,,,,invented for tests,invented\n"
       "mixed,Mixed,,,,,invented for tests,invented\n"
       "whole,As a whole,,,,,invented for tests,invented\n"
       "dear,No weight yet,,,,,invented for tests,invented\n"},
      {"quotas.csv",
       "event,kind,family,least,most,source,status\n"
       "open,hybrid,,1,3,invented for tests,invented\n"
       "open,,spins,1,,invented for tests,invented\n"
       "session,figure,,2,2,invented for tests,invented\n"},
      {"panels.csv",
       "event,aspect,kind,title,per,judges,drop_high,drop_low,combine,step,least,most,use,weight,places,"
       "rounding,"
       "missing,missing_step,source,status\n"
       "open,execution,,Execution,element,5,1,1,mean,0.25,0,10,times-difficulty,1,4,half-up,mean,0.25,"
       "invented for "
       "tests,invented\n"
       "open,choreography,,Choreography,routine,5,1,1,mean,0.25,0,10,plain,4,4,half-up,mean,0.25,invented "
       "for "
       "tests,invented\n"
       "open,performance,,Performance,routine,5,1,1,mean,0.25,0,10,plain,3,4,half-up,mean,0.25,invented for "
       "tests,invented\n"
       "session,figure-mark,,Figure marks,element,5,1,1,mean,0.1,0,10,weighted,10,4,half-up,refuse,,invented "
       "for "
       "tests,invented\n"
       "plain,award,,Award,element,5,1,1,sum,0.5,0,10,plain,2,2,half-up,fewer,,invented for tests,invented\n"
       "mixed,execution,,Execution,element,3,0,0,mean,0.1,0,10,times-difficulty,1.1,4,half-up,fewer,,"
       "invented for "
       "tests,invented\n"
       "mixed,execution,figure,Figure marks,element,3,0,0,mean,0.1,0,10,weighted,4,4,half-up,fewer,,invented "
       "for "
       "tests,invented\n"
       "mixed,choreography,,Choreography,routine,3,0,0,mean,0.1,0,10,plain,3,4,half-up,fewer,,invented for "
       "tests,invented\n"
       "whole,choreography,,Choreography,routine,3,0,0,mean,0.1,0,10,plain,6,4,half-up,refuse,,invented for "
       "tests,invented\n"
       "whole,performance,,Performance,routine,3,0,0,mean,0.1,0,10,plain,4,4,half-up,refuse,,invented for "
       "tests,invented\n"
       "dear,choreography,,Choreography,routine,3,0,0,mean,0.1,0,10,plain,,4,half-up,refuse,,invented for "
       "tests,invented\n"},
      {"faults.csv",
       "code,title,small,medium,large,cap,source,status\n"
       "bent-knee,Bent knee,0.25,0.5,1,1.5,invented for tests,invented\n"
       "splash,Splash,0.1,,,,invented for tests,invented\n"
       "sinking,Sinking,,,6,,invented for tests,invented\n"},
      {"sync.csv",
       "code,title,points,source,status\n"
       "small,Small difference,0.1,invented for tests,invented\n"
       "clear,Clear difference,0.5,invented for tests,invented\n"
       "untold,Nobody knows,,invented for tests,invented\n"},
      {"penalties.csv",
       "code,title,points,most,source,status\n"
       "overtime,Over time,1,1,invented for tests,invented\n"
       "bottom,Use of the bottom,2,,invented for tests,invented\n"
       "untold,Nobody knows,,,invented for tests,invented\n"},
      // Every difference is a reason for a change, so that plans can be compared with trying everything.
      {"estimates.csv",
       "code,value,text,source,status\n"
       "noticed-total,0,as a share of the total,invented for tests,invented\n"
       "noticed-chance,0,as a share of all performances,invented for tests,invented\n"},
  };
}

// 0.5 + 0.9 + 0.4 = 1.8, x 7.5 = 13.5; 0.5 + 1.4 + 0.8 = 2.7, x 7 = 18.9; 4 x 7.5 + 3 x 8 = 54.
const std::string reeds =
    "routine \"Reeds\"\n"                                // 1
    "event open\n"                                       // 2
    "values pond\n"                                      // 3
    "tempo 120\n"                                        // 4
    "swimmers 1\n"                                       // 5
    "element 1 hybrid \"Ripple\"\n"                      // 6
    "parts spin-a, hold\n"                               // 7
    "counts 32 under, 64 surface\n"                      // 8
    "expect 7.5\n"                                       // 9
    "element 2 hybrid\n"                                 // 10
    "parts spin-b, hold x2\n"                            // 11
    "counts 24 under\n"                                  // 12
    "expect 7\n"                                         // 13
    "impression choreography 7.50, performance 8.00\n";  // 14

}  // namespace landdrill::kit
