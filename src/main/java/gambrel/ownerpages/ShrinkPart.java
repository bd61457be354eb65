package gambrel.ownerpages;

import gambrel.measure.Weight;
import gambrel.month.Band;
import gambrel.month.Loss;
import gambrel.month.LossRow;
import gambrel.month.MonthRecords;
import gambrel.month.Ownership;
import gambrel.month.Ratio;
import gambrel.month.Split;
import gambrel.month.Spread;
import gambrel.statement.ShrinkChapter;
import gambrel.statement.SummaryView.Counted;
import gambrel.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Losses of the month against those of the twelve months before. */
final class ShrinkPart {
  /** Fewer bodies than this are no group of their own on paper. */
  private static final int ENOUGH = 5;

  private final Wording wording;
  private final Places places;
  private final List<LossRow> rows;

  ShrinkPart(MonthRecords records, Wording wording, Places places) {
    this.wording = wording;
    this.places = places;
    this.rows = LossRow.of(records);
  }

  List<ShrinkChapter.Group> groups() {
    return Stream.of(Ownership.values())
        .flatMap(whose -> Stream.of(Loss.values()).flatMap(loss -> group(whose, loss).stream()))
        .toList();
  }

  private Optional<ShrinkChapter.Group> group(Ownership whose, Loss loss) {
    var of = rows.stream().filter(r -> r.whose() == whose && r.loss() == loss).toList();
    var shown = of.stream().filter(row -> isShown(row, of)).map(this::row).toList();
    String title =
        wording.say(
            "shrink.group",
            wording.say("summary." + whose.id()),
            wording.say("shrink.loss." + loss.id()));
    return shown.isEmpty()
        ? Optional.empty()
        : Optional.of(new ShrinkChapter.Group(title, shown));
  }

  /** A group of its own needs bodies now and before, and another group beside it. */
  private static boolean isShown(LossRow row, List<LossRow> all) {
    if (row.band().split() == Split.ALL) {
      return true;
    }
    long beside =
        all.stream()
            .filter(r -> r.species() == row.species() && r.band().split() == row.band().split())
            .filter(ShrinkPart::isEnough)
            .count();
    return isEnough(row) && beside > 1;
  }

  private static boolean isEnough(LossRow row) {
    return row.month().bodies() >= ENOUGH && row.before().bodies() >= ENOUGH;
  }

  private ShrinkChapter.Row row(LossRow row) {
    boolean rail = row.loss() == Loss.CHILL || row.loss() == Loss.AGEING;
    var part = Optional.of(row.month().part());
    return new ShrinkChapter.Row(
        bodies(row),
        rail ? places.hung(part) : places.cut(part),
        row.money().map(wording.formats()::bareMoney).orElse(""),
        counted(row.month()),
        counted(row.before()),
        row.spread().filter(s -> s.number() >= ENOUGH).map(this::middle).orElse(""));
  }

  private String bodies(LossRow row) {
    String species = wording.say("species." + row.species().id());
    return row.band().split() == Split.ALL
        ? species
        : wording.say("shrink.band", species, band(row.band()));
  }

  private String band(Band band) {
    if (band.split() == Split.CATEGORY) {
      return wording.category(band.name());
    }
    var ends = new ArrayList<String>();
    band.from().map(from -> number(band.split(), from)).ifPresent(ends::add);
    band.to().map(to -> number(band.split(), last(band.split(), to))).ifPresent(ends::add);
    String ending = band.from().isEmpty() ? "below" : band.to().isEmpty() ? "above" : "between";
    return wording.say(
        "shrink.band." + band.split().id() + "." + ending, ends.toArray(String[]::new));
  }

  /** Days are whole: a band that ends before day 15 is said to end with day 14. */
  private static BigDecimal last(Split split, BigDecimal to) {
    return split == Split.DAYS ? to.subtract(BigDecimal.ONE) : to;
  }

  private String number(Split split, BigDecimal value) {
    return split == Split.WEIGHT
        ? wording.formats().weight(Weight.of(value), 0)
        : wording.formats().number(value);
  }

  private String middle(Spread spread) {
    return wording.say(
        "shrink.between",
        Percents.bare(spread.lower(), wording),
        Percents.bare(spread.upper(), wording));
  }

  private Counted counted(Ratio ratio) {
    return ratio
        .percent()
        .map(p -> new Counted(Percents.bare(p, wording), wording.formats().count(ratio.bodies())))
        .orElseGet(() -> new Counted("", ""));
  }
}
