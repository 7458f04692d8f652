#include <gtest/gtest.h>

#include "tests/batch/program.h"
#include "tests/support/environment.h"

namespace gazewright::test {
namespace {

TEST(BatchOwnData, AChangedRuleChangesTheFigureAndIsListed) {
  const Folder folder;
  folder.write("wires.yaml", "wire: {circular_mil_per_ampere: 350, source: maker of the wire}\n");
  const auto rating = [](const Ran& ran) {
    const std::string id = "\"supply.lead_rating\": ";
    return std::stod(ran.out.substr(ran.out.find(id) + id.size()));
  };
  const Ran shipped = run_batch({"figures", "--json", sample("quick-newt")});
  const Ran own = run_batch({"figures", "--json", "--data", folder.path(""), sample("quick-newt")});
  EXPECT_EQ(own.status, 0);
  EXPECT_EQ(own.err, "");
  EXPECT_NEAR(rating(own), 2 * rating(shipped), 1e-9 * rating(own));
  EXPECT_EQ(shipped.out.find("own_data"), std::string::npos);
  EXPECT_NE(own.out.find("{\"file\": \"wires.yaml\", \"row\": \"wire\", \"key\": "
                         "\"circular_mil_per_ampere\", \"value\": \"350\", \"source\": \"maker of "
                         "the wire\"}"),
            std::string::npos);
  const Ran table = run_batch({"figures", "--data", folder.path(""), sample("quick-newt")});
  EXPECT_NE(table.out.find("From your own data files\n  wires.yaml: "
                           "wire.circular_mil_per_ampere = 350, maker of the wire\n"),
            std::string::npos);
}

TEST(BatchOwnData, TheDesktopsFolderIsReadAndABadFileNeverStopsTheProgram) {
  const Folder folder;
  std::filesystem::create_directories(folder.path("gazewright/data"));
  const std::string file = folder.write("gazewright/data/screws.yaml", "\"8.8\":\n  proof: 1 kg\n");
  const auto figures = [] { return run_batch({"figures", "--csv", sample("quick-newt")}); };
  const Ran ran = [&] {
    const tests::Environment data("XDG_DATA_HOME", folder.path(""));
    return figures();
  }();
  EXPECT_EQ(ran.status, 0);
  EXPECT_TRUE(ran.err.starts_with(folder.path("") + "gazewright/data/screws.yaml:2:3: error: "
                                                    "8.8.proof has no source\n  fix: "))
      << ran.err;
  EXPECT_EQ(ran.out, figures().out);
}

TEST(BatchOwnData, AFolderThatIsNotThereIsWrongUsage) {
  const Ran ran = run_batch({"figures", "--data", "/no/such/folder", sample("quick-newt")});
  EXPECT_EQ(ran.status, 2);
  EXPECT_EQ(ran.err,
            "gazewright-batch: --data: there is no folder \"/no/such/folder\"\n  fix: name the "
            "folder that holds your data files\n");
}

}  // namespace
}  // namespace gazewright::test
