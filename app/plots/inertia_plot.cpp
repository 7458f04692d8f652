#include "app/plots/inertia_plot.h"

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/share_bars.h"
#include "app/plots/text.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

ShareList list_of(Axis axis, const std::vector<InertiaShare>& shares) {
  double sum = 0;
  for (const InertiaShare& share : shares) sum += share.inertia_kgm2;
  ShareList list{
      axis,
      Plots::tr("%1, %2 in all").arg(axis_word(axis), format_value(sum, "kg.m2", "g.m2")),
      {}};
  for (const InertiaShare& share : shares)
    list.bars.push_back({share.name, sum > 0 ? share.inertia_kgm2 / sum : 0,
                         format_value(share.inertia_kgm2, "kg.m2", "g.m2"), share.is_rotor});
  return list;
}

}  // namespace

InertiaPlot::InertiaPlot(QWidget* parent) : PaintedPlot(PlotKind::inertia, parent) { setInput({}); }

void InertiaPlot::take(const PlotInput& input) {
  shares_ = {};
  message_.clear();
  if (input.rig == nullptr) {
    message_ = chart_parts::nothing_yet();
    return;
  }
  const Rig rig = with_defaults(*input.rig);
  QStringList missing;
  for (const Axis axis : kAxes) {
    if (!chart_parts::shows(input, axis)) continue;
    const auto shares = inertia_shares(rig, axis);
    if (shares) {
      shares_[std::size_t(axis)] = *shares;
    } else {
      missing
          << Plots::tr("%1: a mass, a place, a shape or the gear is missing").arg(axis_word(axis));
    }
  }
  if (shares_[0].empty() && shares_[1].empty()) message_ = missing.join('\n');
}

QString InertiaPlot::words() const {
  QStringList lines;
  for (const Axis axis : kAxes) {
    for (const InertiaShare& share : shares_[std::size_t(axis)]) {
      lines << QStringLiteral("%1, %2: %3")
                   .arg(axis_word(axis), share.name,
                        format_value(share.inertia_kgm2, "kg.m2", "g.m2"));
    }
  }
  return lines.join(QStringLiteral(". "));
}

QString InertiaPlot::csv() const {
  QString text = Plots::tr("Axis,Part,Inertia / kg·m²") + '\n';
  for (const Axis axis : kAxes) {
    for (const InertiaShare& share : shares_[std::size_t(axis)]) {
      text += QStringLiteral("%1,\"%2\",%3\n")
                  .arg(axis_word(axis), QString(share.name).replace('"', QStringLiteral("\"\"")),
                       csv_number(share.inertia_kgm2));
    }
  }
  return text;
}

void InertiaPlot::paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const {
  std::vector<ShareList> lists;
  for (const Axis axis : kAxes) {
    const auto& shares = shares_[std::size_t(axis)];
    if (!shares.empty()) lists.push_back(list_of(axis, shares));
  }
  paint_share_lists(painter, inside.adjusted(2, 4, -2, -4), lists,
                    QStringLiteral("00.00 g·m²  00.0 %"), theme);
}

}  // namespace gazewright
