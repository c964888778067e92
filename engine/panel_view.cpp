#include "engine/panel_view.h"
