#pragma once

#include <QFrame>
#include <QLabel>
#include <QString>
#include <QStringList>

class QComboBox;
class QFontMetrics;
class QLineEdit;
class QTableView;
class QToolButton;
class QWidget;

/// Small pieces that cards and panels share. How they look is in look.cpp, by their kind.
namespace gazewright {

/// Kinds that the style sheet knows: "card", "quiet", "note", "problem", "bad", "heading", "pill".
void setKind(QWidget* widget, const char* kind);

/// One line that ends in an ellipsis where it does not fit; the tool tip has it whole.
class ElidedLabel : public QLabel {
  Q_OBJECT
 public:
  ElidedLabel();

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// Undo and redo in a line or text edit that has none of its own are the window's.
void passUndoOn(QWidget* edit);

/// The wheel changes nothing in it unless it has the focus.
void keepWheelAway(QWidget* control);
template <class Control>
Control* calmed(Control* control) {
  keepWheelAway(control);
  return control;
}
/// A combo box that the wheel leaves alone unless it has the focus (scrolling a card must not
/// change the rig).
QComboBox* calmCombo(const QStringList& words);
QComboBox* quietCombo(const QStringList& words);
QLineEdit* quietEdit();
/// A line to search by, with a button that clears it; `name` is for a screen reader.
QLineEdit* searchEdit(const QString& hint, const QString& name);
QLabel* heading(const QString& text);
QLabel* quietLabel(const QString& text = {});
/// Sentences that wrap, are shown as they are and can be copied; `name` is for a screen reader.
QLabel* sentencesLabel(const QString& name);
/// `name` is the object's, where there is one.
QToolButton* textButton(const QString& text, const QString& help, const QString& name = {});
/// The same, of a text that may be longer than its place: it ends in an ellipsis then, and the tool
/// tip has it whole.
QToolButton* elidedButton(const QString& text, const QString& help, const QString& name = {});
/// The text with line ends put where a line would be wider than `width`, at spaces.
QString wrapped(const QString& text, const QFontMetrics& metrics, int width);
QFrame* cardFrame();
/// Rows as high as a line of the table's font and `pad_px`, also when the font changes.
void keepRowsALine(QTableView* table, int pad_px = 8);
/// Rows to choose one of: no grid, no row numbers, a line high and `pad_px`, left by Tab.
void showAsList(QTableView* table, int pad_px = 8);

}  // namespace gazewright
