package gambrel.files.barcode;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The plan of the numbers that a shop's own scales print. Each country and shop has its own (GS1
 * General Specifications, restricted circulation numbers).
 */
public final class InStorePlan {
  private static final Pattern PLAN = Pattern.compile("(?=.*W)[0-9IWVX]{7,17}C?");
  private static final int MOST_DECIMALS = 6;

  private final String plan;
  private final Pattern numbers;
  private final int decimals;

  private InStorePlan(String plan, int decimals) {
    this.plan = plan;
    this.numbers = Pattern.compile(plan.replaceAll("[IWVXC]", "[0-9]"));
    this.decimals = decimals;
  }

  /**
   * A plan.
   *
   * @param plan a letter a digit: I item, W weight, V verifier of the weight, C check digit at the
   *     end, X anything; a digit is that digit
   * @param decimals implied decimals of the weight
   * @throws IllegalArgumentException if that is no plan
   */
  public static InStorePlan of(String plan, int decimals) {
    if (!PLAN.matcher(plan).matches() || decimals < 0 || decimals > MOST_DECIMALS) {
      throw new IllegalArgumentException("no plan: " + plan + " with " + decimals + " decimals");
    }
    long verifiers = count(plan, 'V');
    long weights = count(plan, 'W');
    if (verifiers > 1 || verifiers == 1 && weights != 4 && weights != 5) {
      throw new IllegalArgumentException("a verifier is one digit over 4 or 5 digits");
    }
    return new InStorePlan(plan, decimals);
  }

  private static long count(String plan, char letter) {
    return plan.chars().filter(c -> c == letter).count();
  }

  /**
   * Reads a number, with or without a symbology identifier; empty if the plan is not for it. The
   * weight has no unit; the item keeps its zeros.
   *
   * @throws BadCell if the plan fits and a check or verifier digit does not
   */
  Optional<BarcodeContent> read(String text) {
    String digits = text.replaceFirst("^][A-Za-z][0-9A-Za-z]", "");
    if (!numbers.matcher(digits).matches()) {
      return Optional.empty();
    }
    String weight = pick(digits, 'W');
    if (plan.endsWith("C") && !CheckDigits.endsRight(digits)) {
      throw new BadCell(Phrase.of("BARCODE.CHECK"));
    }
    String verifier = pick(digits, 'V');
    if (!verifier.isEmpty() && verifier.charAt(0) - '0' != CheckDigits.verifier(weight)) {
      throw new BadCell(Phrase.of("BARCODE.VERIFIER"));
    }
    var value = new BigDecimal(new BigInteger(weight), decimals);
    var net = new BarcodeContent.Amount(value, Optional.empty());
    return Optional.of(
        new BarcodeContent(
            "", pick(digits, 'I'), "", Optional.of(net), Optional.empty(), Optional.empty()));
  }

  private String pick(String digits, char letter) {
    return IntStream.range(0, plan.length())
        .filter(i -> plan.charAt(i) == letter)
        .mapToObj(i -> digits.substring(i, i + 1))
        .collect(Collectors.joining());
  }
}
