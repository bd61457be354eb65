package gambrel.trade.weighing;

import gambrel.bench.Plant;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RepeatCandidates;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowReader;
import gambrel.trade.shop.Shop;
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
  private ReferenceLookup directory;
  private RowReader reader;
  private RowClassifier judge;
  private List<ExportFile> exported;
  private List<ReadRow> read;

  /** Makes the rows: those of all scales, as one file. */
  @Setup
  public void make() throws Exception {
    var plant = Plant.made();
    shop = plant.inputs().shop();
    directory = new ReferenceLookup(shop);
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
    var comparison = RowComparison.of(List.of(), Plant.AS_OF);
    judge = new RowClassifier(shop, Plant.AS_OF, directory, reader, comparison, Map.of());
  }

  /** Corrections laid over, time and status read. */
  @Benchmark
  public Object time() {
    return rows();
  }

  private CorrectedRows rows() {
    return new CorrectedRows(exported, shop, Plant.AS_OF, reader);
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
