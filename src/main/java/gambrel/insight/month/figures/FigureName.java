package gambrel.insight.month.figures;

import java.util.Currency;
import java.util.Locale;

/** The figures of a month. Their names are those of {@code month-figures.csv}. */
public enum FigureName {
  /** Lost in the chiller, % of hot. */
  CHILL_LOSS_PCT(Unit.PERCENT),
  /** Lost in the chiller. */
  CHILL_LOSS(Unit.WEIGHT),
  /** The value of that loss on the rail. */
  CHILL_LOSS_VALUE(Unit.MONEY),
  /** Lost while hanging, % of the cold weight of the aged parts. */
  AGEING_LOSS_PCT(Unit.PERCENT),
  /** Lost while hanging. */
  AGEING_LOSS(Unit.WEIGHT),
  /** The value of that loss on the rail. */
  AGEING_LOSS_VALUE(Unit.MONEY),
  /** Lost on the bench, % of the weight into the boning room. */
  BENCH_LOSS_PCT(Unit.PERCENT),
  /** Lost on the bench. */
  BENCH_LOSS(Unit.WEIGHT),
  /** The value of that loss on the rail. */
  BENCH_LOSS_VALUE(Unit.MONEY),
  /** Lost in batches, % of the green weight into them. */
  BATCH_LOSS_PCT(Unit.PERCENT),
  /** Lost in batches. */
  BATCH_LOSS(Unit.WEIGHT),
  /** The value of that loss on the rail. */
  BATCH_LOSS_VALUE(Unit.MONEY),
  /** What one day more takes, % of cold. */
  FURTHER_DAY_PCT(Unit.PERCENT),
  /** What one day more takes from a body of median cold weight. */
  FURTHER_DAY_WEIGHT(Unit.WEIGHT),
  /** The rise of price that makes up one day more, %. */
  FURTHER_DAY_PRICE_RISE_PCT(Unit.PERCENT),
  /** What the weight that one day more takes is worth. */
  FURTHER_DAY_VALUE(Unit.MONEY),
  /** What one day more adds to a bill, without tax: the median of the bodies. */
  FURTHER_DAY_CHARGE(Unit.MONEY),
  /** First weight of the bodies cut or left whole, on the rail or into the boning room. */
  ROOM_FIRST(Unit.WEIGHT),
  /** Lost by them in the chiller. */
  ROOM_CHILL(Unit.WEIGHT),
  /** Lost by them while hanging, where they were weighed again. */
  ROOM_HANGING(Unit.WEIGHT),
  /** Trimmed off them on the rail. */
  ROOM_TRIM(Unit.WEIGHT),
  /** Left the shop whole. */
  ROOM_WHOLE(Unit.WEIGHT),
  /** Into the boning room. */
  ROOM_BONING(Unit.WEIGHT),
  /** Of it, taken home. */
  ROOM_HOME(Unit.WEIGHT),
  /** Of it, bone in bins. */
  ROOM_BONE(Unit.WEIGHT),
  /** Of it, fat in bins. */
  ROOM_FAT(Unit.WEIGHT),
  /** Of it, other bins. */
  ROOM_WASTE(Unit.WEIGHT),
  /** Of it, not weighed out, where bins are not weighed. */
  ROOM_UNWEIGHED(Unit.WEIGHT),
  /** Of it, lost while hanging after the last weight on the rail: as much as is allowed. */
  ROOM_HUNG_UNWEIGHED(Unit.WEIGHT),
  /** Of it, lost on the bench. */
  ROOM_BENCH(Unit.WEIGHT),
  /** Of it, lost in batches. */
  ROOM_BATCH(Unit.WEIGHT),
  /** Offal of them, on top of their first weight. */
  ROOM_OFFAL(Unit.WEIGHT),
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
  /** What went home or into tubs of a primal, % of the weight into the boning room. */
  PRIMAL_PCT(Unit.PERCENT),
  /** Bone of a boner's bodies less that of like bodies of other boners, percentage points. */
  BONE_TO_OTHERS_POINTS(Unit.PERCENT),
  /** Minutes on the block for a piece: the median. */
  MINUTES_A_PIECE(Unit.MINUTES),
  /** Weight boned in an hour. */
  BONED_AN_HOUR(Unit.WEIGHT),
  /** Worth of the take-home for a unit of cold weight. */
  WORTH_OF_COLD(Unit.RATE),
  /** Worth of what a piece was cut into, for a unit of its weight on the block. */
  CUT_WORTH_OF_PIECE(Unit.RATE),
  /** Worth of what a piece was cut into, for a unit of the body's weight into the boning room. */
  CUT_WORTH_OF_BODY(Unit.RATE),
  /** Charges without tax, for a unit of the customers' weight into the boning room. */
  CHARGES_OF_BONING(Unit.RATE),
  /** Charged on the month's statements, without tax, by description. */
  CHARGED(Unit.MONEY),
  /** The same, for a unit of the customers' weight into the boning room. */
  CHARGED_OF_BONING(Unit.RATE),
  /** The same, for an hour on the block. */
  CHARGED_AN_HOUR(Unit.HOURLY),
  /** Take-home, % of hot, of the bodies that a bid rests on. */
  BID_TAKE_HOME_PCT(Unit.PERCENT),
  /** Worth of their take-home for a unit of hot weight. */
  BID_WORTH_OF_HOT(Unit.RATE),
  /** What the price list asks for them, without tax, for a unit of hot weight. */
  BID_WORK_OF_HOT(Unit.RATE),
  /** The worth less the work: the most that a unit of hot weight may cost. */
  BID_OF_HOT(Unit.RATE),
  /** What 100 g or 4 oz more on a cut earns, less what it earns as mince or sausages. */
  MORE_ON_CUT(Unit.MONEY),
  /** Charged on the month's statements, without tax, by rate of tax. */
  STATEMENTS_NET(Unit.MONEY),
  /** Tax on them. */
  STATEMENTS_TAX(Unit.MONEY),
  /** Received for them. */
  STATEMENTS_RECEIVED(Unit.MONEY),
  /** Still owed for them. */
  STATEMENTS_OWED(Unit.MONEY),
  /** Owed for them and for statements of earlier months, by age of the debt. */
  OWED(Unit.MONEY),
  /** Value less cost of own bodies, for a unit of cold weight. */
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

