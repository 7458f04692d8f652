#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <filesystem>

#include "app/plots/setting_text.h"
#include "app/plots/text.h"
#include "app/sheet/sheet.h"
#include "app/sheet/write_sheet.h"
#include "app/window/quantity_text.h"
#include "core/analysis/missing.h"
#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

/// What a program of poppler says of a PDF.
QString said_of(const char* program, const QStringList& arguments) {
  QProcess reader;
  reader.start(program, arguments);
  EXPECT_TRUE(reader.waitForFinished()) << "this test needs the package poppler-utils";
  return QString::fromUtf8(reader.readAllStandardOutput());
}

/// The words of a PDF as another program reads them, blanks made alike.
QString text_of(const QString& file, const char* order) {
  QString text = said_of("pdftotext", {order, file, "-"});
  return text.replace(QRegularExpression("\\s+"), " ").replace(QChar(0x202F), ' ');
}

/// The pages of a PDF as lines of text, without those that are empty.
std::vector<QStringList> pages_of(const QString& file) {
  const QString text = said_of("pdftotext", {"-layout", file, "-"}).replace(QChar(0x202F), ' ');
  std::vector<QStringList> pages;
  for (const QString& page : text.split('\f', Qt::SkipEmptyParts)) {
    pages.emplace_back();
    for (const QString& line : page.split('\n'))
      if (!line.trimmed().isEmpty()) pages.back() << line.simplified();
  }
  return pages;
}

/// Whether all words of a text stand in the sheet; a table's cells may wrap between them.
bool has_words(const QString& sheet, const QString& text) {
  const QStringList words = text.split(' ', Qt::SkipEmptyParts);
  return std::all_of(words.begin(), words.end(),
                     [&](const QString& word) { return sheet.contains(word); });
}

struct Written {
  QTemporaryDir folder;
  QString file = folder.filePath("owl.pdf");
  QString text;

  Written(const Rig& rig, const Analysis& analysis, Paper paper = Paper::a4,
          std::optional<Doubts> doubts = {}, const char* order = "-layout") {
    std::array<RatioSweep, 2> sweeps;
    for (const Axis axis : kAxes) {
      sweeps[std::size_t(axis)] = sweep_ratio(rig, axis, usual_ratios(20), {.settle = false});
    }
    SheetOptions options;
    options.paper = paper;
    options.doubts = std::move(doubts);
    options.file_name = "owl.rig.yaml";
    options.revision = "B";
    options.date = "2030-01-02";
    const auto problem = write_sheet(rig, analysis, &sweeps, file.toStdString(), options);
    EXPECT_FALSE(problem) << (problem ? problem->problem : "");
    text = text_of(file, order);
  }
};

TEST(Sheet, NamesTheRigItsFileRevisionDateAndEveryPage) {
  const Rig rig = tests::owl();
  const Written sheet(rig, analyse(rig, {.remedies = false}));
  for (const char* word : {"Tide-pool owl", "owl.rig.yaml", "revision B", "2030-01-02"}) {
    EXPECT_TRUE(sheet.text.contains(word)) << word;
  }
  const auto pages = QRegularExpression("page 1 of (\\d+)").match(sheet.text);
  ASSERT_TRUE(pages.hasMatch());
  const int count = pages.captured(1).toInt();
  EXPECT_GE(count, 3);
  EXPECT_LE(count, 16);
  for (int page = 1; page <= count; ++page) {
    EXPECT_TRUE(sheet.text.contains(QString("page %1 of %2").arg(page).arg(count)));
  }
  EXPECT_FALSE(sheet.text.contains(QString("page %1 of").arg(count + 1)));
}

TEST(Sheet, TellsHowFarToTrustTheNumbersAndTheFiveWorthMeasuring) {
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  Doubts doubts;
  for (int i = 0; i < 6; ++i) {
    doubts.unknowns.push_back({.path = "pan.motor.rotor_inertia",
                               .label = "Pan motor: guess " + std::to_string(i),
                               .value_si = 118e-7,
                               .spread_si = 11.8e-7,
                               .is_stated = i > 0,
                               .source = Source::estimate,
                               .si_unit = "kg.m2",
                               .unit = "g.cm2"});
    doubts.worth.push_back({.unknown = std::size_t(i),
                            .share = 0.3 - 0.05 * i,
                            .most_of = "pan.step.settle_time",
                            .text = "sentence number " + std::to_string(i)});
  }
  doubts.figures.push_back(
      {.id = "pan.step.settle_time",
       .value = 0.15,
       .uncertainty_si = 0.0123,
       .shifts = {{.unknown = 2, .low = 0.141, .high = 0.159, .because = {}}}});
  const Written sheet(rig, analysis, Paper::a4, doubts);
  EXPECT_TRUE(sheet.text.contains("How far to trust these numbers"));
  EXPECT_TRUE(has_words(sheet.text, "±12 ms")) << sheet.text.toStdString();
  EXPECT_TRUE(sheet.text.contains("141 ms to 159 ms"));
  EXPECT_TRUE(sheet.text.contains("118 g·cm² ±10 %"));
  EXPECT_TRUE(sheet.text.contains("estimate; usual spread"));
  EXPECT_TRUE(sheet.text.contains("sentence number 4"));
  EXPECT_FALSE(sheet.text.contains("sentence number 5"));
  EXPECT_FALSE(Written(rig, analysis).text.contains("How far to trust"));
}

