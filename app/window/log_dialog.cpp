#include "app/window/log_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPromise>
#include <QPushButton>
#include <QtConcurrentRun>
#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/window/widgets.h"

namespace gazewright {
namespace {

using chart_parts::kMsPerS;
constexpr qint64 kMostBytes = 100'000'000, kChunk_bytes = 1'000'000;
constexpr int kSteps = 1000;

/// On a thread of its own. Half of the progress is for the disk, half for the numbers.
void read_file(QPromise<ReadLog>& promise, const QString& file) {
  promise.setProgressRange(0, kSteps);
  const auto go_on = [&promise](double part) {
    promise.setProgressValue(int(part * kSteps));
    return !promise.isCanceled();
  };
  const auto fail = [&promise](const QString& problem) { promise.addResult(ReadLog{{}, problem}); };
  QFile source(file);
  if (source.size() > kMostBytes) return fail(LogDialog::tr("the file is larger than 100 MB"));
  if (!source.open(QIODevice::ReadOnly))
    return fail(LogDialog::tr("the file cannot be read: %1").arg(source.errorString()));
  QByteArray bytes;
  while (!source.atEnd() && bytes.size() <= kMostBytes) {
    const QByteArray chunk = source.read(kChunk_bytes);
    if (chunk.isEmpty()) break;
    bytes += chunk;
    if (!go_on(0.5 * double(bytes.size()) / double(std::max<qint64>(source.size(), 1)))) return;
  }
  if (source.error() != QFileDevice::NoError)
    return fail(LogDialog::tr("the file cannot be read: %1").arg(source.errorString()));
  promise.addResult(read_log(QString::fromUtf8(bytes),
                             [&go_on](double part) { return go_on(0.5 + 0.5 * part); }));
}

QDoubleSpinBox* number_box(double value, double least, double most, int decimals, double step) {
  auto* box = calmed(new QDoubleSpinBox);
  box->setRange(least, most);
  box->setDecimals(decimals);
  box->setSingleStep(step);
  box->setValue(value);
  box->setKeyboardTracking(false);
  return box;
}

QVector<double> times(const QVector<double>& values, double factor) {
  QVector<double> result = values;
  for (double& value : result) value *= factor;
  return result;
}

/// The computed step of each axis, from the chart that shows it.
std::array<MeasuredLog, 2> models_of(const Chart& step) {
  std::array<MeasuredLog, 2> models;
  for (const Series& series : step.series) {
    if (!series.axis || series.line != Line::strong) continue;
    models[std::size_t(*series.axis)] = {times(series.x, 1 / kMsPerS), series.y};
  }
  return models;
}

Series line_of(const QString& name, std::optional<Axis> axis, Line line, const MeasuredLog& log) {
  return {.name = name,
          .axis = axis,
          .line = line,
          .x = times(log.time_s, kMsPerS),
          .y = log.angle_deg};
}

}  // namespace

LogDialog::LogDialog(const Chart& step, const Theme& theme, QWidget* parent)
    : QDialog(parent), step_(step), models_(models_of(step)) {
  setAttribute(Qt::WA_DeleteOnClose);
  setWindowTitle(tr("Measured move beside the computed one"));
  above_ = new ChartCanvas;
  below_ = new ChartCanvas;
  for (ChartCanvas* canvas : {above_, below_}) {
    canvas->setStyle(theme, font());
    canvas->setMinimumSize(320, 110);
  }
  above_->setAccessibleName(tr("Computed and measured angle"));
  below_->setAccessibleName(tr("Measured less computed angle"));
  words_ = sentencesLabel(tr("What the comparison says"));
  auto* charts = new QVBoxLayout;
  charts->addWidget(above_, 2);
  charts->addWidget(below_, 1);
  auto* middle = new QHBoxLayout;
  middle->addWidget(settings());
  middle->addLayout(charts, 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  progress_ = new QProgressBar;
  progress_->setAccessibleName(tr("Progress of reading"));
  progress_->setTextVisible(false);
  cancel_ = new QPushButton(tr("&Cancel"));
  cancel_->setObjectName(QStringLiteral("log.cancel"));
  auto* reading = new QHBoxLayout;
  reading->addWidget(progress_, 1);
  reading->addWidget(cancel_);
  connect(cancel_, &QPushButton::clicked, this, &LogDialog::cancelReading);
  connect(&reading_, &QFutureWatcherBase::progressRangeChanged, progress_, &QProgressBar::setRange);
  connect(&reading_, &QFutureWatcherBase::progressValueChanged, progress_, &QProgressBar::setValue);
  connect(&reading_, &QFutureWatcherBase::finished, this, &LogDialog::takeRead);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(middle, 1);
  layout->addLayout(reading);
  layout->addWidget(words_);
  layout->addWidget(buttons);
  showReading(false);
  resize(860, 520);
  refresh();
}

LogDialog::~LogDialog() {
  reading_.disconnect();
  reading_.cancel();
  reading_.waitForFinished();
}

void LogDialog::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() != QEvent::FontChange || !below_) return;
  for (ChartCanvas* canvas : {above_, below_}) canvas->setStyle(canvas->style().theme, font());
  refresh();
}

