#include "app/window/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/window/body_rows.h"
#include "app/window/choice_rows.h"
#include "app/window/document.h"
#include "app/window/field_label.h"
#include "app/window/limits_row.h"
#include "app/window/list_rows.h"
#include "app/window/material_names.h"
#include "app/window/parts.h"
#include "app/window/path_rows.h"
#include "app/window/plan_row.h"
#include "app/window/quantity_field.h"
#include "app/window/tracking_row.h"
#include "app/window/widgets.h"

namespace gazewright {

Card::Card(Document& document, QWidget* parent)
    : QFrame(parent), document_(document), theme_(theme_for(ThemeKind::light)) {
  setKind(this, "card");
  title_ = elidedButton({}, tr("Show the card of another part"));
  title_->setObjectName(QStringLiteral("card.title"));
  title_->setPopupMode(QToolButton::InstantPopup);
  title_->setMenu(new QMenu(title_));
  title_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  connect(title_->menu(), &QMenu::aboutToShow, this, &Card::fillPartMenu);
  place_ = textButton(tr("Drawing"), tr("Show the drawing in place of the card"));
  place_->hide();
  auto* top = new QHBoxLayout;
  top->addWidget(title_, 1);
  top->addWidget(place_);
  scroll_ = new QScrollArea(this);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->setFocusPolicy(Qt::NoFocus);
  help_ = quietLabel();
  help_->setWordWrap(true);
  help_->hide();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 4, 4);
  layout->setSpacing(6);
  layout->addLayout(top);
  layout->addWidget(scroll_, 1);
  layout->addWidget(help_);
  connect(&document_, &Document::rigChanged, this, &Card::refresh);
  rebuild();
}

void Card::showPart(const std::string& part) {
  const std::string card = card_of(part);
  if (card != part_) {
    part_ = card;
    rebuild();
  }
  if (part == card) return;
  unfold(QString::fromStdString(part));
  for (CardRow* row : rows_) {
    if (!row->objectName().startsWith(QString::fromStdString(part))) continue;
    scroll_->widget()->layout()->activate();
    scroll_->verticalScrollBar()->setValue(row->y());
    return;
  }
}

void Card::setAnalysis(const Analysis& analysis) {
  analysis_ = &analysis;
  for (CardRow* row : rows_) row->showCost(analysis);
}

void Card::setShelf(std::shared_ptr<const Shelf> shelf) {
  shelf_ = std::move(shelf);
  for (CardRow* row : rows_) row->refresh();
}

void Card::setTheme(const Theme& theme) {
  theme_ = theme;
  const auto axis = axis_of_part(part_);
  const QColor colour = axis ? axis_text_colour(theme_, *axis) : theme_.text;
  title_->setStyleSheet(QStringLiteral("color: %1; font-weight: bold;").arg(colour.name()));
}

QString Card::structure() const {
  Rig rig = document_.rig();
  QString text = QString::fromStdString(part_);
  for (const CardSection& section : card_sections(document_.rig(), part_)) {
    for (const FieldRef& field : fields_under(rig, section.prefix)) {
      text += QChar(' ') + QString::fromStdString(path_of(field));
    }
  }
  return text + QStringLiteral(" %1 %2").arg(rig.on_pan.size()).arg(rig.on_tilt.size());
}

void Card::refresh() {
  if (part_.starts_with("on_") && !body_place(document_.rig(), part_)) {
    part_ = part_.starts_with("on_tilt") ? "tilt.load" : "pan.load";
  }
  if (structure() != structure_) {
    rebuild();
    return;
  }
  title_->setText(part_title(document_.rig(), part_) + QStringLiteral(" ▾"));
  for (CardRow* row : rows_) row->refresh();
  showRows();
}

void Card::rebuild() {
  structure_ = structure();
  rows_.clear();
  groups_.clear();
  help_->hide();
  title_->setText(part_title(document_.rig(), part_) + QStringLiteral(" ▾"));
  setTheme(theme_);
  auto* page = new QWidget(scroll_->viewport());  // not to be styled again when it gets there
  page->setObjectName(QStringLiteral("cardPage"));
  auto* rows = new QVBoxLayout(page);
  rows->setContentsMargins(0, 0, 8, 0);
  rows->setSpacing(6);
  if (part_.ends_with(".stops") || part_.ends_with(".cable")) {
    addRow(rows, new PresenceField(document_, part_, part_title(document_.rig(), part_)));
  }
  if (const auto place = body_place(document_.rig(), part_)) {
    auto* controls = new BodyControls(document_, *place);
    connect(controls, &BodyControls::partChosen, this, &Card::partChosen);
    addRow(rows, controls);
  }
  for (const CardSection& section : card_sections(document_.rig(), part_)) {
    if (const auto entry = list_place(section.prefix))
      addRow(rows, new ListHead(document_, *entry));
    addSection(rows, section.heading, section.prefix);
  }
  if (part_ == "stand") addRow(rows, new MaterialNames(document_));
  if (const CardList* list = list_on(part_)) {
    auto* add = new ListAdd(document_, *list);
    connect(add, &ListAdd::partChosen, this, &Card::partChosen);
    addRow(rows, add);
  }
  if (part_ == "tracking") {
    addRow(rows, new TrackingRow(document_));
    addRow(rows, new PathRows(document_));
  }
  if (part_.ends_with(".stops")) addRow(rows, new PlanRow(*axis_of_part(part_)));
  if (part_.ends_with(".motor")) {
    auto* limits = new LimitsRow(*axis_of_part(part_));
    connect(limits, &LimitsRow::remedyChosen, this, &Card::remedyChosen);
    addRow(rows, limits);
  }
  if (part_.ends_with(".load")) {
    auto* list = new BodyList(document_, part_ == "tilt.load");
    connect(list, &BodyList::partChosen, this, &Card::partChosen);
    addRow(rows, list);
  }
  rows->addStretch();
  if (analysis_) {
    for (CardRow* row : rows_) row->showCost(*analysis_);
  }
  if (QWidget* old = scroll_->takeWidget()) {
    old->hide();
    old->deleteLater();  // one of its rows may be what caused this
  }
  showRows();
  scroll_->setWidget(page);
}

void Card::addRow(QVBoxLayout* rows, CardRow* row) {
  rows->addWidget(row);
  rows_.push_back(row);
  connect(row, &CardRow::focused, this, [this](const QString& help) {
    help_->setText(help);
    help_->show();
  });
}

void Card::fillPartMenu() {
  QMenu* menu = title_->menu();
  menu->clear();
  for (const PartEntry& entry : all_parts(document_.rig())) {
    if (entry.part.empty()) {
      menu->addSection(entry.title);
      continue;
    }
    const QString part = QString::fromStdString(entry.part);
    menu->addAction(entry.title, this, [this, part] { emit partChosen(part); });
  }
}

}  // namespace gazewright
