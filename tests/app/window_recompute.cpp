#include <gtest/gtest.h>

#ifdef __x86_64__
#include <cpuid.h>
#endif

#include <QRegularExpression>
#include <QSignalSpy>
#include <atomic>
#include <optional>
#include <thread>

#include "app/plots/dial_view.h"
#include "app/plots/format.h"
#include "app/plots/travel_plot.h"
#include "app/window/newest_wins.h"
#include "app/window/plots_panel.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

TEST(NewestWins, RunsTheFirstAndTheNewestAndSkipsWhatCameBetween) {
  std::vector<int> seen;
  std::atomic<bool> go = false;
  QThreadPool pool;
  NewestWins<int, int> job(
      pool,
      [&](const int& request, const std::stop_token&) {
        while (!go) std::this_thread::yield();
        return request * 10;
      },
      [&](const int& request, const int& result, bool isLatest) {
        EXPECT_EQ(result, request * 10);
        EXPECT_EQ(isLatest, request == 4);
        seen.push_back(request);
      });
  for (int request = 1; request <= 4; ++request) job.request(request);
  go = true;
  ASSERT_TRUE(QTest::qWaitFor([&] { return seen.size() == 2; }, tests::kPatience_ms));
  EXPECT_EQ(seen, (std::vector<int>{1, 4}));
}

TEST(NewestWins, ADroppedResultNeverArrives) {
  int results = 0;
  QThreadPool pool;
  NewestWins<int, int> job(
      pool,
      [](const int& request, const std::stop_token& stop) {
        while (request == 1 && !stop.stop_requested()) std::this_thread::yield();
        return request;
      },
      [&](const int&, const int& result, bool) {
        ++results;
        EXPECT_EQ(result, 2);
      });
  job.request(1);
  job.dropRunning();
  job.request(2);
  ASSERT_TRUE(QTest::qWaitFor([&] { return job.isIdle(); }, tests::kPatience_ms));
  EXPECT_EQ(results, 1);
}

#ifdef __x86_64__
/// Whether the upper halves of the AVX registers are in use: bit 2 of XINUSE (Intel's manual,
/// volume 1, 13.6).
bool are_wide_registers_in_use() {
  unsigned low = 0, high = 0;
  asm volatile("xgetbv" : "=a"(low), "=d"(high) : "c"(1));
  return (low & 4U) != 0;
}

/// Whether the processor tells: leaf 13, part 1, bit 2 of CPUID.
bool can_tell_registers_in_use() {
  unsigned a = 0, b = 0, c = 0, d = 0;
  return __builtin_cpu_supports("avx") && __get_cpuid_count(13, 1, &a, &b, &c, &d) != 0 &&
         (a & 4U) != 0;
}

TEST(NewestWins, WorkBeginsWithTheWideRegistersFree) {
  if (!can_tell_registers_in_use()) return;  // nothing to look at, and nothing to wait for
  std::optional<bool> in_use;
  QThreadPool pool;
  NewestWins<int, bool> job(
      pool, [](int, const std::stop_token&) { return are_wide_registers_in_use(); },
      [&](int, bool result, bool) { in_use = result; });
  asm volatile("vcmpps $15, %%ymm0, %%ymm0, %%ymm0" : : : "xmm0");
  ASSERT_TRUE(are_wide_registers_in_use());
  job.request(1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return in_use.has_value(); }, tests::kPatience_ms));
  EXPECT_FALSE(*in_use);
}
#endif

TEST(NewestWins, TheDestructorStopsAndJoins) {
  std::atomic<bool> ended = false;
  {
    QThreadPool pool;
    NewestWins<int, int> job(
        pool,
        [&](const int& request, const std::stop_token& stop) {
          while (!stop.stop_requested()) std::this_thread::yield();
          ended = true;
          return request;
        },
        [](const int&, const int&, bool) { FAIL() << "nobody waits for this any more"; });
    job.request(1);
  }
  EXPECT_TRUE(ended);
}