QWidget* LogDialog::settings() {
  auto* open = new QPushButton(tr("&Open a log…"));
  open->setToolTip(tr("CSV with two columns, time and angle; a first line may name ms, us or rad"));
  axis_ = calmed(new QComboBox);
  for (const Axis axis : kAxes) axis_->addItem(axis_word(axis));
  shift_ms_ = number_box(0, -1e6, 1e6, 3, 1);
  shift_ms_->setSuffix(tr(" ms"));
  scale_ = number_box(1, -1000, 1000, 5, 0.01);
  offset_deg_ = number_box(0, -3600, 3600, 4, 0.1);
  offset_deg_->setSuffix(QStringLiteral("°"));
  find_ = new QPushButton(tr("&Find the shift"));
  find_->setToolTip(tr("The shift that leaves the least difference"));
  auto* place = new QWidget;
  auto* form = new QFormLayout(place);
  form->setContentsMargins(0, 0, 0, 0);
  form->addRow(open);
  form->addRow(tr("&Axis"), axis_);
  form->addRow(tr("&Time shift"), shift_ms_);
  form->addRow(find_);
  form->addRow(tr("S&cale"), scale_);
  form->addRow(tr("O&ffset"), offset_deg_);
  connect(open, &QPushButton::clicked, this, [this] {
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Open a log"), {}, tr("Logs (*.csv *.tsv *.txt);;All files (*)"));
    if (!file.isEmpty()) openLog(file);
  });
  connect(find_, &QPushButton::clicked, this, &LogDialog::findShift);
  connect(axis_, &QComboBox::currentIndexChanged, this, &LogDialog::refresh);
  for (QDoubleSpinBox* box : {shift_ms_, scale_, offset_deg_})
    connect(box, &QDoubleSpinBox::valueChanged, this, &LogDialog::refresh);
  return place;
}

void LogDialog::openLog(const QString& file) {
  reading_.cancel();
  showReading(true);
  reading_.setFuture(QtConcurrent::run(read_file, file));
}

void LogDialog::cancelReading() { reading_.cancel(); }

void LogDialog::showReading(bool on) {
  progress_->setVisible(on);
  cancel_->setVisible(on);
}

void LogDialog::takeRead() {
  showReading(false);
  if (reading_.isCanceled() || reading_.future().resultCount() == 0) return;
  const ReadLog read = reading_.result();
  log_ = read.log;
  problem_ = read.problem;
  refresh();
}

void LogDialog::setLog(const QString& text) {
  const ReadLog read = read_log(text);
  log_ = read.log;
  problem_ = read.problem;
  refresh();
}

LogFit LogDialog::fit() const {
  return {shift_ms_->value() / kMsPerS, scale_->value(), offset_deg_->value()};
}

void LogDialog::setFit(const LogFit& fit) {
  shift_ms_->setValue(fit.shift_s * kMsPerS);
  scale_->setValue(fit.scale);
  offset_deg_->setValue(fit.offset_deg);
}

void LogDialog::setAxis(Axis axis) { axis_->setCurrentIndex(int(axis)); }

MeasuredLog LogDialog::model() const {
  return models_[std::size_t(std::clamp(axis_->currentIndex(), 0, 1))];
}

void LogDialog::findShift() {
  if (!log_) return;
  if (const auto shift_s = best_shift_s(model(), *log_, fit()))
    shift_ms_->setValue(*shift_s * kMsPerS);
}

LogResidual LogDialog::residual() const {
  return log_ ? residual_of(model(), *log_, fit()) : LogResidual{};
}

QString LogDialog::words() const { return words_->text(); }

void LogDialog::refresh() {
  const auto axis = Axis(std::clamp(axis_->currentIndex(), 0, 1));
  Chart above = step_, below = step_;
  for (Chart* chart : {&above, &below}) {
    chart->series.clear();
    chart->marks.clear();
    chart->bands.clear();
    chart->stretches.clear();
    chart->legend.clear();
    chart->notes.clear();
  }
  above.series << line_of(tr("Computed"), axis, Line::strong, model());
  above.legend = {{tr("computed"), axis, Line::strong}, {tr("measured"), {}, Line::dashed}};
  below.y_title = axis_title(tr("Measured less computed"), QStringLiteral("°"));
  find_->setEnabled(log_.has_value());
  if (log_) {
    const LogResidual residual = this->residual();
    above.series << line_of(tr("Measured"), {}, Line::dashed, fitted(*log_, fit()));
    below.series << line_of(tr("Difference"), {}, Line::strong,
                            {residual.time_s, residual.angle_deg});
    words_->setText(
        residual.time_s.isEmpty()
            ? tr("The two share no time. Shift the log, or find the shift.")
            : tr("%n points compared: rms %1°, at most %2°.", nullptr,
                 static_cast<int>(residual.time_s.size()))
                  .arg(number_text(residual.rms_deg), number_text(residual.largest_deg)));
  } else {
    below.message = tr("Open a log of a real move: time and angle from rest, as CSV.");
    words_->setText(problem_.isEmpty() ? QString() : tr("No log: %1.").arg(problem_));
  }
  above.y = y_range(above, above.x);
  below.y = y_range(below, below.x);
  for (const auto& [canvas, chart] : {std::pair{above_, &above}, std::pair{below_, &below}}) {
    canvas->setChart(*chart);
    canvas->setView(chart->x, chart->y);
    canvas->replot(QCustomPlot::rpQueuedReplot);
  }
}

}  // namespace gazewright
