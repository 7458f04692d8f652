#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLocale>
#include <QToolButton>
#include <QWheelEvent>

#include "app/window/quantity_text.h"
#include "core/units/angle.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

TEST(WindowEdit, TakesAnyUnitOfTheDimension) {
  OwlWindow owl;
  owl.window.select("pan.motor");
  ASSERT_NE(owl.type("pan.motor.rotor_inertia", "0.0000245 kg.m2"), nullptr);
  EXPECT_DOUBLE_EQ(*owl.rig().pan.motor.rotor_inertia_kgm2.si, 2.45e-5);
  owl.type("pan.motor.peak_current", "41000 mA");
  EXPECT_DOUBLE_EQ(*owl.rig().pan.motor.peak_current_A.si, 41);
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.backlash", "0.25 deg");
  EXPECT_NEAR(*owl.rig().pan.gearbox.backlash_rad.si, 0.25 * kPi / 180, 1e-15);
  EXPECT_EQ(owl.field("pan.gearbox.backlash")->edit()->text(), QString::fromUtf8("0.25°"));
}

TEST(WindowEdit, TakesABareNumberInTheUnitShown) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.backlash", "8");
  EXPECT_NEAR(*owl.rig().pan.gearbox.backlash_rad.si, 8.0 / 60 * kPi / 180, 1e-15);
  EXPECT_EQ(owl.field("pan.gearbox.backlash")->edit()->text(), QString::fromUtf8("8\u202farcmin"));
}

TEST(WindowEdit, RejectsABadEntryBesideTheFieldAndKeepsTheLastValidOne) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  const Rig before = owl.rig();
  for (const char* bad : {"heavy", "3 kg", "-2", "5000", "nan", "1e999"}) {
    QuantityField* field = owl.type("pan.gearbox.ratio", bad);
    ASSERT_NE(field, nullptr);
    EXPECT_EQ(owl.rig(), before) << bad;
    EXPECT_FALSE(field->errorText().isEmpty()) << bad;
    EXPECT_TRUE(field->errorText().contains("Still 18")) << field->errorText().toStdString();
    EXPECT_EQ(field->errorText().count("0.01 to 1000"), 1) << field->errorText().toStdString();
  }
  QuantityField* field = owl.field("pan.gearbox.ratio");
  QTest::keyClick(field->edit(), Qt::Key_Escape);
  EXPECT_EQ(field->edit()->text(), "18");
  EXPECT_TRUE(field->errorText().isEmpty());
}

TEST(WindowEdit, StepsAValueInItsSecondDigitAsOneUndoneStep) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.ratio", "18");
  const int steps_before = owl.window.document().history().count();
  QLineEdit* edit = owl.field("pan.gearbox.ratio")->edit();
  edit->setFocus();
  for (const auto& [key, ratio] : {std::pair(Qt::Key_Up, 19.0),
                                   {Qt::Key_Down, 18.0},
                                   {Qt::Key_PageDown, 8.0},
                                   {Qt::Key_Up, 8.1},
                                   {Qt::Key_PageUp, 9.1}}) {
    QTest::keyClick(edit, key);
    EXPECT_EQ(owl.rig().pan.gearbox.ratio.si, ratio);
  }
  EXPECT_EQ(edit->text(), "9.1");
  EXPECT_EQ(owl.window.document().history().count(), steps_before + 1);
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig().pan.gearbox.ratio.si, 18);
}

TEST(WindowEdit, UndoInAFieldIsItsOwnWhileItIsTypedInThenTheRigs) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.ratio", "20");
  ASSERT_EQ(owl.rig().pan.gearbox.ratio.si, 20);
  QLineEdit* edit = owl.field("pan.gearbox.ratio")->edit();
  // What accepts this event keeps the key from the menu's shortcut.
  const auto keeps = [edit](Qt::Key key) {
    QKeyEvent asked(QEvent::ShortcutOverride, key, Qt::ControlModifier);
    QCoreApplication::sendEvent(edit, &asked);
    return asked.isAccepted();
  };
  EXPECT_FALSE(keeps(Qt::Key_Z));
  EXPECT_TRUE(keeps(Qt::Key_A)) << "to select all is the field's";
  edit->selectAll();
  QTest::keyClicks(edit, "25");
  EXPECT_TRUE(keeps(Qt::Key_Z));
}

