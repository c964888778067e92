// A mark and a difficulty have no sum: the test passes when the compiler says so.
#include "tables/quantity.h"

landdrill::Mark nonsense(landdrill::Mark mark, landdrill::Difficulty difficulty) {
  return mark + difficulty;
}
