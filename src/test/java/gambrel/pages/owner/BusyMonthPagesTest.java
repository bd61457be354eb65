package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.pages.render.PrintedPages;
import gambrel.trade.reckoning.Night;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BusyMonthPagesTest {
  private static final float POINTS_PER_MM = 72 / 25.4f;

  /** Side margins are 18 mm on A4 and 20.95 mm on letter; heads and feet stand in 19 mm. */
  private static final float SIDE = 17.9f * POINTS_PER_MM;

  private static final float TOP_OR_BOTTOM = 8 * POINTS_PER_MM;

  /** Where a text begins: the last two numbers of a text matrix. */
  private static final Pattern TEXT = Pattern.compile("([\\d.]+) ([\\d.]+) Tm");

  private static final String HEADING = "Take-home, % of cold";
  private static final Pattern BEFORE = Pattern.compile("Twelve months before \\d");
  private static final Pattern BEFORE_FIRST =
      Pattern.compile("Trim and [a-z ]+, % of boning room weight Twelve months before \\d");

  @TempDir Path folder;

  @ParameterizedTest(name = "{0} bodies, American: {1}")
  @CsvSource({"1,false,5", "12,true,11", "60,false,14", "400,true,34"})
  void keepsWithinItsPages(int bodies, boolean american, int most) throws IOException {
    var pdf = summary(bodies, american);
    var pages = PrintedPages.of(pdf);
    assertTrue(pages.size() <= most, () -> pages.size() + " pages");
    assertAll(
        () -> assertEquals(List.of(), outside(pdf)),
        () -> assertTrue(pages.get(0).contains("What to decide")),
        () -> assertTrue(pages.get(0).contains("Thirteen months")),
        () -> assertTrue(pages.get(1).contains("Losses")),
        () -> assertTrue(pages.get(2).contains("The most to bid")),
        () -> assertTrue(pages.get(3).contains("Appendix")),
        () -> assertTrue(String.join("", pages).contains("The year 2026")),
        () -> assertEquals(List.of(), nearlyEmpty(pages)),
        () -> assertEquals(List.of(), parted(pages)));
  }

  /** French and German need most lines; letter paper has fewest. */
  @ParameterizedTest(name = "{0} on {2}")
  @CsvSource({
    "fr,fr-FR,a4,Treize mois",
    "fr,fr-CA,letter,Treize mois",
    "de,de-DE,a4,Dreizehn Monate",
    "de,de-DE,letter,Dreizehn Monate",
    "es,es-US,letter,Trece meses"
  })
  void hasTheFiveFiguresOnItsFirstPage(String language, String locale, String paper, String figures)
      throws IOException {
    var shop = new BusyShop(folder, 1, false).with(60);
    shop.instead(
        "shop.properties",
        """
        name=Fold End
        currency=EUR
        unit=kg
        zone=UTC
        limit.revisions=500
        allow_mixed_batches=yes
        language=%s
        locale=%s
        paper=%s"""
            .formatted(language, locale, paper));
    assertTrue(PrintedPages.of(summary(shop.at(BusyShop.LATER))).get(0).contains(figures));
  }

  private byte[] summary(int bodies, boolean american) {
    return summary(new BusyShop(folder, 1, american).with(bodies).at(BusyShop.LATER));
  }

  private static byte[] summary(Night night) {
    return new OwnerDocuments(night.shop().settings())
        .summary(
            MonthReport.of(
                MonthRecords.of(night, SmallShop.NOTHING_ISSUED, YearMonth.parse(BusyShop.MONTH))));
  }

  /** Texts that begin outside the type area. */
  private static List<String> outside(byte[] pdf) throws IOException {
    var outside = new ArrayList<String>();
    try (var reader = new PdfReader(pdf)) {
      var size = reader.getPageSize(1);
      for (int page = 1; page <= reader.getNumberOfPages(); page++) {
        var content = new String(reader.getPageContent(page), StandardCharsets.ISO_8859_1);
        var text = TEXT.matcher(content);
        assertTrue(text.find(), "a page without text");
        do {
          float x = Float.parseFloat(text.group(1));
          float y = Float.parseFloat(text.group(2));
          if (x < SIDE
              || x > size.getWidth() - SIDE
              || y < TOP_OR_BOTTOM
              || y > size.getHeight() - TOP_OR_BOTTOM) {
            outside.add("page " + page + " at " + text.group());
          }
        } while (text.find());
      }
    }
    return outside;
  }

  /** Pages on which a row for the twelve months before comes first, or under no heading. */
  private static List<String> parted(List<String> pages) {
    return pages.stream()
        .filter(page -> BEFORE.matcher(page).find())
        .filter(page -> !page.contains(HEADING) || BEFORE_FIRST.matcher(page).find())
        .toList();
  }

  /** Pages but the last with less than a handful of figures on them. */
  private static List<String> nearlyEmpty(List<String> pages) {
    return pages.subList(0, pages.size() - 1).stream()
        .filter(page -> page.strip().length() < 300)
        .toList();
  }
}
