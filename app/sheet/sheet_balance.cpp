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

/// Sentences of figures; instead of one whose figures are not known, why they are not.
class Sentences {
 public:
  explicit Sentences(const Analysis& analysis) : analysis_(analysis) {}

  void add(QString text, std::initializer_list<std::string> ids) {
    for (const std::string& id : ids) {
      const Figure* figure = analysis_.figure(id);
      if (figure == nullptr || !figure->value) return add_reason(figure);
      text = text.arg(figure_text(figure));
    }
    said_ << text;
  }
  QStringList all() const {
    QStringList text = said_;
    for (const QString& why : reasons_) text << Plots::tr("Not known: %1.").arg(why);
    return text;
  }

 private:
  void add_reason(const Figure* figure) {
    const QString why = figure == nullptr ? QString() : reason_text(figure->because);
    if (!why.isEmpty() && !reasons_.contains(why)) reasons_ << why;
  }

  const Analysis& analysis_;
  QStringList said_, reasons_;
};

QStringList balance_sentences(const Analysis& analysis, Axis axis) {
  const auto said = [&](const char* rest) {
    return figure_text(analysis.figure(figure_id(axis, rest)));
  };
  Sentences sentences(analysis);
  const auto id = [&](const char* rest) { return figure_id(axis, rest); };
  sentences.add(Plots::tr("Centre of mass %1 off the axis; gravity turns it with up to %2."),
                {id("balance.offset"), id("gravity.torque_max")});
  sentences.add(Plots::tr("Holding the worst angle takes %1 and heats the winding with %2."),
                {id("balance.hold_current"), id("balance.hold_heat")});
  QStringList text = sentences.all();
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
  Sentences stand(content.analysis);
  stand.add(Plots::tr("At rest it tips at a lean of %1."), {"stand.tip_lean"});
  stand.add(Plots::tr("The fastest moves tip it with %1 against %2."),
            {"stand.moving_moment", "stand.holding_moment"});
  stand.add(Plots::tr("First mode %1; it sways by %2 in the task's moves."),
            {"stand.first_mode", "stand.sway"});
  draw_marked(page, {}, Plots::tr("Stand"), stand.all().join(' '));
}

}  // namespace gazewright
