#include "app/window/command_line.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QIcon>
#include <QRegularExpression>
#include <QScreen>
#include <cstdio>
#include <variant>

#include "app/window/data_folder.h"
#include "app/window/edits.h"
#include "app/window/language.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/plots_panel.h"
#include "app/window/plurals.h"
#include "core/data/data_library.h"
#include "gazewright_version.h"

namespace gazewright {
namespace {

constexpr const char* kUsage =
    R"(Usage: gazewright [RIG]
       gazewright --picture FILE.png [--size WxH] [--dark] [--text PERCENT]
                  [--select PART] [--plots KIND,KIND...] RIG
       gazewright --data FOLDER [RIG]

Opens the window on a rig file (*.rig.yaml), or on a sample rig when none is named.

  --picture FILE.png  write a picture of the window with the finished analysis and quit;
                      needs no display
  --size WxH          size of the picture, 1440x900 unless said otherwise
  --dark              the picture in dark colours
  --text PERCENT      size of its text, 80 to 200 percent of the usual
  --language WORD     en, de, or desktop for that of the desktop; usually as in the settings
  --select PART       whose card the picture shows, for instance tilt.motor or on_tilt[0]
  --plots KIND,...    which plots it shows, two to six: step, time-ratio, torque-speed, speed,
                      current, both, frequency-response, profiles, travel, travel-speed,
                      reach, inertia, tracking, eye-time, eye-speed,
                      heat, bus, gravity, margins, pointing
  --data FOLDER       data files of your own from there (usually gazewright/data in
                      $XDG_DATA_HOME, else ~/.local/share)
  --help              this text
  --version           the version

gazewright-batch gives figures, traces, sweeps and sheets without a window.
Exit status: 0 done, 2 wrong usage, 3 unreadable or invalid rig or target.
)";

struct Request {
  QString rig, picture, select, data = QString::fromStdString(own_data_folder().string());
  std::vector<PlotKind> plots;
  QSize size{1440, 900};
  bool dark = false;
  int text_percent = 100;
  QString language{};  ///< empty: as in the settings
};

int complain(const QString& problem) {
  std::fprintf(stderr, "gazewright: %s\nTry gazewright --help.\n", qPrintable(problem));
  return 2;
}

bool add_plots(Request& request, const QString& keys) {
  for (const QString& key : keys.split(',')) {
    const auto kind = plot_kind(key);
    if (!kind) return false;
    request.plots.push_back(*kind);
  }
  return true;
}

/// An option and its value. @returns 0, or the exit status
int take_value(Request& request, const QString& word, const QString& value) {
  if (word == QStringLiteral("--picture")) request.picture = value;
  if (word == QStringLiteral("--select")) request.select = value;
  if (word == QStringLiteral("--data")) {
    if (!QFileInfo(value).isDir()) return complain("there is no folder " + value);
    request.data = value;
  }
  if (word == QStringLiteral("--plots") && !add_plots(request, value)) {
    return complain("--plots wants kinds with commas between, for instance travel,reach");
  }
  if (word == QStringLiteral("--language")) {
    if (!languages().contains(value)) return complain("--language wants " + languages().join(", "));
    request.language = value;
  }
  if (word == QStringLiteral("--text")) {
    request.text_percent = value.toInt();
    if (request.text_percent < kTextSizes.front() || request.text_percent > kTextSizes.back())
      return complain("--text wants a number from 80 to 200");
  }
  if (word == QStringLiteral("--size")) {
    static const QRegularExpression size(QStringLiteral("^(\\d{3,4})x(\\d{3,4})$"));
    const auto match = size.match(value);
    if (!match.hasMatch()) return complain("--size wants width x height, for instance 1440x900");
    request.size = {match.captured(1).toInt(), match.captured(2).toInt()};
  }
  return 0;
}

/// The request, or an exit status where there is nothing more to do.
std::variant<Request, int> read_arguments(const QStringList& arguments) {
  Request request;
  for (qsizetype i = 1; i < arguments.size(); ++i) {
    const QString& word = arguments[i];
    if (word == QStringLiteral("--help") || word == QStringLiteral("-h")) {
      std::fputs(kUsage, stdout);
      return 0;
    }
    if (word == QStringLiteral("--version")) {
      std::printf("gazewright %s\n", kVersion);
      return 0;
    }
    if (word == QStringLiteral("--dark")) {
      request.dark = true;
      continue;
    }
    if (word == QStringLiteral("-reverse")) continue;  // Qt's own: from right to left
    static const QStringList with_value{QStringLiteral("--picture"), QStringLiteral("--size"),
                                        QStringLiteral("--select"),  QStringLiteral("--plots"),
                                        QStringLiteral("--data"),    QStringLiteral("--text"),
                                        QStringLiteral("--language")};
    const bool takesValue = with_value.contains(word);
    if (!takesValue && word.startsWith('-')) return complain("unknown option " + word);
    if (!takesValue) {
      if (!request.rig.isEmpty()) return complain("one rig at a time, please");
      request.rig = word;
      continue;
    }
    if (++i >= arguments.size()) return complain(word + " needs a value");
    if (const int status = take_value(request, word, arguments[i])) return status;
  }
  if (!request.picture.isEmpty() && request.rig.isEmpty()) {
    return complain("--picture needs a rig file");
  }
  return request;
}

void set_up(QApplication& app) {
  app.setApplicationName(QStringLiteral("gazewright"));
  app.setApplicationDisplayName(QStringLiteral("Gazewright"));
  app.setApplicationVersion(QString::fromUtf8(kVersion));
  app.setDesktopFileName(QStringLiteral("org.gazewright.Gazewright"));
  app.installTranslator(new Plurals(&app));
  app.setWindowIcon(
      QIcon::fromTheme(QStringLiteral("org.gazewright.Gazewright"),
                       QIcon(QStringLiteral(":/icons/org.gazewright.Gazewright.svg"))));
}

int take_picture(const Request& request, const std::vector<Diagnostic>& faults) {
  WindowSetup setup;
  setup.theme = request.dark ? QStringLiteral("dark") : QStringLiteral("light");
  setup.text_percent = request.text_percent;
  setup.remember = false;
  MainWindow window(setup);
  window.resize(request.size);
  if (!window.openFile(request.rig)) {
    for (const Diagnostic& diagnostic : load_rig(request.rig.toStdString()).diagnostics) {
      std::fprintf(stderr, "%s\n", to_text(diagnostic).c_str());
    }
    return 3;
  }
  tell_own_data(window.messages(), faults);
  if (!request.select.isEmpty()) window.select(request.select);
  if (!request.plots.empty()) window.plots().setKinds(request.plots);
  window.show();
  QElapsedTimer patience;
  patience.start();
  while ((!window.recompute().isSettled() || window.areDoubtsAwaited()) &&
         patience.elapsed() < 60000) {
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 100);
  }
  QCoreApplication::processEvents();
  if (window.grab().save(request.picture)) return 0;
  std::fprintf(stderr,
               "%s: cannot write the picture; check the folder, its rights and the ending "
               "(.png)\n",
               qPrintable(request.picture));
  return 3;
}

}  // namespace

