#include "core/data/prepared.h"
#include "core/rig/field_rows.h"
#include "core/rig/listed_choices.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr Unit kNewton{"N", "N"};
constexpr Unit kMegapascal{"Pa", "MPa"};

constexpr std::string_view kBearingKinds[]{"pair", "single", "gearbox"};
constexpr std::string_view kRolling[]{"ball", "roller"};
constexpr ChoiceRow<Bearing> kBearingChoices[]{
    {{"kind", "Kind", kBearingKinds,
      "Two apart (pair): their spacing bears the moment. One alone (single): it bears the moment "
      "itself, such as a crossed-roller ring. Those in the gearbox (gearbox): there are no "
      "others."},
     &Bearing::kind},
    {{"rolling", "Rolls on", kRolling, "What rolls in the bearing: balls or rollers."},
     &Bearing::rolling},
};
constexpr QuantityRow<Bearing> kBearing[]{
    {detail(field("dynamic_rating", "Dynamic rating C", kNewton, kPositive,
                  "Basic dynamic load rating of one bearing; usually 300 to 10 000 N. In the "
                  "catalogue.")),
     &Bearing::dynamic_rating_N},
    {detail(field("static_rating", "Static rating C0", kNewton, kPositive,
                  "Basic static load rating of one bearing; usually 100 to 10 000 N. In the "
                  "catalogue.")),
     &Bearing::static_rating_N},
    {detail(field("moment_rating", "Moment rating", kTorque, kPositive,
                  "Static tilting moment that a single bearing bears; usually 2 to 500 N.m. In "
                  "the catalogue.")),
     &Bearing::moment_rating_Nm},
    {detail(field("spacing", "Spacing", kMillimetre, kPositive,
                  "Kind pair: from one bearing's centre to the other's; usually 10 to 120 mm.")),
     &Bearing::spacing_m},
    {detail(field("overhang", "Overhang", kMillimetre, kAny,
                  "Along the axis, from the nearer bearing's centre to the centre of what it "
                  "carries; negative where that lies between both bearings.")),
     &Bearing::overhang_m},
    {detail(field("pitch_diameter", "Pitch diameter", kMillimetre, kPositive,
                  "Mean of bore and outer diameter; usually 10 to 150 mm.")),
     &Bearing::pitch_diameter_m},
    {defaults_to(0, detail(field("contact_angle", "Contact angle", kDegrees, {0, 60 * kDegree_rad},
                                 "0 deg for deep-groove bearings; 15 to 40 deg for angular "
                                 "contact."))),
     &Bearing::contact_angle_rad},
    {defaults_to(14, detail(field("calculation_factor", "Calculation factor f0", kNumber, kPositive,
                                  "Of a ball bearing's axial factor; usually 12 to 16. In the "
                                  "catalogue."))),
     &Bearing::calculation_factor},
    {defaults_to(0, detail(field("preload", "Preload", kNewton, kNotNegative,
                                 "Axial force that presses the pair together; usually 0 to 100 "
                                 "N."))),
     &Bearing::preload_N},
    {detail(field("radial_play", "Radial play", {"m", "um"}, kNotNegative,
                  "Of one bearing as mounted, from side to side; usually 0 to 20 um, 0 with "
                  "preload.")),
     &Bearing::radial_play_m},
    {detail(field("axial_play", "Axial play", {"m", "um"}, kNotNegative,
                  "Of one bearing as mounted, from end to end; usually 0 to 150 um, 0 with "
                  "preload.")),
     &Bearing::axial_play_m},
    {defaults_to(20000.0 * 3600, detail(field("life", "Wanted life", {"s", "hour"}, kPositive,
                                              "Running hours that 90 % of such bearings should "
                                              "reach; usually 5000 to 40 000 hours."))),
     &Bearing::life_s},
};

