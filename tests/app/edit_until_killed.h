#pragma once

#include <QApplication>
#include <QString>
#include <cstdio>

#include "app/window/main_window.h"
#include "app/window/safe_work.h"

namespace gazewright::tests {

/// What the test program does as a child of the test of killed windows: a real window on the owl of
/// that folder, edited without end. Says the number of each edit once it is kept.
[[noreturn]] inline void edit_until_killed(const char* folder) {
  const QString place = QString::fromLocal8Bit(folder);
  MainWindow window({.settings_file = place + "/settings.ini", .theme = "light"});
  if (!window.openFile(place + "/owl.rig.yaml")) qFatal("no owl in %s", folder);
  window.show();
  QCoreApplication::processEvents();
  for (int number = 1;; ++number) {
    Rig rig = window.document().rig();
    rig.title = "edit " + std::to_string(number);
    window.document().edit("edit", rig);
    QCoreApplication::processEvents();
    if (window.safeWork().wait()) std::printf("%d\n", number);
    std::fflush(stdout);
  }
}

}  // namespace gazewright::tests
