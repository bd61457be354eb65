package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Csv;
import gambrel.files.tables.RegisterTable;
import gambrel.files.tables.Table;
import gambrel.pages.render.pdf.AttachmentReader;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.register.Digest;
import gambrel.trade.register.FigureNames;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.register.StatementFiles;
import gambrel.trade.shop.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** The register of an output folder and the figures inside the documents that it names. */
final class RegisterStore {
  /** Name of the attachment that carries a statement's figures. */
  static final String FIGURES = "figures.csv";

  /** Where the register stands in the output folder. */
  static final String PATH = "data/" + RegisterTable.NAME;

  private static final int FILE = 10;

  private final Changes output;
  private final Settings settings;

  RegisterStore(Changes output, Settings settings) {
    this.output = output;
    this.settings = settings;
  }

  /**
   * The register; without one nothing was ever issued.
   *
   * @throws RefusedException if it is of another unit or currency, or broken
   */
  Register load() throws IOException, RefusedException {
    var bytes = output.read(PATH);
    if (bytes.isEmpty()) {
      return new Register(List.of());
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
      var rows = records.subList(1, records.size());
      checkFiles(rows);
      checkCurrency(rows);
      return RegisterTable.read(rows, settings);
    } catch (UncheckedIOException | IllegalArgumentException e) {
      throw new RefusedException("the register " + PATH + " is broken: " + e.getMessage());
    }
  }

  /** No path that was put into the register by hand is ever followed out of the output folder. */
  private static void checkFiles(List<List<String>> rows) {
    for (int i = 0; i < rows.size(); i++) {
      var row = rows.get(i);
      if (row.size() <= FILE || !StatementFiles.isIssued(row.get(FILE))) {
        throw new IllegalArgumentException("no register row, after its header: " + (i + 1));
      }
    }
  }

  /** The register does not name its currency; the documents do. */
  private void checkCurrency(List<List<String>> rows) throws IOException, RefusedException {
    for (var row : rows) {
      var currency = figures(row.get(FILE)).map(f -> f.values().get(FigureNames.CURRENCY));
      if (currency.isPresent()) {
        if (!currency.get().equals(settings.currency().getCurrencyCode())) {
          throw new RefusedException(
              "the register "
                  + PATH
                  + " is kept in "
                  + currency.get()
                  + ", and the shop in "
                  + settings.currency().getCurrencyCode());
        }
        return;
      }
    }
  }

  /** A mark for every document that the register names and that is not there as it was issued. */
  List<Notice> lost(Register register) throws IOException {
    var lost = new ArrayList<Notice>();
    for (var row : register.rows()) {
      var digest = output.read(row.file()).map(Digest::of);
      if (!digest.equals(Optional.of(row.sha256()))) {
        lost.add(
            Notice.of(
                    NoticeCode.DOCUMENT_LOST, digest.isEmpty() ? "MISSING" : "CHANGED", Place.NONE)
                .aboutBody(row.body())
                .with("statement", row.file()));
      }
    }
    return lost;
  }

  /** The figures in the document of a statement; empty where it is missing or damaged. */
  Optional<Figures> figures(RegisterRow row) throws IOException {
    return figures(row.file());
  }

  private Optional<Figures> figures(String file) throws IOException {
    var document = output.read(file);
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
