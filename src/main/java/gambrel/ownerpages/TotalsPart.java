package gambrel.ownerpages;

import gambrel.month.MonthBodies;
import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.Fact;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The weights of the month in sum. */
final class TotalsPart {
  private final MonthBodies month;
  private final Wording wording;
  private final Places places;

  TotalsPart(MonthBodies month, Wording wording, Places places) {
    this.month = month;
    this.wording = wording;
    this.places = places;
  }

  /** Numbers of bodies and weights; what is nothing is left out. */
  List<Fact> weights() {
    var facts = new ArrayList<Fact>();
    count(facts, "summary.total.killed", month.killed().size());
    add(facts, "summary.total.hot", month.killed(), BodyBalance::hot);
    count(facts, "summary.total.cut", month.cut().size());
    var home = new ArrayList<>(month.cut());
    home.addAll(month.whole());
    add(facts, "summary.total.boning", home, BodyBalance::boning);
    add(facts, "summary.total.take_home", home, out(Outputs::takeHome));
    add(facts, "summary.total.offal", home, out(Outputs::offal));
    add(facts, "summary.total.bone", home, perhaps(Outputs::bone));
    add(facts, "summary.total.fat", home, perhaps(Outputs::fat));
    add(facts, "summary.total.waste", home, perhaps(Outputs::waste));
    return facts;
  }

  private static Function<BodyBalance, Optional<Weight>> out(Function<Outputs, Weight> figure) {
    return balance -> balance.outputs().map(figure);
  }

  private static Function<BodyBalance, Optional<Weight>> perhaps(
      Function<Outputs, Optional<Weight>> figure) {
    return balance -> balance.outputs().flatMap(figure);
  }

  private void count(List<Fact> facts, String key, int number) {
    if (number > 0) {
      facts.add(new Fact(wording.say(key), wording.formats().count(number)));
    }
  }

  private void add(
      List<Fact> facts,
      String key,
      List<BodyAccount> accounts,
      Function<BodyBalance, Optional<Weight>> figure) {
    var sum =
        Weight.sum(accounts.stream().flatMap(a -> figure.apply(a.balance()).stream()).toList());
    if (!sum.isZero()) {
      facts.add(new Fact(wording.say(key), places.sum(sum, places.prose())));
    }
  }
}
