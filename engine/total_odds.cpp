#include "engine/total_odds.h"
