#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/motion/axis_model.h"
#include "core/shelf/fit.h"

/// One axis with parts of the shelf on it, in closed form. Used by core/shelf only.
namespace gazewright {

struct FitCandidate {
  FitParts parts;
  std::vector<std::string> needs;    ///< missing fields of its parts, as rig paths; the rest is
                                     ///< empty then
  std::vector<std::string> unknown;  ///< what single measures lack, as rig paths
  AxisModel model;                   ///< with the other axis' parts as in the base rig
  AxisLoad other_load;               ///< of the other axis, these parts on this one
  double mass_kg = 0;
  double within_s = 0, moves_per_s = 0, air_K = 0, winding_limit_K = 0;  ///< NaN: not known
  double thermal_resistance_KpW = 0, rated_Nm = 0, gap_px = 0, band_px = 0;
  double move_rad = 0;
  double dwell_s = 0;    ///< with a list of moves, the mean rest after one; else NaN
  double current_A = 0;  ///< what the motor gets, standing
  double held_A = kInfinity, held_radps = kInfinity;  ///< limits that protect the gearbox
  double fastest_radps = kInfinity;                   ///< at the output, by all limits of speed
};

/// The axis' candidates: every motor with every gearbox, and with every drive where asked for.
/// @param of_rig  gets what the rig itself lacks, as rig paths, each once
std::vector<FitCandidate> fit_candidates(const Rig& base, const Shelf& shelf, Axis axis,
                                         bool drives, std::vector<std::string>& of_rig);

/// What an axis lacks besides the fields of the parts that are tried and the gains: for the move,
/// for single measures, for the simulation of the best and for the gains advised for them, as rig
/// paths.
/// @param rig  with any parts
std::vector<std::string> lacking_besides(const Rig& rig, const Shelf& shelf, Axis axis,
                                         bool drives);

/// Demand and capacity by FitLimit; NaN: not known.
struct AxisFit {
  double time_s = kInfinity;
  std::array<double, kFitLimits.size()> demand{}, capacity{};

  double margin(FitLimit limit) const;  ///< capacity/demand − 1, at most 1e6; NaN: not known
};
/// @param load  in place of the model's
AxisFit axis_fit(const FitCandidate& candidate, const AxisLoad& load);

/// "118 ms, 110 ms wanted", "rises by 132 K, 90 K allowed"
std::string in_words(FitLimit limit, const AxisFit& fit);

}  // namespace gazewright
