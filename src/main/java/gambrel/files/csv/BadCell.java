package gambrel.files.csv;

import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import java.time.DateTimeException;
import java.util.IllformedLocaleException;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** A text that cannot be read as the kind of value that is wanted. */
public final class BadCell extends RuntimeException {
  private final NoticeCode code;
  private final transient Phrase why;

  /**
   * A text that draws a notice of {@code code}.
   *
   * @param why the end of a sentence that begins with the text
   */
  public BadCell(NoticeCode code, Phrase why) {
    super(why.key(), null, false, false);
    this.code = code;
    this.why = why;
  }

  /** A text that is wrong for the reason {@code why}. */
  public BadCell(Phrase why) {
    this(NoticeCode.SHOP_ROW_BAD, why);
  }

  /** A text that is wrong for the reason {@code CELL.why} of the notices files. */
  public BadCell(String why) {
    this(Phrase.of("CELL." + why));
  }

  /**
   * The result of {@code reading}.
   *
   * @throws BadCell for the reason {@code CELL.why} if the JDK does not understand the text
   */
  public static <T> T unless(String why, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (IllegalArgumentException
        | DateTimeException
        | ArithmeticException
        | IllformedLocaleException e) {
      throw new BadCell(why);
    }
  }

  /**
   * The value, if it fits.
   *
   * @throws BadCell for the reason {@code CELL.why} if it does not
   */
  public static <T> T unless(String why, T value, Predicate<T> fits) {
    return Optional.of(value).filter(fits).orElseThrow(() -> new BadCell(why));
  }

  /** The code of the notice that it draws. */
  public NoticeCode code() {
    return code;
  }

  /** The end of a sentence that begins with the text. */
  public Phrase why() {
    return why;
  }
}
