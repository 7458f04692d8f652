#include "app/plots/charts.h"
#include "app/plots/text.h"
#include "app/sheet/sheet_sections.h"
#include "core/data/materials.h"

/// What the builder needs to know about balance, arm and stand, as sentences.
namespace gazewright {
namespace {

using chart_parts::figure_id;

QString value_of(const Analysis& analysis, const std::string& id) {
  return figure_text(analysis.figure(id), Plots::tr("unknown"));
}

QStringList balance_sentences(const Analysis& analysis, Axis axis) {
  const auto said = [&](const char* rest) { return value_of(analysis, figure_id(axis, rest)); };
  QStringList text;
  text << Plots::tr(
              "Centre of mass %1 off the axis; gravity turns it with up to %2; holding the "
              "worst angle takes %3 and heats the winding with %4.")
              .arg(said("balance.offset"), said("gravity.torque_max"), said("balance.hold_current"),
                   said("balance.hold_heat"));
  if (const auto share = analysis.value(figure_id(axis, "balance.friction_share"))) {
    text << (*share >= 1 ? Plots::tr("Friction holds it without power.")
                         : Plots::tr("It turns by itself without power: keep hands clear and park "
                                     "it before switching off."));
  }
  if (analysis.value(figure_id(axis, "balance.counterweight_mass"))) {
    text << Plots::tr(
                "A counterweight of %1 (a ball of %2) would balance it and add %3 of inertia.")
                .arg(said("balance.counterweight_mass"), said("balance.counterweight_diameter"),
                     said("balance.counterweight_share"));
  }
  return text;
}

QString arm_sentence(const SheetContent& content) {
  const Analysis& analysis = content.analysis;
  const Rig& rig = content.rig;
  const std::string key = rig.arm.layers.value == "across" ? "layer_strength" : "strength";
  return Plots::tr(
             "Droop %1, first mode %2; one arm %3, %4 and %5 of pan inertia, a fork %6, %7 "
             "and %8. Strength of %9: %10.")
      .arg(value_of(analysis, "arm.droop"), value_of(analysis, "arm.first_mode"),
           value_of(analysis, "arm.side.droop"), value_of(analysis, "arm.side.first_mode"),
           value_of(analysis, "arm.side.inertia"), value_of(analysis, "arm.fork.droop"),
           value_of(analysis, "arm.fork.first_mode"), value_of(analysis, "arm.fork.inertia"))
      .arg(QString::fromStdString(rig.arm.material),
           QString::fromStdString(material_source(rig, rig.arm.material, key)));
}

}  // namespace

void draw_balance(SheetPage& page, const SheetContent& content) {
  page.ensure(80);
  page.heading(Plots::tr("Balance, arm and stand"));
  for (const Axis axis : kAxes)
    draw_marked(page, axis, axis_word(axis), balance_sentences(content.analysis, axis).join(' '));
  if (content.analysis.value("arm.first_mode"))
    draw_marked(page, {}, Plots::tr("Arm"), arm_sentence(content));
  draw_marked(
      page, {}, Plots::tr("Stand"),
      Plots::tr("At rest it tips at a lean of %1; the fastest moves tip it with %2 against %3; "
                "first mode %4; it sways by %5 in the task's moves.")
          .arg(value_of(content.analysis, "stand.tip_lean"),
               value_of(content.analysis, "stand.moving_moment"),
               value_of(content.analysis, "stand.holding_moment"),
               value_of(content.analysis, "stand.first_mode"),
               value_of(content.analysis, "stand.sway")));
}

}  // namespace gazewright
