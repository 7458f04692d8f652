#include <gtest/gtest.h>

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QTableWidget>
#include <algorithm>
#include <functional>

#include "app/plots/theme.h"
#include "app/window/move_limits_dialog.h"
#include "app/window/special_tiles.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

struct LimitOwl : OwlWindow {
  MoveLimitsDialog& dialog() {
    if (!window.moveLimits()) window.actions()["show.limits"]->trigger();
    return *window.moveLimits();
  }
  /// Of both axes, the most saving first.
  std::vector<LimitGain> gains() {
    std::vector<LimitGain> all;
    for (const Axis axis : kAxes) {
      const auto& some = window.recompute().analysis()->limits_of(axis).gains;
      all.insert(all.end(), some.begin(), some.end());
    }
    std::ranges::stable_sort(all, std::greater{}, &LimitGain::saved_s);
    return all;
  }
};

TEST(WhatLimitsTheMoves, RanksTheChangesOfTheAnalysisByWhatTheySave) {
  LimitOwl owl;
  EXPECT_EQ(owl.dialog().findChild<QLabel*>("limits.state")->text(), "Being worked out.");
  ASSERT_TRUE(owl.settle());
  const std::vector<LimitGain> gains = owl.gains();
  ASSERT_GE(gains.size(), 2u);
  const QTableWidget& table = owl.dialog().table();
  ASSERT_EQ(table.rowCount(), int(gains.size()));
  for (int row = 0; row < table.rowCount(); ++row) {
    const LimitGain& gain = gains[std::size_t(row)];
    EXPECT_EQ(table.item(row, 1)->text().toStdString(), gain.change);
    EXPECT_EQ(table.item(row, 2)->text().toStdString(), gain.reason);
  }
  EXPECT_TRUE(owl.dialog().findChild<QLabel*>("limits.state")->isHidden());
}

TEST(WhatLimitsTheMoves, SaysWhatHoldsEachAxisBack) {
  LimitOwl owl;
  owl.dialog();
  ASSERT_TRUE(owl.settle());
  owl.dialog().findChild<QAbstractButton*>("limits.copy")->click();
  const std::string text = QGuiApplication::clipboard()->text().toStdString();
  for (const Axis axis : kAxes) {
    const std::string sentence = owl.window.recompute().analysis()->limits_of(axis).sentence;
    ASSERT_FALSE(sentence.empty());
    EXPECT_NE(text.find(sentence.substr(1)), std::string::npos) << text;
  }
}

TEST(WhatLimitsTheMoves, EnterGoesToTheFieldAndAClickToItsCard) {
  LimitOwl owl;
  owl.dialog();
  ASSERT_TRUE(owl.settle());
  const std::vector<LimitGain> gains = owl.gains();
  ASSERT_FALSE(gains.empty());
  owl.window.select("rig");
  QTableWidget& table = owl.dialog().table();
  QTest::mouseClick(table.viewport(), Qt::LeftButton, {},
                    table.visualItemRect(table.item(0, 1)).center());
  ASSERT_NE(owl.field(gains[0].path.c_str()), nullptr);
  table.selectRow(int(gains.size()) - 1);
  QTest::keyClick(&table, Qt::Key_Return);
  ASSERT_NE(owl.field(gains.back().path.c_str()), nullptr);
  EXPECT_EQ(owl.window.focusWidget(), owl.field(gains.back().path.c_str())->edit());
}

TEST(WhatLimitsTheMoves, IsMarkedAsOldWhileTheRigIsWorkedOutAnew) {
  LimitOwl owl;
  owl.dialog();
  ASSERT_TRUE(owl.settle());
  owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", 25));
  EXPECT_FALSE(owl.dialog().table().isEnabled());
  EXPECT_TRUE(owl.dialog().findChild<QLabel*>("limits.state")->text().contains("the last change"));
  ASSERT_TRUE(owl.settle());
  EXPECT_TRUE(owl.dialog().table().isEnabled());
  EXPECT_EQ(owl.dialog().table().item(0, 1)->text().toStdString(), owl.gains()[0].change);
}

TEST(WhatLimitsTheMoves, ANewRigSaysWhatItNeeds) {
  LimitOwl owl;
  owl.window.newRig();
  owl.dialog();
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.dialog().table().rowCount(), 0);
  EXPECT_TRUE(owl.dialog().findChild<QLabel*>("limits.empty")->isVisible());
}

TEST(WhatLimitsTheMoves, TheHeadlinesTipHasTheBestChange) {
  LimitOwl owl;
  ASSERT_TRUE(owl.settle());
  const MoveLimits& limits = owl.window.recompute().analysis()->limits_of(Axis::pan);
  ASSERT_FALSE(limits.gains.empty());
  const auto* headline = owl.window.findChild<HeadlineTile*>("pan headline");
  ASSERT_NE(headline, nullptr);
  const std::string change = limits.gains.front().change;
  EXPECT_NE(headline->toolTip().toStdString().find(change.substr(1)), std::string::npos)
      << headline->toolTip().toStdString();
}

}  // namespace
}  // namespace gazewright