int run_window(int argc, char** argv) {
  QStringList arguments;
  for (int i = 0; i < argc; ++i) arguments << QString::fromLocal8Bit(argv[i]);
  const auto read = read_arguments(arguments);
  if (const int* status = std::get_if<int>(&read)) return *status;
  const Request& request = std::get<Request>(read);
  const bool platformSet = qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
  if (!request.picture.isEmpty() && !platformSet) qputenv("QT_QPA_PLATFORM", "offscreen");
  if (request.picture.isEmpty() && !platformSet && !qEnvironmentVariableIsSet("DISPLAY") &&
      !qEnvironmentVariableIsSet("WAYLAND_DISPLAY")) {
    return complain("there is no display; use --picture, or gazewright-batch for figures");
  }
  QApplication app(argc, argv);
  set_up(app);
  use_language(app,
               request.language.isEmpty() ? Settings().preferences().language : request.language);
  const std::vector<Diagnostic> faults = take_own_data(request.data);
  if (!request.picture.isEmpty()) return take_picture(request, faults);
  MainWindow window;
  if (request.rig.isEmpty()) {
    window.openFirst();
  } else {
    window.openOrStartBlank(request.rig);
  }
  tell_own_data(window.messages(), faults);
  // The usual size, or that of a larger screen, may be more than there is.
  window.resize(window.size().boundedTo(window.screen()->availableSize()));
  window.show();
  return QApplication::exec();
}

}  // namespace gazewright
