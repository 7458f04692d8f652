#include "app/window/guide.h"

#include <QCoreApplication>
#include <algorithm>

namespace gazewright {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Guide", text); }

struct StepText {
  const char *title, *help;
};
constexpr std::array<StepText, kGuideSteps> kTexts{
    {{QT_TRANSLATE_NOOP("Guide", "State the task"),
      QT_TRANSLATE_NOOP("Guide",
                        "How far each axis has to jump, in what time, and how many pixels "
                        "off still counts as arrived.")},
     {QT_TRANSLATE_NOOP("Guide", "Put in your masses"),
      QT_TRANSLATE_NOOP("Guide",
                        "Ball, camera and arm: what the kitchen scale says, and roughly "
                        "where they sit.")},
     {QT_TRANSLATE_NOOP("Guide", "Name motors and supply"),
      QT_TRANSLATE_NOOP("Guide",
                        "KV, winding, rotor and current of both motors, and what the supply "
                        "gives.")},
     {QT_TRANSLATE_NOOP("Guide", "Choose the ratios"),
      QT_TRANSLATE_NOOP("Guide",
                        "Drag each ratio into the tinted band: there the move is within 5 % "
                        "of the quickest.")},
     {QT_TRANSLATE_NOOP("Guide", "Mend what fails"),
      QT_TRANSLATE_NOOP("Guide",
                        "Take the findings from the top; a press on a remedy applies it, "
                        "and undo takes it back.")},
     {QT_TRANSLATE_NOOP("Guide", "Make the sheet"),
      QT_TRANSLATE_NOOP("Guide",
                        "Everything to build from on paper, with the inputs it stands on.")}}};

bool masses_are_there(const std::vector<Body>& bodies) {
  return std::ranges::all_of(bodies, [](const Body& body) { return body.mass_kg.has_value(); });
}

bool motor_is_there(const Motor& motor) {
  return motor.speed_constant_radpsV.has_value() && motor.phase_resistance_ohm.has_value() &&
         motor.rotor_inertia_kgm2.has_value() && motor.peak_current_A.has_value();
}

/// Unknown moves are not mended ones.
bool nothing_fails(const Analysis& analysis) {
  return analysis.value("pan.step.settle_time") && analysis.value("tilt.step.settle_time") &&
         std::ranges::none_of(analysis.findings, [](const Finding& finding) {
           return finding.verdict == Verdict::fails;
         });
}

}  // namespace

int GuideState::count() const { return static_cast<int>(std::ranges::count(done, true)); }

GuideState guide_state(const Rig& rig, const Rig* sample, const Analysis& analysis,
                       bool sheet_made) {
  GuideState state;
  const auto set = [&](GuideStep step, bool there, bool own) {
    state.done[static_cast<std::size_t>(step)] = there && own;
  };
  const auto& task = rig.task;
  set(GuideStep::task,
      task.pan_move_rad.has_value() && task.tilt_move_rad.has_value() &&
          task.within_s.has_value() && task.settle_band_px.has_value(),
      !sample || !(task == sample->task));
  set(GuideStep::masses,
      !rig.on_tilt.empty() && (!rig.on_pan.empty() || rig.on_pan_is_bare) &&
          masses_are_there(rig.on_tilt) && masses_are_there(rig.on_pan),
      !sample || !(rig.on_tilt == sample->on_tilt && rig.on_pan == sample->on_pan));
  set(GuideStep::parts,
      motor_is_there(rig.pan.motor) && motor_is_there(rig.tilt.motor) &&
          rig.supply.voltage_V.has_value() && rig.supply.current_limit_A.has_value(),
      !sample || !(rig.pan.motor == sample->pan.motor && rig.tilt.motor == sample->tilt.motor &&
                   rig.supply == sample->supply));
  set(GuideStep::ratios, rig.pan.gearbox.ratio.has_value() && rig.tilt.gearbox.ratio.has_value(),
      !sample || !(rig.pan.gearbox.ratio == sample->pan.gearbox.ratio &&
                   rig.tilt.gearbox.ratio == sample->tilt.gearbox.ratio));
  set(GuideStep::findings, nothing_fails(analysis), true);
  set(GuideStep::sheet, sheet_made, true);
  return state;
}

QString step_title(GuideStep step) { return tr(kTexts[static_cast<std::size_t>(step)].title); }
QString step_help(GuideStep step) { return tr(kTexts[static_cast<std::size_t>(step)].help); }

}  // namespace gazewright
