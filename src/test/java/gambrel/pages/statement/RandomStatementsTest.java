package gambrel.pages.statement;

import gambrel.night.Inputs;
import gambrel.oracle.CsvTrees;
import gambrel.oracle.RandomShop;
import gambrel.pages.words.WordFiles;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RandomStatementsTest {
  private static final int SEEDS = Integer.getInteger("seeds", 60);

  @TempDir private Path folder;

  static IntStream seeds() {
    return IntStream.range(0, SEEDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void addsUpAndNamesNobodyElse(int seed) throws Exception {
    var moments = RandomShop.write(folder, seed, CsvTrees::of);
    var inputs = Inputs.read(folder, Progress.NONE);
    var words = new WordFiles(FarmShop::file, FarmShop::file, inputs.shop().settings());
    var reckoner = new Reckoner(inputs.shop(), inputs.exports());
    for (var moment : moments) {
      var night = reckoner.at(moment);
      for (var planned : Printing.all(night)) {
        ViewRules.check(night, planned, ViewRules.view(night, planned, words.of("")));
      }
    }
  }
}
