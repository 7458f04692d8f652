#include "app/window/fit_dialog.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QProgressBar>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/window/clean_registers.h"
#include "app/window/missing_links.h"
#include "app/window/widgets.h"
#include "core/analysis/say.h"

namespace gazewright {
namespace {

constexpr int kPoll_ms = 50;
constexpr std::size_t kMostNotes = 8;

QString count_text(std::size_t count) { return QLocale().toString(static_cast<qulonglong>(count)); }

/// What a simulated row goes without, and why.
QString gone_without(const FitSimulated& simulated) {
  QString text;
  if (!simulated.settle_needs.empty())
    text += '\n' + FitDialog::tr("Whether it settles is unknown: it %1.")
                       .arg(QString::fromStdString(say_needs(simulated.settle_needs)));
  for (const Axis axis : kAxes)
    if (const auto& why = simulated.no_gains[static_cast<std::size_t>(axis)]; !why.empty())
      text += '\n' + FitDialog::tr("No gains are advised for %1: %2")
                         .arg(worded(name_of(axis)), QString::fromStdString(why));
  return text;
}

/// The reason of a row; once simulated, also what is missing and what fails.
QString row_reason(const FitRow& row) {
  QString text = QString::fromStdString(row.reason);
  if (!row.simulated) return text;
  text += gone_without(*row.simulated);
  if (row.simulated->failing.empty()) return text;
  QStringList failing;
  for (const std::string& what : row.simulated->failing) failing << QString::fromStdString(what);
  return text + '\n' +
         FitDialog::tr("Simulated, it fails in: %1").arg(failing.join(QStringLiteral("; ")));
}

QString parts_text(const Shelf& shelf, const FitParts& parts) {
  const auto name = [&](std::size_t entry) {
    return QString::fromStdString(shelf.entries[entry].part.name);
  };
  QString text = name(parts.motor) + '\n' + name(parts.gearbox);
  if (parts.drive) text += '\n' + name(*parts.drive);
  return text;
}

QString findings_text(const FitSimulated& simulated) {
  QStringList words;
  if (simulated.fails > 0) words << FitDialog::tr("%1 fail").arg(simulated.fails);
  if (simulated.tight > 0) words << FitDialog::tr("%1 tight").arg(simulated.tight);
  return words.isEmpty() ? FitDialog::tr("all hold") : words.join(QStringLiteral(", "));
}

QString summary_text(const Fits& fits) {
  if (!fits.missing.empty())
    return FitDialog::tr("No ranking: the rig lacks %n inputs, see below.", nullptr,
                         static_cast<int>(fits.missing.size()));
  if (!fits.because.empty())
    return FitDialog::tr("No ranking: %1.").arg(gazewright::reason_text(fits.because));
  QString text =
      FitDialog::tr("%Ln combinations: %1 fit, %2 fail, %3 lack data.", nullptr,
                    static_cast<int>(fits.combinations))
          .arg(count_text(fits.fitting), count_text(fits.failing), count_text(fits.lacking));
  QStringList by;
  for (const FitLimit limit : kFitLimits)
    if (const auto count = fits.failing_by[static_cast<std::size_t>(limit)]; count > 0)
      by << QStringLiteral("%1 %2").arg(worded(words_of(limit)), count_text(count));
  if (!by.isEmpty()) text += FitDialog::tr(" They fail by: %1.").arg(by.join(QStringLiteral(", ")));
  if (fits.is_stopped) text = FitDialog::tr("Cancelled. Until then: ") + text;
  return text;
}

/// What the rig lacks, as links to its fields; empty where it lacks nothing.
QString lacking_text(const Rig& rig, const Fits& fits) {
  QStringList lines;
  const auto add = [&](const QString& head, const std::vector<std::string>& paths) {
    if (!paths.empty())
      lines << QStringLiteral("%1<br>%2").arg(head.toHtmlEscaped(), missing_links(rig, paths));
  };
  add(FitDialog::tr("Fill in these, then rank again:"), fits.missing);
  add(FitDialog::tr("Missing for single measures, for the simulation and for advised gains:"),
      fits.also_missing);
  return lines.join(QStringLiteral("<br>"));
}

QString notes_text(const Fits& fits, const Shelf& shelf) {
  QStringList notes;
  for (std::size_t i = 0; i < std::min(kMostNotes, fits.needs.size()); ++i)
    notes << FitDialog::tr("Not ranked: %1 %2")
                 .arg(QString::fromStdString(shelf.entries[fits.needs[i].entry].part.name),
                      QString::fromStdString(say_needs(fits.needs[i].fields, 3)));
  if (fits.needs.size() > kMostNotes)
    notes << FitDialog::tr("and %n parts more", nullptr,
                           static_cast<int>(fits.needs.size() - kMostNotes));
  for (const std::string& remark : fits.remarks) notes << QString::fromStdString(remark);
  if (fits.compared > 0)
    notes << FitDialog::tr("Of %1 pairs of simulated ones, %2 stand in the order of the ranking.")
                 .arg(fits.compared)
                 .arg(fits.same_order);
  return notes.join('\n');
}

}  // namespace

/// What the thread and the dialog share.
struct FitDialog::Job {
  std::atomic<std::size_t> done = 0, all = 0;
  std::atomic<bool> ranked = false, finished = false;
  Fits ranking, fits;  ///< readable once ranked, finished
  bool is_ranking_shown = false;
};

FitDialog::FitDialog(QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("fits"));
  setWindowTitle(tr("Which parts fit best"));
  setModal(false);
  build();
  poll_.setInterval(kPoll_ms);
  connect(&poll_, &QTimer::timeout, this, &FitDialog::poll);
}

