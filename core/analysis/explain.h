#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"

/// Why a figure is what it is: formula, source and conditions from the tables, the inputs with the
/// values that the rig has now. Nothing is computed anew.
namespace gazewright {

/// One input as the rig has it: a field, a whole body, or a part that is not there.
struct InputUse {
  std::string path;   ///< "pan.motor.rotor_inertia"; "on_tilt[0]" for a whole body
  std::string label;  ///< the field's label, the body's name, or the path where there is neither
  const FieldInfo* info = nullptr;  ///< of `quantity`; of a body its mass; null for choices
  Quantity quantity;                ///< by_default where the documented default stands in
  std::string choice;               ///< of a choice, or what stands for a part ("none")
  bool is_missing = false;
};

/// What an input list means in this rig, each input once, in its order; names such as "<load>" are
/// opened up.
std::vector<InputUse> inputs_in_use(std::span<const std::string_view> inputs, Axis axis,
                                    const Rig& rig);

/// Only their paths, whole parts as such ("on_tilt").
std::vector<std::string> input_paths(std::span<const std::string_view> inputs, Axis axis,
                                     const Rig& rig);

struct Explanation {
  std::string id;
  std::optional<Axis> axis;  ///< empty: of the rig
  const FigureInfo* info = nullptr;
  std::optional<double> value;
  std::string because;  ///< why there is none
  std::vector<InputUse> inputs;
  std::string_view page;        ///< of the handbook, "motion"
  std::string_view conditions;  ///< what the page's model takes for granted and leaves out
};
/// @pre the analysis is that of the rig. Empty: no such figure.
std::optional<Explanation> explain(const Rig& rig, const Analysis& analysis, std::string_view id);

/// Inputs of a finding's check; empty for one that is about the whole rig.
std::vector<InputUse> inputs_of_finding(const Rig& rig, const Finding& finding);

/// The axis that an id begins with.
std::optional<Axis> axis_of_id(std::string_view id);
/// "<axis>.move.time" of "pan.move.time"; other ids stay.
std::string id_pattern(std::string_view id);

/// The handbook's page of a figure, by the source it names or by its subject.
std::string_view page_of(const FigureInfo& info);
std::string_view conditions_of(std::string_view page);

/// Figures that a field, a body or a whole part goes into.
std::vector<const Figure*> figures_on(const Rig& rig, const Analysis& analysis,
                                      std::string_view path);

}  // namespace gazewright
