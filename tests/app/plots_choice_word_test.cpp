#include <gtest/gtest.h>

#include <QRegularExpression>

#include "app/plots/choice_word.h"
#include "app/plots/text.h"
#include "core/rig/fields.h"

/// Help says choices as the window shows them, with the rig file's word in brackets.
namespace gazewright {
namespace {

Rig rig_with_choices() {
  Rig rig;
  for (const Axis axis : kAxes)
    rig.axis(axis).stops.presence = rig.axis(axis).cable.presence = Presence::given;
  rig.on_tilt.emplace_back().shape = Tube{};
  return rig;
}

bool names(const QString& help, const QString& word) {
  const QRegularExpression whole(
      QStringLiteral("(?<![\\w-])%1(?![\\w-])").arg(QRegularExpression::escape(word)),
      QRegularExpression::CaseInsensitiveOption);
  return help.contains(whole);
}

TEST(ChoiceWords, HelpNamesAChoiceByTheWordThatIsShown) {
  Rig rig = rig_with_choices();
  int named = 0, in_brackets = 0;
  for (const FieldRef& field : all_fields(rig)) {
    const auto* choice = std::get_if<ChoiceRef>(&field);
    if (choice == nullptr) continue;
    const QString help = qstring(choice->info->help);
    for (const std::string_view option : choice->info->options) {
      const QString value = qstring(option), shown = choice_word(option);
      if (!names(help, value)) continue;
      ++named;
      EXPECT_TRUE(help.contains(shown, Qt::CaseInsensitive))
          << choice->path << ": " << value.toStdString() << " is shown as " << shown.toStdString();
      if (shown == value) continue;
      ++in_brackets;
      EXPECT_TRUE(help.contains(QStringLiteral("%1 (%2)").arg(shown, value), Qt::CaseInsensitive))
          << choice->path << ": " << help.toStdString();
    }
  }
  EXPECT_GT(named, 50);  // both axes
  EXPECT_GT(in_brackets, 35);
}

/// Helps of numbers that belong to one choice name it so too.
TEST(ChoiceWords, NoHelpOfANumberNamesAChoiceByTheFilesWordAlone) {
  Rig rig = rig_with_choices();
  std::vector<QString> own_words;  // that only the file has
  for (const FieldRef& field : all_fields(rig))
    if (const auto* choice = std::get_if<ChoiceRef>(&field))
      for (const std::string_view option : choice->info->options)
        if (option.find('_') != std::string_view::npos || option == "trailing")
          own_words.push_back(qstring(option));
  ASSERT_FALSE(own_words.empty());
  for (const FieldRef& field : all_fields(rig)) {
    const auto* quantity = std::get_if<QuantityRef>(&field);
    if (quantity == nullptr) continue;
    for (const QString& word : own_words)
      EXPECT_FALSE(names(qstring(quantity->info->help), word)) << quantity->path;
  }
}

}  // namespace
}  // namespace gazewright
