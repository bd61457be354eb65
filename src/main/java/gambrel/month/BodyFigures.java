package gambrel.month;

import gambrel.measure.Share;
import java.util.Optional;

/** The figures of which a month prints averages, each with what it is a part of. */
public final class BodyFigures {
  /** Lost in the chiller, of hot. */
  public static final Ratio.Figure CHILL = new Ratio.Figure(b -> b.shares().chillShrink());

  /** Lost while hanging, of the cold weight of the same parts. */
  public static final Ratio.Figure AGEING = new Ratio.Figure(b -> b.shares().ageingShrink());

  /** Bench loss, of the weight into the boning room. */
  public static final Ratio.Figure BENCH = new Ratio.Figure(b -> b.shares().cuttingLoss());

  /** Lost in batches, of the green weight into them. */
  public static final Ratio.Figure BATCH = new Ratio.Figure(b -> b.shares().batchLoss());

  /** Hot, of a live weight that was weighed: a guess would pass for a yield. */
  public static final Ratio.Figure DRESSING =
      new Ratio.Figure(
          b -> b.body().liveGuessed() ? Optional.<Share>empty() : b.shares().dressing());

  /** Take-home, of cold. */
  public static final Ratio.Figure TAKE_HOME = new Ratio.Figure(b -> b.shares().takeHomeOfCold());

  /** Take-home, of the weight into the boning room. */
  public static final Ratio.Figure TAKE_HOME_OF_BONING =
      new Ratio.Figure(b -> b.shares().takeHomeOfBoning());

  /** Meat, of cold. */
  public static final Ratio.Figure MEAT = new Ratio.Figure(b -> b.shares().meatOfCold());

  /** Bone, of the weight into the boning room. */
  public static final Ratio.Figure BONE = new Ratio.Figure(b -> b.shares().boneOfBoning());

  /** Fat, of the weight into the boning room. */
  public static final Ratio.Figure FAT = new Ratio.Figure(b -> b.shares().fatOfBoning());

  private BodyFigures() {}
}
