#pragma once

#include <string>
#include <string_view>

/// What a dimension is called. Used by core/units only.
namespace gazewright {

/// "an inertia", "a torque" ... for the SI unit of a field.
std::string_view dimension_words(std::string_view si_unit);

/// The same for a dimension as find_unit gives it; empty where it has no name of its own.
std::string_view words_of_dimension(std::string_view dimension);

}  // namespace gazewright
