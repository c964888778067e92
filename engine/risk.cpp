#include "engine/risk.h"
