#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QImage>

#include "app/window/look.h"

namespace gazewright {
namespace {

/// The strongest contrast against the ground that the left edge of a control shows at half height.
double edge_contrast(QWidget& control, const QColor& ground) {
  control.resize(control.sizeHint());
  const QImage image = control.grab().toImage();
  double most = 1;
  for (int x = 0; x < 4; ++x)
    most = std::max(most, contrast_ratio(image.pixelColor(x, image.height() / 2), ground));
  return most;
}

// Source: WCAG 2.2, 1.4.11: parts needed to make a control out have a contrast of at least 3:1.
class Edges : public testing::TestWithParam<Theme> {};
TEST_P(Edges, OfCheckBoxesAndListsAreSeen) {
  const Theme& theme = GetParam();
  apply_look(theme);
  QCheckBox box(QStringLiteral("box"));
  EXPECT_GE(edge_contrast(box, theme.surface), 3) << theme.surface.name().toStdString();
  QComboBox list;
  list.addItem(QStringLiteral("entry"));
  EXPECT_GE(edge_contrast(list, theme.surface), 3) << theme.surface.name().toStdString();
}
INSTANTIATE_TEST_SUITE_P(Themes, Edges,
                         testing::Values(theme_for(ThemeKind::light), theme_for(ThemeKind::dark),
                                         theme_for(ThemeKind::high_contrast),
                                         dark_contrast_theme()));

}  // namespace
}  // namespace gazewright
