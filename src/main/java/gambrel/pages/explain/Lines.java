package gambrel.pages.explain;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.CorrectedRows.AppliedCorrection;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
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

  /** A heading and a line for each entry; nothing if there is no entry. */
  void section(String heading, Stream<String> entries) {
    var all = entries.toList();
    if (!all.isEmpty()) {
      heading(heading);
      all.forEach(this::text);
    }
  }

  /** A figure and its formula; an empty figure is not known. */
  void figure(String name, Object value, String formula) {
    String line = String.format(Locale.ROOT, "%-26s %12s  %s", name, shown(value), formula);
    lines.add(line.stripTrailing());
  }

  /** Weights as data files have them; shares in per cent; other numbers with three decimals. */
  private static String shown(Object value) {
    if (value instanceof Optional<?> perhaps) {
      return perhaps.map(Lines::shown).orElse("not known");
    }
    if (value instanceof Share share) {
      return shown(share.percent());
    }
    if (value instanceof BigFraction number) {
      return Exact.round(number, 3).toPlainString();
    }
    return value instanceof Weight weight ? weight.output().toPlainString() : value.toString();
  }

  /** A figure and the weighings that make it, each with the corrections of its row. */
  void figure(String name, Object value, String formula, List<Weighing> weighings) {
    figure(name, value, formula);
    for (var weighing : weighings) {
      lines.add(words(weighing));
      corrections
          .getOrDefault(weighing.place(), List.of())
          .forEach(applied -> lines.add(" ".repeat(18) + words(applied)));
    }
  }

  /** The root of a square, such as an uncertainty. */
  void root(String name, Optional<BigFraction> square, String formula) {
    figure(name, square.map(value -> Exact.sqrt(value, Weight.OUTPUT_DECIMALS)), formula);
  }

  void text(String text) {
    lines.add("  " + text);
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
