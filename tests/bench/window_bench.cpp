// The window as the user waits for it: from a ratio to the painted picture, and from nothing to the
// first one. Offscreen, so that it says what we cost and not what a screen does.
#include <benchmark/benchmark.h>
#include <malloc.h>
#include <unistd.h>

#include <QAbstractEventDispatcher>
#include <QElapsedTimer>
#include <QEvent>
#include <algorithm>
#include <fstream>
#include <memory>
#include <random>
#include <vector>

#include "app/plots/chart_plot.h"
#include "app/window/drive_line.h"
#include "app/window/edits.h"
#include "app/window/main_window.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "tests/app/random_edit.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

/// What is allocated and not freed. [MB]
double used_MB() { return static_cast<double>(mallinfo2().uordblks) / 1e6; }

/// What the system counts as ours, libraries included. [MB]
double resident_MB() {
  std::ifstream in("/proc/self/statm");
  double all = 0, resident = 0;
  in >> all >> resident;
  return resident * static_cast<double>(::sysconf(_SC_PAGESIZE)) / 1e6;
}

double percentile(std::vector<double> values, double part) {
  const auto at =
      values.begin() + static_cast<std::ptrdiff_t>(part * static_cast<double>(values.size() - 1));
  std::ranges::nth_element(values, at);
  return *at;
}

void wait_for_analysis(MainWindow& window) {
  while (window.recompute().isBehind()) {
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  }
}

/// Everything that was asked to repaint is painted, and what that asked for too.
void paint() {
  while (QAbstractEventDispatcher::instance()->processEvents(QEventLoop::AllEvents)) {
  }
}

/// Counts how often a widget is painted.
struct PaintCount : QObject {
  explicit PaintCount(QWidget* widget) { widget->installEventFilter(this); }
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) ++count;
    return false;
  }
  int count = 0;
};

void drag_to_paint(benchmark::State& state) {
  tests::OwlWindow owl;
  owl.settle();
  double ratio = 18;
  const int id = Document::newDragId();
  RatioScale* scale = owl.window.driveLine(Axis::pan).ratioScale();
  emit scale->dragStarted();
  std::vector<double> frames_ms;
  const auto* plot = dynamic_cast<ChartPlot*>(owl.window.plots().plot(PlotKind::step));
  const PaintCount step(plot->canvas());
  for (auto _ : state) {
    QElapsedTimer clock;
    clock.start();
    ratio = ratio > 30 ? 18 : ratio + 0.1;
    emit scale->ratioMoved(ratio, id);
    wait_for_analysis(owl.window);
    paint();
    frames_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
  }
  if (step.count < static_cast<int>(frames_ms.size()))
    state.SkipWithError("a frame is not painted");
  state.counters["p95_ms"] = percentile(frames_ms, 0.95);
  state.counters["plots"] = static_cast<double>(owl.window.plots().kinds().size());
}
BENCHMARK(drag_to_paint)->Unit(benchmark::kMillisecond);

void first_paint(benchmark::State& state) {
  for (auto _ : state) {
    auto owl = std::make_unique<tests::OwlWindow>();
    wait_for_analysis(owl->window);
    paint();
    state.PauseTiming();  // closing it is not starting it
    owl.reset();
    state.ResumeTiming();
  }
  state.counters["resident_MB"] = resident_MB();
}
BENCHMARK(first_paint)->Unit(benchmark::kMillisecond);

/// A day's work in one go: random edits, undone and redone now and then, the window working along
/// as fast as it can. Every thousand it starts again from the owl, as a user would. Once the
/// history is full, what is allocated must not grow. GAZEWRIGHT_SOAK_EDITS says how many (a day:
/// 100000).
void soak(benchmark::State& state) {
  tests::OwlWindow owl;
  owl.settle();
  const Rig start = owl.rig();
  std::mt19937 random(20261127);
  Document& document = owl.window.document();
  const auto rest = [&] {
    document.edit(QStringLiteral("start again"), start);
    owl.settle();
  };
  constexpr int kUsual = 5000, kHistoryIsFull = 2000;
  const int asked = qEnvironmentVariableIntValue("GAZEWRIGHT_SOAK_EDITS");
  const int edits = asked > kHistoryIsFull ? asked : kUsual;
  double early_MB = 0;
  for (auto _ : state) {
    for (int done = 1; done <= edits; ++done) {
      if (random() % 8 == 0)
        random() % 2 == 0 ? document.history().undo() : document.history().redo();
      else
        document.edit(QStringLiteral("edit"), tests::with_random_edit(owl.rig(), random));
      if (done % 10 == 0) QCoreApplication::processEvents();
      if (done % 1000 == 0) rest();
      if (done == kHistoryIsFull) early_MB = used_MB();
    }
    rest();
  }
  state.counters["edits"] = edits;
  state.counters["used_MB"] = used_MB();
  state.counters["growth_MB"] = used_MB() - early_MB;
  state.counters["resident_MB"] = resident_MB();
}
BENCHMARK(soak)->Iterations(1)->Unit(benchmark::kSecond)->UseRealTime();

}  // namespace
}  // namespace gazewright
