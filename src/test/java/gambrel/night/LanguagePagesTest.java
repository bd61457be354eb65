package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import gambrel.pages.render.PrintedPages;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole nights of a shop that has divided, revised and held bodies, in each language. */
class LanguagePagesTest {
  private static final String NEXT = "2026-03-07T02:00";

  /** Words that English pages have and pages in other languages do not. */
  private static final Set<String> ENGLISH =
      Set.of(
          ("the and to this that your you with for from what why where how is are weight meat bone"
                  + " fat waste pack packs share charges killed hung alive carcase batch month body"
                  + " bodies loss lost chiller boning mince rump beef lamb statement draft revised"
                  + " replaces still issued held rows read used customer owner reason dressing issue")
              .split(" "));

  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void divideHoldAndRevise() {
    shop = new NightShop(folder.resolve("shop"));
    shop.add("bodies.csv", "L1,lamb,2026-03-02,ann,whole");
    shop.weigh("rail", "02T10:00:00", "L1", "hot", "22");
    shop.weigh("rail", "03T10:00:00", "L1", "cold", "21.4");
    shop.beef("B1", "").beef("B2", "bob").body("B3", "bob").packs("B3", "140");
    shop.weigh("bench", "05T11:00:00", "B2", "liver", "6");
    shop.add("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    shop.replace("charges.csv", "Kill", "T-1");
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    shop.add("payments.csv", "customer,body,date,amount", "bob,B2,2026-03-05,20.00");
  }

  private void run(String asOf) {
    try {
      var inputs = Inputs.read(shop.write(), Progress.NONE);
      var documents = PdfDocuments.of(folder.resolve("shop"), inputs.shop().settings());
      new NightlyRun(inputs, documents).run(shop.reports(), NightShop.moment(asOf), List.of());
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  private void runTwoNights() {
    run(NightShop.NIGHT);
    shop.add("corrections.csv", "bench,5,,net,119.9,Hetty,2026-03-06T09:00,typo");
    run(NEXT);
  }

  private List<String> pages() {
    return Trees.files(shop.reports()).stream().filter(file -> file.endsWith(".pdf")).toList();
  }

  private String text(String page) {
    try {
      return String.join("\n", PrintedPages.of(Files.readAllBytes(shop.reports().resolve(page))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String lang(PdfReader reader) {
    return reader.getCatalog().get(PdfName.LANG).toString();
  }

  private static List<String> words(String text) {
    // The extractor runs cells of a row together.
    var apart = text.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ");
    return List.of(apart.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
  }

  private static Set<String> english(String text) {
    var found = new TreeSet<>(words(text));
    found.retainAll(ENGLISH);
    return found;
  }

  @Test
  void areAllPagesThereAre() {
    runTwoNights();
    assertEquals(
        List.of(
            "held/bob/B3.pdf",
            "morning.pdf",
            "statements/ann/B1-r1.pdf",
            "statements/ann/B1-r2.pdf",
            "statements/ann/L1-r1.pdf",
            "statements/bob/B1-r1.pdf",
            "statements/bob/B1-r2.pdf",
            "statements/bob/B2-r1.pdf",
            "summaries/2026-03.pdf",
            "to-print.pdf"),
        pages());
    for (var page : pages()) {
      assertTrue(english(text(page)).size() > 5, page + english(text(page)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void haveNoEnglishWord(String language) {
    shop.add("shop.properties", "language=" + language);
    runTwoNights();
    var found = new ArrayList<String>();
    for (var page : pages()) {
      english(text(page)).forEach(word -> found.add(page + ": " + word));
    }
    assertEquals(List.of(), found);
  }

  @ParameterizedTest
  @CsvSource({
    "fr, Relevé de découpe B2, 'Viande hachée', '$AU'",
    "de, Zerlegeabrechnung B2, 'Hackfleisch', 'AU$'",
    "es, Liquidación de despiece B2, 'Carne picada', 'AUD'"
  })
  void areTheCustomersOwnWithTheShopsCurrencyAndUnit(
      String language, String title, String mince, String currency) throws IOException {
    shop.replace("customers.csv", "customer,name", "customer,name,language");
    shop.replace("customers.csv", "ann,Ann Dorrin", "ann,Ann Dorrin,");
    shop.replace("customers.csv", "bob,Bob Tallow", "bob,Bob Tallow," + language);
    run(NightShop.NIGHT);

    String statement = text("statements/bob/B2-r1.pdf");
    assertTrue(statement.contains(mince), statement);
    assertTrue(statement.contains(currency), statement);
    assertTrue(statement.contains("kg"), statement);
    assertFalse(english(text("morning.pdf")).isEmpty());
    assertFalse(english(text("statements/ann/B1-r1.pdf")).isEmpty());
    var file = shop.reports().resolve("statements/bob/B2-r1.pdf");
    try (var reader = new PdfReader(file.toString())) {
      assertTrue(reader.getInfo().get("Title").startsWith(title), reader.getInfo().get("Title"));
      assertEquals(language + "-AU", lang(reader));
    }
  }
}
