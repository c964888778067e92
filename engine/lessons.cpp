#include "engine/lessons.h"
