#include <array>
#include <cmath>

#include "core/analysis/balance_values.h"
#include "core/analysis/counterweight.h"
#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/power_off.h"
#include "core/analysis/say.h"
#include "core/travel/power_off.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kStatics = "statics of rigid bodies; handbook: balance";
constexpr const char* kHolding =
    "torque constant, cold winding, friction's help left out; handbook: balance";
constexpr std::array<InputPath, 3> kLoad{"<load>", "on_pan", "tilt.axis_at"};
constexpr std::array<InputPath, 2> kPanBodies{"on_pan", "tilt.axis_at"};
constexpr std::array<InputPath, 1> kTiltBodies{"on_tilt"};
constexpr auto kAllBodies = joined(kPanBodies, kTiltBodies);
constexpr auto kHoldCurrent =
    joined(kLoad, std::array<InputPath, 2>{"<axis>.gearbox.ratio", "<axis>.motor.speed_constant"});
constexpr auto kHoldHeat =
    joined(kHoldCurrent, std::array<InputPath, 1>{"<axis>.motor.phase_resistance"});
constexpr auto kHeld = joined(kHolds, kLoad);
constexpr std::array<InputPath, 1> kArmOnly{"<axis>.balance.counterweight_arm"};
constexpr auto kWeight = joined(kLoad, kArmOnly);
constexpr auto kWeightShare =
    joined(kWeight, std::array<InputPath, 3>{"<axis>.gearbox.ratio", "<axis>.motor.rotor_inertia",
                                             "<axis>.gearbox.inertia"});

double hold_A(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  return worst_gravity(c, a).torque_Nm / (model.gear.ratio * model.drive.torque_constant_NmpA);
}

Answer held_share(Context& c, Axis a) {
  const double pull = worst_gravity(c, a).torque_Nm, hold = friction_hold_Nm(c.model(a));
  if (std::isinf(hold))
    return Answer::none(words("the gearbox locks itself: nothing turns it back"));
  if (pull <= 1e-12) return Answer::none(words("gravity does not turn it"));
  return hold / pull;
}

/// Of the counterweight, or why there is none.
template <double compute(Context&, Axis, const Body&)>
Answer of_weight(Context& c, Axis a) {
  const auto body = counterweight_of(c.rig(), c.bodies(), a);
  if (!body) return Answer::aside(words("its centre of mass is on the axis"));
  return compute(c, a, *body);
}

double weight_kg(Context&, Axis, const Body& body) { return body.mass_kg.value(); }
double weight_diameter_m(Context&, Axis, const Body& body) {
  return std::get<Ball>(body.shape).diameter_m.value();
}
double weight_kgm2(Context&, Axis a, const Body& body) {
  const MassProperties ball = combined({body});
  return a == Axis::pan ? ball.I_O_kgm2(2, 2) : ball.I_O_kgm2(1, 1);
}
double weight_share(Context& c, Axis a, const Body& body) {
  const AxisModel& model = c.model(a);
  return weight_kgm2(c, a, body) / (model.load.inertia_kgm2 + model.reflected_inertia_kgm2());
}

Answer moment(Context& c, Axis a, std::size_t along) {
  return off_axis(c.bodies(), a).moment_kgm[along];
}

const FigureRow kBalanceFigures[] = {
    {{"pan.balance.offset", "Centre of mass off the pan axis", "m", "mm",
      "√(x² + y²) in P, tilt at 0", kStatics, kAllBodies},
     Axes::pan_only,
     [](Context& c, Axis a) -> Answer {
       const OffAxis off = off_axis(c.bodies(), a);
       return off.size_kgm() / off.mass_kg;
     }},
    {{"pan.balance.forward", "Moment of mass forward of the axis", "kg.m", "g.mm", "Σ m·x in P",
      kStatics, kAllBodies},
     Axes::pan_only,
     [](Context& c, Axis a) { return moment(c, a, 0); }},
    {{"pan.balance.left", "Moment of mass left of the axis", "kg.m", "g.mm", "Σ m·y in P", kStatics,
      kAllBodies},
     Axes::pan_only,
     [](Context& c, Axis a) { return moment(c, a, 1); }},
    {{"tilt.balance.forward", "Moment of mass forward of the axis", "kg.m", "g.mm", "Σ m·x in T",
      kStatics, kTiltBodies},
     Axes::tilt_only,
     [](Context& c, Axis a) { return moment(c, a, 0); }},
    {{"tilt.balance.up", "Moment of mass above the axis", "kg.m", "g.mm", "Σ m·z in T", kStatics,
      kTiltBodies},
     Axes::tilt_only,
     [](Context& c, Axis a) { return moment(c, a, 1); }},
    {{"<axis>.balance.worst_angle", "Angle of the largest gravity torque", "rad", "deg",
      "where |−∂V/∂q| is largest, usable travel or a turn", kStatics, kLoad},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       const WorstGravity& worst = worst_gravity(c, a);
       if (worst.torque_Nm <= 1e-12) return Answer::none(words("gravity does not turn it"));
       return worst.at_rad;
     }},
    {{"<axis>.balance.hold_current", "Current that holds the worst angle", "A", "A",
      "gravity/(N·Kt), amplitude", kHolding, kHoldCurrent},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return hold_A(c, a); }},
    {{"<axis>.balance.hold_heat", "Heat of holding the worst angle", "W", "W",
      "1.5·R·hold_current²", kHolding, kHoldHeat},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       const double current = hold_A(c, a);
       return 1.5 * c.model(a).drive.phase_resistance_ohm * current * current;
     }},
    {{"<axis>.balance.friction_share", "Friction over gravity without power", "1", "1",
      "power_off.holding_torque / largest gravity torque; from 1 on it stays", kStatics, kHeld},
     Axes::both,
     held_share},
    {{"<axis>.balance.counterweight_mass", "Counterweight", "kg", "g", "|Σ m·r|/counterweight_arm",
      kStatics, kWeight},
     Axes::both,
     of_weight<weight_kg>,
     true},
    {{"<axis>.balance.counterweight_diameter", "Counterweight as a ball", "m", "mm",
      "∛(6·mass/(π·density))", kStatics, kWeight},
     Axes::both,
     of_weight<weight_diameter_m>,
     true},
    {{"<axis>.balance.counterweight_inertia", "Counterweight's inertia about the axis", "kg.m2",
      "g.m2", "m·(arm² + diameter²/10)", kStatics, kWeight},
     Axes::both,
     of_weight<weight_kgm2>,
     true},
    {{"<axis>.balance.counterweight_share", "Inertia that the counterweight adds", "1", "%",
      "its inertia/(load + rotor_reflected)", kStatics, kWeightShare},
     Axes::both,
     of_weight<weight_share>,
     true},
};

}  // namespace

std::span<const FigureRow> balance_figures() { return kBalanceFigures; }

}  // namespace gazewright
