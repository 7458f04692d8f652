#include "core/data/prepared.h"
#include "core/rig/field_rows.h"
#include "core/rig/listed_choices.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr std::string_view kKinds[]{"tab", "trailing", "window"};
constexpr std::string_view kMaterials[]{"unstated"};  // and the rows of materials.yaml
constexpr ChoiceRow<Stops> kStopChoices[]{
    {{"kind", "Kind", kKinds,
      "Tab and post (tab): one meets the other, under one turn. Loose tabs between (trailing): "
      "they "
      "add a turn each. Window: the tab moves in a cut-out."},
     &Stops::kind},
    {{"material", "Tab material", kMaterials,
      "What the tab is made of; gives its strength where none is entered. Printed parts: lying "
      "flat, "
      "load along the layers."},
     &Stops::material},
};
constexpr QuantityRow<Stops> kStops[]{
    {field("tab_width", "Tab width", kMillimetre, kPositive,
           "Width of the tab that turns with the axis and meets the post; usually 4 to 20 mm."),
     &Stops::tab_width_m},
    {field("post_width", "Post width", kMillimetre, kPositive,
           "Width of the fixed post, along the circle on which they meet; usually 4 to 20 mm."),
     &Stops::post_width_m},
    {field("radius", "Radius", kMillimetre, kPositive,
           "From the axis to where tab and post meet; usually 15 to 80 mm."),
     &Stops::radius_m},
    {defaults_to(
         0,
         field("centre", "Centre", kDegrees, {-360 * kDegree_rad, 360 * kDegree_rad},
               "Axis angle half-way between the two ends; 0 deg when the post is right behind.")),
     &Stops::centre_rad},
    {field("soft_inset", "Soft limit inset", kDegrees, {0, 180 * kDegree_rad},
           "How far before each hard stop the drive's soft limit lies; usually 3 to 10 deg."),
     &Stops::soft_inset_rad},
    {field("stiffness", "Stop stiffness", kStiffness, kPositive,
           "Torque that presses the axis into the stop by an angle; usually 100 to 5000 N.m/rad, "
           "less with rubber."),
     &Stops::stiffness_Nmprad},
    {defaults_to(
         1, whole(detail(field("trailers", "Loose tabs", kNumber, {1, 20},
                               "With loose tabs between: how many run between tab and post.")))),
     &Stops::trailers},
    {detail(field("trailer_width", "Loose tab width", kMillimetre, kPositive,
                  "With loose tabs between: width of one along the circle; usually 4 to 20 mm.")),
     &Stops::trailer_width_m},
    {detail(field("window", "Window", kDegrees, {0, 360 * kDegree_rad, true},
                  "Kind window: angle of the cut-out from face to face; usually 60 to 200 deg.")),
     &Stops::window_rad},
    {defaults_to(kInfinity, or_none(detail(field(
                                "bumper_travel", "Bumper travel", kDegrees, kPositive,
                                "How far the stop gives way at its stiffness before it is hard; "
                                "usually 0.5 to 5 deg, or none.")))),
     &Stops::bumper_travel_rad},
    {detail(field(
         "hard_stiffness", "Stiffness beyond the bumper", kStiffness, kPositive,
         "Once the bumper is used up: tab, post and bracket; usually 1000 to 20000 N.m/rad.")),
     &Stops::hard_stiffness_Nmprad},
    {defaults_to(
         0.5, detail(field("rebound", "Rebound", kNumber, {0, 1},
                           "Speed after the blow over the speed before; about 0.3 for soft rubber, "
                           "0.5 for plastic, 0.8 for metal."))),
     &Stops::rebound},
    {detail(field(
         "tab_height", "Tab height", kMillimetre, kPositive,
         "From the tab's root to where the post presses, the lever of its bending; usually 4 to "
         "15 mm.")),
     &Stops::tab_height_m},
    {detail(field("tab_thickness", "Tab thickness", kMillimetre, kPositive,
                  "Of the tab along the axis; usually 4 to 12 mm.")),
     &Stops::tab_thickness_m},
    {detail(field(
         "tab_strength", "Tab strength", {"Pa", "MPa"}, kPositive,
         "Tensile strength of the tab's material, instead of the one listed for it; usually 20 to "
         "60 MPa printed.")),
     &Stops::tab_strength_Pa},
};

constexpr PartTable<Stops> kStopsTable{{}, kStops, kStopChoices};
}  // namespace

template <>
const PartTable<Stops>& table_of<Stops>() {
  static Prepared<ListedTable<Stops>> listed(
      [] { return with_listed_choices(kStopsTable, "strength"); });
  return listed.get().table;
}

}  // namespace gazewright
