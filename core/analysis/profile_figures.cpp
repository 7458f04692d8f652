#include <cctype>
#include <memory>
#include <string>
#include <vector>

#include "core/analysis/bracket_mode.h"
#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kProfileSource =
    "simulation of design section 5 along the profile; handbook: profiles";
constexpr std::array<InputPath, 1> kStiffness{"<axis>.bracket.stiffness"};
constexpr auto kMode = joined(std::array<InputPath, 1>{"<load>"}, kStiffness);
constexpr auto kRinging = joined(kSettle, kStiffness);
constexpr auto kPictureUsable =
    joined(kSettle, std::array<InputPath, 2>{"camera.exposure", "camera.delay"});
constexpr const char* kSwingsOn = "the camera swings on its bracket for longer than 30 s";

Answer mode_radps(Context& c, Axis a) { return *bracket_mode_radps(c, a); }

Answer camera_settled(Context& c, Axis a) {
  if (!c.step(a).figures.settle_time_s) return Answer::none(why_never_settles(c, a));
  return {c.step_at_camera(a).settle_s, kSwingsOn};
}

Answer usable_time(Context& c, Axis a) {
  const Answer still = camera_settled(c, a);
  if (!still.value) return still;
  const Camera& camera = c.rig().camera;
  return *still.value + camera.exposure_s.value() + camera.delay_s.value();
}

using Pick = Answer (*)(Context&, const ProfileRun&);

Answer planned_time(Context&, const ProfileRun& run) { return run.planned_s; }
Answer overshoot(Context&, const ProfileRun& run) { return run.figures.overshoot; }
Answer peak_current(Context&, const ProfileRun& run) { return run.figures.peak_current_A; }
Answer settle_time(Context&, const ProfileRun& run) {
  return {run.figures.settle_time_s, words("never settles along this profile")};
}
Answer rms_current(Context&, const ProfileRun& run) {
  return {run.rms_current_A, words("never settles along this profile")};
}
Answer ringing_px(Context& c, const ProfileRun& run) {
  if (!run.ringing_rad) return Answer::none(words("never settles along this profile"));
  return *run.ringing_rad * c.pixels_per_radian();
}
Answer usable(Context&, const ProfileRun& run) {
  if (!run.figures.settle_time_s) return Answer::none(words("never settles along this profile"));
  return {run.usable_s, kSwingsOn};
}

template <ProfileKind K, Pick P>
Answer of_run(Context& c, Axis a) {
  const ProfileRun* run = c.profiles(a).run(K);
  if (run == nullptr) return left_out_of_drag();
  if (!run->because.empty()) return Answer::none(run->because);
  return P(c, *run);
}

struct Column {
  std::string_view key, label, si_unit, unit, formula;
  std::span<const InputPath> inputs;
  bool is_detail;
};
constexpr Column kColumns[] = {
    {"planned_time", "planned time", "s", "ms", "length of the planned move", kStep, false},
    {"settle_time", "move and settle", "s", "ms", "last time outside ± settle band", kSettle,
     false},
    {"overshoot", "overshoot", "1", "%", "largest angle over the move, less 1", kStep, false},
    {"peak_current", "peak phase current", "A", "A", "largest phase amplitude", kStep, false},
    {"rms_current", "RMS phase current", "A", "A",
     "root of the mean square of the phase amplitude from start to settled", kSettle, false},
    {"ringing_px", "ringing at the camera", "1", "px",
     "amplitude of the bracket's swing when move and settling are over · pixels_per_radian",
     kRinging, true},
    {"usable_time", "picture usable", "s", "ms",
     "camera settled, with the bracket's ringing where its stiffness is entered, + exposure + "
     "delay",
     kPictureUsable, false},
};

/// Text of the rows lives as long as the program.
std::string_view kept_text(std::string text) {
  static std::vector<std::unique_ptr<const std::string>> texts;
  texts.push_back(std::make_unique<const std::string>(std::move(text)));
  return *texts.back();
}

FigureRow row_of(ProfileKind kind, const Column& column, Answer (*compute)(Context&, Axis)) {
  std::string label = words(word_of(kind));
  label[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(label[0])));
  return {
      {kept_text("<axis>.profile." + std::string(name_of(kind)) + "." + std::string(column.key)),
       kept_text(label + ": " + words(column.label)), column.si_unit, column.unit, column.formula,
       kProfileSource, column.inputs},
      Axes::both,
      compute,
      column.is_detail};
}

template <ProfileKind K>
void add_rows(std::vector<FigureRow>& rows) {
  constexpr Answer (*kCompute[])(Context&, Axis) = {
      of_run<K, planned_time>, of_run<K, settle_time>, of_run<K, overshoot>,
      of_run<K, peak_current>, of_run<K, rms_current>, of_run<K, ringing_px>,
      of_run<K, usable>};
  static_assert(std::size(kCompute) == std::size(kColumns));
  for (std::size_t i = 0; i < std::size(kColumns); ++i)
    rows.push_back(row_of(K, kColumns[i], kCompute[i]));
}

std::vector<FigureRow> all_rows() {
  std::vector<FigureRow> rows{
      {{"<axis>.bracket.mode", "Swing of the bracket", "rad/s", "Hz", "√(stiffness/J_load)",
        "handbook: profiles; all that the axis turns on one spring", kMode},
       Axes::both,
       mode_radps,
       true},
      {{"<axis>.picture.settle_time", "Move and settle at the camera", "s", "ms",
        "last time output and the bracket's swing together are outside ± settle band",
        "simulation of design section 5; handbook: profiles", kRinging},
       Axes::both,
       camera_settled,
       true},
      {{"<axis>.picture.usable_time", "Picture usable after the step", "s", "ms",
        "camera settled, with the bracket's ringing where its stiffness is entered, + "
        "exposure + delay",
        "simulation of design section 5; handbook: profiles", kPictureUsable},
       Axes::both,
       usable_time}};
  add_rows<ProfileKind::step>(rows);
  add_rows<ProfileKind::trapezoid>(rows);
  add_rows<ProfileKind::jerk_limited>(rows);
  add_rows<ProfileKind::minimum_jerk>(rows);
  add_rows<ProfileKind::minimum_time>(rows);
  return rows;
}

}  // namespace

std::span<const FigureRow> profile_figures() {
  static const std::vector<FigureRow> rows = all_rows();
  return rows;
}

}  // namespace gazewright
