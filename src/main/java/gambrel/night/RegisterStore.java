package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Csv;
import gambrel.files.tables.RegisterTable;
import gambrel.files.tables.Table;
import gambrel.pages.render.pdf.Attachment;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Digest;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.register.StatementFiles;
import gambrel.trade.shop.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** Reads the register of an output folder and the figures inside the documents that it names. */
record RegisterStore(Changes output, Settings settings) {
  /** Name of the attachment that carries a statement's figures. */
  static final String FIGURES = "figures.csv";

  private static final String RESTORE = ": restore the reports folder from the backup";

  /** The SHA-256 of the register as the last night wrote it. */
  private static final String SEAL = ".register";

  private static final String PATH = "data/" + RegisterTable.NAME;
  private static final int FILE = 10;
  private static final int SHA256 = 11;

  /**
   * The register; an empty one if the output folder has none.
   *
   * @throws RefusedException if it is of another unit or currency, broken, or not as the last night
   *     wrote it
   */
  Register load() throws IOException, RefusedException {
    var bytes = output.read(PATH);
    if (bytes.isEmpty()) {
      return new Register(List.of());
    }
    try {
      var records = Csv.records(bytes.get());
      if (records.isEmpty() || !RegisterTable.fits(records.get(0), settings)) {
        String shop = "a shop that weighs in " + settings.unit().id();
        throw refused("was not written by " + shop + ", or its first line is damaged");
      }
      var rows = records.subList(1, records.size());
      checkFiles(rows);
      checkCurrency(rows);
      var register = RegisterTable.read(rows, settings);
      checkSeal(new Table(RegisterTable.NAME, records.get(0), rows::stream));
      return register;
    } catch (UncheckedIOException | IllegalArgumentException e) {
      throw refused("is broken (" + e.getMessage() + ')' + RESTORE);
    }
  }

  /** Refuses a register of which a cell or row was changed, lost or added since it was written. */
  private void checkSeal(Table register) throws IOException, RefusedException {
    var seal = output.read(SEAL);
    if (seal.isPresent() && !Arrays.equals(seal.get(), digest(register))) {
      throw refused("was changed, perhaps by a spreadsheet, since it was written" + RESTORE);
    }
  }

  /** Writes the digest by which the next night knows that the register is as it was written. */
  void seal(Register register) throws IOException {
    output.write(SEAL, digest(RegisterTable.of(register, settings)));
  }

  private static byte[] digest(Table register) {
    return Digest.of(Csv.bytes(register)).getBytes(StandardCharsets.UTF_8);
  }

  private static RefusedException refused(String why) {
    return new RefusedException("the register " + PATH + ' ' + why);
  }

  /** Refuses a path that was typed into the register and may lead out of the output folder. */
  private static void checkFiles(List<List<String>> rows) {
    for (int i = 0; i < rows.size(); i++) {
      var row = rows.get(i);
      if (row.size() <= SHA256 || !StatementFiles.isIssued(row.get(FILE))) {
        throw new IllegalArgumentException("no register row, after its header: " + (i + 1));
      }
    }
  }

  /** Compares the currency of the first document that can be read; the register names none. */
  private void checkCurrency(List<List<String>> rows) throws IOException, RefusedException {
    String own = settings.currency().getCurrencyCode();
    for (var row : rows) {
      var figures = figures(row.get(FILE), row.get(SHA256));
      var currency = figures.map(f -> f.values().get(Figures.CURRENCY));
      if (currency.isPresent()) {
        if (!currency.get().equals(own)) {
          throw refused("is kept in " + currency.get() + ", and the shop in " + own);
        }
        return;
      }
    }
  }

  /** A notice for every document of the register that is missing or not as it was issued. */
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

  /** The figures in a statement's document; empty if that is missing or not as it was issued. */
  Optional<Figures> figures(String file, String sha256) throws IOException {
    return output
        .read(file)
        .filter(document -> Digest.of(document).equals(sha256))
        .flatMap(document -> Attachment.read(document, FIGURES))
        .flatMap(RegisterStore::parse);
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

  /** The figures of a statement as the night has them. */
  static Figures read(Planned planned, Night night) {
    return Figures.of(planned.account(), planned.customer(), night.shop().settings());
  }

  /** Figures as they are attached to a statement, and as the register has their digest. */
  static byte[] bytes(Figures figures) {
    var rows = figures.values().entrySet().stream().map(e -> List.of(e.getKey(), e.getValue()));
    return Csv.bytes(new Table(FIGURES, List.of("figure", "value"), rows.toList()::stream));
  }
}
