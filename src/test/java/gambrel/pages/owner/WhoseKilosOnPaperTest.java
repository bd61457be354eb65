package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.views.SummaryView;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ann's body and the shop's own, killed and cut in July, which also reviews its year. */
class WhoseKilosOnPaperTest {
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(\\.\\d+)?");

  @TempDir private Path folder;

  private SummaryView july() {
    var shop = new SmallShop(folder).add("shop.properties", "year_review=7");
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "211", "205.5");
    shop.row("rail", "2026-07-16T08:00", "B1", "aged", "202");
    shop.cut("B1", "2026-07-16", "150.20", "35.12");
    shop.row("bench", "2026-07-16T10:00", "B1", "fat", "14.30");
    shop.beef("B2", "2026-07-06", "").hung("B2", "2026-07-06", "307", "300");
    shop.row("rail", "2026-07-17T08:00", "B2", "aged", "295.5");
    shop.cut("B2", "2026-07-17", "220.40", "51.64");
    shop.row("bench", "2026-07-17T10:00", "B2", "fat", "20.50");
    return shop.summary("2026-07", "2026-09-15T02:00:00Z");
  }

  /** The sums of both owners, but in the picture of all kilos and by day and place. */
  @Test
  void areNotAddedUpElsewhere() {
    var july = july();
    var first = july.first();
    var printed = numbers(first.sums());
    printed.addAll(numbers(july.appendix()));
    assertAll(
        List.of("518", "12.5", "8.0", "497.5", "370.60", "86.76", "34.80", "5.34").stream()
            .map(BigDecimal::new)
            .map(mix -> () -> assertEquals(List.of(), like(mix, printed), "mixed " + mix)));
  }

  @Test
  void areTogetherInThePictureOfAllKilos() {
    var printed = numbers(july().first().kilos());
    assertAll(
        List.of("518", "12.5", "8.0", "497.5", "370.6", "86.8", "34.8", "5.3").stream()
            .map(BigDecimal::new)
            .map(sum -> () -> assertTrue(!like(sum, printed).isEmpty(), "missing " + sum)));
  }

  @Test
  void standOneBesideTheOther() {
    var printed = numbers(july());
    assertAll(
        List.of("211.0", "307.0", "5.5", "7.0", "3.5", "4.5", "202.0", "295.5", "150.2", "220.4")
            .stream()
            .map(BigDecimal::new)
            .map(sum -> () -> assertTrue(!like(sum, printed).isEmpty(), "missing " + sum)));
  }

  /** Printed numbers with decimals that are {@code sum} as far as they go. */
  private static List<BigDecimal> like(BigDecimal sum, List<BigDecimal> printed) {
    return printed.stream()
        .filter(n -> n.scale() > 0)
        .filter(n -> n.compareTo(sum.setScale(n.scale(), RoundingMode.HALF_UP)) == 0)
        .toList();
  }

  private static List<BigDecimal> numbers(Object month) {
    var texts = new ArrayList<String>();
    collect(month, texts);
    return texts.stream()
        .flatMap(text -> NUMBER.matcher(text).results())
        .map(found -> new BigDecimal(found.group().replace(",", "")))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private static void collect(Object value, List<String> texts) {
    if (value instanceof String text) {
      texts.add(text);
    } else if (value instanceof Collection<?> many) {
      many.forEach(one -> collect(one, texts));
    } else if (value instanceof Record record) {
      for (var component : record.getClass().getRecordComponents()) {
        collect(value(record, component), texts);
      }
    }
  }

  private static Object value(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
