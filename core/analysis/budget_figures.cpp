#include <cmath>

#include "core/analysis/budget_values.h"
#include "core/analysis/figures.h"
#include "core/pointing/picture.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kGum = "JCGM 100:2008 (GUM) 4.3, 5.1, 5.2; handbook: pointing";
constexpr const char* kStatics = "statics of springs; handbook: pointing";
constexpr const char* kGeometry = "geometry; handbook: pointing";
constexpr auto kAtTarget = joined(kBudget, std::array<InputPath, 1>{"task.target_distance"});
constexpr auto kTeeth = joined(kPull, std::array<InputPath, 1>{"<axis>.friction.coulomb"});
constexpr auto kBent =
    joined(joined(kAcceleration, kScale), std::array<InputPath, 1>{"<axis>.bracket.stiffness"});

/// Why the sums have no value, or empty.
std::string why_no_sum(const Budget& all) {
  for (const BudgetId id : {BudgetId::windup, BudgetId::encoder, BudgetId::backlash}) {
    const BudgetTerm& term = all.term(id);
    if (!term.half_width_rad && (begins_as("needs %1", term.because) ||
                                 begins_as("has no finite value with these inputs", term.because)))
      return term.because;
  }
  return {};
}
Answer sum_of(const Budget& all, double (*sum)(const Budget&), double per_rad = 1) {
  if (std::string why = why_no_sum(all); !why.empty()) return Answer::none(std::move(why));
  return sum(all) * per_rad;
}
template <double (*Sum)(const Budget&)>
Answer sum(Context& c, Axis a) {
  return sum_of(budget(c, a), Sum);
}
template <double (*Sum)(const Budget&)>
Answer sum_px(Context& c, Axis a) {
  return sum_of(budget(c, a), Sum, c.pixels_per_radian());
}
double expanded_rad(const Budget& all) { return kCoverage * deviation_rad(all); }

/// How it would be with the encoder there, the teeth as they are.
template <bool AtOutput>
Answer rss_with_encoder(Context& c, Axis a) {
  BudgetCase other = budget_case(c, a);
  if (other.encoder_at_output == AtOutput) return sum<rss_rad>(c, a);
  other.encoder_at_output = AtOutput;
  return sum_of(budget_of(c, a, other), rss_rad);
}
Answer rss_held(Context& c, Axis a) {
  BudgetCase other = budget_case(c, a);
  other.teeth_held = true;
  return sum_of(budget_of(c, a, other), rss_rad);
}

template <BudgetId Id>
Answer term(Context& c, Axis a) {
  const BudgetTerm& term = budget(c, a).term(Id);
  if (term.half_width_rad) return *term.half_width_rad;
  return Answer::aside(term.because);
}

Answer windup(Context& c, Axis a) {
  const auto& pull = pull_over_travel(c, a);
  if (!pull) return Answer::none(kNeedsTravel);
  return pull->largest_Nm() / c.model(a).gear.stiffness_Nmprad;
}
Answer encoder(Context& c, Axis a) { return *budget(c, a).term(BudgetId::encoder).half_width_rad; }

Answer flex_accelerating_px(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const double acceleration = peak_acceleration_radps2(model);
  if (!(acceleration > 0))
    return Answer::none(words("it cannot move against friction and gravity"));
  return model.load.inertia_kgm2 * acceleration / c.rig().axis(a).bracket.stiffness_Nmprad.value() *
         c.pixels_per_radian();
}

Answer teeth_torque(Context& c, Axis a) {
  const auto& pull = pull_over_travel(c, a);
  return pull ? Answer(pull->steady_Nm()) : Answer::none(kNeedsTravel);
}
Answer bias_needed(Context& c, Axis a) {
  const auto& pull = pull_over_travel(c, a);
  if (!pull) return Answer::none(kNeedsTravel);
  const double friction_Nm = gap_friction_Nm(c, a);
  // Added to the side that the pull favours already.
  return std::max(0.0, friction_Nm - std::max(pull->least_Nm, -pull->most_Nm));
}

