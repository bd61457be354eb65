package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.usual.LikeBodies;
import gambrel.pages.views.CutsView;
import gambrel.pages.views.FlowView;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Planned;
import gambrel.trade.shop.Customer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What must hold of every statement, whatever the shop. Numbers are read as a reader reads them.
 */
final class ViewRules {
  private static final Pattern NUMBER = Pattern.compile("-?[\\d,]*\\.?\\d+");

  private static final BigDecimal EXACT = BigDecimal.ZERO;

  /** Converted weights have more decimals than a page or a data file shows. */
  private static final BigDecimal ROUNDED = new BigDecimal("0.002");

  private ViewRules() {}

  static void check(Night night, Planned planned, StatementView view) {
    view.boxes().ifPresent(boxes -> checkBoxes(boxes, view));
    boolean oneUnit =
        planned.account().balance().weighings().all().stream()
            .allMatch(weighing -> weighing.unit() == night.shop().settings().unit());
    view.flow().ifPresent(flow -> checkFlow(flow, oneUnit ? EXACT : ROUNDED));
    checkTakeHome(planned, view);
    checkSecrets(night, planned, view.toString());
  }

  private static void checkBoxes(CutsView boxes, StatementView view) {
    if (boxes.total().isEmpty()) {
      return;
    }
    var rows = boxes.groups().stream().flatMap(group -> group.rows().stream()).toList();
    assertEquals(
        number("100.0"),
        sum(rows.stream().map(CutsView.Row::share).toList()),
        () -> "" + view.boxes());
    assertEquals(
        number(boxes.total().get().weight()),
        sum(rows.stream().map(CutsView.Row::weight).toList()),
        view::toString);
  }

  private static void checkFlow(FlowView flow, BigDecimal allowed) {
    int whole = 0;
    while (whole < flow.rows().size() && !flow.rows().get(whole).share().equals("100.0%")) {
      whole++;
    }
    if (whole == flow.rows().size()) {
      return;
    }
    var parts = flow.rows().subList(whole + 1, flow.rows().size());
    var difference =
        number(flow.rows().get(whole).weight())
            .subtract(sum(parts.stream().map(FlowView.Row::weight).toList()));
    assertTrue(difference.abs().compareTo(allowed) <= 0, flow::toString);
    boolean negative = parts.stream().anyMatch(row -> row.weight().startsWith("\u2212"));
    if (!negative) {
      assertEquals(
          number("100.0"), sum(parts.stream().map(FlowView.Row::share).toList()), flow::toString);
    }
  }

  /** The boxes add up to the customer's take-home, as the register has it. */
  private static void checkTakeHome(Planned planned, StatementView view) {
    var own = planned.account().entitlements().get(planned.customer());
    var rows =
        view.boxes().stream()
            .flatMap(boxes -> boxes.groups().stream())
            .flatMap(group -> group.rows().stream())
            .map(CutsView.Row::weight)
            .toList();
    assertEquals(own.takeHome().output().stripTrailingZeros(), sum(rows), () -> "" + view.boxes());
  }

  private static void checkSecrets(Night night, Planned planned, String text) {
    for (var other : night.shop().customers().values()) {
      if (!other.id().equals(planned.customer())) {
        assertFalse(text.contains(other.name()), () -> other.name() + " in " + text);
        assertFalse(
            Pattern.compile("\\b" + Pattern.quote(other.id()) + "\\b").matcher(text).find(),
            () -> other.id() + " in " + text);
      }
    }
    assertTrue(!planned.customer().equals(Customer.SHOP));
  }

  private static BigDecimal sum(List<String> texts) {
    return texts.stream()
        .map(ViewRules::number)
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .stripTrailingZeros();
  }

  private static BigDecimal number(String text) {
    var found = NUMBER.matcher(FarmShop.plain(text));
    assertTrue(found.find(), text);
    return new BigDecimal(found.group().replace(",", "")).stripTrailingZeros();
  }

  /** The statement or draft of what is planned. */
  static StatementView view(Night night, Planned planned, Wording wording) {
    boolean draft = planned.account().decision().state() == State.HELD;
    var comparison = LikeBodies.of(night).compare(planned.body());
    return StatementComposer.compose(
        night, planned, comparison, Optional.of(List.of()), draft, wording);
  }
}
