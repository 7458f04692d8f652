#include <gtest/gtest.h>

#include <QApplication>
#include <QSignalSpy>
#include <vector>

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

TEST(Desktop, CalmLeavesNoEffectOnAndGivesBackWhatTheDesktopHad) {
  constexpr Qt::UIEffect kEffects[]{Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                    Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip};
  QApplication::setEffectEnabled(Qt::UI_General, true);
  QApplication::setEffectEnabled(Qt::UI_FadeMenu, true);  // and with it the menus' animation
  QApplication::setEffectEnabled(Qt::UI_AnimateCombo, true);
  std::vector<bool> before;
  for (const Qt::UIEffect effect : kEffects)
    before.push_back(QApplication::isEffectEnabled(effect));
  ASSERT_TRUE(before[1] && before[2]) << "else there is nothing to still";
  set_calm(true);
  set_calm(true);
  for (const Qt::UIEffect effect : kEffects) EXPECT_FALSE(QApplication::isEffectEnabled(effect));
  set_calm(false);
  for (std::size_t i = 0; i < before.size(); ++i)
    EXPECT_EQ(QApplication::isEffectEnabled(kEffects[i]), before[i]) << i;
  for (const Qt::UIEffect effect : kEffects) QApplication::setEffectEnabled(effect, false);
  QApplication::setEffectEnabled(Qt::UI_General, false);
}

}  // namespace
}  // namespace gazewright
