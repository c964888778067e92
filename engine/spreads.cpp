#include "engine/spreads.h"