TEST(Recompute, ARatioDoesNotRepeatTheSweepsAndAVoltageDoes) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  QSignalSpy sweeps(&owl.window.recompute(), &Recompute::sweepReady);
  owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", 25));
  ASSERT_TRUE(owl.sweep());
  EXPECT_EQ(sweeps.count(), 0);
  owl.window.document().edit("voltage", with_value(owl.rig(), "supply.voltage", 36));
  EXPECT_TRUE(owl.window.recompute().isSweepBehind(Axis::pan));
  ASSERT_TRUE(owl.sweep());
  EXPECT_GE(sweeps.count(), 2);
}

TEST(Recompute, SweepsFollowADragAndRemediesWaitForItsEnd) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  Recompute& recompute = owl.window.recompute();
  QSignalSpy sweeps(&recompute, &Recompute::sweepReady);
  recompute.setDragging(true);
  owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", 25));
  EXPECT_FALSE(recompute.isSweepBehind(Axis::pan)) << "a ratio moves along a sweep that is there";
  owl.window.document().edit("voltage", with_value(owl.rig(), "supply.voltage", 36));
  EXPECT_TRUE(recompute.isSweepBehind(Axis::pan));
  ASSERT_TRUE(QTest::qWaitFor(
      [&] { return !recompute.isSweepBehind(Axis::pan) && !recompute.isSweepBehind(Axis::tilt); },
      tests::kPatience_ms));
  EXPECT_EQ(sweeps.count(), 2);
  EXPECT_FALSE(recompute.isFull());
  const RatioSweep& live = recompute.sweep(Axis::pan);
  EXPECT_EQ(live.settle_time_s, sweep_ratio(owl.rig(), Axis::pan, live.ratio).settle_time_s);
  const std::size_t live_ratios = live.ratio.size();
  recompute.setDragging(false);
  ASSERT_TRUE(owl.sweep());
  EXPECT_GT(recompute.sweep(Axis::pan).ratio.size(), live_ratios);
}

TEST(Recompute, ASweepUnderWayOutlivesTheDragOfARatio) {
  OwlWindow owl;
  Recompute& recompute = owl.window.recompute();
  recompute.setDragging(true);
  ASSERT_TRUE(owl.analysed());
  for (const double ratio : {12.0, 15.0, 22.0})
    owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", ratio));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !recompute.sweep(Axis::tilt).ratio.empty(); },
                              tests::kPatience_ms));
  EXPECT_FALSE(recompute.sweep(Axis::pan).ratio.empty());
  recompute.setDragging(false);
  ASSERT_TRUE(owl.sweep());
}

QString map_words(OwlWindow& owl) { return owl.window.plots().plot(PlotKind::reach)->summary(); }

TEST(Recompute, TheReachMapIsWorkedOutAgainOnlyForWhatItDependsOn) {
  OwlWindow owl;
  owl.window.plots().setKinds({PlotKind::reach, PlotKind::step});
  ASSERT_TRUE(owl.sweep());
  QSignalSpy maps(&owl.window.recompute(), &Recompute::reachChanged);
  owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", 25));
  EXPECT_FALSE(owl.window.recompute().isReachBehind());
  owl.window.document().edit("view", with_value(owl.rig(), "camera.horizontal_view", 0.5));
  EXPECT_FALSE(owl.window.recompute().isReachBehind());
  ASSERT_TRUE(owl.sweep());
  EXPECT_EQ(maps.count(), 0);
  EXPECT_TRUE(map_words(owl).contains("Points at")) << map_words(owl).toStdString();

  const double was = owl.window.recompute().reach().usable.pan_most_rad;
  owl.window.document().edit("inset", with_value(owl.rig(), "pan.stops.soft_inset", 0.5));
  EXPECT_TRUE(owl.window.recompute().isReachBehind());
  ASSERT_TRUE(owl.sweep());
  EXPECT_EQ(maps.count(), 1);
  EXPECT_LT(owl.window.recompute().reach().usable.pan_most_rad, was);
  EXPECT_EQ(owl.window.recompute().reach().limit, reach_of(owl.rig()).limit);
}

