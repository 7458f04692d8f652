#include <benchmark/benchmark.h>

#ifdef GAZEWRIGHT_HAS_WINDOW
#include <QApplication>
#endif

// Benchmarks of core need nothing; those of the window need an application, drawn off screen.
int main(int argc, char** argv) {
#ifdef GAZEWRIGHT_HAS_WINDOW
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
#endif
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  benchmark::RunSpecifiedBenchmarks();
}
