#include "engine/agreement.h"
