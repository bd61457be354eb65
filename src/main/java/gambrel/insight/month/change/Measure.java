package gambrel.insight.month.change;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Compared;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A figure of a body that is watched for changes; percentages, or days. */
public enum Measure {
  /** Chill shrink. */
  CHILL(BodyFigure.CHILL),
  /** Cutting loss. */
  BENCH(BodyFigure.BENCH),
  /** Dressing percentage. */
  DRESSING(BodyFigure.DRESSING),
  /** Bone in bins and packs, of the weight into the boning room. */
  BONE(BodyFigure.BONE),
  /** Take-home, of all that was weighed out: what is lost before or on the bench is not in it. */
  HOME(BodyFigure.TAKE_HOME_OF_BONING),
  /** Days hung; what a day takes is taken of the cold weight. */
  DAYS(BodyFigure.TAKE_HOME);

  private final BodyFigure figure;

  Measure(BodyFigure figure) {
    this.figure = figure;
  }

  /** Its name in words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The figure whose whole it is a share of. */
  public BodyFigure figure() {
    return figure;
  }

  /** Whether a thing can change it. */
  boolean isExplainedBy(Factor factor) {
    return switch (factor) {
      case EVERYTHING, SPECIES -> true;
      case KILL, CHILLER -> this == CHILL;
      case LATE, SCALE -> false;
      case CLASS -> this != BONE && this != DAYS;
      case SUPPLIER -> this == DRESSING || this == HOME;
      case BONER -> this == BONE;
    };
  }

  /** The bodies of each species of which it is known, in the month and in the twelve before. */
  List<Compared<List<MonthBody>>> bodies(MonthRecords records) {
    var all =
        switch (this) {
          case BONE, HOME -> records.settled();
          case DAYS -> Compared.bySpecies(records.bodies().killed(), records.baseline().killed());
          default -> records.charted(figure);
        };
    return all.stream()
        .map(some -> some.map(each -> each.stream().filter(this::isKnown).toList()))
        .toList();
  }

  private boolean isKnown(MonthBody body) {
    return value(body).isPresent() && body.body().killed().isPresent();
  }

  /** The value of one body; empty if unknown. */
  Optional<BigFraction> value(MonthBody body) {
    return switch (this) {
      case DAYS -> body.balance().daysHung().map(BigFraction::of);
      case HOME ->
          body.share(figure)
              .flatMap(home -> Share.of(Optional.of(home.part()), weighedOut(body, home)))
              .map(Share::percent);
      default -> body.percent(figure);
    };
  }

  /** All that was weighed out of a body; the weight into the boning room where bins are not. */
  private static Optional<Weight> weighedOut(MonthBody body, Share home) {
    return body.share(BodyFigure.BENCH)
        .map(loss -> loss.rest().part())
        .or(() -> Optional.of(home.whole()));
  }

  /** The day whose bodies share what is not known of them. */
  LocalDate day(MonthBody body) {
    var killed = body.body().killed().orElseThrow();
    return this == BENCH || this == BONE || this == HOME
        ? body.balance().lastCut().map(OffsetDateTime::toLocalDate).orElse(killed)
        : killed;
  }

  /** What may add to the value of a body, besides its species. */
  List<String> kind(MonthBody body) {
    String category = body.body().category();
    return switch (this) {
      case CHILL -> List.of(category, body.body().chiller());
      case BENCH ->
          List.of(
              category,
              body.railScale().orElse(""),
              body.benchScale().orElse(""),
              String.valueOf(body.balance().weighings().of(Step.AGED).isEmpty()));
      case DRESSING -> List.of(category, body.body().supplier());
      case BONE -> List.of(body.classAndStyle(), body.boner().orElse(""));
      case HOME -> List.of(body.classAndStyle(), body.body().supplier());
      case DAYS -> List.of(category);
    };
  }

  /** A number on which the value depends in a straight line; 0 if there is none. */
  double covariate(MonthBody body) {
    return this == BENCH ? LossLimit.daysWithoutWeighing(body.balance()) : 0;
  }
}
