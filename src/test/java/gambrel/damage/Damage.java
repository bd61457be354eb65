package gambrel.damage;

import gambrel.Shuffle;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** What can happen to a file on its way from a scale or out of a spreadsheet. */
enum Damage {
  BYTES_FLIPPED(Damage::flip),
  TRUNCATED((bytes, random) -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1))),
  PASTED_TWICE((bytes, random) -> join(bytes, bytes)),
  PART_PASTED_TWICE(
      (bytes, random) -> join(bytes, Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)))),
  LINES_SHUFFLED(Damage::shuffle),
  LINES_LOST((bytes, random) -> lines(bytes, line -> random.nextInt(3) > 0 ? line : "")),
  FIRST_LINE_LOST((bytes, random) -> lines(bytes, new FirstLineLost())),
  QUOTES_SOWN((bytes, random) -> sow(bytes, random, "\"")),
  NULS_SOWN((bytes, random) -> sow(bytes, random, "\0")),
  CARRIAGE_RETURNS_SOWN((bytes, random) -> sow(bytes, random, "\r")),
  MARKS_SOWN((bytes, random) -> sow(bytes, random, "\uFEFF")),
  SEPARATORS_SOWN((bytes, random) -> sow(bytes, random, "\u2028\u2029\u0085")),
  COMMAS_SOWN((bytes, random) -> sow(bytes, random, random.nextBoolean() ? "," : ";")),
  NO_UTF_8((bytes, random) -> sow(bytes, random, new byte[] {(byte) 0xC3, (byte) 0x28, -1})),
  UTF_16((bytes, random) -> encode(bytes, random.nextInt(4))),
  EMPTY((bytes, random) -> new byte[0]),
  A_LONE_MARK((bytes, random) -> new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}),
  BLANK_LINES((bytes, random) -> "\n \r\n\t\r\r\n".getBytes(StandardCharsets.UTF_8)),
  ANOTHER_KIND_OF_FILE((bytes, random) -> foreign(random)),
  ONE_CELL(Cells::damageOne),
  MANY_CELLS(Cells::damageMany),
  MONSTROUS_CELL((bytes, random) -> sow(bytes, random, "x".repeat(1 << 20))),
  MANY_COLUMNS((bytes, random) -> lines(bytes, line -> line + ",".repeat(20_000))),
  MANY_EQUAL_LINES(Damage::repeat);

  private final BiFunction<byte[], SplittableRandom, byte[]> way;

  Damage(BiFunction<byte[], SplittableRandom, byte[]> way) {
    this.way = way;
  }

  /** The bytes of a file after this happened to it. */
  byte[] to(byte[] bytes, SplittableRandom random) {
    return way.apply(bytes, random);
  }

  private static byte[] flip(byte[] bytes, SplittableRandom random) {
    var flipped = bytes.clone();
    for (int i = 1 + random.nextInt(8); i > 0 && flipped.length > 0; i--) {
      flipped[random.nextInt(flipped.length)] = (byte) random.nextInt(256);
    }
    return flipped;
  }

  private static byte[] join(byte[]... parts) {
    var all = new ByteArrayOutputStream();
    for (var part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  private static byte[] sow(byte[] bytes, SplittableRandom random, String seed) {
    return sow(bytes, random, seed.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] sow(byte[] bytes, SplittableRandom random, byte[] seed) {
    var sown = bytes;
    for (int i = seed.length > 9 ? 1 : 1 + random.nextInt(4); i > 0; i--) {
      int at = random.nextInt(sown.length + 1);
      sown = join(Arrays.copyOf(sown, at), seed, Arrays.copyOfRange(sown, at, sown.length));
    }
    return sown;
  }

  private static List<String> split(byte[] bytes) {
    return Arrays.asList(new String(bytes, StandardCharsets.ISO_8859_1).split("(?<=\n)"));
  }

  private static byte[] joined(List<String> lines) {
    return String.join("", lines).getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] shuffle(byte[] bytes, SplittableRandom random) {
    var lines = split(bytes);
    Shuffle.inPlace(random.nextBoolean() ? lines : lines.subList(1, lines.size()), random);
    return joined(lines);
  }

  private static byte[] lines(byte[] bytes, UnaryOperator<String> change) {
    return joined(split(bytes).stream().map(line -> change(line, change)).toList());
  }

  private static String change(String line, UnaryOperator<String> change) {
    var changed = change.apply(line.stripTrailing());
    return changed.isEmpty() ? "" : changed + "\n";
  }

  private static byte[] repeat(byte[] bytes, SplittableRandom random) {
    var lines = split(bytes);
    var line = lines.get(random.nextInt(lines.size())).stripTrailing() + "\n";
    return join(bytes, line.repeat(5_000).getBytes(StandardCharsets.ISO_8859_1));
  }

  private static byte[] encode(byte[] bytes, int manner) {
    var text = new String(bytes, StandardCharsets.UTF_8);
    return switch (manner) {
      case 0 -> text.getBytes(StandardCharsets.UTF_16);
      case 1 -> text.getBytes(StandardCharsets.UTF_16LE);
      case 2 -> join(text.getBytes(StandardCharsets.UTF_16), new byte[] {65});
      default -> new String(bytes, StandardCharsets.UTF_16BE).getBytes(StandardCharsets.UTF_8);
    };
  }

  /** The first bytes of a PDF, a ZIP archive (which a workbook is, too) or nothing known. */
  private static byte[] foreign(SplittableRandom random) {
    var junk = new byte[3_000];
    random.nextBytes(junk);
    var heads = List.of("%PDF-1.7\n%\u00E2\u00E3\n", "PK\u0003\u0004\u0014\0\u0006\0", "");
    var head = heads.get(random.nextInt(heads.size()));
    return join(head.getBytes(StandardCharsets.ISO_8859_1), junk);
  }

  private static final class FirstLineLost implements UnaryOperator<String> {
    private boolean lost;

    @Override
    public String apply(String line) {
      var kept = lost ? line : "";
      lost = true;
      return kept;
    }
  }
}