TEST(Sheet, SaysWhatToSetInTheDrivesAndWithWhatToBegin) {
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Written sheet(rig, analysis);
  const auto at = sheet.text.indexOf("Drive settings");
  ASSERT_GE(at, 0);
  EXPECT_LT(at, sheet.text.indexOf("Assumptions"));
  for (const SettingPair& pair : paired_settings(rig, analysis)) {
    EXPECT_TRUE(has_words(sheet.text.mid(at), qstring(pair.any().label))) << pair.any().key;
    for (const auto& setting : pair.of) {
      QString shown = setting_text(setting);
      EXPECT_TRUE(has_words(sheet.text.mid(at), shown.replace(QChar(0x202F), ' ')))
          << pair.any().key << ' ' << shown.toStdString();
    }
  }
  EXPECT_TRUE(has_words(sheet.text, "a hand at the switch that cuts the motor power"));
}

TEST(Sheet, SaysWhichPartGoesWhere) {
  Rig rig = tests::owl();
  rig.tilt.gearbox = {};
  rig.tilt.gearbox.name = "left-over box";
  const Written sheet(rig, analyse(rig, {.remedies = false}));
  const QString parts = sheet.text.mid(sheet.text.indexOf("Mass of one"));
  EXPECT_TRUE(parts.contains("Gearbox left-over box Tilt")) << parts.left(1500).toStdString();
  EXPECT_TRUE(has_words(parts, "needs tilt gearbox mass"));
  EXPECT_TRUE(parts.contains("Motor outrunner A Pan"));
  EXPECT_TRUE(sheet.text.left(sheet.text.indexOf("Mass of one"))
                  .contains("gearbox: left-over box"));  // under the axis' tiles
}

TEST(Sheet, ListsTheKeepOuts) {
  Rig rig = tests::owl();
  const auto angle = [](double deg, const char* written) {
    Quantity made = si_quantity(deg * M_PI / 180);
    made.written = written;
    return made;
  };
  rig.keep_outs = {{"lamp post",
                    {angle(-20, "-20 deg"), angle(15, "15 deg")},
                    {angle(30, "30 deg"), angle(62.5, "62.5 deg")}}};
  const Written sheet(rig, analyse(rig, {.remedies = false}));
  EXPECT_TRUE(sheet.text.contains("lamp post −20° 15° 30° 62.5°"))
      << sheet.text.mid(sheet.text.indexOf("Keep-outs"), 200).toStdString();
  EXPECT_FALSE(sheet.text.contains("keep_outs["));
}

TEST(Sheet, HoldsEveryFindingFigureAndInputAndNoNotANumber) {
  Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Written sheet(rig, analysis);
  for (const Finding& finding : analysis.findings) {
    EXPECT_TRUE(has_words(sheet.text, QString::fromStdString(finding.what))) << finding.what;
  }
  int shown = 0;
  for (const Figure& figure : analysis.figures) {
    if (figure.is_aside || figure.id.find(".profile.") != std::string::npos ||
        figure.id.find(".limits.") != std::string::npos)
      continue;
    EXPECT_TRUE(has_words(sheet.text, QString::fromStdString(std::string(figure.info->label))))
        << figure.id;
    ++shown;
  }
  EXPECT_GT(shown, 100);
  for (const FieldRef& field : all_fields(rig)) {
    const auto* ref = std::get_if<QuantityRef>(&field);
    if (ref == nullptr || ref->quantity->written.empty()) continue;
    EXPECT_TRUE(has_words(sheet.text, shown_quantity(*ref->quantity, *ref->info).simplified()))
        << ref->path;
  }
  EXPECT_FALSE(QRegularExpression("\\b(nan|inf)\\b", QRegularExpression::CaseInsensitiveOption)
                   .match(sheet.text)
                   .hasMatch());
}

TEST(Sheet, OfARigWithNothingInItSaysWhatIsMissingOnBothPapers) {
  const Rig rig;
  const Analysis analysis = analyse(rig);
  for (const Paper paper : {Paper::a4, Paper::letter}) {
    const Written sheet(rig, analysis, paper);
    EXPECT_TRUE(sheet.text.contains("Untitled rig"));
    EXPECT_TRUE(sheet.text.contains("missing"));
    EXPECT_TRUE(sheet.text.contains("unknown"));
    EXPECT_FALSE(QRegularExpression("\\bnan\\b").match(sheet.text).hasMatch());
  }
}

