package gambrel.files.barcode;

import java.util.stream.IntStream;

/** The check digits of the GS1 General Specifications, sections 7.9.1 to 7.9.4. */
public final class CheckDigits {
  private static final int[] TWICE_LESS_TENS = {0, 2, 4, 6, 8, 9, 1, 3, 5, 7};
  private static final int[] THRICE = {0, 3, 6, 9, 2, 5, 8, 1, 4, 7};
  private static final int[] FIVEFOLD_PLUS_TENS = {0, 5, 1, 6, 2, 7, 3, 8, 4, 9};
  private static final int[] FIVEFOLD_LESS_TENS = {0, 5, 9, 4, 8, 3, 7, 2, 6, 1};
  private static final int[][] FOUR = {
    TWICE_LESS_TENS, TWICE_LESS_TENS, THRICE, FIVEFOLD_LESS_TENS
  };
  private static final int[][] FIVE = {
    FIVEFOLD_PLUS_TENS, TWICE_LESS_TENS, FIVEFOLD_LESS_TENS, FIVEFOLD_PLUS_TENS, TWICE_LESS_TENS
  };

  private CheckDigits() {}

  /**
   * The digit that ends a number of {@code digits}: weights 3 and 1 from the right, up to the next
   * multiple of ten.
   *
   * @param digits the decimal digits before it
   */
  public static int mod10(String digits) {
    int sum = 0;
    for (int i = 0; i < digits.length(); i++) {
      int fromRight = digits.length() - i;
      sum += digit(digits, i) * (fromRight % 2 == 1 ? 3 : 1);
    }
    return (10 - sum % 10) % 10;
  }

  /** Whether the last digit is the check digit of the digits before it. */
  public static boolean endsRight(String digits) {
    int last = digits.length() - 1;
    return mod10(digits.substring(0, last)) == digit(digits, last);
  }

  /**
   * The digit that verifies a price or weight within an in-store number.
   *
   * @param field four or five decimal digits
   * @throws IllegalArgumentException if there are more or fewer
   */
  public static int verifier(String field) {
    return switch (field.length()) {
      case 4 -> weighted(field, FOUR) * 3 % 10;
      case 5 -> {
        int rest = (10 - weighted(field, FIVE) % 10) % 10;
        yield IntStream.range(0, 10)
            .filter(d -> FIVEFOLD_LESS_TENS[d] == rest)
            .findFirst()
            .orElseThrow();
      }
      default -> throw new IllegalArgumentException("a verifier covers 4 or 5 digits");
    };
  }

  private static int weighted(String field, int[][] weights) {
    return IntStream.range(0, weights.length).map(i -> weights[i][digit(field, i)]).sum();
  }

  private static int digit(String digits, int at) {
    return digits.charAt(at) - '0';
  }
}
