package gambrel.ownerpages;

import gambrel.balance.BodyBalance;
import gambrel.cuts.Species;
import gambrel.measure.Weight;
import gambrel.month.BodyFigures;
import gambrel.month.Loss;
import gambrel.month.MonthBodies;
import gambrel.month.MonthRecords;
import gambrel.month.Ratio;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.YearChapter;
import gambrel.wording.Wording;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The year month by month, which the summary of December carries, and of each month asked for. */
final class YearPart {
  private final MonthRecords records;
  private final Wording wording;
  private final Places places;

  YearPart(MonthRecords records, Wording wording, Places places) {
    this.records = records;
    this.wording = wording;
    this.places = places;
  }

  YearChapter chapter() {
    var asked = records.night().shop().settings().yearReviews();
    if (!asked.contains(records.month().getMonth())) {
      return new YearChapter("", List.of());
    }
    var months = new ArrayList<>(records.baseline().months());
    months.remove(0);
    months.add(records.bodies());
    return new YearChapter(
        title(),
        Stream.of(Species.values()).flatMap(s -> species(s, months).stream()).toList());
  }

  private String title() {
    return records.month().getMonth() == Month.DECEMBER
        ? wording.say("year.title", Integer.toString(records.month().getYear()))
        : wording.say("year.to", wording.formats().month(records.month()));
  }

  private List<YearChapter.Group> species(Species species, List<MonthBodies> months) {
    var rows = new ArrayList<YearChapter.Row>();
    var killed = new ArrayList<BodyAccount>();
    var cut = new ArrayList<BodyAccount>();
    for (var month : months) {
      var k = like(month.killed(), species);
      var c = like(month.cut(), species);
      killed.addAll(k);
      cut.addAll(c);
      if (!k.isEmpty() || !c.isEmpty()) {
        rows.add(row(wording.formats().month(month.month()), k, c));
      }
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    rows.add(row(wording.say("total"), killed, cut));
    return List.of(new YearChapter.Group(wording.say("species." + species.id()), rows));
  }

  private static List<BodyAccount> like(List<BodyAccount> bodies, Species species) {
    return bodies.stream().filter(a -> a.body().species() == species).toList();
  }

  private YearChapter.Row row(String month, List<BodyAccount> killed, List<BodyAccount> cut) {
    var hot = killed.stream().map(BodyAccount::balance).flatMap(b -> hot(b)).toList();
    return new YearChapter.Row(
        month,
        wording.formats().count(killed.size()),
        mean(hot),
        percent(Loss.CHILL.of(killed)),
        percent(Loss.AGEING.of(killed)),
        wording.formats().count(cut.size()),
        percent(Loss.BENCH.of(cut)),
        percent(BodyFigures.TAKE_HOME.of(cut)));
  }

  /** A body's, since a sum would add customers' and the shop's own. */
  private String mean(List<Weight> hot) {
    return hot.isEmpty()
        ? ""
        : wording.formats()
            .bareWeight(
                Weight.of(Weight.sum(hot).fraction().divide(hot.size())), places.hung());
  }

  private static Stream<Weight> hot(BodyBalance balance) {
    return balance.hot().stream();
  }

  private String percent(Ratio ratio) {
    return Percents.bare(ratio.percent(), wording);
  }
}
