#include <gtest/gtest.h>

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>

#include "app/window/drive_settings_dialog.h"
#include "app/window/drive_settings_model.h"
#include "app/window/explainer.h"
#include "app/window/handbook.h"
#include "tests/app/window_support.h"

/// What to set in the drives, beside the window.
namespace gazewright {
namespace {

using tests::OwlWindow;

struct SettingsOwl : OwlWindow {
  DriveSettingsDialog& dialog() {
    if (!window.driveSettings()) window.actions()["show.drive_settings"]->trigger();
    return *window.driveSettings();
  }
  int rowOf(std::string_view key) {
    for (int row = 0; row < dialog().model().rowCount(); ++row)
      if (dialog().model().pair(row).any().key == key) return row;
    return -1;
  }
  QString cell(std::string_view key, int column) {
    return dialog().model().index(rowOf(key), column).data().toString();
  }
};

TEST(DriveSettingsWindow, FollowsTheRig) {
  SettingsOwl owl;
  ASSERT_TRUE(owl.analysed());
  ASSERT_GE(owl.rowOf("ratio"), 0);
  EXPECT_TRUE(owl.dialog().isVisible());
  EXPECT_TRUE(owl.dialog()
                  .findChild<QLabel*>("drive_settings.caution")
                  ->text()
                  .contains("hand at the switch"));
  const QString before = owl.cell("speed_gain_motor", DriveSettingsModel::pan);
  owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", 9));
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(owl.cell("ratio", DriveSettingsModel::pan), "9");
  EXPECT_NE(owl.cell("speed_gain_motor", DriveSettingsModel::pan), before);
  Rig rig = owl.rig();
  rig.tilt.motor.pole_pairs = {};
  owl.window.document().edit("none", rig);
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(owl.cell("pole_pairs", DriveSettingsModel::tilt), "needs tilt motor pole pairs");
  EXPECT_EQ(owl.cell("pole_pairs", DriveSettingsModel::tilt_first), "–");
}

TEST(DriveSettingsWindow, EnterGoesToTheFieldOfTheColumnsAxis) {
  SettingsOwl owl;
  ASSERT_TRUE(owl.analysed());
  QTableView& table = owl.dialog().table();
  table.setCurrentIndex(
      owl.dialog().model().index(owl.rowOf("pole_pairs"), DriveSettingsModel::tilt));
  QTest::keyClick(&table, Qt::Key_Return);
  EXPECT_EQ(owl.window.selected(), "tilt.motor");
  EXPECT_EQ(owl.window.focusWidget(), owl.field("tilt.motor.pole_pairs")->edit());
}

TEST(DriveSettingsWindow, CopiesEveryCellWithTabs) {
  SettingsOwl owl;
  ASSERT_TRUE(owl.analysed());
  QTest::keyClick(&owl.dialog().table(), Qt::Key_C, Qt::ControlModifier);
  const QStringList lines = QGuiApplication::clipboard()->text().split('\n', Qt::SkipEmptyParts);
  ASSERT_EQ(lines.size(), owl.dialog().model().rowCount() + 1);
  for (const QString& line : lines)
    EXPECT_EQ(line.count('\t'), DriveSettingsModel::kColumns - 1) << line.toStdString();
  EXPECT_TRUE(lines[1].startsWith("Motor\tPole pairs\t7\tsame\t7\tsame\tmotor.pole_pairs\t"))
      << lines[1].toStdString();
}

}  // namespace
}  // namespace gazewright
