package gambrel.insight.month.bodies;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where a body loses weight. */
public enum Loss {
  /** Hot to cold, of hot. */
  CHILL(BodyFigure.CHILL),
  /** Cold to aged, of cold. */
  AGEING(BodyFigure.AGEING),
  /** On the bench, of the weight into the boning room. */
  BENCH(BodyFigure.BENCH),
  /** In batches, of the green weight into them. */
  BATCH(BodyFigure.BATCH);

  private final BodyFigure figure;

  Loss(BodyFigure figure) {
    this.figure = figure;
  }

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The body's figure of this loss. */
  public BodyFigure figure() {
    return figure;
  }

  /** Whether weight is lost on the rail: then the loss belongs to the month of the kill. */
  public boolean isOnRail() {
    return this == CHILL || this == AGEING;
  }

  /** The bodies of a month with this loss: those killed in it, or those cut in it. */
  public List<MonthBody> of(MonthBodies month) {
    return isOnRail() ? month.killed() : month.cut();
  }

  /** What a body lost, in per cent; empty if unknown. */
  public Optional<BigFraction> percent(MonthBody body) {
    return body.percent(figure);
  }

  /** Whether a body's loss is known from weighings up to {@code day}. */
  boolean isKnownBy(MonthBody body, LocalDate day) {
    var times = body.balance().figures().times();
    return body.share(figure).isPresent()
        && switch (this) {
          case CHILL -> times.lastCold().filter(last -> last.isAfter(day)).isEmpty();
          case AGEING -> times.lastAged().filter(last -> last.isAfter(day)).isEmpty();
          case BENCH, BATCH -> true;
        };
  }
}