TEST(WindowEdit, AStepKeepsTheUnitAndStaysWithinWhatIsAllowed) {
  const FieldInfo& backlash = *find_info("pan.gearbox.backlash");
  EXPECT_EQ(stepped(QString::fromUtf8("8\u202farcmin"), 1, backlash),
            QString::fromUtf8("8.1\u202farcmin"));
  EXPECT_EQ(stepped(QString::fromUtf8("10\u202farcmin"), -1, backlash),
            QString::fromUtf8("9.9\u202farcmin"));
  EXPECT_EQ(stepped(QString::fromUtf8("0.25°"), 10, backlash), QString::fromUtf8("0.35°"));
  EXPECT_EQ(stepped("7", 1, *find_info("pan.motor.pole_pairs")), "8") << "whole numbers only";
  EXPECT_EQ(stepped("missing", 1, backlash), "");
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.ratio", "1000");
  QTest::keyClick(owl.field("pan.gearbox.ratio")->edit(), Qt::Key_Up);
  EXPECT_EQ(owl.rig().pan.gearbox.ratio.si, 1000);
  EXPECT_EQ(owl.field("pan.gearbox.ratio")->errorText(), "");
}

TEST(WindowEdit, SaysInFullWhatAnEmptyEntryStandsForWhereThatDoesNotFit) {
  OwlWindow owl;
  owl.window.document().edit("edit", with_quantity(owl.rig(), "pan.gearbox.back_efficiency", {}));
  owl.window.select("pan.gearbox.back_efficiency");
  QuantityField* field = owl.field("pan.gearbox.back_efficiency");
  ASSERT_NE(field, nullptr);
  EXPECT_EQ(field->edit()->placeholderText(), "worked out");
  bool told = false;
  for (const QLabel* label : field->findChildren<QLabel*>())
    told =
        told || (label->isVisibleTo(field) && label->text() == "Left empty: 2 - 1 / efficiency.");
  EXPECT_TRUE(told);
}

TEST(WindowEdit, SaysBesideTheFieldThatAValueIsFarFromUsualAndTakesIt) {
  OwlWindow owl;
  owl.window.select("pan.motor");
  const auto note = [&] {
    for (const QLabel* label : owl.field("pan.motor.mass")->findChildren<QLabel*>())
      if (label->isVisible() && label->text().startsWith("Unusual")) return label->text();
    return QString();
  };
  EXPECT_EQ(note(), QString());
  owl.type("pan.motor.mass", "96 kg");
  EXPECT_DOUBLE_EQ(*owl.rig().pan.motor.mass_kg.si, 96);
  EXPECT_EQ(note(), "Unusual: usually 30 g to 1000 g.");
  owl.type("pan.motor.mass", "96 g");
  EXPECT_EQ(note(), QString());
}

TEST(WindowEdit, UnderstandsARatioOfTwoNumbers) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  const QuantityField* field = owl.type("pan.gearbox.ratio", "1:10");
  EXPECT_TRUE(field->errorText().contains("write 10: so many turns of the motor"))
      << field->errorText().toStdString();
}

TEST(WindowEdit, AnEntryThatIsClearedIsMissingAndSaysWhatThatCosts) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("tilt.motor");
  owl.type("tilt.motor.rotor_inertia", " ");
  EXPECT_FALSE(owl.rig().tilt.motor.rotor_inertia_kgm2.has_value());
  ASSERT_TRUE(owl.settle());
  EXPECT_FALSE(owl.window.recompute().analysis()->value("tilt.step.settle_time"));
  EXPECT_TRUE(owl.window.recompute().analysis()->value("pan.step.settle_time"));
  QuantityField* field = owl.field("tilt.motor.rotor_inertia");
  EXPECT_EQ(field->edit()->placeholderText(), "missing");
  bool told = false;
  for (const QLabel* label : field->findChildren<QLabel*>()) {
    told = told || (label->isVisible() && label->text().contains("figures are unknown"));
  }
  EXPECT_TRUE(told);
}

TEST(WindowEdit, KeepsSourceAndPercentSpreadWhenTheValueChanges) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.efficiency", "80 %");
  const Quantity& efficiency = owl.rig().pan.gearbox.efficiency;
  EXPECT_DOUBLE_EQ(*efficiency.si, 0.8);
  EXPECT_EQ(efficiency.source, Source::datasheet);
  EXPECT_NEAR(efficiency.spread_si, 0.04, 1e-12);
}

