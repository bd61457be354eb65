package gambrel.barcode;

import java.util.regex.Pattern;

/**
 * What may follow one application identifier.
 *
 * @param ai its digits
 * @param predefined whether its length is fixed by its first digits, so that no separator follows
 * @param fewest characters
 * @param most characters
 * @param content what the characters are
 */
record ApplicationIdentifier(
    String ai, boolean predefined, int fewest, int most, Content content) {
  /** The characters of a GS1 text: character set 82 of the General Specifications. */
  private static final Pattern TEXT = Pattern.compile("[!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]*");

  private static final Pattern DIGITS = Pattern.compile("\\d*");

  enum Content {
    TEXT,
    DIGITS,
    CHECKED_DIGITS,
    DATE
  }

  /**
   * Returns {@code value} if it may follow.
   *
   * @throws BadBarcode if not
   */
  String checked(String value) throws BadBarcode {
    if (value.length() < fewest || value.length() > most) {
      throw new BadBarcode(
          "has " + value.length() + " characters after (" + ai + "), which takes " + length());
    }
    if (!(content == Content.TEXT ? TEXT : DIGITS).matcher(value).matches()) {
      throw new BadBarcode("has characters after (" + ai + ") that may not stand there");
    }
    if (content == Content.CHECKED_DIGITS && !CheckDigits.endsRight(value)) {
      throw new BadBarcode(
          "has a wrong check digit after ("
              + ai
              + "): it should be "
              + CheckDigits.mod10(value.substring(0, value.length() - 1)));
    }
    if (content == Content.DATE && !ShortDate.isOne(value)) {
      throw new BadBarcode("has no date after (" + ai + ")");
    }
    return value;
  }

  private String length() {
    return fewest == most ? Integer.toString(most) : fewest + " to " + most;
  }
}
