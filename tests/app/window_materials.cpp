#include <gtest/gtest.h>

#include <QLabel>
#include <QToolButton>

#include "app/window/material_names.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

QToolButton* button(OwlWindow& owl, const char* name) {
  return owl.window.card().findChild<QToolButton*>(QString::fromUtf8(name));
}

TEST(WindowMaterials, AMaterialIsAddedLikeTheArmsEditedAndTakenAwayAgain) {
  OwlWindow owl;
  owl.window.document().edit("arm", with_text(owl.rig(), "arm.material", "petg"));
  owl.window.select("stand");
  QTest::mouseClick(button(owl, "material.add"), Qt::LeftButton);
  ASSERT_EQ(owl.rig().materials.size(), 1u);
  EXPECT_EQ(owl.rig().materials[0].name, "my petg");
  EXPECT_EQ(owl.rig().materials[0].density_kgpm3.written, "1.27 g/cm3");
  ASSERT_NE(owl.type("materials[0].modulus", "2.4 GPa"), nullptr);
  EXPECT_DOUBLE_EQ(owl.rig().materials[0].modulus_Pa.value(), 2.4e9);
  QTest::mouseClick(button(owl, "material.add"), Qt::LeftButton);
  EXPECT_EQ(owl.rig().materials[1].name, "my petg 2");
  QTest::mouseClick(button(owl, "material.remove"), Qt::LeftButton);
  ASSERT_EQ(owl.rig().materials.size(), 1u);
  EXPECT_EQ(owl.rig().materials[0].name, "my petg 2");
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig().materials.size(), 2u);
}

TEST(WindowMaterials, AnUnknownMaterialIsNamedBelowTheArm) {
  OwlWindow owl;
  owl.window.select("stand");
  const auto text = [&owl] {
    QString all;
    for (const QLabel* label :
         owl.window.card().findChild<MaterialNames*>()->findChildren<QLabel*>())
      if (label->isVisibleTo(owl.window.card().window())) all += label->text() + ' ';
    return all;
  };
  EXPECT_TRUE(text().contains("pla, petg, asa, nylon"));
  EXPECT_FALSE(text().contains("there is no material"));
  owl.window.document().edit("arm", with_text(owl.rig(), "arm.material", "petq"));
  EXPECT_TRUE(text().contains("did you mean petg?")) << text().toStdString();
}

TEST(WindowMaterials, TheWallOfAnArmGoesWithItsBox) {
  OwlWindow owl;
  owl.window.select("stand");
  EXPECT_TRUE(owl.field("arm.wall")->isVisible());
  owl.window.document().edit("bar", with_choice(owl.rig(), "arm.section", "bar"));
  EXPECT_FALSE(owl.field("arm.wall")->isVisible());
}

TEST(WindowBalance, ACounterweightComesInOnePressAndGoesWithUndo) {
  OwlWindow owl;
  Rig rig = with_value(owl.rig(), "tilt.balance.counterweight_arm", 0.05);
  owl.window.document().edit("arm", rig);
  const Remedy remedy{"", "counterweight.tilt", 0};
  const std::size_t before = owl.rig().on_tilt.size();
  owl.window.document().edit("remedy", with_remedy(owl.rig(), remedy));
  ASSERT_EQ(owl.rig().on_tilt.size(), before + 1);
  EXPECT_EQ(owl.rig().on_tilt.back().name, "counterweight");
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig().on_tilt.size(), before);
}

}  // namespace
}  // namespace gazewright::tests