TEST(WindowEdit, ReadsTheDecimalCommaOfTheLocale) {
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German));
  const FieldInfo& ratio = *find_info("pan.gearbox.ratio");
  const auto read = read_typed("17,5", Quantity{}, ratio);
  const auto shown = shown_quantity(std::get<Quantity>(read), ratio);
  QLocale::setDefault(before);
  EXPECT_DOUBLE_EQ(*std::get<Quantity>(read).si, 17.5);
  EXPECT_EQ(std::get<Quantity>(read).written, "17.5");
  EXPECT_EQ(shown, "17,5");
}

TEST(WindowEdit, TheWheelOverAComboWithoutTheFocusChangesNothing) {
  OwlWindow owl;
  owl.window.select("pan.motor");
  const Rig before = owl.rig();
  for (QComboBox* combo : owl.window.card().findChildren<QComboBox*>()) {
    combo->clearFocus();
    QWheelEvent wheel(QPointF(3, 3), combo->mapToGlobal(QPointF(3, 3)), {}, QPoint(0, -120),
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(combo, &wheel);
  }
  EXPECT_EQ(owl.rig(), before);
}

TEST(WindowEdit, EveryFieldOfTheRigIsOnACard) {
  OwlWindow owl;
  Rig rig = owl.rig();
  std::vector<std::string> missing;
  for (const FieldRef& ref : all_fields(rig)) {
    const std::string& path = path_of(ref);
    owl.window.select(QString::fromStdString(path));
    bool found = false;
    for (const CardRow* row : owl.window.card().findChildren<CardRow*>()) {
      found = found || row->objectName() == QString::fromStdString(path + " row");
    }
    if (!found) missing.push_back(path);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  EXPECT_TRUE(missing.empty()) << "first: " << missing.front();
}

TEST(WindowEdit, BodiesAreAddedDoubledAndRemoved) {
  OwlWindow owl;
  owl.window.select("tilt.load");
  const Rig before = owl.rig();
  const auto press = [&](const char* name) {
    for (QToolButton* button : owl.window.card().findChildren<QToolButton*>(QLatin1String(name))) {
      if (button->isVisible()) return button->click();
    }
    ADD_FAILURE() << name << " is not there";
  };
  press("body.add");
  ASSERT_EQ(owl.rig().on_tilt.size(), 3u);
  EXPECT_EQ(owl.window.selected(), "on_tilt[2]");
  press("body.duplicate");
  ASSERT_EQ(owl.rig().on_tilt.size(), 4u);
  EXPECT_EQ(owl.window.selected(), "on_tilt[3]");
  press("body.remove");
  press("body.add");
  EXPECT_EQ(owl.rig().on_tilt.size(), 4u);
  for (int i = 0; i < 4; ++i) owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
}

TEST(WindowEdit, StopsCanBeTakenAwayAndDescribedAgain) {
  OwlWindow owl;
  owl.window.select("pan.stops");
  ASSERT_NE(owl.field("pan.stops.radius"), nullptr);
  owl.window.document().edit("none", with_presence(owl.rig(), "pan.stops", Presence::none));
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  EXPECT_EQ(owl.field("pan.stops.radius"), nullptr);
  owl.window.document().history().undo();
  EXPECT_NE(owl.field("pan.stops.radius"), nullptr);
}

TEST(WindowEdit, KVIsRpmPerVoltAndAKilovoltIsRefusedAsOne) {
  OwlWindow owl;
  owl.window.select("pan.motor");
  QuantityField* field = owl.type("pan.motor.speed_constant", "120 kV");
  ASSERT_NE(field, nullptr);
  EXPECT_TRUE(field->errorText().contains("kV is a kilovolt; write 120 KV or 120 rpm/V"))
      << field->errorText().toStdString();
  EXPECT_EQ(owl.rig().pan.motor.speed_constant_radpsV.written, "410 rpm/V");
  owl.type("pan.motor.speed_constant", "120 KV");
  EXPECT_TRUE(field->errorText().isEmpty()) << field->errorText().toStdString();
  EXPECT_EQ(owl.rig().pan.motor.speed_constant_radpsV.written, "120 KV");
  EXPECT_EQ(field->edit()->text(), "120\u202fKV");
}

}  // namespace
}  // namespace gazewright
