package gambrel.bench;

import gambrel.night.Inputs;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.stream.Stream;

/** A made-up plant of so few bodies that all of it stays in memory. */
public final class Plant {
  /** Its bodies. */
  public static final int BODIES = 40;

  /** Rows of the busiest scale, as many as a busy day has. */
  public static final int ROWS = 1000;

  /** After the last day. */
  public static final OffsetDateTime AS_OF = OffsetDateTime.parse("2027-01-01T02:00+11:00");

  private static final int A_DAY = 8;
  private static final long SEED = 20161;
  private static final String SCALE = "bench1";

  private final Inputs inputs;
  private final String export;

  private Plant(Inputs inputs, String export) {
    this.inputs = inputs;
    this.export = export;
  }

  /** The plant, always the same. */
  public static Plant made() throws Exception {
    var folder = Files.createTempDirectory("gambrel-plant");
    try {
      BenchShop.write(folder, (long) BODIES * BenchBody.ROWS, A_DAY, SEED);
      return new Plant(Inputs.read(folder, Progress.NONE), export(folder.resolve("exports")));
    } finally {
      Folders.delete(folder);
    }
  }

  private static String export(Path exports) throws IOException {
    try (var files = Files.list(exports)) {
      var busiest = files.filter(f -> f.getFileName().toString().startsWith(SCALE)).sorted();
      var lines = busiest.flatMap(Plant::lines).toList();
      var rows = lines.stream().filter(line -> line.startsWith(SCALE)).limit(ROWS);
      return String.join("\n", Stream.concat(Stream.of(lines.get(0)), rows).toList()) + '\n';
    }
  }

  private static Stream<String> lines(Path file) {
    try {
      return Files.readAllLines(file).stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The plant as it is read. */
  public Inputs inputs() {
    return inputs;
  }

  /** Its figures. */
  public Night night() {
    return new Reckoner(inputs.shop(), inputs.exports()).at(AS_OF);
  }

  /** A header and {@link #ROWS} rows, as the scale exports them. */
  public byte[] export() {
    return export.getBytes(StandardCharsets.UTF_8);
  }

  /** The same with every cell within quotes. */
  public byte[] quotedExport() {
    String quoted = export.replaceAll("([^,\n]*)([,\n])", "\"$1\"$2");
    return quoted.getBytes(StandardCharsets.UTF_8);
  }
}
