#include "app/window/choice_rows.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>

#include "app/plots/choice_word.h"
#include "app/plots/text.h"
#include "app/window/document.h"
#include "app/window/edits.h"
#include "app/window/widgets.h"
#include "core/data/data_files.h"
#include "core/data/data_library.h"

namespace gazewright {
namespace {

/// Label at the left, control at the right.
void lay_out(QWidget* row, const QString& label, QWidget* control) {
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* text = new QLabel(label);
  text->setBuddy(control);
  control->setAccessibleName(label);
  layout->addWidget(text);
  layout->addWidget(control, 1);
}

}  // namespace

ChoiceField::ChoiceField(Document& document, std::string path, const ChoiceInfo& info,
                         const QString& part)
    : document_(document), path_(std::move(path)), info_(info) {
  QStringList words{tr("%1 (default)").arg(choice_word(info.options.front()))};
  for (std::string_view option : info.options)
    words << (is_own_row(data_file_of(info.key), option) ? tr("%1 (own)").arg(choice_word(option))
                                                         : choice_word(option));
  combo_ = calmCombo(words);
  combo_->setObjectName(QString::fromStdString(path_));
  lay_out(this, worded(info.label), combo_);
  setToolTip(QStringLiteral("<p>%1</p>").arg(worded(info.help).toHtmlEscaped()));
  combo_->setAccessibleDescription(worded(info.help));
  connect(combo_, &QComboBox::activated, this, [this, part](int index) {
    const std::string value = index == 0
                                  ? std::string()
                                  : std::string(info_.options[static_cast<std::size_t>(index - 1)]);
    document_.edit(part + QStringLiteral(": ") + mid_sentence(worded(info_.label)),
                   with_choice(document_.rig(), path_, value));
  });
  refresh();
}

void ChoiceField::refresh() {
  Rig rig = document_.rig();
  int index = 0;
  for (FieldRef& field : fields_under(rig, path_)) {
    const auto* ref = std::get_if<ChoiceRef>(&field);
    if (!ref || ref->path != path_) continue;
    for (std::size_t i = 0; i < info_.options.size(); ++i) {
      if (ref->choice->value == info_.options[i]) index = static_cast<int>(i) + 1;
    }
  }
  combo_->setCurrentIndex(index);
}

TextField::TextField(Document& document, std::string path, const TextInfo& info,
                     const QString& part)
    : document_(document),
      path_(std::move(path)),
      part_(part + ": " + mid_sentence(worded(info.label))) {
  setToolTip(QStringLiteral("<p>%1</p>").arg(worded(info.help).toHtmlEscaped()));
  if (path_ == "notes") {
    lines_ = new QPlainTextEdit;
    lines_->setObjectName(QStringLiteral("notes"));
    lines_->setTabChangesFocus(true);
    lines_->setMinimumHeight(8 * fontMetrics().lineSpacing());
    lines_->setAccessibleName(worded(info.label));
    lines_->installEventFilter(this);
    passUndoOn(lines_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new QLabel(worded(info.label)));
    layout->addWidget(lines_);
  } else {
    line_ = new QLineEdit;
    line_->setObjectName(QString::fromStdString(path_));
    passUndoOn(line_);
    lay_out(this, worded(info.label), line_);
    connect(line_, &QLineEdit::editingFinished, this, [this] { commit(line_->text()); });
  }
  refresh();
}

std::string TextField::current() const {
  Rig rig = document_.rig();
  for (FieldRef& field : fields_under(rig, path_)) {
    const auto* ref = std::get_if<TextRef>(&field);
    if (ref && ref->path == path_) return *ref->text;
  }
  return {};
}

void TextField::refresh() {
  const QString text = QString::fromStdString(current());
  if (line_ && line_->text() != text) line_->setText(text);
  if (lines_ && lines_->toPlainText() != text) lines_->setPlainText(text);
}

void TextField::commit(const QString& text) {
  if (text.toStdString() == current()) return;
  if (line_) line_->setText(text);  // what it could take back is the rig's now
  document_.edit(part_, with_text(document_.rig(), path_, text.toStdString()));
}

bool TextField::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) commit(lines_->toPlainText());
  return CardRow::eventFilter(watched, event);
}

PresenceField::PresenceField(Document& document, std::string part, const QString& title)
    : document_(document), part_(std::move(part)) {
  combo_ = calmCombo({tr("not stated"), tr("none"), tr("described below")});
  combo_->setObjectName(QString::fromStdString(part_));
  setObjectName(combo_->objectName() + QStringLiteral(" row"));
  lay_out(this, tr("Present"), combo_);
  setToolTip(tr("Not stated leaves the travel unknown; none means there is no such limit."));
  connect(combo_, &QComboBox::activated, this, [this, title](int index) {
    document_.edit(tr("%1: present").arg(title),
                   with_presence(document_.rig(), part_, static_cast<Presence>(index)));
  });
  refresh();
}

void PresenceField::refresh() {
  combo_->setCurrentIndex(static_cast<int>(presence_of(document_.rig(), part_)));
}

}  // namespace gazewright
