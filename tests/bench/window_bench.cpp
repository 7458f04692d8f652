// The window as the user waits for it: from a ratio to the painted picture, and from nothing to the
// first one. Offscreen, so that it says what we cost and not what a screen does.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <memory>

#include "app/window/edits.h"
#include "app/window/main_window.h"
#include "app/window/plots_panel.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

/// One application for all benchmarks, made on first use and kept to the end: Qt wants it gone
/// before main() returns or not at all.
void application() {
  static int argc = 1;
  static char name[] = "gazewright-bench";
  static char* argv[] = {name, nullptr};
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  static const auto* app = new QApplication(argc, argv);
  (void)app;
}

void wait_for_analysis(MainWindow& window) {
  while (window.recompute().isBehind()) {
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
}

/// Everything that was asked to repaint is painted.
void paint(MainWindow& window) {
  QCoreApplication::processEvents();
  window.repaint();
}

void drag_to_paint(benchmark::State& state) {
  application();
  testing::OwlWindow owl;
  owl.settle();
  double ratio = 18;
  const int id = Document::newDragId();
  owl.window.recompute().setDragging(true);
  for (auto _ : state) {
    ratio = ratio > 30 ? 18 : ratio + 0.1;
    owl.window.document().edit(QStringLiteral("drag"),
                               with_value(owl.rig(), "pan.gearbox.ratio", ratio), id);
    wait_for_analysis(owl.window);
    paint(owl.window);
  }
  state.counters["plots"] = static_cast<double>(owl.window.plots().kinds().size());
}
BENCHMARK(drag_to_paint)->Unit(benchmark::kMillisecond)->UseRealTime();

void first_paint(benchmark::State& state) {
  application();
  for (auto _ : state) {
    testing::OwlWindow owl;
    wait_for_analysis(owl.window);
    paint(owl.window);
    state.PauseTiming();
    owl.window.hide();
    state.ResumeTiming();
  }
}
BENCHMARK(first_paint)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace gazewright
