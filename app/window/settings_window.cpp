#include "app/window/settings_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/window/message_bar.h"
#include "app/window/widgets.h"

namespace gazewright {

SettingsWindow::SettingsWindow(const std::vector<Folder>& folders, QWidget* parent)
    : QDialog(parent), messages_(new MessageBar) {
  setObjectName(QStringLiteral("settings"));
  setWindowTitle(tr("Settings"));
  setModal(false);
  auto* page = new QWidget;
  page->setObjectName(QStringLiteral("cardPage"));
  auto* form = new QFormLayout(page);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  addChoices(form);
  for (const Folder& folder : folders) addFolder(form, folder);
  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setWidget(page);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(messages_);
  layout->addWidget(scroll, 1);
  layout->addWidget(buttons());
  const QSize room = page->sizeHint() + QSize(60, 110);
  resize(room.expandedTo({560, 420}).boundedTo({1200, 700}));
}

void SettingsWindow::addChoices(QFormLayout* form) {
  theme_ = addChoice(form, tr("&Theme"), "settings.theme",
                     {{tr("As the desktop"), QStringLiteral("desktop")},
                      {tr("Light"), QStringLiteral("light")},
                      {tr("Dark"), QStringLiteral("dark")},
                      {tr("High contrast"), QStringLiteral("contrast")}});
  std::vector<std::pair<QString, QVariant>> sizes;
  sizes.reserve(kTextSizes.size());
  for (const int percent : kTextSizes)
    sizes.emplace_back(percent == 100 ? tr("100 % (the desktop's)") : tr("%1 %").arg(percent),
                       percent);
  text_ = addChoice(form, tr("Te&xt size"), "settings.text", sizes);
  calm_ = new QCheckBox(tr("&Reduced motion, also where the desktop does not ask for it"));
  calm_->setObjectName(QStringLiteral("settings.calm"));
  calm_->setToolTip(tr("Menus appear at once and the text cursor does not blink"));
  connect(calm_, &QCheckBox::clicked, this, &SettingsWindow::take);
  form->addRow(calm_);
  language_ = addChoice(form, tr("&Language, from the next start on"), "settings.language",
                        {{tr("As the desktop"), QStringLiteral("desktop")},
                         {QStringLiteral("English"), QStringLiteral("en")},
                         {QStringLiteral("Deutsch"), QStringLiteral("de")}});
  paper_ = addChoice(form, tr("&Paper of the sheet"), "settings.paper",
                     {{tr("As usual in the region"), QStringLiteral("region")},
                      {tr("A4"), QStringLiteral("a4")},
                      {tr("Letter"), QStringLiteral("letter")}});
  start_ = addChoice(form, tr("&Open at start"), "settings.start",
                     {{tr("The first sample"), QStringLiteral("sample")},
                      {tr("The rig of the last time"), QStringLiteral("last")},
                      {tr("A new rig"), QStringLiteral("new")}});
}

QComboBox* SettingsWindow::addChoice(QFormLayout* form, const QString& label, const char* name,
                                     const std::vector<std::pair<QString, QVariant>>& entries) {
  QComboBox* combo = calmCombo({});
  combo->setObjectName(QLatin1String(name));
  combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  for (const auto& [text, value] : entries) combo->addItem(text, value);
  connect(combo, &QComboBox::activated, this, &SettingsWindow::take);
  form->addRow(label, combo);
  combo->setAccessibleName(QString(label).remove('&'));
  return combo;
}

void SettingsWindow::addFolder(QFormLayout* form, const Folder& folder) {
  auto* path = new QLineEdit(folder.path);
  path->setReadOnly(true);
  path->setCursorPosition(0);
  path->setMinimumWidth(24 * fontMetrics().averageCharWidth());
  path->setToolTip(folder.help);
  path->setAccessibleName(folder.name);
  QToolButton* open = textButton(tr("Open"), tr("Open it in the file manager"));
  open->setAccessibleName(tr("Open: %1").arg(folder.name));
  connect(open, &QToolButton::clicked, this, folder.open);
  auto* row = new QHBoxLayout;
  row->addWidget(path, 1);
  row->addWidget(open);
  form->addRow(folder.name, row);
}

QWidget* SettingsWindow::buttons() {
  auto* layout_reset = textButton(tr("Reset the &layout"), tr("Sizes and plots as at first"),
                                  QStringLiteral("settings.layout"));
  auto* defaults = textButton(tr("Restore &defaults"), tr("Every setting as at first"),
                              QStringLiteral("settings.defaults"));
  auto* close = textButton(tr("&Close"), tr("Close this window"));
  connect(layout_reset, &QToolButton::clicked, this, &SettingsWindow::layoutResetAsked);
  connect(defaults, &QToolButton::clicked, this, &SettingsWindow::defaultsAsked);
  connect(close, &QToolButton::clicked, this, &QWidget::hide);
  auto* row = new QWidget;
  auto* layout = new QHBoxLayout(row);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(layout_reset);
  layout->addWidget(defaults);
  layout->addStretch();
  layout->addWidget(close);
  return row;
}

void SettingsWindow::setPreferences(const Preferences& preferences) {
  const auto choose = [](QComboBox* combo, const QVariant& value) {
    combo->setCurrentIndex(combo->findData(value));
  };
  choose(theme_, preferences.theme);
  choose(text_, preferences.text_percent);
  choose(language_, preferences.language);
  choose(paper_, preferences.paper);
  choose(start_, preferences.start);
  calm_->setChecked(preferences.calm);
}

void SettingsWindow::take() {
  emit changed({.theme = theme_->currentData().toString(),
                .text_percent = text_->currentData().toInt(),
                .calm = calm_->isChecked(),
                .language = language_->currentData().toString(),
                .paper = paper_->currentData().toString(),
                .start = start_->currentData().toString()});
}

}  // namespace gazewright
