#include "app/window/language.h"

#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include "app/window/clean_registers.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kContext = "gazewright";

/// One English text has one translation, whichever class of ours shows it. Qt's own texts, such as
/// names of keys, are for Qt's translation: none of our classes begins with Q.
class Translation : public QTranslator {
 public:
  using QTranslator::QTranslator;
  QString translate(const char* context, const char* source, const char*,
                    int count) const override {
    return context[0] == 'Q' ? QString() : QTranslator::translate(kContext, source, nullptr, count);
  }
};

std::string translated(std::string_view english) {
  std::string text =
      QCoreApplication::translate(kContext, std::string(english).c_str()).toStdString();
  clean_registers();  // core goes on in the middle of its work
  return text;
}

}  // namespace

const QStringList& languages() {
  static const QStringList words{"desktop", "en", "de"};
  return words;
}

void use_language(QCoreApplication& app, const QString& wanted) {
  use_decimal_mark(QLocale().decimalPoint().toStdString());
  const QLocale locale = wanted == QStringLiteral("desktop") ? QLocale() : QLocale(wanted);
  // A desktop in English may name others as its second choice.
  if (locale.language() == QLocale::English || locale.language() == QLocale::C) return;
  auto* ours = new Translation(&app);
  const QString file = QStringLiteral("gazewright_") + QLocale::languageToCode(locale.language());
  if (!ours->load(file, QStringLiteral(":/words"))) return;
  auto* of_qt = new QTranslator(&app);  // its standard buttons and dialogs
  if (of_qt->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                  QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    app.installTranslator(of_qt);
  app.installTranslator(ours);
  use_translation(translated);
}

}  // namespace gazewright
