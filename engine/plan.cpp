#include "engine/plan.h"
