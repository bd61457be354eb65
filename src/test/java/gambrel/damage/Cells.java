package gambrel.damage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts into cells what no shop would write and no program may stumble over. */
final class Cells {
  private static final Pattern CELL = Pattern.compile("(?<=[,;=\n])[^,;=\n\r]*");
  private static final List<String> STRANGE = strange();

  private Cells() {}

  private static List<String> strange() {
    var texts =
        new ArrayList<>(
            List.of(
                "",
                " ",
                "-",
                "0",
                "-0.001",
                "00000",
                "1e999999",
                "1.23E+14",
                "NaN",
                "Infinity",
                "1/0",
                "0 of 0",
                "1/3",
                "150%",
                "9999999999999",
                "999999999999.99999",
                "0.000000000001",
                "1" + "0".repeat(10_000),
                "." + "9".repeat(10_000),
                "-2147483648",
                "2147483647",
                "9223372036854775807",
                "1,5",
                "1'000",
                "\u0661\u0662",
                "1\u00A0000",
                "\u33A0",
                "\u043A\u0433",
                "12 lb 17 oz",
                "1" + " ".repeat(3_000) + "x",
                "+999999999-12-31T23:59:59-18:00",
                "-999999999-01-01T00:00:00+18:00",
                "999999999-01-01",
                "0000-00-00",
                "1900-01-01",
                "2199-12-31",
                "2026-02-30",
                "2026-13-01T25:61",
                "9999-12-31T23:59:59.999999999Z",
                "71*",
                "*",
                "71*".repeat(500),
                "\u2028",
                "\uFFFE\uFFFF",
                "\uD800",
                "a\u202Eb",
                "void:",
                "void:void",
                "void:1",
                "shop",
                "=1+1",
                "@x",
                "'x",
                "../../etc/x",
                "a/b",
                "CON",
                "<b>&amp;",
                "${x}",
                "%s%n",
                "\\u0000",
                "\\",
                "carcase",
                "yes",
                "kg",
                "none",
                "(a+)+$",
                "1-99999999999999999999",
                "exports/a.csv:2",
                "x".repeat(2_000),
                "hot,cold",
                "lb"));
    for (char c = 0; c < 32; c++) {
      texts.add("B" + c + "1");
    }
    return texts;
  }

  /** One cell. */
  static byte[] damageOne(byte[] bytes, SplittableRandom random) {
    return damage(bytes, random, 1);
  }

  /** About one in ten. */
  static byte[] damageMany(byte[] bytes, SplittableRandom random) {
    return damage(bytes, random, 1 + cells(text(bytes)) / 10);
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static int cells(String text) {
    return (int) CELL.matcher(text).results().count();
  }

  private static byte[] damage(byte[] bytes, SplittableRandom random, int number) {
    var text = text(bytes);
    int cells = Math.max(1, cells(text));
    var chosen = random.ints(number, 0, cells).boxed().collect(Collectors.toSet());
    var index = new AtomicInteger();
    return CELL.matcher(text)
        .replaceAll(
            cell ->
                Matcher.quoteReplacement(
                    chosen.contains(index.getAndIncrement())
                        ? STRANGE.get(random.nextInt(STRANGE.size()))
                        : cell.group()))
        .getBytes(StandardCharsets.UTF_8);
  }
}
