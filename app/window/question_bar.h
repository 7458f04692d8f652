#pragma once

#include <QFrame>
#include <QString>
#include <functional>
#include <vector>

class QVBoxLayout;

namespace gazewright {

/// Questions that can wait, each in a row of its own with its answers as buttons: the work goes on
/// meanwhile. "Later" hides a question without an answer.
class QuestionBar : public QFrame {
  Q_OBJECT
 public:
  struct Answer {
    QString text, help;
    std::function<void()> run;
  };

  explicit QuestionBar(QWidget* parent = nullptr);

  /// Replaces an open question with the same key.
  void ask(const QString& key, const QString& text, std::vector<Answer> answers);
  void withdraw(const QString& key);
  bool asks(const QString& key) const { return row(key) != nullptr; }
  QString text() const;  ///< of every open question, a line each

 private:
  QWidget* row(const QString& key) const;

  QVBoxLayout* rows_;
};

}  // namespace gazewright
