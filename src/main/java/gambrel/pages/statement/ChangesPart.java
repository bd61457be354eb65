package gambrel.pages.statement;

import gambrel.pages.views.TextTable;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.FigureNames;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The revision that a statement replaces, with a table of the changed figures. */
final class ChangesPart extends StatementPart {
  private static final String OPEN = "open";

  private ChangesPart(StatementContext subject) {
    super(subject);
  }

  /** The table; empty for a first statement. */
  static Optional<TextTable> of(
      StatementContext subject, Planned planned, Optional<List<Figures.Change>> changes) {
    return planned
        .replaces()
        .map(
            replaced ->
                new ChangesPart(subject)
                    .table(
                        subject
                            .wording()
                            .say(
                                "changes.sentence",
                                subject.formats().count(planned.revision()),
                                subject.formats().count(replaced.revision()),
                                subject.formats().date(replaced.issued().toLocalDate())),
                        changes));
  }

  private TextTable table(String sentence, Optional<List<Figures.Change>> changes) {
    var rows = changes.map(this::rows).orElse(List.of());
    String remark = "";
    if (changes.isEmpty() || changes.get().isEmpty()) {
      remark = ' ' + say(changes.isEmpty() ? "changes.unknown" : "changes.none");
    }
    var heads = List.of(say("changes.item"), say("changes.was"), say("changes.now"));
    return new TextTable(sentence + remark, heads, rows, "");
  }

  /** One row for each name: packs and weight of a cut share a row. */
  private List<List<String>> rows(List<Figures.Change> changes) {
    Map<String, List<Figures.Change>> byLabel = new LinkedHashMap<>();
    for (var change : changes) {
      if (!isTwice(change)) {
        byLabel.computeIfAbsent(label(change.name()), l -> new ArrayList<>()).add(change);
      }
    }
    var rows = new ArrayList<List<String>>();
    byLabel.forEach(
        (label, list) ->
            rows.add(
                List.of(
                    label, values(list, Figures.Change::was), values(list, Figures.Change::now))));
    return rows;
  }

  /** Whether a change repeats another: a sole owner's take-home is that of the body. */
  private boolean isTwice(Figures.Change change) {
    return subject.own().isSoleOwner()
        && change.name().equals(FigureNames.BODY + FigureNames.TAKE_HOME);
  }

  /** The values of one row, packs before weight. */
  private String values(List<Figures.Change> changes, Function<Figures.Change, String> which) {
    var texts = new ArrayList<String>();
    for (var change : changes) {
      String value = which.apply(change);
      if (!value.isEmpty()) {
        boolean packs = change.name().startsWith(FigureNames.PACKS);
        texts.add(packs ? 0 : texts.size(), text(change, value));
      }
    }
    return texts.isEmpty() ? say("changes.nothing.was") : String.join(", ", texts);
  }

  private String label(String name) {
    String id = name.substring(name.indexOf(':') + 1);
    if (name.startsWith(FigureNames.ITEM) || name.startsWith(FigureNames.PACKS)) {
      return subject.itemName(id);
    }
    if (name.startsWith(FigureNames.BATCH)) {
      return subject.batchName(id);
    }
    if (name.startsWith(FigureNames.BATCH_BODIES)) {
      return say("changes.bodies", subject.batchName(id));
    }
    String key = "figure." + (name.startsWith(FigureNames.BODY) ? "body." : "") + id;
    return wording.words().has(key) ? say(key) : id;
  }

  private String text(Figures.Change change, String value) {
    String name = change.name();
    if (name.startsWith(FigureNames.PACKS)) {
      long packs = Long.parseLong(value);
      return wording.count("changes.packs", packs, formats.count(packs));
    }
    if (name.endsWith("_pct")) {
      return formats.percent(new BigDecimal(value));
    }
    if (isPlain(name)) {
      return value;
    }
    return value.equals(OPEN)
        ? say("changes.open")
        : formats.weight(Weight.of(new BigDecimal(value)), decimals(change));
  }

  private static boolean isPlain(String name) {
    return name.startsWith(FigureNames.BATCH_BODIES)
        || name.equals("share")
        || name.equals(FigureNames.UNIT)
        || name.equals(FigureNames.CURRENCY)
        || name.equals(FigureNames.BODY + "head")
        || name.equals(FigureNames.BODY + "days_hung");
  }

  /**
   * The decimals of a weight: those of the page for what goes home, else as many as the weight
   * needs.
   */
  private int decimals(Figures.Change change) {
    var weights = new ArrayList<Weight>();
    for (var value : List.of(change.was(), change.now())) {
      if (!value.isEmpty() && !value.equals(OPEN)) {
        weights.add(Weight.of(new BigDecimal(value)));
      }
    }
    int least = change.name().startsWith(FigureNames.BODY) ? 0 : subject.homeDecimals();
    return WeightDecimals.fitting(least, weights);
  }
}
