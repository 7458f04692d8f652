#include "app/window/question_bar.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/window/widgets.h"

namespace gazewright {

QuestionBar::QuestionBar(QWidget* parent) : QFrame(parent), rows_(new QVBoxLayout(this)) {
  setObjectName(QStringLiteral("question bar"));
  rows_->setContentsMargins(0, 0, 0, 0);
  rows_->setSpacing(4);
  hide();
}

QWidget* QuestionBar::row(const QString& key) const {
  return findChild<QFrame*>(key, Qt::FindDirectChildrenOnly);
}

void QuestionBar::ask(const QString& key, const QString& text, std::vector<Answer> answers) {
  withdraw(key);
  auto* question = new QFrame(this);
  question->setObjectName(key);
  setKind(question, "card");
  auto* words = sentencesLabel(tr("Question"));
  words->setText(text);
  auto* layout = new QHBoxLayout(question);
  layout->setContentsMargins(10, 5, 6, 5);
  layout->addWidget(words, 1);
  answers.push_back({tr("Later"), tr("Hide this without an answer"), [] {}});
  for (const Answer& answer : answers) {
    QToolButton* button = textButton(answer.text, answer.help);
    connect(button, &QToolButton::clicked, this, [this, key, run = answer.run] {
      withdraw(key);
      run();
    });
    layout->addWidget(button, 0, Qt::AlignTop);
  }
  rows_->addWidget(question);
  question->show();
  show();
  QAccessibleEvent alert(words, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void QuestionBar::withdraw(const QString& key) {
  QWidget* question = row(key);
  if (!question) return;
  question->setObjectName({});
  question->hide();
  question->deleteLater();  // the click of one of its buttons may be under way
  rows_->removeWidget(question);
  setVisible(rows_->count() > 0);
}

QString QuestionBar::text() const {
  QStringList lines;
  for (int i = 0; i < rows_->count(); ++i) {
    lines << rows_->itemAt(i)->widget()->findChild<QLabel*>()->text();
  }
  return lines.join('\n');
}

}  // namespace gazewright
