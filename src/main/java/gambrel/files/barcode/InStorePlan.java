package gambrel.files.barcode;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.notice.Phrase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
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
  private final int decimals;
  private final Pattern numbers;

  /**
   * A plan.
   *
   * @param plan a letter a digit: I item, W weight, V verifier of 4 or 5 digits of weight, C check
   *     digit at the end, X anything; a digit is that digit
   * @param decimals implied decimals of the weight
   * @throws BadCell if that is no plan
   */
  public InStorePlan(String plan, int decimals) {
    this.plan = plan;
    this.decimals = decimals;
    int verifiers = pick(plan, 'V').length();
    int weights = pick(plan, 'W').length();
    if (!PLAN.matcher(plan).matches()
        || decimals < 0
        || decimals > MOST_DECIMALS
        || verifiers > 1
        || verifiers == 1 && weights != 4 && weights != 5) {
      throw new BadCell(Phrase.of("CELL.NOT_PLAN").with("decimals", decimals));
    }
    this.numbers = Pattern.compile(plan.replaceAll("[IWVXC]", "[0-9]"));
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
    var net = new GivenWeight(value, Optional.empty());
    return Optional.of(
        new BarcodeContent(
            "", pick(digits, 'I'), "", List.of(net), Optional.empty(), Optional.empty()));
  }

  /** The characters of {@code text} where the plan has {@code letter}. */
  private String pick(String text, char letter) {
    return IntStream.range(0, plan.length())
        .filter(i -> plan.charAt(i) == letter)
        .mapToObj(i -> text.substring(i, i + 1))
        .collect(Collectors.joining());
  }
}
