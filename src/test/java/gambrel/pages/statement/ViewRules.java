package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.usual.LikeBodies;
import gambrel.pages.views.CutsView;
import gambrel.pages.views.FlowView;
import gambrel.pages.views.PrintedRows;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Weight;
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
    checkBoxes(planned, view);
    checkSecrets(night, planned, view.toString());
  }

  private static void checkBoxes(CutsView boxes, StatementView view) {
    if (boxes.total().isEmpty()) {
      return;
    }
    assertEquals(
        number(boxes.total().get().weight()),
        sum(PrintedRows.of(boxes).stream().map(CutsView.Row::weight).toList()),
        view::toString);
  }

  private static void checkFlow(FlowView flow, BigDecimal allowed) {
    var rows = flow.rows();
    int last = 0;
    for (int i = 0; i < rows.size(); i++) {
      last = rows.get(i).kind() == FlowView.Kind.STAGE ? i : last;
    }
    var parts = rows.subList(last + 1, rows.size());
    var difference =
        number(rows.get(last).weight())
            .subtract(sum(parts.stream().map(FlowView.Row::weight).toList()));
    assertTrue(difference.abs().compareTo(allowed) <= 0, flow::toString);
    assertEquals(
        number(rows.get(last).share()),
        sum(parts.stream().map(FlowView.Row::share).toList()),
        flow::toString);
    assertEquals(number("100.0"), number(rows.get(0).share()), flow::toString);
  }

  /** The boxes add up to the customer's packs as a scale shows them. */
  private static void checkBoxes(Planned planned, StatementView view) {
    var own = planned.account().entitlements().get(planned.customer());
    var rows =
        view.boxes().stream()
            .flatMap(boxes -> PrintedRows.of(boxes).stream())
            .map(CutsView.Row::weight)
            .toList();
    var expected = view.boxes().isPresent() ? own.boxes() : Weight.ZERO;
    assertEquals(expected.output().stripTrailingZeros(), sum(rows), () -> "" + view.boxes());
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
    var comparison = LikeBodies.of(night).compare(planned.body());
    return StatementComposer.compose(night, planned, comparison, Optional.of(List.of()), wording);
  }
}
