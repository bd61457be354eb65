package gambrel.files.tables;

import gambrel.bench.Plant;
import gambrel.files.publish.Csv;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One row of the longest table, {@code cuts.csv}. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.ROWS)
public class TableBench {
  private Table cuts;
  private Table made;

  /** Makes the night. */
  @Setup
  public void make() throws Exception {
    cuts = CutsTable.of(Plant.made().night());
    var rows = rows();
    made = new Table(cuts.name(), cuts.header(), rows::stream);
    if (made.rows().count() != Plant.ROWS) {
      throw new IllegalStateException("the plant is too small");
    }
  }

  private List<List<String>> rows() {
    return cuts.rows().limit(Plant.ROWS).toList();
  }

  /** Its cells from a body's weighings. */
  @Benchmark
  public Object cells() {
    return rows();
  }

  /** Its bytes from its cells. */
  @Benchmark
  public Object bytes() {
    return Csv.bytes(made);
  }
}