constexpr std::string_view kThreads[]{"unstated"};  // and the rows of threads.yaml
constexpr std::string_view kHolds[]{"nut", "metal", "insert", "print"};
constexpr std::string_view kShafts[]{"none", "clamp", "flat", "key"};
constexpr ChoiceRow<Joint> kJointChoices[]{
    {{"thread", "Thread", kThreads, "Of the screws that hold the load on the output."},
     &Joint::thread},
    {{"property_class",
      "Property class",
      {},  // the rows of screws.yaml
      "Of the screws: on their heads; A2-70 is the usual stainless steel."},
     &Joint::property_class},
    {{"holds_in", "Holds in", kHolds,
      "What the thread is in: a nut (nut), metal, a heat-set insert (insert), or the print itself "
      "(print)."},
     &Joint::holds_in},
    {{"shaft", "Shaft joint", kShafts,
      "How the load sits on a round shaft, if it does: clamped (clamp), by a flat (flat), by a key "
      "(key)."},
     &Joint::shaft},
};
constexpr QuantityRow<Joint> kJoint[]{
    {whole(detail(field("screws", "Screws", kNumber, {1, 100},
                        "How many, spread over a circle; usually 4 to 8."))),
     &Joint::screws},
    {detail(field("circle_diameter", "Circle diameter", kMillimetre, kPositive,
                  "Of the circle on which the screws' centres lie; usually 16 to 80 mm.")),
     &Joint::circle_diameter_m},
    {detail(field("tightening_torque", "Tightening torque", kTorque, kPositive,
                  "Of one screw; 0.5 N.m for M2.5 to 10 N.m for M6, much less in prints.")),
     &Joint::tightening_torque_Nm},
    {defaults_to(0.14, detail(field("thread_friction", "Thread friction", kNumber, {0.02, 0.5},
                                    "Friction coefficient of thread and head; 0.12 to 0.18 dry, "
                                    "0.08 to 0.12 greased."))),
     &Joint::thread_friction},
    {defaults_to(0.12, detail(field("face_friction", "Face friction", kNumber, {0.01, 1},
                                    "Friction coefficient between the clamped faces; 0.1 to 0.15 "
                                    "for metal, 0.2 to 0.3 for plastics."))),
     &Joint::face_friction},
    {detail(field("pull_out", "Pull-out force", kNewton, kPositive,
                  "Axial force that pulls one insert or printed thread out; usually 200 to 1500 "
                  "N. Pull one out of a test piece.")),
     &Joint::pull_out_N},
    {detail(field("shaft_diameter", "Shaft diameter", kMillimetre, kPositive,
                  "Of the shaft where it is held; usually 4 to 20 mm.")),
     &Joint::shaft_diameter_m},
    {detail(field("shaft_length", "Length of the hold", kMillimetre, kPositive,
                  "Along the shaft; usually 8 to 30 mm.")),
     &Joint::shaft_length_m},
    {detail(field("clamp_force", "Clamping force", kNewton, kPositive,
                  "Shaft clamp: of all its screws together; usually 1000 to 10 000 N.")),
     &Joint::clamp_force_N},
    {detail(field("shaft_pressure", "Bearable pressure", kMegapascal, kPositive,
                  "That flat, key or hub bear on their faces; usually 30 MPa for prints, 100 MPa "
                  "for steel.")),
     &Joint::shaft_pressure_Pa},
};

constexpr QuantityRow<Balance> kBalance[]{
    {detail(field("counterweight_arm", "Counterweight arm", kMillimetre, kPositive,
                  "From the axis to where a counterweight would sit, opposite to the centre of "
                  "mass; usually 20 to 120 mm.")),
     &Balance::counterweight_arm_m},
    {defaults_to(7850,
                 detail(field("counterweight_density", "Counterweight density", {"kg/m3", "g/cm3"},
                              kPositive, "7.85 g/cm3 for steel, 11.3 for lead, 19 for tungsten."))),
     &Balance::counterweight_density_kgpm3},
};

