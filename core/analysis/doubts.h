#pragma once

#include <array>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/analysis.h"

/// How far a rig's figures can be trusted, and which of its values is worth measuring first.
/// Window, sheet and batch show Doubts.
namespace gazewright {

/// An input that is not known exactly. What it may be is taken as evenly spread between its limits
/// (JCGM 100:2008, 4.3.7), so its standard uncertainty is its half-range divided by √3.
struct Unknown {
  std::string path;       ///< "pan.motor.rotor_inertia"; of bodies "on_tilt[camera].mass"
  std::string label;      ///< "Pan motor: rotor inertia"
  double value_si = 0;    ///< as the analysis takes it
  double spread_si = 0;   ///< half of its range, > 0
  bool is_stated = true;  ///< by the rig file; else the usual spread of its kind and source
  Source source = Source::unstated;
  std::string_view si_unit, unit;
};

/// What one unknown does to a figure when it lies at the end of its range, the others as entered.
struct Shift {
  std::size_t unknown = 0;          ///< in Doubts::unknowns
  std::optional<double> low, high;  ///< the figure, SI, at value − spread and at value + spread;
                                    ///< empty: it has none there
  std::string because;              ///< why an end has none
  double share = 0;                 ///< of the figure's variance, 0 to 1; those that lack an end
                                    ///< have all of it
};
struct DoubtedFigure {
  std::string id;
  double value = 0;            ///< SI, as the analysis has it
  double uncertainty_si = 0;   ///< expanded, k = 2 (about 95 % where many unknowns add up)
  bool is_known_whole = true;  ///< no shift lacks an end; else it is off by that much at least
  std::vector<Shift> shifts;   ///< only those that change it, the largest first
};
/// The step's angle ± its expanded uncertainty, one value per sample of the analysis' step.
struct StepBand {
  std::vector<double> time_s, low_rad, high_rad;  ///< empty where the step is, and where it runs
                                                  ///< away or has no course at an end
};

struct Doubts {
  std::vector<Unknown> unknowns;
  std::size_t exact = 0;  ///< inputs that are stated without a spread, and none is usual for them
  std::vector<DoubtedFigure> figures;  ///< the headline figures that are known and move
  std::array<StepBand, 2> step;        ///< by Axis
  /// The unknowns that matter, the one most worth measuring first: by the sum of its shares.
  struct Worth {
    std::size_t unknown = 0;
    double share = 0;     ///< mean of its shares over the figures that are off by 0.1 % or more
    std::string most_of;  ///< id of the figure that it moves most, by its uncertainty
    std::string text;     ///< one sentence: what measuring it would tell
  };
  std::vector<Worth> worth;

  const DoubtedFigure* figure(std::string_view id) const;  ///< null where it is not in doubt
};

/// Analyses the rig with each unknown at both ends of its range, the rest as entered, and adds the
/// changes up by root-sum-square (JCGM 100:2008, 5.1.2, correlations left out): of each unknown the
/// root mean square of what its ends change, over √3. Exact for linear figures, on the cautious
/// side for those that change the same way at both ends. Takes two quick analyses an unknown, on
/// two threads; figures that a quick analysis lacks stay out. A stop request ends it early with
/// nothing.
/// @param analysis  of the rig as it is; what it lacks stays out
Doubts doubts_of(const Rig& rig, const Analysis& analysis, const std::stop_token& stop = {});

/// A sentence that says how many inputs are taken as exact.
std::string say_exact(const Doubts& doubts);
/// Why there is nothing worth measuring: no spread at all, or no figure that one moves. Begins
/// small, without a full stop.
std::string why_none_worth(const Doubts& doubts);

}  // namespace gazewright
