package gambrel.files.folder;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.files.export.ExportReader;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.ValueFormat;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.weighing.Ledger;
import gambrel.trade.weighing.Weighing;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts of exports that were read by a layout. */
class LayoutsToLedgerTest {
  private static final String HEADER = "time,body,code,net\n";
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files =
        new ShopFiles(folder)
            .with("scales.csv", "scale,division\nS1,0.005\n")
            .with("codes.csv", "code,item,step\n71,mince,pack\n");
  }

  private Ledger ledger() {
    var shop = files.clean();
    var exports = ExportReader.read(folder, shop, Progress.NONE);
    assertEquals(List.of(), exports.notices());
    var asOf = OffsetDateTime.parse("2026-08-01T00:00+10:00");
    return Ledger.of(exports.files(), shop, asOf, rows -> {});
  }

  private static List<String> setAside(Ledger ledger) {
    return ledger.setAside().stream()
        .map(row -> row.notice().code().id() + ": " + ENGLISH.message(row.notice()))
        .toList();
  }

  @Test
  void overlappingExportsWithoutTicketsCountTheLargerNumberOfEqualRows() {
    String row = "2026-07-01T09:00,B1,71,0.5\n";
    files
        .with("exports/S1/layout.properties", "identity=time,body,code,net")
        .with("exports/S1/a.csv", HEADER + row.repeat(2))
        .with("exports/S1/b.csv", HEADER + row.repeat(3));
    assertEquals(3, ledger().weighings().stream().count());
  }

  @Test
  void withoutIdentityEqualRowsAreOneWeighing() {
    files
        .with("exports/S1/layout.properties", "")
        .with("exports/S1/a.csv", HEADER + "2026-07-01T09:00,B1,71,0.5\n".repeat(2));
    assertEquals(1, ledger().weighings().stream().count());
  }

  @Test
  void cellsThatALayoutCannotReadAreSetAsideWithTheirOwnNotice() {
    files
        .with("exports/S1/layout.properties", "decimal=,\ndelimiter=;\ntime=dd.MM.yyyy HH:mm\n")
        .with(
            "exports/S1/a.csv",
            "ticket;time;body;code;net\n"
                + "1;01.07.2026 09:00;B1;71;1.250\n"
                + "2;2026-07-01T09:00;B1;71;1,5\n");
    assertEquals(
        List.of(
            "number-bad: \"1.250 (not a number with the decimal mark ,)\" in column net is not"
                + " a number.",
            "time-bad: \"2026-07-01T09:00 (not by the layout's pattern)\" is no time like"
                + " 2026-07-31T14:05."),
        setAside(ledger()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "de | „1.250 (keine Zahl mit dem Dezimalzeichen ,)“ in der Spalte net ist keine Zahl."
            + " | „Strichcode (hat eine falsche Prüfziffer)“ in der Spalte net ist keine Zahl.",
        "es | «1.250 (ningún número con el signo decimal ,)» en la columna net no es un número."
            + " | «código de barras (tiene un dígito de control equivocado)» en la columna net no es"
            + " un número."
      })
  void theReasonWhyACellCannotBeReadIsInTheReadersLanguage(
      String language, String number, String barcode) {
    files
        .with("exports/S1/layout.properties", "decimal=,\ndelimiter=;\ninstore=20IIIIIWWWWWC\n")
        .with(
            "exports/S1/a.csv",
            "ticket;time;body;code;net;barcode\n"
                + "1;2026-07-01T09:00;B1;71;1.250;\n"
                + "2;2026-07-01T09:00;B1;71;;2004711012340\n");
    var bundle = ResourceBundle.getBundle("gambrel.templates.notices_" + language, Locale.ROOT);
    var texts = bundle.keySet().stream().collect(Collectors.toMap(key -> key, bundle::getString));
    var words = new NoticeWords(texts, ValueFormat.PLAIN, part -> "");
    assertEquals(
        List.of(number, barcode),
        ledger().setAside().stream().map(row -> words.message(row.notice())).toList());
  }

  @Test
  void aCorrectionSettlesACellThatALayoutCannotRead() {
    files
        .with("exports/S1/layout.properties", "decimal=,\ndelimiter=;\n")
        .with("exports/S1/a.csv", "ticket;time;body;code;net\n1;2026-07-01T09:00;B1;71;1.250\n")
        .with(
            "corrections.csv",
            "scale,ticket,field,value,by,on,reason\nS1,1,net,1.25,Kim,2026-07-02,as printed\n");
    var ledger = ledger();
    assertEquals(List.of(), setAside(ledger));
    assertEquals(
        List.of("1.250"),
        ledger.weighings().stream().map(Weighing::net).map(Object::toString).toList());
  }

  @Test
  void ouncesAreConvertedExactly() {
    files
        .with("exports/S1/layout.properties", "unit=lb-oz")
        .with("exports/S1/a.csv", HEADER + "2026-07-01T09:00,B1,71,1 lb 8 oz\n");
    // 1.5 lb of 0.45359237 kg are 0.680388555 kg.
    assertEquals(
        68039, ledger().weighings().stream().findFirst().orElseThrow().net().hundredThousandths());
  }
}
