#include "app/window/look.h"

#include <QApplication>
#include <QFont>
#include <QFontDatabase>
#include <QPalette>
#include <QStyle>
#include <utility>
#include <vector>

#include "app/window/edged_style.h"

namespace gazewright {

QPalette palette_of(const Theme& theme) {
  QPalette palette;
  palette.setColor(QPalette::Window, theme.surface);
  palette.setColor(QPalette::WindowText, theme.text);
  palette.setColor(QPalette::Base, theme.card);
  palette.setColor(QPalette::AlternateBase, theme.surface);
  palette.setColor(QPalette::Text, theme.text);
  palette.setColor(QPalette::Button, theme.card);
  palette.setColor(QPalette::ButtonText, theme.text);
  palette.setColor(QPalette::ToolTipBase, theme.card);
  palette.setColor(QPalette::ToolTipText, theme.text);
  palette.setColor(QPalette::PlaceholderText, theme.quiet);
  palette.setColor(QPalette::Highlight, theme.focus);
  palette.setColor(QPalette::HighlightedText, theme.card);
  palette.setColor(QPalette::Link, theme.pan_text);
  palette.setColor(QPalette::Light, theme.card);
  palette.setColor(QPalette::Mid, theme.border);
  palette.setColor(QPalette::Dark, theme.control);
  for (QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    palette.setColor(QPalette::Disabled, role, blended(theme.quiet, theme.card, 0.75));
  }
  return palette;
}

constexpr char kStyleSheet[] = R"(
*[kind="card"] { background: %card; border: 1px solid %border; border-radius: 6px; }
QLabel[kind="heading"] { font-weight: bold; }
QLabel[kind="note"] { color: %quiet; font-size: %small; }
QLabel[kind="problem"] { color: %bad; font-size: %small; }
QLineEdit { background: %card; color: %text; border: 1px solid %control; border-radius: 4px;
  padding: 2px 5px; selection-background-color: %focus; selection-color: %card; }
QLineEdit:focus { border: 2px solid %focus; padding: 1px 4px; }
QLineEdit[kind="bad"] { border: 2px solid %bad; padding: 1px 4px; }
QLineEdit[kind="quiet"] { border-color: transparent; color: %quiet; font-size: %small;
  padding: 0px 2px; background: transparent; }
QLineEdit[kind="quiet"]:hover { border-color: %control; }
QLineEdit[kind="quiet"]:focus { border-color: %focus; }
QComboBox[kind="quiet"] { border: 1px solid transparent; border-radius: 3px; color: %quiet;
  font-size: %small; padding: 0px 0px; background: transparent; }
QComboBox[kind="quiet"]:hover { border-color: %control; }
QComboBox[kind="quiet"]:focus { border: 2px solid %focus; }
QComboBox[kind="quiet"]::drop-down { width: 0px; border: none; }
QToolButton[kind="pill"] { border: 1px solid %control; border-radius: 4px; padding: 2px 7px;
  background: %card; color: %text; }
QToolButton[kind="pill"]:hover, QToolButton[kind="pill"]:checked { background: %surface; }
QToolButton[kind="pill"]:focus { border: 2px solid %focus; padding: 1px 6px; }
QToolButton[kind="pill"]:disabled { color: %quiet; border-color: %border; }
QToolButton[kind="pill"]::menu-indicator { image: none; }
QToolButton[done="true"] { color: %good; }
QScrollArea, #cardPage { background: transparent; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0px; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0px; }
QScrollBar::handle { background: %control; border: 3px solid %card; border-radius: 6px; }
QScrollBar::handle:vertical { min-height: 28px; }
QScrollBar::handle:horizontal { min-width: 28px; }
QScrollBar::handle:hover { border-width: 2px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0px; height: 0px; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QComboBox[kind="title"] { border: 1px solid transparent; border-radius: 4px; font-weight: bold;
  padding: 1px 4px; background: transparent; color: %text; }
QComboBox[kind="title"]:hover { border-color: %control; }
QComboBox[kind="title"]:focus { border: 2px solid %focus; padding: 0px 3px; }
QComboBox[kind="title"]::drop-down { border: none; width: 16px; }
QComboBox[kind="title"]::down-arrow { image: none; }
QToolButton[kind="bare"] { border: 1px solid transparent; border-radius: 4px; padding: 0px 5px;
  background: transparent; color: %quiet; }
QToolButton[kind="bare"]:hover { border-color: %control; }
QToolButton[kind="bare"]:focus { border: 2px solid %focus; }
QToolButton[kind="fold"] { border: 1px solid transparent; border-radius: 4px; padding: 1px 4px;
  background: transparent; color: %text; font-weight: bold; }
QToolButton[kind="fold"]:hover { border-color: %control; }
QToolButton[kind="fold"]:focus { border: 2px solid %focus; padding: 0px 3px; }
QSplitter::handle { background: transparent; }
QToolTip { background: %card; color: %text; border: 1px solid %control; padding: 3px; }
QHeaderView::section { background: %card; color: %quiet; border: none; padding: 1px 4px;
  font-size: %small; }
QTableView { background: %card; border: none; selection-background-color: %band;
  selection-color: %text; }
)";

QString style_sheet_of(const Theme& theme) {
  QString sheet = QString::fromLatin1(kStyleSheet);
  const double points = QApplication::font().pointSizeF();
  const struct {
    const char* name;
    QString value;
  } entries[] = {
      {"%card", theme.card.name()},
      {"%surface", theme.surface.name()},
      {"%border", theme.border.name()},
      {"%control", theme.control.name()},
      {"%text", theme.text.name()},
      {"%quiet", theme.quiet.name()},
      {"%good", theme.good.name()},
      {"%bad", theme.bad.name()},
      {"%focus", theme.focus.name()},
      {"%band", theme.band.name()},
      {"%small", QStringLiteral("%1pt").arg(points > 0 ? qMax(7, qRound(0.9 * points)) : 8)}};
  for (const auto& entry : entries) sheet.replace(QLatin1String(entry.name), entry.value);
  return sheet;
}

constexpr int kUsualText_percent = 100;  // the font is whatever the desktop makes it
static int text_percent = kUsualText_percent;

void apply_look(const Theme& theme) {
  static const bool is_styled = [] {
    QApplication::setStyle(new EdgedStyle);
    return true;
  }();
  Q_UNUSED(is_styled);
  QApplication::setPalette(palette_of(theme));
  const QString sheet = style_sheet_of(theme);
  // Every widget is polished again; a window made before the text got its size takes it so.
  if (text_percent != kUsualText_percent || qApp->styleSheet() != sheet) qApp->setStyleSheet(sheet);
}

void set_text_size(int percent) {
  if (percent == text_percent) return;
  text_percent = percent;
  QFont font = QFontDatabase::systemFont(QFontDatabase::GeneralFont);
  if (font.pointSizeF() > 0) {
    font.setPointSizeF(font.pointSizeF() * percent / 100);
  } else {
    font.setPixelSize(qMax(1, font.pixelSize() * percent / 100));
  }
  QApplication::setFont(font);
}

void set_calm(bool calm) {
  static std::vector<Qt::UIEffect> stilled;
  static int flash_ms = 0;
  if (calm && QApplication::cursorFlashTime() > 0) {
    flash_ms = QApplication::cursorFlashTime();
    QApplication::setCursorFlashTime(0);
  }
  if (!calm && flash_ms > 0) QApplication::setCursorFlashTime(std::exchange(flash_ms, 0));
  if (!calm) {
    for (const Qt::UIEffect effect : stilled) QApplication::setEffectEnabled(effect, true);
    stilled.clear();
    return;
  }
  for (const Qt::UIEffect effect : {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                    Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip})
    if (QApplication::isEffectEnabled(effect)) stilled.push_back(effect);
  for (const Qt::UIEffect effect : stilled) QApplication::setEffectEnabled(effect, false);
}

}  // namespace gazewright
