#include "app/window/body_rows.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QToolButton>

#include "app/window/document.h"
#include "app/window/parts.h"
#include "app/window/quantity_text.h"
#include "app/window/widgets.h"

namespace gazewright {

BodyControls::BodyControls(Document& document, const BodyPlace& place)
    : document_(document), place_(place) {
  carrier_ = calmCombo({tr("pan only"), tr("tilt")});
  carrier_->setObjectName(QStringLiteral("body.carrier"));
  shape_ = calmCombo({tr("ball"), tr("shell"), tr("tube"), tr("box"), tr("point"),
                      tr("inertia about its centre")});
  shape_->setObjectName(QStringLiteral("body.shape"));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(0, 0, 0, 0);
  form->addRow(tr("Turns with"), carrier_);
  form->addRow(tr("Shape"), shape_);
  up_ = textButton(QStringLiteral("↑"), tr("Move the body up in its list"));
  down_ = textButton(QStringLiteral("↓"), tr("Move the body down in its list"));
  auto* twin = textButton(tr("Duplicate"), tr("Add a copy of this body"));
  auto* away = textButton(tr("Remove"), tr("Take the body off the rig; undo brings it back"));
  twin->setObjectName(QStringLiteral("body.duplicate"));
  away->setObjectName(QStringLiteral("body.remove"));
  up_->setAccessibleName(tr("Up"));
  down_->setAccessibleName(tr("Down"));
  auto* line = new QHBoxLayout;
  line->setSpacing(4);
  for (QToolButton* button : {up_, down_, twin, away}) line->addWidget(button);
  line->addStretch();
  form->addRow(line);

  connectParts();
  connect(twin, &QToolButton::clicked, this, &BodyControls::duplicate);
  connect(away, &QToolButton::clicked, this, &BodyControls::removeBody);
  refresh();
}

void BodyControls::connectParts() {
  connect(carrier_, &QComboBox::activated, this, [this](int index) {
    const bool on_tilt = index == 1;
    const BodyPlace next{on_tilt, bodies_in(document_.rig(), on_tilt).size()};
    change(tr("carrier"), with_body_carried(document_.rig(), place_, on_tilt), next);
  });
  connect(shape_, &QComboBox::activated, this, [this](int index) {
    if (index == static_cast<int>(body().shape.index())) return;
    change(tr("shape"), with_shape(document_.rig(), place_, static_cast<std::size_t>(index)),
           place_);
  });
  const auto move = [this](int steps) {
    change(tr("order"), with_body_moved(document_.rig(), place_, steps),
           {place_.on_tilt, static_cast<std::size_t>(static_cast<int>(place_.index) + steps)});
  };
  connect(up_, &QToolButton::clicked, this, [move] { move(-1); });
  connect(down_, &QToolButton::clicked, this, [move] { move(1); });
}

void BodyControls::duplicate() {
  change(tr("duplicate"), with_body_doubled(document_.rig(), place_),
         {place_.on_tilt, place_.index + 1});
}

void BodyControls::removeBody() {
  const QString list = place_.on_tilt ? QStringLiteral("tilt.load") : QStringLiteral("pan.load");
  const QString what = tr("remove %1").arg(part_title(document_.rig(), path_of(place_)));
  const Rig after = with_body_removed(document_.rig(), place_);
  emit partChosen(list);  // this row is on its way out now, but not before the next event
  document_.edit(what, after);
}

const Body& BodyControls::body() const {
  return bodies_in(document_.rig(), place_.on_tilt)[place_.index];
}

void BodyControls::change(const QString& what, const Rig& after, const BodyPlace& next) {
  const QString title = part_title(document_.rig(), path_of(place_));
  if (after == document_.rig()) return;
  document_.edit(tr("%1: %2").arg(title, what), after);
  emit partChosen(QString::fromStdString(path_of(next)));
}

void BodyControls::refresh() {
  const std::size_t count = bodies_in(document_.rig(), place_.on_tilt).size();
  if (place_.index >= count) return;
  carrier_->setCurrentIndex(place_.on_tilt ? 1 : 0);
  shape_->setCurrentIndex(static_cast<int>(body().shape.index()));
  up_->setEnabled(place_.index > 0);
  down_->setEnabled(place_.index + 1 < count);
}

BodyList::BodyList(Document& document, bool on_tilt) : document_(document), on_tilt_(on_tilt) {
  setObjectName(on_tilt ? QStringLiteral("on_tilt row") : QStringLiteral("on_pan row"));
  layout_ = new QVBoxLayout(this);
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(3);
  layout_->addWidget(
      heading(on_tilt ? tr("Bodies that turn with tilt") : tr("Bodies that turn with pan only")));
  for (std::size_t i = 0; i < bodies_in(document.rig(), on_tilt).size(); ++i) {
    auto* button = textButton({}, tr("Show this body's card"));
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    const QString part = QString::fromStdString(path_of(BodyPlace{on_tilt, i}));
    connect(button, &QToolButton::clicked, this, [this, part] { emit partChosen(part); });
    buttons_.push_back(button);
    layout_->addWidget(button);
  }
  auto* add = textButton(tr("Add a body"), tr("Add a 60 mm ball of 100 g to start from"));
  add->setObjectName(QStringLiteral("body.add"));
  layout_->addWidget(add, 0, Qt::AlignLeft);
  connect(add, &QToolButton::clicked, this, [this] {
    const BodyPlace next{on_tilt_, bodies_in(document_.rig(), on_tilt_).size()};
    Document& rigs = document_;
    const QString part = QString::fromStdString(path_of(next));
    rigs.edit(tr("add a body"), with_new_body(rigs.rig(), on_tilt_));
    emit partChosen(part);
  });
  refresh();
}

void BodyList::refresh() {
  const auto& bodies = bodies_in(document_.rig(), on_tilt_);
  for (std::size_t i = 0; i < buttons_.size() && i < bodies.size(); ++i) {
    const QString mass = shown_quantity(bodies[i].mass_kg, body_mass_info());
    buttons_[i]->setText(part_title(document_.rig(), path_of(BodyPlace{on_tilt_, i})) +
                         QStringLiteral("  ") + (mass.isEmpty() ? tr("mass missing") : mass));
  }
}

}  // namespace gazewright
