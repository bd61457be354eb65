package gambrel.insight.usual;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.statistics.FurtherValue;
import gambrel.insight.usual.Comparison.Compared;
import gambrel.insight.usual.Comparison.Verdict;
import gambrel.trade.balance.Uncertainty;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.PublishedRanges.Range;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Settings.Bins;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Compares a body with the last like bodies that were cut before it: of its species and class, the
 * same items on the bone, the same steps weighed, one animal or a mob as it is. If they are too
 * few, those count that like it were boned out or had anything on the bone. Bodies count that were
 * issued or closed and needed no release. A later body changes no comparison.
 *
 * <p>Each figure has the range that one further body leaves by chance once in 20 times the number
 * of figures (see {@link FurtherValue}), so that a sound body leaves any of its ranges at most once
 * in 20 times (Bonferroni).
 *
 * <p>A loss within its range is {@linkplain Verdict#USUAL usual} if a body with {@link #ERROR} more
 * or less than it shows would be so near to the mean at most once in 1,000 times. A yield is usual
 * if it is within its range and the loss that confirms its weights is usual: chill shrink for the
 * dressing percentage, bench loss for take-home.
 */
public final class LikeBodies {
  /**
   * The least number of like bodies. With fewer a range would disclose single customers' figures.
   */
  public static final int FEWEST = 8;

  private static final int MOST = 40;
  private static final double OUTSIDE = 1.0 / 20;
  private static final double HIDDEN = 1.0 / 1000;

  /**
   * The error that must show, in per cent: a hook of 3.6 kg on a body of 300 kg. The weight of the
   * hook is from memory.
   */
  private static final double ERROR = 1.2;

  /** Each loss stands before the yield whose weights it confirms. */
  private static final List<BodyFigure> FIGURES =
      List.of(
          BodyFigure.CHILL,
          BodyFigure.DRESSING,
          BodyFigure.BENCH,
          BodyFigure.TAKE_HOME,
          BodyFigure.TAKE_HOME_OF_HOT);

  private final Settings settings;
  private final Map<String, MonthBody> bodies = new HashMap<>();
  private final Map<List<Object>, TreeMap<OffsetDateTime, List<MonthBody>>> sound = new HashMap<>();

  /** The bodies of a shop, as {@link MonthBody#all} reads them. */
  public LikeBodies(Settings settings, Collection<MonthBody> all) {
    this.settings = settings;
    for (var body : all) {
      bodies.put(body.id(), body);
      boolean released = !body.account().decision().released().isEmpty();
      if (isCut(body) && body.account().isSettled() && !released) {
        for (Object style : List.of(body.style(), body.style().isEmpty())) {
          sound
              .computeIfAbsent(
                  kind(body, style), k -> new TreeMap<>(OffsetDateTime.timeLineOrder()))
              .computeIfAbsent(lastCut(body), cut -> new ArrayList<>())
              .add(body);
        }
      }
    }
  }

  /** The bodies of a night. */
  public static LikeBodies of(Night night) {
    return new LikeBodies(night.shop().settings(), MonthBody.all(night));
  }

  private static boolean isCut(MonthBody body) {
    return body.body().isCut() && body.balance().lastCut().isPresent();
  }

  private static OffsetDateTime lastCut(MonthBody body) {
    return body.balance().lastCut().orElseThrow();
  }

  /** Bodies are alike if they agree in all of these. */
  private List<Object> kind(MonthBody body, Object style) {
    return List.of(
        body.species(),
        body.body().category(),
        style,
        body.body().head() > 1,
        body.share(BodyFigure.AGEING).isPresent(),
        known(body).stream().filter(figure -> figure != BodyFigure.DRESSING).toList());
  }

  /** The figures that are known. Take-home is of the cold weight, else of the hot. */
  private List<BodyFigure> known(MonthBody body) {
    return FIGURES.stream()
        .filter(figure -> body.share(figure).isPresent())
        .filter(
            figure ->
                switch (figure) {
                  case BENCH -> settings.bins() == Bins.WEIGHED;
                  case TAKE_HOME_OF_HOT -> body.share(BodyFigure.TAKE_HOME).isEmpty();
                  default -> true;
                })
        .toList();
  }

  /**
   * The comparison of a body; empty if fewer than {@link #FEWEST} like bodies have one of its
   * figures, if it is not cut, and if a release covers something of it. Take-home is not compared
   * while a batch is open.
   */
  public Optional<Comparison> compare(String id) {
    return Optional.ofNullable(bodies.get(id))
        .filter(body -> isCut(body) && body.account().decision().released().isEmpty())
        .map(body -> compare(body, before(body)))
        .filter(of -> !of.figures().isEmpty());
  }

  private List<MonthBody> before(MonthBody body) {
    var same = before(body, body.style());
    return same.size() < FEWEST ? before(body, body.style().isEmpty()) : same;
  }

  private List<MonthBody> before(MonthBody body, Object style) {
    var alike =
        sound.getOrDefault(kind(body, style), new TreeMap<>()).headMap(lastCut(body), false);
    return alike.descendingMap().values().stream().flatMap(List::stream).limit(MOST).toList();
  }

  private Comparison compare(MonthBody body, List<MonthBody> like) {
    var values = new EnumMap<BodyFigure, List<Double>>(BodyFigure.class);
    for (var figure : known(body)) {
      var of = like.stream().flatMap(other -> other.share(figure).stream());
      values.put(figure, of.map(LikeBodies::percent).toList());
    }
    if (!body.account().isSettled()) {
      values.keySet().removeAll(List.of(BodyFigure.TAKE_HOME, BodyFigure.TAKE_HOME_OF_HOT));
    }
    values.values().removeIf(of -> of.size() < FEWEST);
    var verdicts = new EnumMap<BodyFigure, Verdict>(BodyFigure.class);
    var compared = new ArrayList<Compared>();
    for (var figure : FIGURES) {
      if (values.containsKey(figure)) {
        var of = values.get(figure);
        var further = FurtherValue.of(of, resolution(body, figure));
        double half = further.half(OUTSIDE / values.size());
        var range = new Range(printed(further.mean() - half), printed(further.mean() + half));
        var share = body.share(figure).orElseThrow();
        double distance = Math.abs(percent(share) - further.mean());
        var verdict =
            switch (range.compare(share.percent())) {
              case -1 -> Verdict.BELOW;
              case 1 -> Verdict.ABOVE;
              default -> within(figure, further.above(ERROR - distance), verdicts);
            };
        verdicts.put(figure, verdict);
        compared.add(new Compared(figure, share, of.size(), range, verdict));
      }
    }
    return new Comparison(like.size(), compared);
  }

  /**
   * The verdict on a figure within its range.
   *
   * @param hidden the probability that an error would hide at its distance from the mean
   * @param others the verdicts on the figures before it
   */
  private static Verdict within(BodyFigure figure, double hidden, Map<BodyFigure, Verdict> others) {
    boolean usual =
        switch (figure) {
          case DRESSING -> others.get(BodyFigure.CHILL) == Verdict.USUAL;
          case TAKE_HOME, TAKE_HOME_OF_HOT -> others.get(BodyFigure.BENCH) == Verdict.USUAL;
          default -> hidden <= HIDDEN;
        };
    return usual ? Verdict.USUAL : Verdict.WITHIN;
  }

  private static double percent(Share share) {
    return 100.0 * share.part().hundredThousandths() / share.whole().hundredThousandths();
  }

  private static BigDecimal printed(double percent) {
    return Exact.round(Exact.ofStatistic(percent), 1);
  }

  /** The standard uncertainty of a figure from the steps of the scales, in per cent. */
  private double resolution(MonthBody body, BodyFigure figure) {
    var balance = body.balance();
    var behind =
        figure.isOnRail()
            ? Groups.both(balance.rail().hot().weighings(), balance.rail().cold().weighings())
            : Groups.both(balance.boningWeighings(), balance.outOfBoning());
    double squared = new Uncertainty(settings.unit()).resolutionSquared(behind).doubleValue();
    double whole = body.share(figure).orElseThrow().whole().fraction().doubleValue();
    return Math.sqrt(squared) / 2 / whole * 100;
  }
}
