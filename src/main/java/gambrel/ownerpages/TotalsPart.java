package gambrel.ownerpages;

import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.measure.Weight;
import gambrel.month.MonthBodies;
import gambrel.month.Ownership;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.MoneyChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The weights of the month in sum, a column for each whose the bodies are. */
final class TotalsPart {
  private final MonthBodies month;
  private final Wording wording;
  private final Places places;
  private final List<BodyAccount> home;
  private final List<Ownership> owners;

  TotalsPart(MonthBodies month, Wording wording, Places places) {
    this.month = month;
    this.wording = wording;
    this.places = places;
    this.home = Stream.concat(month.cut().stream(), month.whole().stream()).toList();
    this.owners = Ownership.in(Stream.concat(month.killed().stream(), home.stream()).toList());
  }

  /** Numbers of bodies and weights; what is nothing is left out. */
  MoneyChapter.Weights weights() {
    var rows = new ArrayList<MoneyChapter.Sums>();
    count(rows, "summary.total.killed", month.killed());
    add(rows, "summary.total.hot", month.killed(), BodyBalance::hot);
    count(rows, "summary.total.cut", month.cut());
    add(rows, "summary.total.boning", home, BodyBalance::boning);
    add(rows, "summary.total.take_home", home, out(Outputs::takeHome));
    add(rows, "summary.total.offal", home, out(Outputs::offal));
    add(rows, "summary.total.bone", home, perhaps(Outputs::bone));
    add(rows, "summary.total.fat", home, perhaps(Outputs::fat));
    add(rows, "summary.total.waste", home, perhaps(Outputs::waste));
    return new MoneyChapter.Weights(
        owners.stream().map(whose -> wording.say("summary." + whose.id())).toList(), rows);
  }

  private static Function<BodyBalance, Optional<Weight>> out(Function<Outputs, Weight> figure) {
    return balance -> balance.outputs().map(figure);
  }

  private static Function<BodyBalance, Optional<Weight>> perhaps(
      Function<Outputs, Optional<Weight>> figure) {
    return balance -> balance.outputs().flatMap(figure);
  }

  private void count(
      List<MoneyChapter.Sums> rows, String key, Collection<BodyAccount> accounts) {
    row(rows, key, accounts, of -> of.isEmpty() ? "" : wording.formats().count(of.size()));
  }

  private void add(
      List<MoneyChapter.Sums> rows,
      String key,
      Collection<BodyAccount> accounts,
      Function<BodyBalance, Optional<Weight>> figure) {
    row(rows, key, accounts, of -> sum(of, figure));
  }

  private String sum(
      List<BodyAccount> accounts, Function<BodyBalance, Optional<Weight>> figure) {
    var sum =
        Weight.sum(accounts.stream().flatMap(a -> figure.apply(a.balance()).stream()).toList());
    return sum.isZero() ? "" : places.sum(sum, places.prose());
  }

  private void row(
      List<MoneyChapter.Sums> rows,
      String key,
      Collection<BodyAccount> accounts,
      Function<List<BodyAccount>, String> text) {
    var texts = owners.stream().map(whose -> text.apply(whose.of(accounts))).toList();
    if (texts.stream().anyMatch(t -> !t.isEmpty())) {
      rows.add(new MoneyChapter.Sums(wording.say(key), texts));
    }
  }
}
