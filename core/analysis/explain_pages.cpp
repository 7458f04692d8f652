#include <algorithm>

#include "core/analysis/explain.h"

/// Which page of the handbook a figure belongs to, and what that page's model takes for granted.
namespace gazewright {
namespace {

/// The part of an id that names its subject, with its page.
struct Subject {
  std::string_view name, page;
};
constexpr Subject kSubjects[]{
    {"mass", "bodies"},       {"inertia", "bodies"},    {"balance", "balance"},
    {"gravity", "balance"},   {"motor", "drive"},       {"output", "drive"},
    {"ratio", "drive"},       {"move", "motion"},       {"step", "motion"},
    {"coupling", "motion"},   {"limits", "motion"},     {"loop", "loops"},
    {"gap", "loops"},         {"advice", "loops"},      {"travel", "travel"},
    {"power_off", "travel"},  {"cable", "cables"},      {"stop", "stops"},
    {"homing", "homing"},     {"encoder", "homing"},    {"reach", "reach"},
    {"camera", "pointing"},   {"pointing", "pointing"}, {"picture", "profiles"},
    {"profile", "profiles"},  {"bracket", "profiles"},  {"smooth", "smoothness"},
    {"tracking", "tracking"}, {"eye", "tracking"},      {"heat", "heat"},
    {"duty", "heat"},         {"supply", "supply"},     {"bearing", "loads"},
    {"joint", "loads"},       {"arm", "structure"},     {"stand", "structure"}};

struct Conditions {
  std::string_view page, text;
};
constexpr Conditions kConditions[]{
    {"bodies", "All parts are rigid; springs, gaps and friction belong to the drive line."},
    {"balance",
     "Friction is sliding friction only and cogging is left out, so both axes hold a little better "
     "than this; grease, wear and shaking take some of it away."},
    {"drive",
     "Sine currents in phase with the back-EMF; iron losses, saturation, temperature and field "
     "weakening are left out."},
    {"motion",
     "Rigid bodies behind a gear with gap, spring and damper, one axis at a time; the bracket, the "
     "stand, torque ripple and friction higher at rest are left out."},
    {"loops",
     "Small motions, the gear wound tight; counts, current limits, the structure beyond the output "
     "and the other axis are left out."},
    {"profiles", "The bracket does not act back on its axis; modes beyond the first are left out."},
    {"smoothness",
     "Teeth held together by friction; presliding, ripple of the winding's torque and errors "
     "within a turn of the encoder are left out."},
    {"heat",
     "Iron loss and windage, ripple of the current, heat from one motor to the next and a fan are "
     "left out; the moves are simulated with the resistance at 20 °C."},
    {"stops",
     "A stop as a spring, the rig rigid; losses in gear and bearings and the rig giving way are "
     "left out: all but gravity make the blow smaller."},
    {"loads",
     "Spinning rotors (their gyroscopic moment is small behind a gearbox), cables, belts and "
     "people "
     "leaning on it are left out."},
    {"travel", "Rigid train, braked at the end of its envelope; a stop's own give is left out."},
    {"cables",
     "Jackets as stiff as at room temperature; stiffness that grows as a bundle winds tight is "
     "left out."},
    {"homing", "Stiction above coulomb friction and cold grease are left out."},
    {"structure",
     "Slender beams and a rigid foot; corners, holes, inserts, creep and heat are left out."},
    {"reach",
     "Bodies without a shape, and pairs that touch at tilt 0, are left out of collisions."},
    {"pointing",
     "Small angles; a part whose inputs are missing is left out and named, the sum is then too "
     "small."},
    {"supply",
     "Moves at the full voltage; a source that folds back and ripple of the switching are left "
     "out."},
    {"tracking",
     "An axis stops dead at the end of its travel, braking before it is left out; cables do not "
     "hold "
     "it."}};

}  // namespace

std::string_view page_of(const FigureInfo& info) {
  constexpr std::string_view kMark = "handbook: ";
  if (const auto at = info.source.find(kMark); at != std::string_view::npos) {
    const std::string_view rest = info.source.substr(at + kMark.size());
    return rest.substr(0, rest.find_first_not_of("abcdefghijklmnopqrstuvwxyz-"));
  }
  std::string_view id = info.id;
  for (const std::string_view first : {"<axis>.", "pan.", "tilt."}) {
    if (id.starts_with(first)) id.remove_prefix(first.size());
  }
  const auto subject = std::ranges::find(kSubjects, id.substr(0, id.find('.')), &Subject::name);
  return subject == std::end(kSubjects) ? std::string_view() : subject->page;
}

std::string_view conditions_of(std::string_view page) {
  const auto found = std::ranges::find(kConditions, page, &Conditions::page);
  return found == std::end(kConditions) ? std::string_view() : found->text;
}

}  // namespace gazewright
