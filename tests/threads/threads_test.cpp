#include <gtest/gtest.h>

#include <atomic>
#include <filesystem>
#include <thread>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/sweep.h"
#include "core/files/journal.h"
#include "core/files/rig_file.h"
#include "core/loads/rolling.h"
#include "core/loads/screws.h"
#include "core/rig/fields.h"
#include "core/shelf/fit.h"
#include "core/travel/wire.h"
#include "core/units/units.h"
#include "tests/support/folder.h"
#include "tests/support/owl_rig.h"

/// What core does on several threads of its own, and what a window asks of it at the same time. The
/// thread sanitizer runs these.
namespace gazewright {
namespace {

namespace fs = std::filesystem;

Rig sample(const char* name) {
  const fs::path file = fs::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs" / name;
  const LoadedRig loaded = load_rig(file.string() + ".rig.yaml");
  EXPECT_TRUE(loaded.rig) << file;
  return loaded.rig.value_or(Rig{});
}

/// Runs `work(i)` for i = 0 to count − 1, each on a thread of its own, all at once.
template <class Work>
void at_once(std::size_t count, const Work& work) {
  std::vector<std::jthread> threads;
  threads.reserve(count);
  for (std::size_t i = 0; i < count; ++i) threads.emplace_back([&work, i] { work(i); });
}

void expect_same(const Analysis& one, const Analysis& other) {
  ASSERT_EQ(one.figures.size(), other.figures.size());
  for (std::size_t i = 0; i < one.figures.size(); ++i) {
    EXPECT_EQ(one.figures[i].value, other.figures[i].value) << one.figures[i].id;
    EXPECT_EQ(one.figures[i].because, other.figures[i].because) << one.figures[i].id;
  }
  ASSERT_EQ(one.findings.size(), other.findings.size());
  for (std::size_t i = 0; i < one.findings.size(); ++i) {
    EXPECT_EQ(one.findings[i].id, other.findings[i].id);
    EXPECT_EQ(one.findings[i].remedies.size(), other.findings[i].remedies.size())
        << one.findings[i].id;
  }
}

TEST(Threads, AnalysesBesideEachOtherSayWhatEachSaysAlone) {
  const std::vector<Rig> rigs{tests::rig_of(tests::kOwl), sample("quick-newt"),
                              sample("hasty-heron"), sample("harbour-cormorant")};
  const AnalyseOptions options{.remedies = false};
  std::vector<Analysis> beside(rigs.size());
  at_once(rigs.size(), [&](std::size_t i) { beside[i] = analyse(rigs[i], options); });
  for (std::size_t i = 0; i < rigs.size(); ++i) expect_same(analyse(rigs[i], options), beside[i]);
}

TEST(Threads, RemediesAreSearchedBesideADrag) {
  const Rig rig = tests::rig_of(tests::kOwl);
  Analysis whole, frame;
  at_once(2, [&](std::size_t i) {
    (i == 0 ? whole : frame) = analyse(rig, {.remedies = i == 0, .quick = i == 1});
  });
  expect_same(whole, analyse(rig));
  expect_same(frame, analyse(rig, {.remedies = false, .quick = true}));
}

TEST(Threads, AStopFromOutsideEndsAnAnalysis) {
  const Rig rig = tests::rig_of(tests::kOwl);
  const auto remedies = [](const Analysis& analysis) {
    std::size_t count = 0;
    for (const Finding& finding : analysis.findings) count += finding.remedies.size();
    return count;
  };
  std::stop_source stop;
  std::atomic<bool> has_begun = false;
  Analysis stopped;
  std::jthread worker([&] {
    has_begun = true;
    has_begun.notify_one();
    stopped = analyse(rig, {}, stop.get_token());
  });
  has_begun.wait(false);
  stop.request_stop();
  worker.join();
  // The search of remedies comes last and takes most of the time.
  EXPECT_LT(remedies(stopped), remedies(analyse(rig)));
}

TEST(Threads, ASweepIsTheSameOnAnyNumberOfThem) {
  const Rig rig = sample("quick-newt");
  const std::vector<double> ratios = usual_ratios(24);
  RatioSweep pan, tilt;
  at_once(2, [&](std::size_t i) {
    (i == 0 ? pan : tilt) =
        sweep_ratio(rig, i == 0 ? Axis::pan : Axis::tilt, ratios, {.threads = 3});
  });
  EXPECT_EQ(pan.settle_time_s, sweep_ratio(rig, Axis::pan, ratios, {.threads = 1}).settle_time_s);
  EXPECT_EQ(tilt.settle_time_s, sweep_ratio(rig, Axis::tilt, ratios, {.threads = 1}).settle_time_s);
}

TEST(Threads, AFitIsTheSameOnAnyNumberOfThemAndCountsAsItGoes) {
  const Rig rig = sample("quick-newt");
  const Shelf shelf = built_in_shelf();
  std::atomic<std::size_t> most = 0, all = 0;
  const Fits fits =
      rank_fits(rig, shelf, {.simulated = 1, .threads = 3}, [&](std::size_t done, std::size_t of) {
        std::size_t seen = most;
        while (seen < done && !most.compare_exchange_weak(seen, done)) {
        }
        all = of;
      });
  EXPECT_EQ(most, all);
  const Fits alone = rank_fits(rig, shelf, {.simulated = 1, .threads = 1});
  ASSERT_EQ(fits.rows.size(), alone.rows.size());
  for (std::size_t i = 0; i < fits.rows.size(); ++i) {
    EXPECT_EQ(fits.rows[i].parts, alone.rows[i].parts) << i;
    EXPECT_EQ(fits.rows[i].time_s, alone.rows[i].time_s) << i;
  }
}

TEST(Threads, TheJournalIsWrittenWhileTheRigGoesOnChanging) {
  const tests::Folder folder;
  const fs::path file = folder.path("owl.journal");
  std::atomic<int> told = 0, faults = 0;
  Rig rig = tests::rig_of(tests::kOwl);
  {
    JournalWriter writer([&](const std::optional<Diagnostic>& fault) {
      ++told;
      if (fault) ++faults;
    });
    for (int i = 1; i <= 40; ++i) {
      rig.title = "owl " + std::to_string(i);
      writer.keep(file, {.file = "owl.rig.yaml", .rig = rig, .original_text = {}});
    }
    EXPECT_TRUE(writer.wait());
    EXPECT_TRUE(fs::exists(file));
    writer.remove(file);
  }
  EXPECT_FALSE(fs::exists(file));
  EXPECT_GE(told, 2);
  EXPECT_EQ(faults, 0);
}

TEST(Threads, UnitsAreReadByManyAtOnce) {
  const FieldInfo& inertia = *find_info("pan.motor.rotor_inertia");
  std::atomic<int> wrong = 0;
  at_once(4, [&](std::size_t thread) {
    for (std::size_t i = 1; i <= 300; ++i) {
      const std::string unit = i % 3 == 0 ? "g.cm2" : i % 3 == 1 ? "kg.mm2" : "gmm2";
      const double scale = i % 3 == 0 ? 1e-7 : i % 3 == 1 ? 1e-6 : 1e-9;
      const double number = static_cast<double>(i + thread);
      const auto read = read_quantity(std::to_string(i + thread) + " " + unit, inertia);
      const auto* quantity = std::get_if<Quantity>(&read);
      if (quantity == nullptr || std::abs(*quantity->si / (number * scale) - 1) > 1e-12) ++wrong;
    }
  });
  EXPECT_EQ(wrong, 0);
}

TEST(Threads, DataFilesAreReadByTheFirstOfManyThatAsk) {
  std::vector<double> found(8);
  at_once(found.size(), [&](std::size_t i) {
    found[i] =
        find_thread("M5")->diameter_m + ball_factors(0.3, 1).Y + wire_rules().circular_mil_per_A;
  });
  for (const double at : found) EXPECT_EQ(at, found.front());
}

}  // namespace
}  // namespace gazewright
