#include "app/plots/dial_view.h"
#include "app/plots/text.h"
#include "app/window/card.h"
#include "app/window/edits.h"
#include "app/window/main_window.h"
#include "app/window/parts.h"

/// The travel dials, in the drawing and in the plots: a mark that is moved changes the field that
/// makes it.
namespace gazewright {

void MainWindow::connectDials() {
  dials_.clear();
  for (TravelDial* dial : findChildren<TravelDial*>()) {
    dials_.emplace_back(dial);
    connect(dial, &TravelDial::moved, this, &MainWindow::moveMark, Qt::UniqueConnection);
    connect(dial, &TravelDial::dragStarted, this, &MainWindow::startDialDrag, Qt::UniqueConnection);
    connect(dial, &TravelDial::dragEnded, this, &MainWindow::endDrag, Qt::UniqueConnection);
    connect(dial, &TravelDial::takenBack, this, &MainWindow::takeDialDragBack,
            Qt::UniqueConnection);
    connect(dial, &TravelDial::fieldChosen, this, &MainWindow::typeField, Qt::UniqueConnection);
  }
  showMarks();
}

/// At once, before the analysis is in.
void MainWindow::showMarks() {
  const Rig full = with_defaults(document_.rig());
  for (Axis axis : kAxes) {
    const DialPicture picture = dial_picture(document_.rig(), axis, travel_of(full.axis(axis)));
    for (const auto& dial : dials_) {
      if (dial && dial->axis() == axis) dial->setPicture(picture);
    }
  }
}

void MainWindow::startDialDrag() {
  before_drag_ = document_.rig();
  startDrag();
}

/// A drag always starts from the rig before it, so that it may come back; a key from the present
/// one.
void MainWindow::moveMark(const DialMove& move) {
  if (!move.continues) dial_drag_id_ = Document::newDragId();
  const Rig& from = dragging_ ? before_drag_ : document_.rig();
  const std::string axis = name_of(move.axis);
  Rig after = from;
  for (const MarkField& field : fields_for_mark(with_defaults(from).axis(move.axis), move.mark,
                                                move.angle_rad, move.one_side)) {
    after = with_value(std::move(after), axis + "." + field.key, field.si);
  }
  const std::string path = axis + "." + move.mark.field;
  const FieldInfo* info = find_info(path);
  if (!info) return;
  document_.edit(tr("%1: %2").arg(mid_sentence(part_title(after, card_of(path))),
                                  mid_sentence(worded(info->label))),
                 after, dial_drag_id_);
}

void MainWindow::takeDialDragBack() {
  document_.edit(tr("drag taken back"), before_drag_, dial_drag_id_);
}

void MainWindow::typeField(const QString& path) {
  select(path);
  card_->focusField(path.toStdString());
}

}  // namespace gazewright
