#pragma once

#include <QCoreApplication>
#include <QStringList>

namespace gazewright {

/// What may be wanted: "desktop", "en", "de".
const QStringList& languages();

/// Shows everything in a language: the window, its sheet, and what core says; numbers in sentences
/// with the desktop's decimal mark. To be called once, before any window and any analysis.
/// @param wanted  one of `languages`; one without a translation leaves English
void use_language(QCoreApplication& app, const QString& wanted);

}  // namespace gazewright
