package gambrel.trade.weighing;

import gambrel.bench.Plant;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.shop.Shop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Classifying one row: its time, its comparison, its weights, its weighing. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.ROWS)
public class JudgingBench {
  private Shop shop;
  private ReferenceLookup references;
  private RowClassifier classifier;
  private List<ExportFile> exported;
  private CorrectedRows corrected;

  /** Makes the rows: those of all scales, as one file. */
  @Setup
  public void make() throws Exception {
    var plant = Plant.made();
    shop = plant.inputs().shop();
    references = new ReferenceLookup(shop);
    exported =
        List.of(
            new ExportFile(
                "exports/any.csv",
                plant.inputs().exports().stream()
                    .flatMap(file -> file.rows().stream())
                    .limit(Plant.ROWS)
                    .toList()));
    corrected = CorrectedRows.of(exported, shop, Plant.AS_OF);
    var comparison = RowComparison.of(List.of(), Plant.AS_OF);
    var factory = new WeighingFactory(shop, references, new BenchLookup(shop.bench()));
    classifier = RowClassifier.of(factory, comparison, Plant.AS_OF, corrected.rows());
  }

  /** Applies corrections and reads time and status. */
  @Benchmark
  public Object time() {
    return CorrectedRows.of(exported, shop, Plant.AS_OF);
  }

  /** Compares the rows with each other. */
  @Benchmark
  public Object compared() {
    return RowComparison.of(corrected.rows(), Plant.AS_OF);
  }

  /** The weights alone. */
  @Benchmark
  public Object netWeight() throws Refusal {
    var weights = new ArrayList<NetWeight>();
    for (var row : corrected.rows()) {
      weights.add(netWeight(row));
    }
    return weights;
  }

  private NetWeight netWeight(ReadRow read) throws Refusal {
    return NetWeight.of(
        read.row(),
        read.unit().orElseThrow(),
        references.scale(read.scale()),
        references.code(read.row().get(Field.CODE)),
        Optional.empty(),
        shop.settings().unit());
  }

  /** Makes the weighings. */
  @Benchmark
  public Object classified() {
    return classifier.classify(rows -> {});
  }
}