  /** The figure whose id is {@code family} followed by {@code figure}. */
  private static FigureName of(String family, String figure) {
    return valueOf((family + figure).toUpperCase(Locale.ROOT));
  }

  /** A loss in per cent. */
  public static FigureName percentOf(BodyFigure loss) {
    return of(loss.id(), "_loss_pct");
  }

  /** A loss as a weight. */
  public static FigureName weightOf(BodyFigure loss) {
    return of(loss.id(), "_loss");
  }

  /** A loss in money. */
  public static FigureName valueOf(BodyFigure loss) {
    return of(loss.id(), "_loss_value");
  }

  /** A yield in per cent. */
  public static FigureName of(BodyFigure yield) {
    return of(yield.id(), "_pct");
  }

  /** The number of bodies that have a weight. */
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
    /** Money an hour. */
    HOURLY,
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
        case HOURLY -> currency.getCurrencyCode() + "/h";
        case RATE -> currency.getCurrencyCode() + "/" + weight;
        case MINUTES -> "min";
        case BODIES -> "bodies";
      };
    }

    /**
     * Decimals in data files.
     *
     * @param digits decimals of the currency
     */
    public int decimals(int digits) {
      return switch (this) {
        case MONEY -> digits;
        case BODIES -> 0;
        case PERCENT, WEIGHT, RATE, HOURLY, MINUTES -> DECIMALS;
      };
    }
  }
}
