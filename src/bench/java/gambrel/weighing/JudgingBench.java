package gambrel.weighing;

import gambrel.bench.Plant;
import gambrel.shop.Shop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One row judged: its time, its key, its weights, whether it becomes a weighing. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.ROWS)
public class JudgingBench {
  private static final String FILE = "exports/any.csv";

  private Shop shop;
  private Directory directory;
  private RowReader reader;
  private FileJudge judge;
  private List<ExportFile> exported;
  private List<ReadRow> read;

  /** Makes the rows: those of all scales, as one file. */
  @Setup
  public void make() throws Exception {
    var plant = Plant.made();
    shop = plant.inputs().shop();
    directory = new Directory(shop);
    reader = new RowReader(shop);
    exported =
        List.of(
            new ExportFile(
                FILE,
                plant.inputs().exports().stream()
                    .flatMap(file -> file.rows().stream())
                    .limit(Plant.ROWS)
                    .toList()));
    read = rows().files().get(0).rows();
    var comparison = Comparison.of(List.of(), Plant.AS_OF);
    judge = new FileJudge(shop, Plant.AS_OF, directory, reader, comparison, Map.of());
  }

  /** Corrections laid over, time and status read. */
  @Benchmark
  public Object time() {
    return rows();
  }

  private Rows rows() {
    return new Rows(exported, shop, Plant.AS_OF, reader);
  }

  /** The rows that have to be compared with others. */
  @Benchmark
  public Object candidates() {
    return RepeatCandidates.of(read, reader);
  }

  /** The weights alone. */
  @Benchmark
  public Object netWeight() throws Refusal {
    var weights = new ArrayList<NetWeight>(read.size());
    for (var row : read) {
      weights.add(netWeight(row.row()));
    }
    return weights;
  }

  private NetWeight netWeight(ExportRow row) throws Refusal {
    return NetWeight.of(
        row,
        reader.unit(row).orElseThrow(),
        directory.scale(row.get(Field.SCALE)),
        directory.code(row.get(Field.CODE)),
        Optional.empty(),
        shop.settings().unit());
  }

  /** All that makes a weighing of a row, and all that is said of its file. */
  @Benchmark
  public Object judged() {
    return judge.judge(FILE, read, Set.of());
  }
}
