#include "engine/mark_odds.h"
