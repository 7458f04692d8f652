#pragma once

#include <memory>
#include <set>

#include "app/window/help_places.h"
#include "app/window/seen_dialog.h"
#include "core/analysis/doubts.h"

class QLabel;
class QLineEdit;
class QTableView;
class QTextBrowser;
class QToolButton;

namespace gazewright {

class EmptyNote;
class FiguresModel;

/// Every figure with why it is what it is: a list to search at the left, the explanation at the
/// right. It explains findings and fields too, stays beside the window and follows the rig.
class FiguresWindow : public SeenDialog {
  Q_OBJECT
 public:
  explicit FiguresWindow(QWidget* parent = nullptr);

  /// @param doubts  of the same analysis; null: not there
  void setResults(const Rig& rig, const std::shared_ptr<const Analysis>& analysis,
                  const std::shared_ptr<const Doubts>& doubts = {});
  void explainFigure(const std::string& id);
  void explainFinding(const std::string& id);
  void explainField(const std::string& path);
  /// Lists only these and explains the first; `what` says whose they are.
  void explainSome(const std::vector<std::string>& ids, const QString& what);
  void showAll();

  QLineEdit* search() const { return search_; }
  QTableView* table() const { return table_; }
  QTextBrowser* text() const { return text_; }

 signals:
  void fieldChosen(const QString& path);
  void helpWanted(const gazewright::HelpPlace& place);

 protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  enum class Subject { nothing, figure, finding, field };
  QWidget* makeList();
  QWidget* makeText();
  void fitColumns();
  void setOnly(const std::set<std::string>& ids, const QString& what);
  void currentChanged();
  void refresh();
  void follow(const QUrl& link);
  void copy() const;
  HelpPlace place() const;

  Rig rig_;
  std::shared_ptr<const Analysis> analysis_;
  std::shared_ptr<const Doubts> doubts_;
  Subject subject_ = Subject::nothing;
  std::string shown_;    ///< id or path of what is explained
  std::string in_text_;  ///< the same, of the text on screen
  QString html_;
  FiguresModel* model_;
  QLineEdit* search_;
  QLabel* only_;
  QToolButton *all_, *copy_, *help_;
  QTableView* table_ = nullptr;
  EmptyNote* none_;
  QTextBrowser* text_;
};

}  // namespace gazewright
