package gambrel.run;

import gambrel.data.RegisterTable;
import gambrel.data.Table;
import gambrel.publish.Csv;
import gambrel.publish.OutputFolder;
import gambrel.register.FigureNames;
import gambrel.register.Figures;
import gambrel.register.Register;
import gambrel.register.RegisterRow;
import gambrel.render.AttachmentReader;
import gambrel.shop.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** The register of an output folder and the figures inside the documents that it names. */
final class RegisterStore {
  /** Name of the attachment that carries a statement's figures. */
  static final String FIGURES = "figures.csv";

  /** Where the register stands in the output folder. */
  static final String PATH = "data/" + RegisterTable.NAME;

  private final Path root;
  private final Settings settings;

  RegisterStore(Path root, Settings settings) {
    this.root = root;
    this.settings = settings;
  }

  /**
   * The register; empty where there is none.
   *
   * @throws RefusedException if it is of another unit or currency, or broken
   */
  Optional<Register> load() throws IOException, RefusedException {
    var bytes = OutputFolder.read(root, PATH);
    if (bytes.isEmpty()) {
      return Optional.empty();
    }
    try {
      var records = Csv.records(bytes.get());
      if (records.isEmpty() || !RegisterTable.fits(records.get(0), settings)) {
        throw new RefusedException(
            "the register "
                + PATH
                + " was not written by a shop that weighs in "
                + settings.unit().id());
      }
      checkCurrency(records.subList(1, records.size()));
      return Optional.of(RegisterTable.read(records.subList(1, records.size()), settings));
    } catch (UncheckedIOException | IllegalArgumentException e) {
      throw new RefusedException("the register " + PATH + " is broken: " + e.getMessage());
    }
  }

  /** The register does not name its currency; the documents do. */
  private void checkCurrency(List<List<String>> rows) throws IOException, RefusedException {
    for (var row : rows) {
      var currency = figures(row.get(10)).map(f -> f.values().get(FigureNames.CURRENCY));
      if (currency.isPresent()) {
        if (!currency.get().equals(settings.currency().getCurrencyCode())) {
          throw new RefusedException("the register " + PATH + " is kept in " + currency.get());
        }
        return;
      }
    }
  }

  /** The figures in the document of a statement; empty where it is missing or damaged. */
  Optional<Figures> figures(RegisterRow row) throws IOException {
    return figures(row.file());
  }

  private Optional<Figures> figures(String file) throws IOException {
    var document = OutputFolder.read(root, file);
    if (document.isEmpty()) {
      return Optional.empty();
    }
    return AttachmentReader.read(document.get(), FIGURES).flatMap(RegisterStore::parse);
  }

  private static Optional<Figures> parse(byte[] bytes) {
    try {
      var values = new LinkedHashMap<String, String>();
      for (var record : Csv.records(bytes)) {
        values.put(record.get(0), record.get(1));
      }
      values.remove("figure");
      return Optional.of(new Figures(values));
    } catch (UncheckedIOException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  /** Figures as they are attached and digested. */
  static byte[] bytes(Figures figures) {
    return Csv.bytes(
        new Table(
            FIGURES,
            List.of("figure", "value"),
            figures.values().entrySet().stream()
                .map(entry -> List.of(entry.getKey(), entry.getValue()))
                .toList()));
  }
}
