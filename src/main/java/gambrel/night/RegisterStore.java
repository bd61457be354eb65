package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Csv;
import gambrel.files.tables.ChargesTable;
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
import gambrel.trade.register.RegisterRow;
import gambrel.trade.register.StatementFiles;
import gambrel.trade.shop.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads the register of an output folder, which is its statements and their charges, and the
 * figures inside the documents that it names.
 */
record RegisterStore(Changes output, Settings settings) {
  /** Name of the attachment that carries a statement's figures. */
  static final String FIGURES = "figures.csv";

  private static final String RESTORE = ": restore the reports folder from the backup";

  /** The SHA-256 of the statements as the last night wrote them, and that of their charges. */
  private static final String SEAL = ".register";

  private static final String PATH = "data/" + RegisterTable.NAME;
  private static final String CHARGES = "data/" + ChargesTable.NAME;
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
    var statements = table(PATH, bytes.get());
    if (!RegisterTable.fits(statements.header(), settings)) {
      String shop = "a shop that weighs in " + settings.unit().id();
      throw refused(PATH, "was not written by " + shop + ", or its first line is damaged");
    }
    var rows = statements.rows().toList();
    var seals = output.read(SEAL).map(s -> new String(s, StandardCharsets.UTF_8).split("\n"));
    var charges = charges(seals.filter(s -> s.length > 1).map(s -> s[1]));
    try {
      checkFiles(rows);
      checkCurrency(rows);
      var register = RegisterTable.read(rows, charges, settings);
      checkSeal(PATH, statements, seals.map(s -> s[0]));
      return register;
    } catch (IllegalArgumentException e) {
      throw broken(PATH, e);
    }
  }

  /** The rows of the charges; none if a version before them wrote the register. */
  private List<List<String>> charges(Optional<String> seal) throws IOException, RefusedException {
    var bytes = output.read(CHARGES);
    if (bytes.isEmpty()) {
      return List.of();
    }
    var charges = table(CHARGES, bytes.get());
    checkSeal(CHARGES, charges, seal);
    if (!ChargesTable.fits(charges.header(), settings)) {
      throw refused(CHARGES, "has a damaged first line" + RESTORE);
    }
    return charges.rows().toList();
  }

  private static Table table(String path, byte[] bytes) throws RefusedException {
    try {
      var records = Csv.records(bytes);
      return records.isEmpty()
          ? new Table(path, List.of(), Stream::empty)
          : new Table(path, records.get(0), records.subList(1, records.size())::stream);
    } catch (UncheckedIOException e) {
      throw broken(path, e);
    }
  }

  /** Refuses a table of which a cell or row was changed, lost or added since it was written. */
  private static void checkSeal(String path, Table table, Optional<String> seal)
      throws RefusedException {
    if (seal.isPresent() && !seal.get().equals(Digest.of(Csv.bytes(table)))) {
      throw refused(path, "was changed, perhaps by a spreadsheet, since it was written" + RESTORE);
    }
  }

  /** The files of a register: statements, then charges. */
  List<Table> tables(Register register) {
    return List.of(RegisterTable.of(register, settings), ChargesTable.of(register, settings));
  }

  /** Writes the digests by which the next night knows that the register is as it was written. */
  void seal(Register register) throws IOException {
    var seals = tables(register).stream().map(table -> Digest.of(Csv.bytes(table)));
    output.write(SEAL, seals.collect(Collectors.joining("\n")).getBytes(StandardCharsets.UTF_8));
  }

  private static RefusedException refused(String path, String why) {
    return new RefusedException("the register " + path + ' ' + why);
  }

  private static RefusedException broken(String path, Exception e) {
    return refused(path, "is broken (" + e.getMessage() + ')' + RESTORE);
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
          throw refused(PATH, "is kept in " + currency.get() + ", and the shop in " + own);
        }
        return;
      }
    }
  }

  /**
   * A notice for every document of the register that is missing or not as it was issued, and one if
   * charges are missing.
   */
  List<Notice> lost(Register register, PageCache cache) throws IOException {
    var lost = new ArrayList<Notice>();
    for (var row : register.rows()) {
      var document = output.read(row.file());
      if (document.filter(d -> cache.isWhole(row.file(), d, row.sha256())).isEmpty()) {
        lost.add(
            Notice.of(
                    NoticeCode.DOCUMENT_LOST,
                    document.isEmpty() ? "MISSING" : "CHANGED",
                    Place.NONE)
                .aboutBody(row.body())
                .with("statement", row.file()));
      }
    }
    long lines = register.latest().stream().filter(RegisterRow::lacksLines).count();
    if (lines > 0) {
      lost.add(
          Notice.of(NoticeCode.DOCUMENT_LOST, "CHARGES", Place.NONE)
              .with("file", CHARGES)
              .with("count", lines));
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
