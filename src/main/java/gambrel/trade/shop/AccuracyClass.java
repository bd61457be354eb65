package gambrel.trade.shop;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/**
 * Accuracy class of a weighing instrument, with its limits of error in service. OIML R 76 gives
 * ±0.5 divisions at initial verification for loads up to the first step, ±1 up to the second and
 * ±1.5 beyond it; in service the limits are twice as large. Source of the steps of all classes: UK
 * SI 1995/1907, schedule 2, paragraph 4, table 3.
 */
public enum AccuracyClass {
  /** Special. */
  I(50_000, 200_000),
  /** High. */
  II(5_000, 20_000),
  /** Medium: the usual trade scale. */
  III(500, 2_000),
  /** Ordinary. */
  IIII(50, 200);

  /** Third step of Handbook 44 in class IIII, in divisions; no published source is at hand. */
  private static final int ORDINARY_THIRD_STEP = 400;

  private final int firstStep;
  private final int secondStep;

  AccuracyClass(int firstStep, int secondStep) {
    this.firstStep = firstStep;
    this.secondStep = secondStep;
  }

  /** The class that a cell names in Roman or Arabic figures; empty if it names none. */
  public static Optional<AccuracyClass> of(String text) {
    return switch (text.strip().toUpperCase(Locale.ROOT)) {
      case "I", "1" -> Optional.of(I);
      case "II", "2" -> Optional.of(II);
      case "III", "3" -> Optional.of(III);
      case "IIII", "IV", "4" -> Optional.of(IIII);
      default -> Optional.empty();
    };
  }

  /**
   * Largest permitted error in service, in divisions.
   *
   * @param load the load, in the unit of the division
   */
  public int inServiceDivisions(BigDecimal load, BigDecimal division) {
    if (isWithin(firstStep, load, division)) {
      return 1;
    }
    return isWithin(secondStep, load, division) ? 2 : 3;
  }

  private static boolean isWithin(int step, BigDecimal load, BigDecimal division) {
    return load.abs().compareTo(division.multiply(BigDecimal.valueOf(step))) <= 0;
  }

  /**
   * Maintenance tolerance of NIST Handbook 44, section 2.20, table 6, in divisions. Class III is as
   * secondary copies print it. Of the other classes no copy is at hand: classes I and II take the
   * limits of OIML R 76, and so does class IIII up to 400 divisions; see {@link
   * #hasHandbook44Source}.
   *
   * @param load the load, in the unit of the division
   */
  public int handbook44Divisions(BigDecimal load, BigDecimal division) {
    return switch (this) {
      case I, II -> inServiceDivisions(load, division);
      case III -> handbook44(load, division, 4_000);
      case IIII -> handbook44(load, division, ORDINARY_THIRD_STEP);
    };
  }

  /**
   * Whether the limit of {@link #handbook44Divisions} has a published source at hand. Only the 5
   * divisions of class IIII for loads above 400 divisions have none.
   */
  public boolean hasHandbook44Source(BigDecimal load, BigDecimal division) {
    return this != IIII || isWithin(ORDINARY_THIRD_STEP, load, division);
  }

  private int handbook44(BigDecimal load, BigDecimal division, int thirdStep) {
    return isWithin(thirdStep, load, division) ? inServiceDivisions(load, division) : 5;
  }
}
