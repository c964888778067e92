#include "engine/forecast.h"
