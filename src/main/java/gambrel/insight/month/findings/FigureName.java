package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.Loss;
import java.util.Currency;
import java.util.Locale;

/** The figures of a month. Their names are those of {@code month-figures.csv}. */
public enum FigureName {
  /** Lost in the chiller, % of hot. */
  CHILL_LOSS_PCT(Unit.PERCENT),
  /** Lost in the chiller. */
  CHILL_LOSS(Unit.WEIGHT),
  /** What that was worth on the rail. */
  CHILL_LOSS_VALUE(Unit.MONEY),
  /** Lost while hanging, % of the cold weight of the aged parts. */
  AGEING_LOSS_PCT(Unit.PERCENT),
  /** Lost while hanging. */
  AGEING_LOSS(Unit.WEIGHT),
  /** What that was worth on the rail. */
  AGEING_LOSS_VALUE(Unit.MONEY),
  /** Lost on the bench, % of the weight into the boning room. */
  BENCH_LOSS_PCT(Unit.PERCENT),
  /** Lost on the bench. */
  BENCH_LOSS(Unit.WEIGHT),
  /** What that was worth on the rail. */
  BENCH_LOSS_VALUE(Unit.MONEY),
  /** Lost in batches, % of the green weight into them. */
  BATCH_LOSS_PCT(Unit.PERCENT),
  /** Lost in batches. */
  BATCH_LOSS(Unit.WEIGHT),
  /** What that was worth on the rail. */
  BATCH_LOSS_VALUE(Unit.MONEY),
  /** Ageing shrink a day, % of cold: the slope of the line on days hung. */
  AGEING_PCT_A_DAY(Unit.PERCENT),
  /** Ageing shrink at the middle of the days hung, % of cold, on the line. */
  AGEING_PCT_AT_MEDIAN_DAYS(Unit.PERCENT),
  /** What one day more takes, % of cold. */
  FURTHER_DAY_PCT(Unit.PERCENT),
  /** What one day more takes from a body of middle cold weight. */
  FURTHER_DAY_WEIGHT(Unit.WEIGHT),
  /** By how much the price must rise to make one day more up, %. */
  FURTHER_DAY_PRICE_RISE_PCT(Unit.PERCENT),
  /** The same in money. */
  FURTHER_DAY_PRICE_RISE(Unit.PRICE_RISE),
  /** What the weight that one day more takes is worth. */
  FURTHER_DAY_VALUE(Unit.MONEY),
  /** What one day more adds to a bill, without tax: the median of the bodies. */
  FURTHER_DAY_CHARGE(Unit.MONEY),
  /** Bodies weighed alive, not guessed. */
  LIVE_KNOWN(Unit.BODIES),
  /** Bodies weighed hot. */
  HOT_KNOWN(Unit.BODIES),
  /** Bodies weighed cold. */
  COLD_KNOWN(Unit.BODIES),
  /** Bodies with bone in a bin. */
  BONE_KNOWN(Unit.BODIES),
  /** Bodies with fat in a bin. */
  FAT_KNOWN(Unit.BODIES),
  /** Take-home, % of cold. */
  TAKE_HOME_PCT(Unit.PERCENT),
  /** Bone in bins and packs, % of the weight into the boning room. */
  BONE_PCT(Unit.PERCENT),
  /** Fat in bins, % of the weight into the boning room. */
  FAT_PCT(Unit.PERCENT),
  /** Trim and mince, % of the weight into the boning room. */
  TRIM_PCT(Unit.PERCENT),
  /** What came of a primal, % of the weight into the boning room. */
  PRIMAL_PCT(Unit.PERCENT),
  /** Percentage points of bone above or below like bodies of other boners. */
  BONE_TO_OTHERS_POINTS(Unit.PERCENT),
  /** Minutes on the block for a piece: the median. */
  MINUTES_A_PIECE(Unit.MINUTES),
  /** Weight boned in an hour on the block. */
  BONED_AN_HOUR(Unit.WEIGHT),
  /** Worth of the take-home, on the cold weight. */
  WORTH_OF_COLD(Unit.RATE),
  /** Worth of what a piece was made into, on its weight on the block. */
  CUT_WORTH_OF_PIECE(Unit.RATE),
  /** Worth of what a piece was made into, on the body's weight into the boning room. */
  CUT_WORTH_OF_BODY(Unit.RATE),
  /** Charges without tax, on the customers' part of the weight into the boning room. */
  CHARGES_OF_BONING(Unit.RATE),
  /** What own bodies left over, on their cold weight. */
  MARGIN_OF_COLD(Unit.RATE);

  private final Unit unit;

  FigureName(Unit unit) {
    this.unit = unit;
  }

  /** Its name in data files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Its unit. */
  public Unit unit() {
    return unit;
  }

  /** The figure of a family: {@code of("chill", "_loss_pct")}. */
  static FigureName of(String family, String figure) {
    return valueOf((family + figure).toUpperCase(Locale.ROOT));
  }

  /** A loss in per cent. */
  public static FigureName percentOf(Loss loss) {
    return of(loss.id(), "_loss_pct");
  }

  /** A loss as a weight. */
  public static FigureName weightOf(Loss loss) {
    return of(loss.id(), "_loss");
  }

  /** A loss in money. */
  public static FigureName valueOf(Loss loss) {
    return of(loss.id(), "_loss_value");
  }

  /** A yield in per cent. */
  public static FigureName of(BodyFigure yield) {
    return of(yield.id(), "_pct");
  }

  /** How many bodies have a weight. */
  public static FigureName of(Completeness.What what) {
    return of(what.id(), "_known");
  }

  /** Units of figures: how data files name and round them. */
  public enum Unit {
    /** Per cent, or percentage points. */
    PERCENT,
    /** The shop's unit of weight. */
    WEIGHT,
    /** The shop's currency. */
    MONEY,
    /** Money for a unit of weight. */
    RATE,
    /** A rise of {@link #RATE}, which is a part of the smallest coin. */
    PRICE_RISE,
    /** Minutes. */
    MINUTES,
    /** A number of bodies. */
    BODIES;

    private static final int DECIMALS = 3;

    /** Its name in data files. */
    public String id(String weight, Currency currency) {
      return switch (this) {
        case PERCENT -> "%";
        case WEIGHT -> weight;
        case MONEY -> currency.getCurrencyCode();
        case RATE, PRICE_RISE -> currency.getCurrencyCode() + "/" + weight;
        case MINUTES -> "min";
        case BODIES -> "bodies";
      };
    }

    /**
     * Decimals in data files.
     *
     * @param digits those of the currency's minor unit
     */
    public int decimals(int digits) {
      return switch (this) {
        case MONEY -> digits;
        case PRICE_RISE -> digits + 2;
        case BODIES -> 0;
        case PERCENT, WEIGHT, RATE, MINUTES -> DECIMALS;
      };
    }
  }
}
