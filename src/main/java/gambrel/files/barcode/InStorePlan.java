package gambrel.files.barcode;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a shop lays out the numbers that its own scales print: each country and shop has its own plan
 * (GS1 General Specifications, restricted circulation numbers).
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
   * What an in-store number says.
   *
   * @param item its item digits, zeros kept; empty if the plan has none
   * @param weight in the scale's unit
   */
  public record Reading(String item, BigDecimal weight) {}

  /**
   * Reads a number, with or without a symbology identifier; empty if the plan is not for it.
   *
   * @throws BadBarcode if the plan fits and a check or verifier digit does not
   */
  public Optional<Reading> read(String text) throws BadBarcode {
    String digits = text.replaceFirst("^][A-Za-z][0-9A-Za-z]", "");
    if (!numbers.matcher(digits).matches()) {
      return Optional.empty();
    }
    String weight = pick(digits, 'W');
    if (plan.endsWith("C") && !CheckDigits.endsRight(digits)) {
      throw new BadBarcode("has a wrong check digit");
    }
    String verifier = pick(digits, 'V');
    if (!verifier.isEmpty() && verifier.charAt(0) - '0' != CheckDigits.verifier(weight)) {
      throw new BadBarcode("has a weight that its verifier digit does not confirm");
    }
    return Optional.of(
        new Reading(pick(digits, 'I'), new BigDecimal(new BigInteger(weight), decimals)));
  }

  private String pick(String digits, char letter) {
    var picked = new StringBuilder();
    for (int i = 0; i < plan.length(); i++) {
      if (plan.charAt(i) == letter) {
        picked.append(digits.charAt(i));
      }
    }
    return picked.toString();
  }
}
