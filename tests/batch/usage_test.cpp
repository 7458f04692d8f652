#include <gtest/gtest.h>

#include "tests/batch/program.h"

/// Wrong usage: status 2, nothing on standard output, a sentence and what to do on standard error.
namespace gazewright::test {
namespace {

struct Wrong {
  std::vector<std::string> arguments;
  std::string message;
};

const std::vector<Wrong>& wrong_usages() {
  static const std::vector<Wrong> all{
      {{},
       "no verb is given\n"
       "  fix: write for example gazewright-batch figures RIG; gazewright-batch --help says more"},
      {{"figs", kNewt},
       "there is no verb \"figs\"\n"
       "  fix: the verbs are figures, trace, sweep, travel, track, compare, doubts, settings, "
       "parts, "
       "sheet, shelf and fit; "
       "gazewright-batch --help explains them"},
      {{"figures"},
       "figures needs a rig file\n  fix: write its name, or - to read it from standard input"},
      {{"figures", kNewt, "other.rig.yaml"},
       "one rig at a time: \"other.rig.yaml\" is one too many\n"
       "  fix: run the program once for each rig"},
      {{"figures", kNewt, "--jsn"},
       "there is no option \"--jsn\"\n  fix: gazewright-batch --help lists them; a file whose name "
       "begins with - goes after --"},
      {{"figures", kNewt, "--json", "--csv"},
       "--json and --csv exclude each other\n  fix: give one of the two"},
      {{"figures", kNewt, "--json=yes"}, "--json takes no value\n  fix: write --json alone"},
      {{"figures", kNewt, "--axis", "pan"},
       "--axis does not belong to the verb figures\n  fix: figures takes --json, --csv, --strict, "
       "--data"},
      {{"trace", kNewt}, "trace needs an axis\n  fix: add --axis pan, --axis tilt or --both"},
      {{"trace", kNewt, "--axis", "roll"},
       "there is no axis \"roll\"\n  fix: write --axis pan or --axis tilt"},
      {{"trace", kNewt, "--axis"}, "--axis needs a value\n  fix: write --axis pan|tilt"},
      {{"trace", kNewt, "--axis", "pan", "--axis", "tilt"},
       "--axis is given twice\n  fix: give it once"},
  };
  return all;
}

const std::vector<Wrong>& wrong_usages_of_later_verbs() {
  static const std::vector<Wrong> all{
      {{"sweep", kNewt, "--axis", "pan"},
       "sweep needs the ratios\n  fix: add for example --ratio 4:40:1"},
      {{"sweep", kNewt, "--axis", "pan", "--ratio", "4:40"},
       "--ratio 4:40 is not a range\n  fix: write FROM:TO:STEP, for example --ratio 4:40:1"},
      {{"sweep", kNewt, "--axis", "pan", "--ratio", "4:x:1"},
       "--ratio 4:x:1 is not three numbers\n"
       "  fix: write FROM:TO:STEP, for example --ratio 4:40:1"},
      {{"sweep", kNewt, "--axis", "pan", "--ratio", "nan:40:1"},
       "--ratio nan:40:1 is not three numbers\n"
       "  fix: write FROM:TO:STEP, for example --ratio 4:40:1"},
      {{"sweep", kNewt, "--axis", "pan", "--ratio", "40:4:1"},
       "--ratio 40:4:1 has no ratios in it\n  fix: FROM and STEP are above 0 and TO is not below "
       "FROM, for example --ratio 4:40:1"},
      {{"sweep", kNewt, "--axis", "pan", "--ratio", "4:40:0"},
       "--ratio 4:40:0 has no ratios in it\n  fix: FROM and STEP are above 0 and TO is not below "
       "FROM, for example --ratio 4:40:1"},
      {{"sweep", kNewt, "--axis", "pan", "--ratio", "1:1e300:1e-300"},
       "--ratio 1:1e300:1e-300 has more than 10000 ratios\n  fix: take a longer step"},
      {{"travel", kNewt, "--axis", "pan"},
       "--axis does not belong to the verb travel\n  fix: travel takes --step, --out, --data"},
      {{"travel", kNewt, "--step", "5"},
       "--step 5: 5 has no unit; an angle is due\n"
       "  fix: write an angle from 0.25 deg to 30 deg, for example --step 2deg"},
      {{"travel", kNewt, "--out", ""},
       "--out has no file name\n  fix: write for example --out sheet.pdf"},
      {{"track", kNewt, "--save", "x.rig.yaml"},
       "--save has no path to put into the rig\n  fix: add for example --path walk.csv"},
      {{"track", kNewt, "--path", ""},
       "--path has no file name\n  fix: write the name of a file after it"},
      {{"sheet", kNewt}, "sheet needs a file to write\n  fix: add for example --out sheet.pdf"},
      {{"sheet", kNewt, "--out", "x.pdf", "--paper", "a5"},
       "there is no paper \"a5\"\n  fix: write --paper a4 or --paper letter"},
  };
  return all;
}

void expect_refused(const std::vector<Wrong>& usages) {
  for (const auto& [arguments, message] : usages) {
    const Ran ran = run_batch(arguments);
    EXPECT_EQ(ran.status, 2) << message;
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(ran.err, "gazewright-batch: " + message + '\n');
  }
}

TEST(BatchUsage, WrongUsageSaysWhatIsWrongAndWhatToDo) {
  expect_refused(wrong_usages());
  expect_refused(wrong_usages_of_later_verbs());
}

TEST(BatchUsage, ATimeThatIsNoneIsRefused) {
  for (const std::string time :
       {"0", "-1", "61", "1 h", "3 m", "soon", "", "inf", "nan", "0.6s s"}) {
    const Ran ran = run_batch({"trace", kNewt, "--axis", "pan", "--for", time});
    EXPECT_EQ(ran.status, 2) << time;
    EXPECT_EQ(ran.out, "") << time;
    EXPECT_TRUE(ran.err.starts_with("gazewright-batch: --for " + time + ": ")) << ran.err;
    EXPECT_NE(ran.err.find("for example --for 0.6 or --for \"600 ms\"\n"), std::string::npos);
  }
}

TEST(BatchUsage, HelpNamesEveryVerbOptionAndStatus) {
  const Ran ran = run_batch({"--help"});
  EXPECT_EQ(ran.status, 0);
  EXPECT_EQ(ran.err, "");
  for (const char* word : {"figures RIG", "trace RIG",  "sweep RIG",    "travel RIG",  "track RIG",
                           "compare RIG", "doubts RIG", "settings RIG", "parts RIG",   "sheet RIG",
                           "--all",       "--path",     "--save",       "--step",      "--json",
                           "--csv",       "--strict",   "--axis",       "--for",       "--ratio",
                           "--out",       "--paper",    "Examples",     "Exit status", "--version"})
    EXPECT_NE(ran.out.find(word), std::string::npos) << word;
  EXPECT_EQ(run_batch({"-h"}).out, ran.out);
}

TEST(BatchUsage, EveryVerbHasItsOwnHelpWithAnExample) {
  for (const std::string verb : {"figures", "trace", "sweep", "travel", "track", "compare",
                                 "doubts", "settings", "parts", "sheet"}) {
    const Ran ran = run_batch({verb, "--help"});
    EXPECT_EQ(ran.status, 0) << verb;
    EXPECT_TRUE(ran.out.starts_with("gazewright-batch " + verb + " RIG")) << ran.out;
    EXPECT_NE(ran.out.find("\nExample"), std::string::npos) << verb;
    EXPECT_EQ(run_batch({"--help", verb}).out, ran.out) << verb;
  }
}

TEST(BatchUsage, HelpFitsATerminalOfAHundredColumns) {
  for (const std::vector<std::string>& arguments : {std::vector<std::string>{"--help"},
                                                    {"figures", "--help"},
                                                    {"trace", "--help"},
                                                    {"sweep", "--help"},
                                                    {"travel", "--help"},
                                                    {"track", "--help"},
                                                    {"compare", "--help"},
                                                    {"doubts", "--help"},
                                                    {"settings", "--help"},
                                                    {"parts", "--help"},
                                                    {"sheet", "--help"}})
    for (const std::string& line : lines_of(run_batch(arguments).out))
      EXPECT_LE(line.size(), 100u) << line;
}

TEST(BatchUsage, VersionIsTheProgramsNameAndANumber) {
  const Ran ran = run_batch({"--version"});
  EXPECT_EQ(ran.status, 0);
  EXPECT_TRUE(ran.out.starts_with("gazewright-batch ")) << ran.out;
  EXPECT_NE(ran.out.find_first_of("0123456789"), std::string::npos);
}

TEST(BatchUsage, OptionsStandBeforeOrAfterTheRigAndEitherForm) {
  const std::string last = run_batch({"sweep", kNewt, "--axis", "tilt", "--ratio", "4:6:1"}).out;
  EXPECT_EQ(lines_of(last).size(), 4u);
  EXPECT_EQ(run_batch({"sweep", "--ratio=4:6:1", "--axis=tilt", kNewt}).out, last);
  EXPECT_EQ(run_batch({"--axis", "tilt", "sweep", kNewt, "--ratio", "4:6:1"}).out, last);
}

TEST(BatchUsage, TwoDashesEndTheOptions) {
  const Ran ran = run_batch({"figures", "--", "--json"});
  EXPECT_EQ(ran.status, 3) << "--json is then the name of a file that does not exist";
  EXPECT_NE(ran.err.find("--json"), std::string::npos);
}

}  // namespace
}  // namespace gazewright::test
