#include "app/window/quantity_field.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QStyle>

#include "app/plots/text.h"
#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/keep_out_problem.h"
#include "app/window/missing.h"
#include "app/window/quantity_text.h"
#include "app/window/widgets.h"
#include "core/rig/usual.h"

namespace gazewright {
namespace {

constexpr int kEditEdges_px = 18;  // beside the text of a line edit
constexpr Source kSources[] = {Source::unstated, Source::measured, Source::datasheet,
                               Source::estimate, Source::by_default};

int steps_of(int key) {
  switch (key) {
    case Qt::Key_Up:
      return 1;
    case Qt::Key_Down:
      return -1;
    case Qt::Key_PageUp:
      return 10;
    case Qt::Key_PageDown:
      return -10;
    default:
      return 0;
  }
}

}  // namespace

QuantityField::QuantityField(Document& document, std::string path, const FieldInfo& info,
                             const QString& label, const QString& part, QWidget* parent)
    : CardRow(parent), document_(document), path_(std::move(path)), info_(info), part_(part) {
  label_ = new QLabel(label);
  label_->setWordWrap(true);
  edit_ = new QLineEdit;
  edit_->setObjectName(QString::fromStdString(path_));
  edit_->setAlignment(Qt::AlignRight);
  fitWidth();
  edit_->setAccessibleName(part + QStringLiteral(", ") + label);
  edit_->setAccessibleDescription(help());
  label_->setBuddy(edit_);
  source_ =
      quietCombo({tr("source?"), tr("measured"), tr("datasheet"), tr("estimate"), tr("default")});
  source_->setAccessibleName(tr("Source of %1").arg(label));
  source_->setToolTip(tr("Where the value comes from"));
  spread_ = quietEdit();
  spread_->setPlaceholderText(QStringLiteral("±"));
  spread_->setAccessibleName(tr("Spread of %1").arg(label));
  spread_->setToolTip(tr("How far off the value may be, as a percent or a quantity"));
  note_ = new QLabel;
  note_->setWordWrap(true);
  setKind(note_, "note");
  setToolTip(QStringLiteral("<p>%1</p>").arg(help().toHtmlEscaped()));

  auto* origin = new QHBoxLayout;
  origin->setSpacing(2);
  origin->addWidget(source_);
  origin->addWidget(spread_, 1);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(6);
  grid->setVerticalSpacing(0);
  grid->addWidget(label_, 0, 0);
  grid->addWidget(edit_, 0, 1, 2, 1, Qt::AlignVCenter);  // before its origin, for Tab
  grid->addLayout(origin, 1, 0);
  grid->addWidget(note_, 2, 0, 1, 2);
  grid->setColumnStretch(0, 1);

  connect(edit_, &QLineEdit::editingFinished, this, [this] { commitValue(); });
  connect(spread_, &QLineEdit::editingFinished, this, &QuantityField::commitSpread);
  connect(source_, &QComboBox::activated, this, &QuantityField::commitSource);
  for (QWidget* widget : {static_cast<QWidget*>(edit_), static_cast<QWidget*>(spread_),
                          static_cast<QWidget*>(source_)}) {
    widget->installEventFilter(this);
  }
  passUndoOn(edit_);
  passUndoOn(spread_);
  showQuantity();
}

void QuantityField::fitWidth() {
  edit_->setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000.0 N·m·s/rad")));
}

void QuantityField::changeEvent(QEvent* event) {
  CardRow::changeEvent(event);
  if (event->type() != QEvent::FontChange || !edit_) return;
  fitWidth();
  showQuantity();
}

const Quantity& QuantityField::quantity() const {
  static const Quantity nothing;
  const Quantity* at = find_quantity(document_.rig(), path_);
  return at ? *at : nothing;
}

QString QuantityField::help() const {
  QString text = worded(info_.help);
  if (const QString range = range_text(info_); !range.isEmpty()) {
    text += QStringLiteral("\n") + tr("Allowed: %1.").arg(range);
  }
  if (info_.may_be_none) text += QStringLiteral(" ") + tr("“none” means no such limit.");
  if (const QString fallback = fallback_text(info_); !fallback.isEmpty()) {
    text += QStringLiteral(" ") + tr("Left empty: %1.").arg(fallback);
  }
  return text.trimmed();
}

QString QuantityField::unusualText() const {
  const std::string usual = unusual_words(info_, quantity().value());
  return usual.empty() ? QString() : tr("Unusual: %1.").arg(QString::fromStdString(usual));
}

QString QuantityField::errorText() const { return has_problem_ ? note_->text() : QString(); }

/// In a drag most fields keep their values.
void QuantityField::refresh() {
  if (quantity() != shown_) showQuantity();
}

void QuantityField::showQuantity() {
  const Quantity& now = shown_ = quantity();
  if (!has_problem_) {
    const QString shown = shown_quantity(now, info_);
    if (edit_->text() != shown && !edit_->isModified()) edit_->setText(shown);
    if (!spread_->isModified()) spread_->setText(shown_spread(now, info_));
  }
  const QString fallback = fallback_text(info_);
  const bool fits =
      fontMetrics().horizontalAdvance(fallback) <= edit_->maximumWidth() - kEditEdges_px;
  edit_->setPlaceholderText(fallback.isEmpty() ? tr("missing")
                            : fits             ? fallback
                                               : tr("worked out"));
  edit_->setCursorPosition(0);
  source_->setCurrentIndex(static_cast<int>(now.source));
  const bool stated = now.has_value();
  source_->setEnabled(stated);
  spread_->setEnabled(stated);
  if (!stated) source_->setCurrentIndex(fallback.isEmpty() ? 0 : 4);
  if (!has_problem_) {
    const QString note = stated ? unusualText()
                         : fits ? cost_
                                : tr("Left empty: %1.").arg(fallback);
    note_->setText(note);
    note_->setVisible(!note.isEmpty());
  }
}

void QuantityField::showCost(const Analysis& analysis) {
  if (info_.fallback || !info_.fallback_text.empty()) return;
  const QString cost = quantity().has_value() ? QString() : missing_cost(analysis, path_);
  if (cost == cost_) return;
  cost_ = cost;
  showQuantity();
}

/// Up and down as far as the rig allows; a step that leads out of the range is not taken.
bool QuantityField::stepBy(int steps) {
  const QString text = stepped(edit_->text(), steps, info_);
  if (text.isEmpty()) return false;
  if (!std::holds_alternative<Quantity>(read_typed(text, quantity(), info_))) return true;
  if (steps_id_ < 0) steps_id_ = Document::newDragId();
  edit_->setText(text);
  edit_->setModified(true);
  commitValue(steps_id_);
  return true;
}

void QuantityField::commitValue(int drag_id) {
  if (!edit_->isModified()) return;
  const auto read = read_typed(edit_->text(), quantity(), info_);
  if (const auto* problem = std::get_if<UnitProblem>(&read)) {
    showProblem(edit_, QString::fromStdString(problem->problem + ". " + problem->fix + "."),
                !problem->says_range);
    return;
  }
  const Rig after = with_quantity(document_.rig(), path_, std::get<Quantity>(read));
  if (const QString problem = keep_out_problem(after, path_); !problem.isEmpty()) {
    return showProblem(edit_, problem);
  }
  clearProblem();
  edit_->setText(edit_->text());  // what it could take back is the rig's now
  document_.edit(part_ + QStringLiteral(": ") + mid_sentence(label_->text()), after, drag_id);
  showQuantity();
}

void QuantityField::commitSpread() {
  if (!spread_->isModified()) return;
  const auto read = read_typed_spread(spread_->text(), quantity(), info_);
  if (const auto* problem = std::get_if<UnitProblem>(&read)) {
    showProblem(spread_, QString::fromStdString(problem->problem + ". " + problem->fix + "."));
    return;
  }
  clearProblem();
  spread_->setText(spread_->text());
  document_.edit(tr("%1: spread of %2").arg(part_, mid_sentence(label_->text())),
                 with_quantity(document_.rig(), path_, std::get<Quantity>(read)));
  showQuantity();
}

void QuantityField::commitSource(int index) {
  Quantity changed = quantity();
  if (!changed.has_value()) return;
  changed.source = kSources[index];
  document_.edit(tr("%1: source of %2").arg(part_, mid_sentence(label_->text())),
                 with_quantity(document_.rig(), path_, changed));
}

void QuantityField::showProblem(QLineEdit* edit, const QString& problem, bool adds_range) {
  has_problem_ = true;
  QString text = QStringLiteral("✕ ") + problem;
  if (const QString range = range_text(info_); adds_range && edit == edit_ && !range.isEmpty()) {
    text += QStringLiteral(" ") + tr("Allowed: %1.").arg(range);
  }
  const QString kept = shown_quantity(quantity(), info_);
  text += QStringLiteral(" ") + (kept.isEmpty() ? tr("Still missing.") : tr("Still %1.").arg(kept));
  note_->setText(text);
  setKind(note_, "problem");
  note_->show();
  setKind(edit, "bad");
  edit->setAccessibleDescription(text);
}

void QuantityField::clearProblem() {
  has_problem_ = false;
  edit_->setModified(false);
  spread_->setModified(false);
  setKind(note_, "note");
  setKind(edit_, "");
  setKind(spread_, "quiet");
  edit_->setAccessibleDescription(help());
}

bool QuantityField::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) {
    steps_id_ = -1;
    emit focused(help());
  }
  if (event->type() != QEvent::KeyPress || watched == source_)
    return CardRow::eventFilter(watched, event);
  const auto* pressed = static_cast<QKeyEvent*>(event);
  if (pressed->key() == Qt::Key_Escape) {
    clearProblem();
    showQuantity();
    edit_->selectAll();
    return true;
  }
  if (watched == edit_ && (pressed->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier) {
    if (const int steps = steps_of(pressed->key()); steps != 0) return stepBy(steps);
  }
  return CardRow::eventFilter(watched, event);
}

}  // namespace gazewright
