package gambrel.files.export;

import gambrel.bench.Plant;
import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.TextLine;
import gambrel.files.layout.Layout;
import gambrel.files.layout.Layouts;
import gambrel.trade.rows.ExportRow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One row of an export: from bytes to lines, cells, fields. */
@State(Scope.Benchmark)
@OperationsPerInvocation(Plant.ROWS)
public class ReadingBench {
  private byte[] plain;
  private byte[] quoted;
  private List<TextLine> plainLines;
  private List<TextLine> quotedLines;
  private Layouts.Choice layout;

  /** Makes the files. */
  @Setup
  public void make() throws Exception {
    var plant = Plant.made();
    plain = plant.export();
    quoted = plant.quotedExport();
    plainLines = lines(plain);
    quotedLines = lines(quoted);
    layout = Layouts.Choice.PLAIN;
  }

  private static List<TextLine> lines(byte[] bytes) throws IOException {
    return TextLine.read(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8);
  }

  /** From bytes to a line. */
  @Benchmark
  public Object line() throws IOException {
    return lines(plain);
  }

  /** From a line to cells. */
  @Benchmark
  public Object cells() {
    return cells(plainLines);
  }

  /** From a line whose cells all stand within quotes to cells. */
  @Benchmark
  public Object quotedCells() {
    return cells(quotedLines);
  }

  private static List<CsvRow> cells(List<TextLine> lines) {
    return new CsvRows(lines, ',', 7, 9).all(1);
  }

  /** From bytes to fields, the whole way. */
  @Benchmark
  public Object row() throws IOException {
    return rows(plain);
  }

  /** The whole way where all cells stand within quotes. */
  @Benchmark
  public Object quotedRow() throws IOException {
    return rows(quoted);
  }

  private List<ExportRow> rows(byte[] bytes) throws IOException {
    return new ExportFileReader("exports/bench1.csv", layout)
        .read(new ByteArrayInputStream(bytes))
        .files()
        .get(0)
        .rows();
  }
}
