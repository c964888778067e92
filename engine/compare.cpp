#include "engine/compare.h"
