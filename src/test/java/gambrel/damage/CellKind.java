package gambrel.damage;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a column holds, and whether a text is a well-formed value of it. Written from the contract;
 * shares no code with the program.
 */
enum CellKind {
  TEXT,
  /** The id that the row defines. */
  KEY,
  /** Ids between blanks. */
  TAGS,
  CUSTOMER,
  BODY,
  SCALE,
  BATCH,
  CODE,
  ITEM,
  NUMBER,
  POSITIVE,
  COUNT,
  PRICE,
  AMOUNT,
  SHARE,
  DATE,
  MOMENT,
  TIME,
  YES_NO,
  LANGUAGE,
  TICKETS,
  STATUS,
  /** What a correction puts into the field that its row names. */
  CORRECTED,
  CURRENCY,
  ZONE,
  RAIL,
  DELIVERY("email", "print"),
  SPECIES("beef", "veal", "lamb", "pork", "goat", "game"),
  OUTCOME("whole", "condemned", "cancelled"),
  STEP("hot", "cold", "aged", "block", "tub", "added", "pack", "bin", "test", "other"),
  PART("carcase", "piece", "meat", "trim", "bone", "fat", "waste", "offal", "added"),
  UNIT("kg", "g", "lb", "oz", "lb-oz"),
  SHOP_UNIT("kg", "lb"),
  SCALE_CLASS("I", "II", "III", "IIII"),
  BASIS("head", "live", "hot", "cold", "boning", "tub", "packed", "pack", "day", "share"),
  FIELD(
      "time",
      "body",
      "code",
      "net",
      "gross",
      "tare",
      "unit",
      "pieces",
      "operator",
      "batch",
      "customer",
      "status"),
  ACTION("release", "close", "reissue"),
  REGION("au", "uk", "us"),
  PAPER("a4", "letter"),
  BINS("weighed", "partly", "no");

  private static final Pattern NUMERIC = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
  private static final Pattern MINOR_UNITS = Pattern.compile("[+-]?(\\d+\\.?|\\d*\\.\\d{1,2})");
  private static final Pattern WHOLE = Pattern.compile("\\d+");
  private static final Pattern SCIENTIFIC = Pattern.compile("[0-9.]+E\\+[0-9]+");
  private static final Pattern FRACTION = Pattern.compile("(\\d+) ?(?:/| of ) ?(\\d+)");
  private static final Pattern PERCENT = Pattern.compile("(\\d+(?:\\.\\d+)?) ?%");
  private static final Pattern TAG = Pattern.compile("[A-Za-z]{2,8}([-_][A-Za-z0-9]{2,8})*");
  private static final Pattern TICKET_RUN = Pattern.compile("(\\d+)-(\\d+)");
  private static final Set<String> YES = Set.of("yes", "no", "true", "false", "1", "0", "x");

  private final List<String> words;

  CellKind(String... words) {
    this.words = List.of(words);
  }

  /** Whether a filled cell is a value of this kind, whatever it refers to. */
  boolean holds(String cell) {
    if (cell.indexOf(TypedTable.UNDECODABLE) >= 0) {
      return false;
    }
    var text = cell.strip();
    if (!words.isEmpty()) {
      return words.stream().anyMatch(text::equalsIgnoreCase);
    }
    return switch (this) {
      case KEY, CUSTOMER, BODY, SCALE, BATCH, CODE, TAGS -> !SCIENTIFIC.matcher(text).matches();
      case NUMBER, PRICE -> NUMERIC.matcher(text).matches();
      case POSITIVE -> NUMERIC.matcher(text).matches() && Double.parseDouble(text) > 0;
      case COUNT -> WHOLE.matcher(text).matches() && !text.matches("0+");
      case AMOUNT -> MINOR_UNITS.matcher(text).matches();
      case SHARE -> share(text);
      case DATE -> reads(() -> LocalDate.parse(text));
      case MOMENT -> date(text) || time(text);
      case TIME -> time(text);
      case YES_NO -> YES.contains(text);
      case LANGUAGE -> TAG.matcher(text).matches();
      case TICKETS -> tickets(text);
      case STATUS -> text.equals("ok") || text.equals("void") || text.matches("void:.+");
      case CURRENCY -> reads(() -> Currency.getInstance(text));
      case ZONE -> reads(() -> ZoneId.of(text));
      case RAIL -> List.of(text.split(" ?, ?")).stream().allMatch(List.of("hot", "cold")::contains);
      default -> true;
    };
  }

  private static boolean share(String text) {
    var fraction = FRACTION.matcher(text);
    var percent = PERCENT.matcher(text);
    if (fraction.matches()) {
      return !fraction.group(1).matches("0+") && !fraction.group(2).matches("0+");
    }
    var number = percent.matches() ? percent.group(1) : text;
    return NUMERIC.matcher(number).matches() && Double.parseDouble(number) > 0;
  }

  private static boolean tickets(String text) {
    var run = TICKET_RUN.matcher(text);
    return !run.matches() || Long.parseLong(run.group(1)) <= Long.parseLong(run.group(2));
  }

  private static boolean date(String text) {
    return reads(() -> LocalDate.parse(text));
  }

  private static boolean time(String text) {
    var iso = text.replace(' ', 'T');
    return reads(() -> LocalDateTime.parse(iso)) || reads(() -> OffsetDateTime.parse(iso));
  }

  private static boolean reads(Runnable reading) {
    try {
      reading.run();
      return true;
    } catch (DateTimeException | IllegalArgumentException e) {
      return false;
    }
  }
}