std::vector<Rig> sample_rigs() {
  std::vector<Rig> rigs;
  const auto folder = std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs";
  for (const auto& file : std::filesystem::directory_iterator(folder)) {
    if (!file.path().string().ends_with(".rig.yaml")) continue;
    rigs.push_back(load_rig(file.path()).rig.value());
  }
  return rigs;
}

/// A rig of which half is not known yet.
Rig unfinished() {
  Rig rig = tests::owl();
  rig.stand = {};
  rig.tilt.motor.rotor_inertia_kgm2 = {};
  rig.supply.bus_capacitance_F = {};
  rig.pan.stops.stiffness_Nmprad = {};
  return rig;
}

TEST(Sheet, BeginsEverySentenceWithACapitalAndBreaksNone) {
  std::vector<Rig> rigs = sample_rigs();
  ASSERT_FALSE(rigs.empty());
  rigs.push_back(unfinished());
  for (const Rig& rig : rigs) {
    const Written sheet(rig, analyse(rig), Paper::a4, {}, "-raw");
    const QRegularExpression small("[^.\\s]*\\. [a-z][^.]{0,40}");
    const auto found = small.match(sheet.text);
    EXPECT_FALSE(found.hasMatch()) << rig.title << ": " << found.captured().toStdString();
    for (const char* broken : {"no answer", "against unknown", "of unknown", "±–"})
      EXPECT_FALSE(sheet.text.contains(broken)) << rig.title << ": " << broken;
  }
}

TEST(Sheet, SaysInPlaceOfAValueWhyItIsNotKnown) {
  Rig rig = tests::owl();
  rig.stand = {};
  rig.supply.bus_capacitance_F = {};
  const Written sheet(rig, analyse(rig, {.remedies = false}), Paper::a4, {}, "-raw");
  EXPECT_TRUE(sheet.text.contains("Not known: needs stand mass")) << sheet.text.toStdString();
  EXPECT_TRUE(sheet.text.contains("Bus voltage needs supply bus capacitance"))
      << sheet.text.mid(sheet.text.indexOf("Both axes together"), 400).toStdString();
}

constexpr const char* kHeadings[]{"What fails or is tight, and what to do",
                                  "Drive line of each axis",
                                  "Drive settings",
                                  "Parts",
                                  "Stops, screws, bearings, wiring and supply",
                                  "Bodies",
                                  "Homing plan",
                                  "Before you build and switch on",
                                  "Plots",
                                  "What limits the moves",
                                  "Gain advice",
                                  "What holds",
                                  "Figures",
                                  "Assumptions",
                                  "Checked and released"};

/// A maker with the first page in hand sees the thing, what is wrong with it and what to do; then
/// comes what to build from, and what holds only after that.
TEST(Sheet, BeginsWithTheDrawingWhatFailsAndWhatToDoAndWhatToBuildFrom) {
  for (const Rig& rig : sample_rigs()) {
    const Analysis analysis = analyse(rig);
    const Written sheet(rig, analysis);
    const std::vector<QStringList> pages = pages_of(sheet.file);
    const QString first = pages.front().join(' ');
    EXPECT_TRUE(first.contains("Drawing to scale")) << rig.title;
    EXPECT_TRUE(first.contains(kHeadings[0])) << rig.title;
    QStringList lines;
    for (const QStringList& page : pages) lines << page;
    qsizetype at = 0;
    for (const char* heading : kHeadings) {
      const qsizetype found = lines.indexOf(QString(heading), at);
      EXPECT_GE(found, 0) << rig.title << ": " << heading << " comes too early or not at all";
      at = std::max(at, found);
    }
    // Findings are sorted: the first page has the worst with its remedy, the others follow at once.
    const QString to_do = lines.mid(0, lines.indexOf(QString(kHeadings[1]))).join(' ');
    bool is_first_page = true;
    for (const Finding& finding : analysis.findings) {
      if (finding.verdict != Verdict::fails && finding.verdict != Verdict::tight) continue;
      const QString& where = is_first_page ? first : to_do;
      is_first_page = false;
      EXPECT_TRUE(has_words(where, QString::fromStdString(finding.what))) << finding.what;
      if (finding.remedies.empty()) continue;
      EXPECT_TRUE(has_words(where, QString::fromStdString(finding.remedies.front().text)))
          << finding.remedies.front().text;
    }
  }
}

