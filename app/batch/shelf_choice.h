#pragma once

#include <optional>

#include "app/batch/options.h"
#include "core/shelf/shelf.h"

namespace gazewright::batch {

/// The shelf that the command names, or the user's own; its problems go to standard error. Empty
/// where the named folder is not there, which is said.
std::optional<Shelf> chosen_shelf(const Command& command);

}  // namespace gazewright::batch
