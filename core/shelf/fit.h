#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/analysis/gain_advice.h"
#include "core/shelf/shelf.h"

/// Which of the shelf's parts fit a rig best: every motor with every gearbox on both axes.
namespace gazewright {

struct FitOptions {
  bool drives = false;    ///< each also with every drive of the shelf; else the rig's drives stay
  std::size_t most = 20;  ///< rows of the answer
  std::size_t simulated = 5;  ///< of them, from the best on
  int threads = 2;
};

/// What a combination is measured by, in this order. All of them are closed forms of the rigid
/// train, see resources/handbook/shelf.md.
enum class FitLimit {
  start,  ///< torque that starts the axis [N·m]
  time,   ///< of the task's move against task.within [s]
  rated,  ///< root mean square of the gearbox' torque over the duty against its rated torque [N·m]
  heat,   ///< steady rise of the winding over the air [K]
  gap     ///< half of the backlash in the picture against the settle band [px]
};
inline constexpr std::array<FitLimit, 5> kFitLimits{FitLimit::start, FitLimit::time,
                                                    FitLimit::rated, FitLimit::heat, FitLimit::gap};
const char* words_of(FitLimit limit);  ///< "gap in the picture"

/// Indices of Shelf::entries.
struct FitParts {
  std::size_t motor = 0, gearbox = 0;
  std::optional<std::size_t> drive;  ///< empty: the rig's own
  bool operator==(const FitParts&) const = default;
};
struct FitSimulated {
  std::array<std::optional<double>, 2> settle_s;  ///< by Axis; empty: never, or not known
  std::vector<std::string> settle_needs;          ///< fields without which it is not known
  /// By Axis: why no gains are advised, "needs pan.loop.estimator_bandwidth"; empty: they are among
  /// the row's values.
  std::array<std::string, 2> no_gains;
  int fails = 0, tight = 0, unknown = 0;  ///< findings
  std::vector<std::string> failing;       ///< "pan: Move and settle in time"

  /// Empty where one of them never settles, or is not known to.
  std::optional<double> slower_s() const;
};
struct FitRow {
  std::size_t rank = 0;            ///< from 1, in the order of the rows
  std::array<FitParts, 2> parts;   ///< by Axis
  std::array<double, 2> time_s{};  ///< shortest time of the task's move; infinite: cannot move
  double mass_kg = 0;              ///< of both motors and gearboxes
  bool fits = false;               ///< nothing fails
  std::optional<double> margin;    ///< least of all that is known: capacity/demand − 1
  std::string reason;              ///< which axis is slower, the closest limit, what is held back
  std::vector<FieldValue> values;  ///< that go with the parts: limits that protect them and, once
                                   ///< simulated, gains that are advised for them
  std::optional<FitSimulated> simulated;
};
/// A part that lacks data: nothing is said of its combinations.
struct FitNeeds {
  std::size_t entry = 0;
  std::vector<std::string> fields;  ///< "motor.rotor_inertia"
};
struct Fits {
  std::string because;               ///< why there is no answer: "needs task.pan_move"; else empty
  std::vector<std::string> missing;  ///< all that the rig lacks for an answer, of both axes
  std::vector<std::string>
      also_missing;  ///< besides, for single measures, the simulation and gains
  std::size_t combinations = 0, fitting = 0, failing = 0, lacking = 0;
  std::array<std::size_t, kFitLimits.size()> failing_by{};  ///< by FitLimit, the worst of each
  std::vector<FitRow> rows;  ///< those that fit, then the nearest that fail; those simulated first,
                             ///< by their simulated times
  std::vector<FitNeeds> needs;
  std::vector<std::string> remarks;  ///< what was not counted, and why
  bool is_stopped = false;           ///< cancelled: what there was until then
  /// Pairs of simulated rows whose settling is known, and how many of them the closed forms have in
  /// the order of the simulation.
  std::size_t compared = 0, same_order = 0;
};

/// Called now and then with how many of all combinations are done, from several threads.
using FitProgress = std::function<void(std::size_t done, std::size_t all)>;

/// Ranks all combinations by the time of the task's move (whole milliseconds, the slower axis),
/// then by how many measures are known, the least margin, and mass; the order is the same every
/// time. Pure, thread-safe.
Fits rank_fits(const Rig& rig, const Shelf& shelf, const FitOptions& options = {},
               const FitProgress& progress = {}, const std::stop_token& stop = {});

/// Simulates the first rows that fit (where none does, that move) in full, as rank_fits() does in
/// the end: by analyse(), with the gains that are advised for their parts. Rows and values change,
/// and those simulated are sorted by the slower axis' time to move and settle. On a stop none of
/// them counts.
void simulate_fits(Fits& fits, const Rig& rig, const Shelf& shelf, const FitOptions& options = {},
                   const std::stop_token& stop = {});

/// The rig with a row's parts and values. @pre the row is of this shelf
Rig with_fit(const Rig& rig, const Shelf& shelf, const FitRow& row);

}  // namespace gazewright
