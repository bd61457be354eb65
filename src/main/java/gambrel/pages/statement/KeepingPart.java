package gambrel.pages.statement;

import gambrel.pages.views.TextTable;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.Foods;
import gambrel.trade.cuts.Foods.Food;
import gambrel.trade.cuts.Foods.Span;
import gambrel.trade.cuts.Region;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How to keep and cook the food in the boxes, from published sources, and the cautions. */
final class KeepingPart extends StatementPart {
  private final Foods foods = night.shop().foods();

  KeepingPart(StatementPart statement) {
    super(statement);
  }

  /** The table; empty if the sources have no advice on the customer's items. */
  Optional<TextTable> table() {
    var rows = kinds().stream().map(this::row).toList();
    var heads =
        List.of(
            "",
            say("keeping.fridge", temperature(foods.fridge())),
            say("keeping.freezer", temperature(foods.freezer())),
            say("keeping.cook"));
    return rows.isEmpty() || is(Outcome.CONDEMNED)
        ? Optional.empty()
        : Optional.of(new TextTable("", heads, rows, ""));
  }

  /** The kinds of food in the customer's boxes, in the order of food.csv. */
  private List<Food> kinds() {
    var batched = batchMeat().stream().flatMap(b -> b.packings().stream()).map(Weighing::item);
    var got = new HashSet<Food>();
    Stream.concat(batched, own.lines().stream().map(Entitlement.Line::item))
        .forEach(item -> foods.of(tree, item).ifPresent(got::add));
    return foods.all().stream().filter(got::contains).toList();
  }

  private List<String> row(Food food) {
    return List.of(
        say("keeping." + food.id()),
        span(food.fridgeDays(), "keeping.days", "keeping.days"),
        span(food.freezerMonths(), "keeping.month", "keeping.months"),
        food.cooked().map(heat -> cooked(food, temperature(heat))).orElse(""));
  }

  private String cooked(Food food, String heat) {
    return food.minutes()
        .map(some -> say("keeping.cooked." + settings.region().id(), heat, formats.count(some)))
        .orElse(heat);
  }

  private String span(Optional<Span> span, String one, String many) {
    return span.map(s -> say(s.most() == 1 ? one : many, text(s)))
        .orElseGet(() -> say("keeping.ask"));
  }

  private String text(Span span) {
    String most = formats.count(span.most());
    return span.least() == span.most() ? most : formats.count(span.least()) + "–" + most;
  }

  private String temperature(BigDecimal degrees) {
    boolean american = settings.region() == Region.US;
    return say(american ? "keeping.fahrenheit" : "keeping.celsius", formats.number(degrees));
  }

  /** The rule on the backbone of cattle; names the cuts in the boxes that have it. */
  private Optional<String> backbone() {
    if (!body.mayHoldRiskMaterial()) {
      return Optional.empty();
    }
    var cuts =
        own.lines().stream()
            .map(Entitlement.Line::item)
            .filter(item -> tree.facts(item).hasVertebra())
            .map(this::itemName)
            .collect(Collectors.joining(" · "));
    return Optional.of(cuts.isEmpty() ? cattle() : say("caution.vertebra", cuts) + ' ' + cattle());
  }

  /** The age of the body and the rule of the region on cattle of this age. */
  private String cattle() {
    String known =
        body.ageMonths()
            .map(age -> say("caution.cattle.age", formats.count(age)))
            .orElseGet(() -> say("caution.cattle.unknown"));
    return known + ' ' + say("caution.cattle." + rules());
  }

  /** Whose rules are printed: those of the region, if the shop's money is of it. */
  private String rules() {
    return settings.region().rules(settings.currency()) ? settings.region().id() : "other";
  }

  /** The rule on the backbone, where the advice is from, and cautions; a sentence or two each. */
  List<String> cautions() {
    var cautions = new ArrayList<String>();
    if (!is(Outcome.CONDEMNED)) {
      backbone().ifPresent(cautions::add);
      if (!kinds().isEmpty()) {
        cautions.add(say("keeping.source." + settings.region().id()));
      }
      cautions.add(say("caution.raw"));
      cautions.add(say("caution.sale." + rules()));
    }
    cautions.add(say("caution.label." + rules()));
    return cautions;
  }
}