TEST(Recompute, TheReachMapWaitsForTheEndOfADragAndSaysSo) {
  OwlWindow owl;
  owl.window.plots().setKinds({PlotKind::reach, PlotKind::travel});
  ASSERT_TRUE(owl.sweep());
  QSignalSpy maps(&owl.window.recompute(), &Recompute::reachChanged);
  auto* dial = static_cast<TravelPlot*>(owl.window.plots().plot(PlotKind::travel))->dial(Axis::pan);
  const QString before = map_words(owl);
  emit dial->dragStarted();
  const TravelMark mark = *dial->picture().mark({MarkKind::soft_limit, 1, 0, {}});
  emit dial->moved({Axis::pan, mark, mark.angle_rad - 0.4, false, false});
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(map_words(owl), "The map follows when the drag ends.");
  EXPECT_EQ(maps.count(), 0);
  emit dial->takenBack();
  ASSERT_TRUE(owl.analysed());
  QString waiting = before;  // the rig is that of the map again; one share comes after the drag
  waiting.replace(QRegularExpression("sees [^,]* of it"), "sees … of it");
  EXPECT_NE(waiting, before);
  EXPECT_EQ(map_words(owl), waiting);
  emit dial->moved({Axis::pan, mark, mark.angle_rad - 0.4, false, true});
  emit dial->dragEnded();
  ASSERT_TRUE(owl.sweep());
  EXPECT_EQ(maps.count(), 1);
  EXPECT_TRUE(map_words(owl).contains("Points at")) << map_words(owl).toStdString();
  EXPECT_NE(map_words(owl), before);
}

TEST(Recompute, TheReachMapReadsItsSharesFromTheFigures) {
  OwlWindow owl;
  owl.window.plots().setKinds({PlotKind::reach, PlotKind::step});
  ASSERT_TRUE(owl.sweep());
  const Analysis& analysis = *owl.window.recompute().analysis();
  for (const auto& [figure, si, unit] : {std::tuple{"reach.sphere_share", "1", "%"},
                                         {"reach.view_share", "1", "%"},
                                         {"pan.travel.long_way_time", "s", "ms"}}) {
    const auto value = analysis.value(figure);
    ASSERT_TRUE(value) << figure;
    EXPECT_TRUE(map_words(owl).contains(format_value(*value, si, unit)))
        << figure << " in " << map_words(owl).toStdString();
  }
}

TEST(Recompute, AnAxisSweepDoesNotDependOnEitherRatio) {
  OwlWindow owl;
  Rig other = with_value(owl.rig(), "pan.gearbox.ratio", 37);
  other = with_value(other, "tilt.gearbox.ratio", 5);
  const auto ratios = usual_ratios(12);
  for (Axis axis : kAxes) {
    const RatioSweep a = sweep_ratio(owl.rig(), axis, ratios), b = sweep_ratio(other, axis, ratios);
    EXPECT_EQ(a.shortest_time_s, b.shortest_time_s);
    EXPECT_EQ(a.settle_time_s, b.settle_time_s);
    EXPECT_EQ(a.band_least, b.band_least);
  }
}

TEST(Recompute, TheAnalysisShownIsTheOneOfTheRig) {
  OwlWindow owl;
  for (double ratio : {12.0, 15.0, 22.0, 9.0}) {
    owl.window.document().edit("ratio", with_value(owl.rig(), "pan.gearbox.ratio", ratio));
    QCoreApplication::processEvents();
  }
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.window.recompute().analysedRig(), owl.rig());
  const Analysis direct = analyse(owl.rig());
  ASSERT_EQ(direct.figures.size(), owl.window.recompute().analysis()->figures.size());
  for (std::size_t i = 0; i < direct.figures.size(); ++i) {
    EXPECT_EQ(direct.figures[i].value, owl.window.recompute().analysis()->figures[i].value)
        << direct.figures[i].id;
  }
}

}  // namespace
}  // namespace gazewright
