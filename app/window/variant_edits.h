#pragma once

#include <memory>
#include <optional>
#include <string>

#include "core/rig/rig.h"

/// Changes of a rig's variants as pure functions: rig in, rig out.
namespace gazewright {

/// The rig without title, notes and variants: what a variant keeps.
std::shared_ptr<const Rig> design_of(const Rig& rig);
/// Which variant is this design; empty: none.
std::optional<std::size_t> variant_like(const Rig& rig, const Rig& design);
/// "Variant 3": the first such name that no variant has.
std::string free_variant_name(const Rig& rig, const std::string& word);

/// The present design as one more variant, at the end of the list.
Rig with_variant_pinned(Rig rig, const std::string& name);
/// The variant becomes the present design; title, notes and variants stay.
Rig with_variant_restored(const Rig& rig, std::size_t index);
Rig with_variant_removed(Rig rig, std::size_t index);
Rig with_variant_named(Rig rig, std::size_t index, const std::string& name);
Rig with_variant_noted(Rig rig, std::size_t index, const std::string& note);

}  // namespace gazewright
