#pragma once

#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

#include "core/analysis/analysis.h"

/// What a change costs elsewhere: a remedy that mends one finding may break another.
namespace gazewright {

/// The rig with a remedy applied. @pre the remedy has a path
Rig remedied(const Rig& rig, const Remedy& remedy);

/// The worst finding that fails in the changed rig and does not yet, or clearly less, in
/// `findings`; as "Gap in the picture (demand 6 px, capacity 4 px)". Empty: none. Takes a quick
/// analysis, so findings that only a full one has are not seen.
/// @param axis  of the change; what fails on the other axis is said with its name
std::string price_of(const Rig& changed, std::optional<Axis> axis,
                     std::span<const Finding> findings, const std::stop_token& stop);

/// A change as it is said with its price: "..., but then this fails: ..."; without one as it is.
std::string with_price(const std::string& change, const std::string& price);

/// Says the price of every remedy; of a finding's remedies those that cost nothing come first, and
/// the first three stay. @param rig  as the user wrote it
void add_prices(std::vector<Finding>& findings, const Rig& rig, const std::stop_token& stop);

}  // namespace gazewright
