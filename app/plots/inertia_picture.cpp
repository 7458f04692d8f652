#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/format.h"
#include "app/plots/inertia_shares.h"
#include "app/plots/picture_plot.h"
#include "app/plots/share_bars.h"
#include "app/plots/text.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

using Shares = std::array<std::vector<InertiaShare>, 2>;  ///< by Axis; empty: not shown

QString inertia_text(double inertia_kgm2) { return format_value(inertia_kgm2, "kg.m2", "g.m2"); }

ShareList list_of(Axis axis, const std::vector<InertiaShare>& shares) {
  double sum_kgm2 = 0;
  for (const InertiaShare& share : shares) sum_kgm2 += share.inertia_kgm2;
  ShareList list{axis, Plots::tr("%1, %2 in all").arg(axis_word(axis), inertia_text(sum_kgm2)), {}};
  list.bars.reserve(shares.size());
  for (const InertiaShare& share : shares)
    list.bars.push_back({share.name, sum_kgm2 > 0 ? share.inertia_kgm2 / sum_kgm2 : 0,
                         inertia_text(share.inertia_kgm2), share.is_rotor});
  return list;
}

QString shares_words(const Shares& shares) {
  QStringList lines;
  for (const Axis axis : kAxes) {
    for (const InertiaShare& share : shares[std::size_t(axis)]) {
      lines << QStringLiteral("%1, %2: %3")
                   .arg(axis_word(axis), share.name, inertia_text(share.inertia_kgm2));
    }
  }
  return lines.join(QStringLiteral(". "));
}

QString shares_csv(const Shares& shares) {
  QString text = Plots::tr("Axis,Part,Inertia / kg·m²") + '\n';
  for (const Axis axis : kAxes) {
    for (const InertiaShare& share : shares[std::size_t(axis)]) {
      text += axis_word(axis) + ',' + csv_quoted(share.name) + ',' +
              csv_number(share.inertia_kgm2) + '\n';
    }
  }
  return text;
}

void paint(QPainter& painter, const QRectF& inside, const Theme& theme, const Shares& shares) {
  std::vector<ShareList> lists;
  for (const Axis axis : kAxes) {
    const auto& of_axis = shares[std::size_t(axis)];
    if (!of_axis.empty()) lists.push_back(list_of(axis, of_axis));
  }
  paint_share_lists(painter, inside, lists, QStringLiteral("00.00 g·m²  00.0 %"), theme);
}

/// @param missing  takes what an axis lacks
Shares shares_of(const PlotInput& input, QStringList& missing) {
  Shares result;
  const Rig rig = with_defaults(*input.rig);
  for (const Axis axis : kAxes) {
    if (!chart_parts::shows(input, axis)) continue;
    if (auto shares = inertia_shares(rig, axis)) {
      result[std::size_t(axis)] = std::move(*shares);
    } else {
      missing
          << Plots::tr("%1: a mass, a place, a shape or the gear is missing").arg(axis_word(axis));
    }
  }
  return result;
}

}  // namespace

PlotPicture inertia_picture(const PlotInput& input) {
  Shares shares;
  QStringList missing;
  if (input.rig != nullptr) shares = shares_of(input, missing);
  PlotPicture picture;
  if (input.rig == nullptr) {
    picture.message = chart_parts::nothing_yet();
  } else if (shares[0].empty() && shares[1].empty()) {
    picture.message = missing.join('\n');
  }
  picture.words = shares_words(shares);
  picture.csv = [shares] { return shares_csv(shares); };
  picture.paint = [shares = std::move(shares)](QPainter& painter, const QRectF& inside,
                                               const Theme& theme) {
    paint(painter, inside, theme, shares);
  };
  return picture;
}

}  // namespace gazewright
