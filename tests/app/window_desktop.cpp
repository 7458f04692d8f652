#include <gtest/gtest.h>

#include <QApplication>
#include <QSignalSpy>

#include "app/window/desktop_theme.h"
#include "app/window/look.h"

namespace gazewright {
namespace {

/// The portal's settings, org.freedesktop.appearance: color-scheme 1 dark 2 light, contrast 1 high,
/// reduced-motion 1.
TEST(Desktop, ContrastSchemeAndMotionAreFollowedWhileItRuns) {
  DesktopTheme desktop;
  QSignalSpy changed(&desktop, &DesktopTheme::changed);
  desktop.take("color-scheme", 2U);
  EXPECT_EQ(desktop.kind(), ThemeKind::light);
  changed.clear();
  desktop.take("color-scheme", 1U);
  EXPECT_EQ(desktop.kind(), ThemeKind::dark);
  desktop.take("contrast", 1U);
  EXPECT_EQ(desktop.kind(), ThemeKind::high_contrast);
  EXPECT_TRUE(desktop.isDark());
  EXPECT_FALSE(desktop.wantsCalm());
  desktop.take("reduced-motion", 1U);
  EXPECT_TRUE(desktop.wantsCalm());
  EXPECT_EQ(changed.count(), 3);
  desktop.take("reduced-motion", 1U);
  EXPECT_EQ(changed.count(), 3) << "nothing new";
  desktop.take("contrast", 0U);
  EXPECT_EQ(desktop.kind(), ThemeKind::dark);
}

TEST(Desktop, CalmLeavesNoEffectOn) {
  constexpr Qt::UIEffect kEffects[]{Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                    Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip};
  set_calm(true);
  for (const Qt::UIEffect effect : kEffects) EXPECT_FALSE(QApplication::isEffectEnabled(effect));
}

}  // namespace
}  // namespace gazewright
