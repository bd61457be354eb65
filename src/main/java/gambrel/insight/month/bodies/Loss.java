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

  /** The figure of a body that tells it. */
  public BodyFigure figure() {
    return figure;
  }

  /** Whether it is lost on the rail, and so belongs to the month of the kill. */
  public boolean isOnRail() {
    return this == CHILL || this == AGEING;
  }

  /** The bodies of a month that it is drawn from: those killed for the rail, those cut else. */
  public List<MonthBody> of(MonthBodies month) {
    return isOnRail() ? month.killed() : month.cut();
  }

  /** What one body lost, in per cent; empty if unknown. */
  public Optional<BigFraction> percent(MonthBody body) {
    return body.percent(figure);
  }

  /** Whether it is known of a body, from weighings up to a day. */
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
