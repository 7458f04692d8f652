// Runs the window's tests without a display, unless the environment asks for a platform.
#include <gtest/gtest.h>

#include <QApplication>
#include <QStandardPaths>
#include <cstring>

#include "tests/app/edit_until_killed.h"

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);  // the tester's own settings stay untouched
  ::testing::InitGoogleTest(&argc, argv);
  const QApplication app(argc, argv);
  if (argc == 3 && std::strcmp(argv[1], "--edit-until-killed") == 0) {
    gazewright::tests::edit_until_killed(argv[2]);
  }
  return RUN_ALL_TESTS();
}
