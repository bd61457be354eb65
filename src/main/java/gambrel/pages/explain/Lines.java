package gambrel.pages.explain;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.AppliedCorrection;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds the text of an explanation: figures, their formulas, and the weighings in them. */
final class Lines {
  private final List<String> lines = new ArrayList<>();
  private final Map<Place, List<AppliedCorrection>> corrections;

  /** No lines yet; {@code applied} are the corrections of all rows. */
  Lines(List<AppliedCorrection> applied) {
    corrections = applied.stream().collect(Collectors.groupingBy(one -> one.row().place()));
  }

  /** The lines so far. */
  List<String> all() {
    return List.copyOf(lines);
  }

  void heading(String text) {
    if (!lines.isEmpty()) {
      lines.add("");
    }
    lines.add(text);
  }

  void figure(String name, Optional<BigDecimal> value, String formula) {
    String shown = value.map(BigDecimal::toPlainString).orElse("not known");
    lines.add(String.format(Locale.ROOT, "%-26s %12s  %s", name, shown, formula).stripTrailing());
  }

  void weight(String name, Optional<Weight> value, String formula) {
    figure(name, value.map(Weight::output), formula);
  }

  /** A weight and the weighings that it is the sum of. */
  void weight(String name, Optional<Weight> value, String formula, List<Weighing> weighings) {
    weight(name, value, formula);
    weighings(weighings.stream());
  }

  void share(String name, Optional<Share> value, String formula) {
    figure(name, value.map(share -> Exact.round(share.percent(), 3)), formula);
  }

  /** The root of a square, such as an uncertainty. */
  void root(String name, Optional<BigFraction> square, String formula) {
    figure(name, square.map(value -> Exact.sqrt(value, Weight.OUTPUT_DECIMALS)), formula);
  }

  void text(String text) {
    lines.add("  " + text);
  }

  /** Weighings, each with the corrections of its row. */
  void weighings(Stream<Weighing> weighings) {
    weighings.forEach(
        weighing -> {
          lines.add(words(weighing));
          corrections
              .getOrDefault(weighing.place(), List.of())
              .forEach(applied -> lines.add(" ".repeat(18) + words(applied)));
        });
  }

  private static String words(Weighing w) {
    return String.format(
        Locale.ROOT,
        "    %12s  %-6s %-24s %s  %s %s %s%s%s%s",
        w.net(),
        w.step().id(),
        w.item(),
        w.place(),
        w.scale().id(),
        w.ticket().isEmpty() ? "no ticket" : "ticket " + w.ticket(),
        w.time().toLocalDateTime(),
        named(" body ", w.body()),
        named(" batch ", w.batch()),
        named(" customer ", w.customer()));
  }

  private static String named(String what, String id) {
    return id.isEmpty() ? "" : what + id;
  }

  /** The cell before the correction, and why its layout could not read it. */
  private static String was(AppliedCorrection applied) {
    return Field.of(applied.correction().field())
        .map(applied.row().unreadable()::get)
        .filter(why -> applied.was().endsWith(ExportRow.UNREADABLE))
        .map(NoticeWords.ENGLISH::of)
        .orElse(applied.was().isEmpty() ? "blank" : applied.was());
  }

  /** What a correction changed, who decided it, and where it stands. */
  static String words(AppliedCorrection applied) {
    var c = applied.correction();
    return "corrected: %s was %s, now %s, by %s on %s: %s  %s"
        .formatted(
            c.field(),
            was(applied),
            c.value().isEmpty() ? "blank" : c.value(),
            c.by(),
            c.on().toLocalDateTime(),
            c.reason(),
            c.place());
  }
}
