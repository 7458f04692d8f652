#pragma once

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QLineEdit>
#include <QMessageBox>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QUrl>
#include <string>

#include "app/window/card.h"
#include "app/window/edits.h"
#include "app/window/main_window.h"
#include "app/window/quantity_field.h"
#include "core/files/rig_file.h"

/// What the window's tests share: a rig file of an invented owl, and a window of its own settings.
namespace gazewright::tests {

/// One axis of the owl; `ratio`, `limit` and `stops` differ between pan and tilt.
inline std::string owl_axis(const char* ratio, const char* limit, const char* centre) {
  return std::string(R"(
  motor: {name: outrunner A, speed_constant: 410 rpm/V, phase_resistance: 62 mohm, phase_inductance: 28 uH, pole_pairs: 7,
          rotor_inertia: 118 g.cm2, peak_current: 45 A, mass: 140 g, thermal_resistance: 4.1 K/W, thermal_time: 14 min, winding_limit: 120 degC}
  drive: {current_limit: )") +
         limit +
         R"(, control_rate: 8 kHz, current_bandwidth: 1 kHz, modulation_limit: 0.95, speed_limit: none}
  gearbox: {name: two-stage, ratio: )" +
         ratio +
         R"(, efficiency: {value: 0.90, spread: 5 %, source: datasheet}, back_efficiency: 0.88, inertia: 12 g.cm2, backlash: 16 arcmin, stiffness: 900 N.m/rad,
            damping: 0.4 N.m.s/rad, drag: 6 mN.m, viscous: 20 uN.m.s/rad, rated_torque: 6 N.m, peak_torque: 12 N.m, input_speed_limit: 8000 rpm, mass: 260 g}
  encoder: {at: motor, bits: 14, error: 0.5 deg}
  friction: {coulomb: 40 mN.m, viscous: 4 mN.m.s/rad}
  stops: {tab_width: 8 mm, post_width: 10 mm, radius: 26 mm, centre: )" +
         centre + R"(, soft_inset: 6 deg, stiffness: 400 N.m/rad}
  cable: {outer_diameter: 5.2 mm, count: 2, routing: twist, free_length: 260 mm, bend_radius: 40 mm, twist_rating: 900 deg/m}
  loop: {position_gain: 30 1/s, speed_gain: 0.9 N.m.s/rad, speed_integral_gain: 12 N.m/rad, speed_limit: 900 deg/s, estimator_bandwidth: 400 Hz}
)";
}

inline std::string owl_file_text() {
  return std::string(R"(rig: 1
title: Tide-pool owl
notes: the lobby owl that watches visitors
supply: {voltage: 24 V, current_limit: 15 A, absorbs: 0 A, bus_capacitance: 1.5 mF, trip_voltage: 32 V}
surroundings: {temperature: 30 degC}
stand: {lean: 0 deg, mass: 3.2 kg, half_width: 110 mm, height: 140 mm, sway_stiffness: 900 N.m/rad}
pan:)") + owl_axis("18", "30 A", "0 deg") +
         "tilt:\n  axis_at: [0 mm, 0 mm, 165 mm]" + owl_axis("11", "25 A", "0 deg") +
         R"(on_pan:
  - {name: side arm, mass: 210 g, centre: [0 mm, 62 mm, 85 mm], shape: {box: [40 mm, 16 mm, 170 mm]}}
on_tilt:
  - {name: ball, mass: 160 g, centre: [0 mm, 0 mm, 0 mm], shape: {shell: {diameter: 120 mm, wall: 2.4 mm}}}
  - {name: camera, mass: 48 g, centre: [38 mm, 0 mm, 2 mm], shape: {box: [22 mm, 40 mm, 40 mm]}}
camera: {columns: 1280, rows: 720, horizontal_view: 62 deg, exposure: 6 ms, frame_rate: 60 Hz, delay: 45 ms}
task: {pan_move: 40 deg, tilt_move: 25 deg, within: 160 ms, settle_band: 4, target_distance: 2.5 m, duty: {moves_per_minute: 40}}
)";
}

/// How long a test waits for work to end before it calls it hung. Sanitizers slow the work
/// thirtyfold.
inline constexpr int kPatience_ms = 300'000;

/// The real window on the owl, in a folder of its own.
class OwlWindow {
 public:
  OwlWindow() : window({.settings_file = folder.filePath("settings.ini"), .theme = "light"}) {
    write("owl.rig.yaml", owl_file_text());
    window.resize(1440, 900);
    opened = window.openFile(path("owl.rig.yaml"));
    window.show();
  }

  QString path(const char* name) const { return folder.filePath(QString::fromUtf8(name)); }
  void write(const char* name, const std::string& text) const {
    QFile file(path(name));
    if (!file.open(QIODevice::WriteOnly)) qFatal("cannot write %s", name);
    file.write(text.data(), static_cast<qint64>(text.size()));
  }
  std::string read(const char* name) const {
    QFile file(path(name));
    if (!file.open(QIODevice::ReadOnly)) qFatal("cannot read %s", name);
    return file.readAll().toStdString();
  }
  /// Waits until figures, findings and remedies are those of the rig.
  bool settle() {
    return QTest::qWaitFor(
        [this] { return !window.recompute().isBehind() && window.recompute().isFull(); },
        kPatience_ms);
  }
  /// The same with both ratio sweeps.
  bool sweep() {
    return QTest::qWaitFor([this] { return window.recompute().isSettled(); }, kPatience_ms);
  }
  bool analysed() {
    return QTest::qWaitFor([this] { return !window.recompute().isBehind(); }, kPatience_ms);
  }
  const Rig& rig() { return window.document().rig(); }
  QuantityField* field(const char* at) {
    for (QuantityField* entry : window.card().findChildren<QuantityField*>()) {
      if (entry->path() == at && entry->window() == &window) return entry;
    }
    return nullptr;
  }
  /// Types into a field of the card that is shown, as a user would.
  QuantityField* type(const char* at, const char* text) {
    QuantityField* entry = field(at);
    if (!entry) return nullptr;
    entry->edit()->setFocus();
    entry->edit()->selectAll();
    QTest::keyClicks(entry->edit(), QString::fromUtf8(text));
    QTest::keyClick(entry->edit(), Qt::Key_Return);
    return entry;
  }

  QTemporaryDir folder;
  MainWindow window;
  bool opened = false;
};

/// Presses a button of the next box by its text.
inline void answer_box(const QString& text) {
  QTimer::singleShot(0, [text] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    ASSERT_NE(box, nullptr);
    for (QAbstractButton* button : box->buttons()) {
      if (button->text().remove('&') == text) return button->click();
    }
    box->reject();
    FAIL() << "no button " << text.toStdString();
  });
}

/// Drops a file on the window, at a place of it.
inline void drop(MainWindow& window, const QString& file, QPoint at = {10, 10}) {
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(file)});
  QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window, &enter);
  QDropEvent event(at, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&window, &event);
}

}  // namespace gazewright::tests
