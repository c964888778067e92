#include "engine/choose_best.h"
