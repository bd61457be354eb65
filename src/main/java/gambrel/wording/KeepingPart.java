package gambrel.wording;

import gambrel.cuts.Food;
import gambrel.cuts.Food.Span;
import gambrel.cuts.Food.Temperature;
import gambrel.cuts.Region;
import gambrel.shop.Outcome;
import gambrel.shop.Step;
import gambrel.statement.KeepingView;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How to keep and cook what is in the boxes, as far as published sources say it. */
final class KeepingPart {
  private final Subject subject;
  private final Wording wording;

  private KeepingPart(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
  }

  /** Empty where the sources say nothing of what the household got. */
  static Optional<KeepingView> of(Subject subject) {
    return subject.is(Outcome.CUT) ? new KeepingPart(subject).view() : Optional.empty();
  }

  private Optional<KeepingView> view() {
    var foods = subject.night().shop().foods();
    var rows = kinds().stream().map(this::row).toList();
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new KeepingView(
                rows,
                wording.say("keeping.fridge", temperature(foods.fridge())),
                wording.say("keeping.freezer", temperature(foods.freezer())),
                wording.say("keeping.source")));
  }

  /** The kinds of food that the household got, in the order of the table. */
  private List<Food> kinds() {
    var foods = subject.night().shop().foods();
    var batched =
        subject.batchMeat().stream()
            .flatMap(batch -> batch.batch().weighings().stream())
            .filter(w -> w.step() == Step.PACK)
            .map(w -> w.item());
    var got = new HashSet<Food>();
    Stream.concat(batched, subject.own().lines().stream().map(line -> line.item()))
        .forEach(item -> foods.of(subject.tree(), item).ifPresent(got::add));
    return foods.all().stream().filter(got::contains).toList();
  }

  private KeepingView.Row row(Food food) {
    return new KeepingView.Row(
        wording.say("keeping." + food.id()),
        span(food.fridgeDays(), "keeping.days", "keeping.days"),
        span(food.freezerMonths(), "keeping.month", "keeping.months"),
        food.cooked().map(heat -> cooked(food, temperature(heat))).orElse(""));
  }

  private String cooked(Food food, String heat) {
    return food.restMinutes()
        .map(rest -> wording.say("keeping.rest", heat, subject.formats().count(rest)))
        .orElse(heat);
  }

  private String span(Optional<Span> span, String one, String many) {
    return span.map(s -> wording.say(s.most() == 1 ? one : many, text(s)))
        .orElseGet(() -> wording.say("keeping.ask"));
  }

  private String text(Span span) {
    String most = subject.formats().count(span.most());
    return span.least() == span.most() ? most : subject.formats().count(span.least()) + "–" + most;
  }

  private String temperature(Temperature temperature) {
    boolean american = subject.settings().region() == Region.US;
    var degrees = american ? temperature.fahrenheit() : temperature.celsius();
    return wording.say(
        american ? "keeping.fahrenheit" : "keeping.celsius", subject.formats().number(degrees));
  }
}