const FigureRow kBudgetFigures[] = {
    {{"<axis>.pointing.encoder", "Pointing error of the encoder", "rad", "arcmin",
      "(error + half a count)/N, not divided where it is at the output; its magnet's error where "
      "that is larger",
      kGeometry, kBudget},
     Axes::both,
     encoder},
    {{"<axis>.pointing.windup", "Windup of the gear at hold", "rad", "arcmin",
      "largest |gravity + cable| over the usable travel / stiffness", kStatics, kWindup},
     Axes::both,
     windup},
    {{"<axis>.pointing.droop", "Droop of loops without an integral", "rad", "arcmin",
      "largest |gravity + cable| / (speed_gain·position_gain)", kStatics, kBudget},
     Axes::both,
     term<BudgetId::droop>,
     true},
    {{"<axis>.pointing.friction", "Error that friction holds", "rad", "arcmin",
      "breakaway/stiffness + (breakaway − coulomb)·(1/(speed_gain·position_gain + "
      "speed_integral_gain) + 1/stiffness); without an integral breakaway/(speed_gain·"
      "position_gain) in place of the second; the first is seen by an encoder at the output",
      "statics, a mass on a spring; handbook: pointing", kBudget},
     Axes::both,
     term<BudgetId::friction>,
     true},
    {{"<axis>.pointing.flex", "Bend of the bracket at hold", "rad", "arcmin",
      "largest |gravity + cable| / bracket stiffness", kStatics, kBudget},
     Axes::both,
     term<BudgetId::flex>,
     true},
    {{"<axis>.pointing.flex_accelerating_px", "Bend of the bracket at full acceleration", "1", "px",
      "load·acceleration_peak/bracket stiffness·pixels_per_radian; gone when it stands", kStatics,
      kBent},
     Axes::both,
     flex_accelerating_px,
     true},
    {{"<axis>.pointing.bearing", "Tilt in the play of the bearings", "rad", "arcmin",
      "pair: atan(radial_play/spacing); single: atan(axial_play/pitch_diameter); across the axis",
      kGeometry, kBudget},
     Axes::both,
     term<BudgetId::bearing>,
     true},
    {{"<axis>.pointing.ripple", "Largest ripple by cogging", "rad", "arcmin",
      "cogging_torque·largest |compliance|", "linear model wound tight; handbook: smoothness",
      kBudget},
     Axes::both,
     term<BudgetId::ripple>,
     true},
    {{"<axis>.pointing.rss", "Pointing error, root-sum-square", "rad", "deg",
      "√Σ(largest errors)²; windup, droop and bend under the same weight are added first", kGum,
      kBudget},
     Axes::both,
     sum<rss_rad>},
    {{"<axis>.pointing.worst", "Pointing error, worst case", "rad", "deg", "Σ largest errors", kGum,
      kBudget},
     Axes::both,
     sum<worst_rad>},
    {{"<axis>.pointing.rss_px", "Root-sum-square in the picture", "1", "px",
      "rss·pixels_per_radian", "small-angle pinhole", kBudgetPixels},
     Axes::both,
     sum_px<rss_rad>},
    {{"<axis>.pointing.worst_px", "Worst case in the picture", "1", "px", "worst·pixels_per_radian",
      "small-angle pinhole", kBudgetPixels},
     Axes::both,
     sum_px<worst_rad>},
    {{"<axis>.pointing.rss_at_target", "Root-sum-square at the target", "m", "mm",
      "rss·target_distance", "small angle", kAtTarget},
     Axes::both,
     [](Context& c, Axis a) {
       return sum_of(budget(c, a), rss_rad, at_target_m(1, c.rig().task.target_distance_m.value()));
     }},
    {{"<axis>.pointing.deviation", "Combined standard uncertainty", "rad", "deg",
      "√Σu², u = a/√3 rectangular, a/√2 arcsine, a/3 normal; those of the same weight added first",
      kGum, kBudget},
     Axes::both,
     sum<deviation_rad>},
    {{"<axis>.pointing.expanded", "Expanded uncertainty, k = 2", "rad", "deg",
      "2·deviation: about 95 % of the errors are within", kGum, kBudget},
     Axes::both,
     sum<expanded_rad>},
    {{"<axis>.pointing.expanded_px", "Expanded uncertainty in the picture", "1", "px",
      "expanded·pixels_per_radian", kGum, kBudgetPixels},
     Axes::both,
     sum_px<expanded_rad>},
    {{"<axis>.pointing.rss_motor_side", "Root-sum-square with the encoder at the motor", "rad",
      "deg", "rss with encoder.at motor, the same bits and error", kGum, kBudget},
     Axes::both,
     rss_with_encoder<false>},
    {{"<axis>.pointing.rss_output_side", "Root-sum-square with the encoder at the output", "rad",
      "deg", "rss with encoder.at output, the same bits and error: no gap, no windup, not divided",
      kGum, kBudget},
     Axes::both,
     rss_with_encoder<true>},
    {{"<axis>.pointing.rss_held", "Root-sum-square with the teeth held together", "rad", "deg",
      "rss without the gap: preload, or a bias of bias_needed", kGum, kBudget},
     Axes::both,
     rss_held},
    {{"<axis>.pointing.teeth_torque", "Pull that holds the teeth on one side", "N.m", "mN.m",
      "least |gravity + cable| over the usable travel; 0 where it changes its sign", kStatics,
      kTeeth},
     Axes::both,
     teeth_torque},
    {{"<axis>.pointing.bias_needed", "Bias that would hold the teeth together", "N.m", "mN.m",
      "breakaway − least (gravity + cable), towards the side it favours; 0: it holds them",
      kStatics, kTeeth},
     Axes::both,
     bias_needed},
};

}  // namespace

std::span<const FigureRow> budget_figures() { return kBudgetFigures; }

}  // namespace gazewright
