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
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds the text of an explanation: a figure, how it is made, and the weighings behind it. */
final class Lines {
  private final List<String> lines = new ArrayList<>();
  private final Map<Place, List<AppliedCorrection>> corrections = new HashMap<>();

  /** With the corrections that were laid over rows. */
  Lines(List<AppliedCorrection> applied) {
    for (var one : applied) {
      corrections.computeIfAbsent(one.row().place(), p -> new ArrayList<>()).add(one);
    }
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

  void weighings(List<Weighing> weighings) {
    for (var w : weighings) {
      String ticket = w.ticket().isEmpty() ? "no ticket" : "ticket " + w.ticket();
      String more =
          (w.body().isEmpty() ? "" : " body " + w.body())
              + (w.batch().isEmpty() ? "" : " batch " + w.batch())
              + (w.customer().isEmpty() ? "" : " customer " + w.customer());
      lines.add(
          String.format(
              Locale.ROOT,
              "    %12s  %-6s %-24s %s  %s %s %s%s",
              w.net(),
              w.step().id(),
              w.item(),
              w.place(),
              w.scale().id(),
              ticket,
              w.time().toLocalDateTime(),
              more));
      corrections.getOrDefault(w.place(), List.of()).forEach(this::correction);
    }
  }

  private void correction(AppliedCorrection applied) {
    lines.add("                  " + words(applied));
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
    return "corrected: "
        + c.field()
        + " was "
        + was(applied)
        + ", now "
        + (c.value().isEmpty() ? "blank" : c.value())
        + ", by "
        + c.by()
        + " on "
        + c.on().toLocalDateTime()
        + ": "
        + c.reason()
        + "  "
        + c.place();
  }
}
