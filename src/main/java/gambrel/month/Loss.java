package gambrel.month;

import gambrel.balance.BodyBalance;
import gambrel.balance.Drawn;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where a body loses weight that nobody takes home. */
public enum Loss {
  /** Hot to cold, of hot. */
  CHILL(BodyFigures.CHILL),
  /** Cold to aged, of cold. */
  AGEING(BodyFigures.AGEING),
  /** On the bench, of the weight into the boning room. */
  BENCH(BodyFigures.BENCH),
  /** In batches, of the green weight into them. */
  BATCH(BodyFigures.BATCH);

  private static final Drawn<BodyBalance, LocalDate> LAST_COLD =
      new Drawn<>(body -> last(body.weighings().of(Step.COLD)));
  private static final Drawn<BodyBalance, LocalDate> LAST_AGED =
      new Drawn<>(body -> last(body.weighings().of(Step.AGED)));

  private final Ratio.Figure figure;

  Loss(Ratio.Figure figure) {
    this.figure = figure;
  }

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The bodies of a month that it is drawn from: those killed for the rail, those cut else. */
  public List<BodyAccount> of(MonthBodies month) {
    return this == CHILL || this == AGEING ? month.killed() : month.cut();
  }

  /** What one body lost, of what; empty where not known. */
  public Optional<Ratio> of(BodyBalance balance) {
    return figure.of(balance);
  }

  /** What bodies lost together. */
  public Ratio of(Collection<BodyAccount> accounts) {
    return figure.of(accounts);
  }

  /** How what each of them lost spreads, in per cent; empty where it is known of none. */
  Optional<Spread> spread(Collection<BodyAccount> accounts) {
    return figure.spread(accounts);
  }

  /** What one body lost, in per cent. */
  public Optional<BigFraction> percent(BodyAccount account) {
    return figure.percent(account.balance());
  }

  /** What one body lost as a weight. */
  public Optional<Weight> weight(BodyAccount account) {
    return of(account.balance()).map(Ratio::part);
  }

  /** Whether it is known of a body, from weighings up to a day. */
  boolean isKnownBy(BodyBalance balance, LocalDate day) {
    return of(balance).isPresent() && isWeighedBy(balance, day);
  }

  private boolean isWeighedBy(BodyBalance balance, LocalDate day) {
    return switch (this) {
      case CHILL -> !LAST_COLD.of(balance).isAfter(day);
      case AGEING -> !LAST_AGED.of(balance).isAfter(day);
      case BENCH, BATCH -> true;
    };
  }

  private static LocalDate last(List<Weighing> weighings) {
    return weighings.stream()
        .map(Weighing::date)
        .max(Comparator.naturalOrder())
        .orElse(LocalDate.MIN);
  }
}
