#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/gear_load.h"
#include "core/analysis/heat_values.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/analysis/move_back.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kStepSource = "simulation of design section 5; handbook: motion";
constexpr const char* kLinearSource = "linear model wound tight; handbook: motion";
constexpr const char* kCannotMove =
    "cannot make the move: torque below friction, gravity and cable";
constexpr const char* kNoCrossing = "the loop never crosses unit gain below half the sample rate";
constexpr const char* kNoPhaseCrossing = "the phase never reaches −180° below half the sample rate";

Answer shortest_time(Context& c, Axis a) {
  const auto& move = c.fastest(a);
  return move ? Answer(move->time_s) : Answer::none(kCannotMove);
}

Answer settle_back(Context& c, Axis a) {
  if (!c.step(a).figures.settle_time_s) return Answer::none(words("the move there never settles"));
  const MoveBack& back = c.move_back(a);
  if (!back.differs) return Answer::aside(words("weight and cable pull to neither side"));
  return {back.settle_s, words("never settles")};
}

Answer duty_gear_torque(Context& c, Axis a) {
  if (c.is_quick()) return left_out_of_drag();
  const DutyTooth& tooth = duty_tooth(c, a);
  return tooth.because.empty() ? Answer(tooth.mean_Nm) : Answer::none(tooth.because);
}

const FigureRow kMotionFigures[] = {
    {{"<axis>.move.shortest_time", "Shortest time of the move", "s", "ms",
      "rest to rest inside the envelope, train rigid, full torque one way then the other",
      "handbook: motion", kRigidMove},
     Axes::both,
     shortest_time},
    {{"<axis>.ratio.best_time", "Ratio of shortest time", "1", "1",
      "N in 1…200 that makes shortest_time least", "handbook: motion", kRigidMove},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.best_time_ratio(a), kCannotMove};
     }},
    {{"<axis>.step.rise_time", "Rise time", "s", "ms", "10 to 90 % of the move", kStepSource,
      kStep},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.step(a).figures.rise_time_s, words("never reaches 90 % of the move")};
     }},
    {{"<axis>.step.overshoot", "Overshoot", "1", "%", "largest angle over the move, less 1",
      kStepSource, kStep},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.step(a).figures.overshoot; }},
    {{"<axis>.step.settle_time", "Move and settle", "s", "ms",
      "last time outside ± settle band, in pixels at the picture's centre", kStepSource, kSettle},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       const auto& settle = c.step(a).figures.settle_time_s;
       return settle ? Answer(*settle) : Answer::none(why_never_settles(c, a));
     }},
    {{"<axis>.step.settle_time_back", "Move back and settle", "s", "ms",
      "the same stretch back, where weight and cable pull by 1 % of the stall torque or more at "
      "rest; of the camera, where it is on a bracket",
      kStepSource, kSettle},
     Axes::both,
     settle_back},
    {{"<axis>.step.peak_current", "Peak phase current in the step", "A", "A",
      "largest phase amplitude", kStepSource, kStep},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.step(a).figures.peak_current_A; }},
    {{"<axis>.step.peak_speed", "Peak speed in the step", "rad/s", "deg/s", "at the output",
      kStepSource, kStep},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return c.step(a).figures.peak_speed_radps; }},
    {{"<axis>.step.gear_torque", "Largest gear torque in the step", "N.m", "N.m",
      "largest |stiffness·wind-up + damping·its speed| of the teeth, per control sample",
      kStepSource, kStep},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return step_tooth_peak(c, a).torque_Nm; }},
    {{"<axis>.duty.gear_torque", "Mean gear torque over the duty", "N.m", "N.m",
      "(∫|τ|³·dφ / ∫dφ)^⅓ of the teeth over the moves, by the angle turned",
      "root mean cube as of rolling fatigue, common practice, no source; handbook: motion",
      kDutyMoves},
     Axes::both,
     duty_gear_torque},
    {{"<axis>.loop.antiresonance", "Antiresonance", "rad/s", "Hz", "√(k/J_load)",
      "Leonhard, Control of Electrical Drives (memory)", kResonance},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return antiresonance_radps(c.model(a)); }},
    {{"<axis>.loop.resonance", "Resonance", "rad/s", "Hz", "√(k·(1/J_load + 1/(N²·J_rotor)))",
      "Leonhard, Control of Electrical Drives (memory); Bevan ch. 15 ex. 11", kResonanceWithRotor},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return resonance_radps(c.model(a)); }},
    {{"<axis>.loop.crossover", "Speed loop crossover", "rad/s", "Hz", "first |L| = 1",
      kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.speed_margins(a).crossover_radps, kNoCrossing};
     }},
    {{"<axis>.loop.phase_margin", "Speed loop phase margin", "rad", "deg",
      "180° + phase at crossover, least of all crossings", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.speed_margins(a).phase_margin_rad, kNoCrossing};
     }},
    {{"<axis>.loop.gain_margin", "Speed loop gain margin", "1", "1",
      "1/|L| where the phase is −180°", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.speed_margins(a).gain_margin, kNoPhaseCrossing};
     }},
    {{"<axis>.loop.position_crossover", "Position loop crossover", "rad/s", "Hz", "first |L| = 1",
      kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.position_margins(a).crossover_radps, kNoCrossing};
     }},
    {{"<axis>.loop.position_phase_margin", "Position loop phase margin", "rad", "deg",
      "180° + phase at crossover, least of all crossings", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.position_margins(a).phase_margin_rad, kNoCrossing};
     }},
    {{"<axis>.loop.position_gain_margin", "Position loop gain margin", "1", "1",
      "1/|L| where the phase is −180°", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.position_margins(a).gain_margin, kNoPhaseCrossing};
     }},
};

}  // namespace

std::span<const FigureRow> motion_figures() { return kMotionFigures; }

}  // namespace gazewright
