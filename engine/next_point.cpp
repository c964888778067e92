#include "engine/next_point.h"