FitDialog::~FitDialog() = default;

void FitDialog::build() {
  summary_ = sentencesLabel(tr("Summary of the ranking"));
  table_ = new QTableWidget(0, 7);
  table_->setObjectName(QStringLiteral("fit table"));
  table_->setAccessibleName(tr("Combinations, the best first"));
  table_->setHorizontalHeaderLabels({tr("Pan"), tr("Tilt"), tr("Shortest"), tr("Settles"),
                                     tr("Findings"), tr("Least margin"), tr("Mass")});
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setTabKeyNavigation(false);
  table_->setShowGrid(false);
  for (const int parts : {0, 1})
    table_->horizontalHeader()->setSectionResizeMode(parts, QHeaderView::Stretch);
  table_->setAlternatingRowColors(true);
  lacking_ = linksLabel(tr("What the rig lacks"));
  lacking_->setObjectName(QStringLiteral("fit lacking"));
  lacking_->hide();
  reason_ = sentencesLabel(tr("Why this combination stands here"));
  reason_->setObjectName(QStringLiteral("fit reason"));
  notes_ = sentencesLabel(tr("What was not counted"));
  setKind(notes_, "note");
  progress_ = new QProgressBar;
  progress_->setAccessibleName(tr("Progress of the ranking"));
  progress_->setTextVisible(false);
  cancel_ = textButton(tr("&Cancel"), tr("End the ranking with what there is"),
                       QStringLiteral("fit cancel"));
  again_ = textButton(tr("Rank &again"), tr("Rank for the rig as it is now"),
                      QStringLiteral("fit again"));
  drives_ = new QCheckBox(tr("Try the shelf's &drives too"));
  auto* row = new QHBoxLayout;
  row->addWidget(drives_);
  row->addWidget(again_);
  row->addWidget(progress_, 1);
  row->addStretch(0);
  row->addWidget(cancel_);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(summary_);
  layout->addWidget(lacking_);
  layout->addWidget(table_, 1);
  layout->addWidget(reason_);
  layout->addWidget(notes_);
  layout->addLayout(row);
  resize(1040, 620);
  connect(lacking_, &QLabel::linkActivated, this, &FitDialog::fieldWanted);
  connect(cancel_, &QToolButton::clicked, this, &FitDialog::cancel);
  connect(again_, &QToolButton::clicked, this, &FitDialog::rankWanted);
  connect(drives_, &QCheckBox::toggled, this, &FitDialog::rankWanted);
  connect(table_, &QTableWidget::cellClicked, this, [this](int at, int) { want(at); });
  connect(table_, &QTableWidget::cellActivated, this, [this](int at, int) { want(at); });
  connect(table_, &QTableWidget::currentCellChanged, this, &FitDialog::showReason);
}

void FitDialog::setRunning(bool running) {
  running_ = running;
  progress_->setVisible(running);
  cancel_->setVisible(running);
  again_->setEnabled(!running);
  running ? poll_.start() : poll_.stop();
}