constexpr TextRow<Arm> kArmTexts[]{
    {{"material", "Material",
      "Name of a built-in material, such as pla, petg, asa, nylon, polycarbonate, aluminium or "
      "steel, or of one of the rig's own."},
     &Arm::material},
};
constexpr std::string_view kSupports[]{"side", "fork"};
constexpr std::string_view kSections[]{"box", "bar"};
constexpr std::string_view kLayers[]{"along", "across"};
constexpr ChoiceRow<Arm> kArmChoices[]{
    {{"support", "Support", kSupports,
      "Side arm (side): it alone carries the tilt axis. Fork of two arms (fork): both do."},
     &Arm::support},
    {{"section", "Section", kSections,
      "Hollow (box): with a wall. Full or filled (bar): without one."},
     &Arm::section},
    {{"layers", "Layers", kLayers,
      "How the print's layers lie: along the arm (along), or across the arm (across), which is "
      "weaker."},
     &Arm::layers},
};
constexpr QuantityRow<Arm> kArm[]{
    {detail(field("length", "Length", kMillimetre, kPositive,
                  "From where it is held to the tilt axis; usually 60 to 250 mm.")),
     &Arm::length_m},
    {detail(field("width", "Width", kMillimetre, kPositive,
                  "Of the section, across the tilt axis; usually 20 to 60 mm.")),
     &Arm::width_m},
    {detail(field("height", "Thickness", kMillimetre, kPositive,
                  "Of the section, along the tilt axis; usually 6 to 25 mm.")),
     &Arm::height_m},
    {detail(field("wall", "Wall", kMillimetre, kPositive,
                  "Of a box section; usually 1.6 to 4 mm when printed.")),
     &Arm::wall_m},
    {defaults_to(0, detail(field("infill", "Infill", kNumber, {0, 1},
                                 "Part of the inside that is filled, of a bar all of it unless "
                                 "entered; usually 0.15 to 0.4."))),
     &Arm::infill},
    {detail(field("modulus", "Modulus", {"Pa", "GPa"}, kPositive,
                  "Elastic modulus along the arm instead of the material's; usually 1.5 to 3.5 "
                  "GPa printed.")),
     &Arm::modulus_Pa},
};

constexpr TextRow<Material> kMaterialTexts[]{
    {{"name", "Name", "As the rig's parts call it."}, &Material::name},
    {{"source", "Source", "Where the values come from."}, &Material::source},
};
constexpr QuantityRow<Material> kMaterial[]{
    {detail(field("modulus", "Modulus", {"Pa", "GPa"}, kPositive,
                  "Elastic modulus along the layers; usually 1.5 to 3.5 GPa printed.")),
     &Material::modulus_Pa},
    {detail(field("layer_modulus", "Modulus across layers", {"Pa", "GPa"}, kPositive,
                  "Elastic modulus across the layers; usually 60 to 95 % of that along them.")),
     &Material::layer_modulus_Pa},
    {detail(field("strength", "Strength", kMegapascal, kPositive,
                  "Tensile strength along the layers; usually 25 to 60 MPa printed.")),
     &Material::strength_Pa},
    {detail(field("layer_strength", "Strength across layers", kMegapascal, kPositive,
                  "Tensile strength across the layers; usually 30 to 70 % of that along them.")),
     &Material::layer_strength_Pa},
    {detail(field("softening", "Softening", kCelsius, {kZeroCelsius_K, kZeroCelsius_K + 1500},
                  "Temperature at which it gives way under load; 55 degC for pla, 70 for petg.")),
     &Material::softening_K},
    {detail(field("density", "Density", {"kg/m3", "g/cm3"}, kPositive,
                  "Solid; usually 1.0 to 1.3 g/cm3 for plastics.")),
     &Material::density_kgpm3},
};

constexpr PartTable<Bearing> kBearingTable{{}, kBearing, kBearingChoices};
constexpr PartTable<Joint> kJointTable{{}, kJoint, kJointChoices};
constexpr PartTable<Balance> kBalanceTable{{}, kBalance, {}};
constexpr PartTable<Arm> kArmTable{kArmTexts, kArm, kArmChoices};
constexpr PartTable<Material> kMaterialTable{kMaterialTexts, kMaterial, {}};
}  // namespace

template <>
const PartTable<Bearing>& table_of<Bearing>() {
  return kBearingTable;
}
template <>
const PartTable<Joint>& table_of<Joint>() {
  static Prepared<ListedTable<Joint>> listed([] { return with_listed_choices(kJointTable); });
  return listed.get().table;
}
template <>
const PartTable<Balance>& table_of<Balance>() {
  return kBalanceTable;
}
template <>
const PartTable<Arm>& table_of<Arm>() {
  return kArmTable;
}
template <>
const PartTable<Material>& table_of<Material>() {
  return kMaterialTable;
}

}  // namespace gazewright
