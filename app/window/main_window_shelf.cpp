#include <QDropEvent>
#include <QFutureWatcher>
#include <QMenu>
#include <QMimeData>
#include <QToolButton>
#include <QtConcurrent>
#include <functional>

#include "app/plots/text.h"
#include "app/window/card.h"
#include "app/window/drive_line.h"
#include "app/window/fit_dialog.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/parts.h"
#include "app/window/ratio_scale.h"
#include "app/window/shelf_list.h"
#include "app/window/shelf_panel.h"

/// The parts shelf beside the window: put a part on an axis, keep one, rank them all.
namespace gazewright {
namespace {

/// Takes parts of the shelf that are dropped on a drive line.
class PartDrop : public QObject {
 public:
  using Take = std::function<void(std::size_t entry)>;
  PartDrop(QWidget* line, Take take) : QObject(line), take_(std::move(take)) {
    line->setAcceptDrops(true);
    line->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    switch (event->type()) {
      case QEvent::DragEnter:
      case QEvent::DragMove:
      case QEvent::Drop:
        break;
      default:
        return QObject::eventFilter(watched, event);
    }
    auto* drop = static_cast<QDropEvent*>(event);
    const QByteArray entry = drop->mimeData()->data(QString::fromLatin1(kPartMime));
    if (entry.isEmpty()) {
      drop->ignore();  // a file: the window takes it
      return true;
    }
    drop->acceptProposedAction();
    if (event->type() == QEvent::Drop) take_(entry.toULongLong());
    return true;
  }

 private:
  Take take_;
};

}  // namespace

void MainWindow::connectShelf() {
  actions_.on("show.shelf", [this] { showShelf(); });
  actions_.on("axis.fit", [this] { showFits(); });
  actions_.on("edit.to_shelf", [this] { keepSelectedPart(); });
  for (const Axis axis : kAxes) {
    new PartDrop(&driveLine(axis), [this, axis](std::size_t entry) {
      const auto& on_shelf = shelf().shelf();
      if (on_shelf && entry < on_shelf->entries.size()) putOn(axis, on_shelf->entries[entry].part);
    });
  }
  // The card's list of parts ends with what can be done with the one it shows.
  const auto* title = card_->findChild<QToolButton*>(QStringLiteral("card.title"));
  QMenu* menu = title->menu();
  connect(menu, &QMenu::aboutToShow, this, [this, menu] {
    if (!part_kind(card_->part())) return;
    menu->addSeparator();
    menu->addAction(actions_["edit.to_shelf"]);
  });
}

ShelfPanel& MainWindow::shelf() {
  if (!shelf_) {
    shelf_ = new ShelfPanel(usual_shelf_folder(), this);
    connect(shelf_, &ShelfPanel::partWanted, this,
            [this](std::optional<Axis> axis, const ShelfPart& part) {
              putOn(axis ? *axis : axis_of_part(card_->part()).value_or(Axis::pan), part);
            });
    connect(shelf_, &ShelfPanel::fitWanted, this, &MainWindow::showFits);
    connect(shelf_, &ShelfPanel::shelfChanged, this, [this] { useShelf(shelf_->shelf()); });
    shelf_->load();
  }
  return *shelf_;
}

/// Once the first figures are there: nobody waits for the disk. The shelf is only read; its folder
/// is made when somebody opens it.
void MainWindow::readStock() {
  if (stock_) return;
  stock_.emplace();
  using Read = std::shared_ptr<const Shelf>;
  auto* watcher = new QFutureWatcher<Read>(this);
  connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher] {
    if (!shelf_ || !shelf_->shelf()) useShelf(watcher->result());
    watcher->deleteLater();
  });
  watcher->setFuture(QtConcurrent::run([folder = usual_shelf_folder()] {
    return Read(std::make_shared<const Shelf>(load_shelf(folder)));
  }));
}

/// The ticks of the ratios, and what the card holds named parts against.
void MainWindow::useShelf(const std::shared_ptr<const Shelf>& shelf) {
  card_->setShelf(shelf);
  std::vector<double> ratios = gearbox_ratios(*shelf);
  if (stock_ == ratios) return;
  for (DriveLine* line : lines_) line->ratioScale()->setStock(ratios);
  stock_ = std::move(ratios);
  feedPlots();
}

void MainWindow::showShelf() {
  shelf().show();
  shelf().raise();
  shelf().activateWindow();
  shelf().list().setFocus();
}

void MainWindow::putOn(Axis axis, const ShelfPart& part) {
  const bool has_axis = is_of_axis(part.kind());
  const std::string path =
      (has_axis ? std::string(name_of(axis)) + "." : std::string()) + name_of(part.kind());
  document_.edit(tr("%1: %2").arg(mid_sentence(part_title(document_.rig(), path)),
                                  QString::fromStdString(part.name)),
                 put_on(document_.rig(), axis, part));
  select(QString::fromStdString(path));
}

void MainWindow::keepSelectedPart() {
  const std::string part = card_->part();
  const auto kind = part_kind(part);
  if (!kind) {
    messages_->showNotice(
        tr("The shelf keeps motors, gearboxes, drives, bearings, cables, cameras and supplies. "
           "Show the card of one of them first."));
    return;
  }
  shelf().add(part_of(document_.rig(), axis_of_part(part).value_or(Axis::pan), *kind));
  shelf().show();
}

void MainWindow::showFits() {
  if (!fits_) {
    fits_ = new FitDialog(this);
    connect(fits_, &FitDialog::rankWanted, this, &MainWindow::rankShelf);
    connect(fits_, &FitDialog::rowWanted, this, &MainWindow::tryFit);
    connect(fits_, &FitDialog::fieldWanted, this, [this](const QString& path) {
      raise();
      activateWindow();
      typeField(path);
    });
    connect(&shelf(), &ShelfPanel::shelfChanged, this, [this] {
      if (rank_waits_) rankShelf();
    });
  }
  fits_->show();
  fits_->raise();
  fits_->activateWindow();
  rankShelf();
}

void MainWindow::rankShelf() {
  rank_waits_ = shelf().isBusy() || !shelf().shelf();
  if (rank_waits_) return;
  fit_drag_id_ = Document::newDragId();
  fits_->start(document_.rig(), shelf().shelf());
}

/// Rows tried one after the other are one step of the history.
void MainWindow::tryFit(const FitRow& row, const Shelf& ranked) {
  document_.edit(tr("parts of the shelf, rank %1").arg(row.rank),
                 with_fit(document_.rig(), ranked, row), fit_drag_id_);
}

}  // namespace gazewright