TEST(Sheet, LeavesNoHeadingAloneAtTheFootOfAPage) {
  std::vector<Rig> rigs = sample_rigs();
  rigs.push_back(unfinished());
  rigs.emplace_back();
  for (const Rig& rig : rigs)
    for (const Paper paper : {Paper::a4, Paper::letter}) {
      const Written sheet(rig, analyse(rig, {.remedies = false}), paper);
      for (const QStringList& page : pages_of(sheet.file)) {
        ASSERT_GE(page.size(), 2) << rig.title;
        const QString last = page[page.size() - 2];  // above the footer
        for (const char* heading : kHeadings)
          EXPECT_NE(last.toStdString(), heading) << rig.title << ", " << page.back().toStdString();
      }
    }
}

TEST(Sheet, OfARigThatLacksMuchSaysOnItsFirstPageWhatToFillInFirst) {
  Rig rig;
  rig.title = "Half a thought";
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Written sheet(rig, analysis);
  const QString first = pages_of(sheet.file).front().join(' ');
  const MissingInputs missing = missing_inputs(analysis);
  EXPECT_TRUE(first.contains(QString("Missing inputs: %1. Without them %2 figures and %3 findings")
                                 .arg(missing.all.size())
                                 .arg(missing.figures)
                                 .arg(missing.findings)))
      << first.left(3000).toStdString();
  for (const MissingEntry& entry : missing.first)
    EXPECT_TRUE(has_words(first, mid_sentence(qstring(missing_entry_words(entry))))) << entry.path;
  EXPECT_TRUE(has_words(first, "Nothing is known yet that fails or is tight."));
  EXPECT_FALSE(first.contains("What holds")) << "it has no such section";
}

TEST(Sheet, CountsDefaultsAsWhatTheyAre) {
  Rig rig = tests::owl();
  rig.task.settle_band_px = {};
  rig.pan.cable.routing = {};
  const Written sheet(rig, analyse(rig, {.remedies = false}));
  EXPECT_TRUE(sheet.text.contains("settled within ±4 px"));
  EXPECT_TRUE(sheet.text.contains("twist along the axis"));
}

TEST(Sheet, UsesThePaperThatIsAskedForAndEmbedsItsFonts) {
  const Rig rig = tests::owl();
  const Written sheet(rig, analyse(rig, {.remedies = false}), Paper::letter);
  QProcess info;
  info.start("pdfinfo", {sheet.file});
  ASSERT_TRUE(info.waitForFinished());
  EXPECT_TRUE(info.readAllStandardOutput().contains("612 x 792 pts"));
  QProcess fonts;
  fonts.start("pdffonts", {sheet.file});
  ASSERT_TRUE(fonts.waitForFinished());
  const QList<QByteArray> lines = fonts.readAllStandardOutput().trimmed().split('\n').mid(2);
  EXPECT_FALSE(lines.isEmpty());
  for (const QByteArray& line : lines) {
    EXPECT_TRUE(line.contains(" yes ")) << "not embedded: " << line.toStdString();
  }
}

TEST(Sheet, LeavesTheOldFileAndSaysWhyWhenItCannotWrite) {
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  const QTemporaryDir folder;
  const QString missing = folder.filePath("not-there/owl.pdf");
  const auto problem = write_sheet(rig, analysis, nullptr, missing.toStdString());
  ASSERT_TRUE(problem);
  EXPECT_FALSE(problem->problem.empty());
  EXPECT_FALSE(problem->fix.empty());
  EXPECT_FALSE(QFile::exists(missing));
  const auto onto_folder = write_sheet(rig, analysis, nullptr, folder.path().toStdString());
  EXPECT_TRUE(onto_folder) << "a folder is no file";
  EXPECT_TRUE(QFile::exists(folder.path()));
}

/// On the screen a press on "+3" opens the list of the rest; paper has nothing to press.
TEST(Sheet, ItsLegendsAreWholeAndItSaysWhatItIsAndWhatMadeIt) {
  const Rig rig = tests::owl();
  const Written sheet(rig, analyse(rig));
  const QString text = said_of("pdftotext", {"-layout", sheet.file, "-"});
  const QRegularExpression counted("(^|[ \n])\\+\\d+( {2,}|\n|$)");
  const auto found = counted.match(text);
  EXPECT_FALSE(found.hasMatch()) << text.mid(found.capturedStart() - 80, 160).toStdString();
  EXPECT_TRUE(text.contains("the step"))
      << "of the torque plot, which has more than one line takes";
  const QString about = said_of("pdfinfo", {sheet.file});
  EXPECT_TRUE(about.contains(QRegularExpression("Title: +Tide-pool owl, design sheet")))
      << about.toStdString();
  EXPECT_TRUE(about.contains(QRegularExpression("Creator: +Gazewright \\d")))
      << about.toStdString();
}

}  // namespace
}  // namespace gazewright