void FitDialog::start(const Rig& rig, const std::shared_ptr<const Shelf>& shelf) {
  job_ = std::make_shared<Job>();
  rig_ = rig;
  shelf_ = shelf;
  summary_->setText(tr("Weighing every motor with every gearbox …"));
  progress_->setValue(0);
  setRunning(true);
  thread_.request_stop();
  // The ranking before ends by itself; the new thread waits for it, not the window.
  thread_ = std::jthread(
      [job = job_, before = std::move(thread_), rig, shelf,
       options = FitOptions{.drives = drives_->isChecked()}](const std::stop_token& token) mutable {
        if (before.joinable()) before.join();
        clean_registers();
        const auto told = [job](std::size_t done, std::size_t all) {
          job->done = done;
          job->all = all;
        };
        FitOptions ranks = options;
        ranks.simulated = 0;
        job->fits = job->ranking = rank_fits(rig, *shelf, ranks, told, token);
        job->ranked = true;
        simulate_fits(job->fits, rig, *shelf, options, token);
        job->fits.is_stopped = token.stop_requested();
        job->finished = true;
      });
}

/// The ranking is shown as soon as it is there, the simulations when they are.
void FitDialog::poll() {
  const std::size_t all = job_->all;
  progress_->setRange(0, job_->ranked ? 0 : 1000);
  if (!job_->ranked) progress_->setValue(all > 0 ? static_cast<int>(1000 * job_->done / all) : 0);
  if (job_->ranked && !job_->finished && !job_->is_ranking_shown) {
    job_->is_ranking_shown = true;
    showFits(job_->ranking);
    summary_->setText(summary_->text() + tr(" The best are being simulated …"));
  }
  if (!job_->finished) return;
  setRunning(false);
  showFits(job_->fits);
  emit finished();
}

void FitDialog::cancel() { thread_.request_stop(); }

void FitDialog::showFits(const Fits& fits) {
  fits_ = fits;
  summary_->setText(summary_text(fits));
  lacking_->setText(lacking_text(rig_, fits));
  lacking_->setVisible(!lacking_->text().isEmpty());
  notes_->setText(notes_text(fits, *shelf_));
  notes_->setVisible(!notes_->text().isEmpty());
  table_->clearContents();
  table_->setRowCount(static_cast<int>(fits.rows.size()));
  for (int i = 0; i < table_->rowCount(); ++i) showRow(i, fits.rows[static_cast<std::size_t>(i)]);
  table_->resizeRowsToContents();
  table_->resizeColumnsToContents();
  showReason();
}

void FitDialog::showRow(int row, const FitRow& fit) {
  const double time_s = std::max(fit.time_s[0], fit.time_s[1]);
  const auto milliseconds = [](double value_s) { return format_value(value_s, "s", "ms"); };
  QString settles, findings;
  if (fit.simulated) {
    const auto slower = fit.simulated->slower_s();
    settles = slower                                ? milliseconds(*slower)
              : fit.simulated->settle_needs.empty() ? tr("never")
                                                    : tr("unknown");
    findings = findings_text(*fit.simulated);
  }
  const QString texts[] = {parts_text(*shelf_, fit.parts[0]),
                           parts_text(*shelf_, fit.parts[1]),
                           std::isfinite(time_s) ? milliseconds(time_s) : tr("no move"),
                           settles,
                           findings,
                           (fit.fits ? QString() : QStringLiteral("✕ ")) + margin_text(fit.margin),
                           format_value(fit.mass_kg, "kg", "g")};
  for (int column = 0; column < static_cast<int>(std::size(texts)); ++column) {
    auto* cell = new QTableWidgetItem(texts[column]);
    cell->setToolTip(QStringLiteral("<p>%1</p>").arg(row_reason(fit).toHtmlEscaped()));
    if (column >= 2) cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    table_->setItem(row, column, cell);
  }
  table_->setVerticalHeaderItem(row, new QTableWidgetItem(QString::number(fit.rank)));
}

void FitDialog::showReason() {
  const auto row = static_cast<std::size_t>(table_->currentRow());
  reason_->setText(row < fits_.rows.size() ? row_reason(fits_.rows[row])
                   : fits_.rows.empty()    ? QString()
                                           : tr("Press a row to try it; undo takes it back."));
}

void FitDialog::want(int row) {
  const auto at = static_cast<std::size_t>(row);
  if (at < fits_.rows.size()) emit rowWanted(fits_.rows[at], *shelf_);
}

QString FitDialog::summary() const { return summary_->text(); }
QString FitDialog::lacking() const { return plain_text(*lacking_); }
QString FitDialog::reason() const { return reason_->text(); }

}  // namespace gazewright
