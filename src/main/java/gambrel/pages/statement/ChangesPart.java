package gambrel.pages.statement;

import gambrel.pages.views.TextTable;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Figures.Change;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The revision that a statement replaces, with a table of the changed figures. */
final class ChangesPart extends StatementPart {
  private static final String OPEN = "open";

  /** Figures that are printed as they are. */
  private static final Set<String> PLAIN =
      Set.of(
          "share",
          Figures.UNIT,
          Figures.CURRENCY,
          Figures.BODY + "head",
          Figures.BODY + "days_hung");

  ChangesPart(StatementPart statement) {
    super(statement);
  }

  /**
   * The table; empty for a first statement.
   *
   * @param changes the figures that differ from the replaced statement; empty if unknown
   */
  Optional<TextTable> table(Optional<List<Change>> changes) {
    String remark =
        changes.map(all -> all.isEmpty() ? "changes.none" : "").orElse("changes.unknown");
    var heads = List.of(say("changes.item"), say("changes.was"), say("changes.now"));
    return planned
        .replaces()
        .map(
            replaced ->
                say(
                    "changes.sentence",
                    formats.count(planned.revision()),
                    formats.count(replaced.revision()),
                    formats.date(replaced.issued().toLocalDate())))
        .map(sentence -> remark.isEmpty() ? sentence : sentence + ' ' + say(remark))
        .map(lead -> new TextTable(lead, heads, rows(changes.orElse(List.of())), ""));
  }

  /** One row for each name: packs and weight of a cut share a row. */
  private List<List<String>> rows(List<Change> changes) {
    var byLabel =
        changes.stream()
            .filter(change -> !isTwice(change))
            .collect(
                Collectors.groupingBy(
                    change -> label(change.name()), LinkedHashMap::new, Collectors.toList()));
    var rows = new ArrayList<List<String>>();
    byLabel.forEach(
        (label, list) ->
            rows.add(List.of(label, values(list, Change::was), values(list, Change::now))));
    return rows;
  }

  /** Whether a change repeats another: a sole owner's take-home is that of the body. */
  private boolean isTwice(Change change) {
    return own.isSoleOwner() && change.name().equals(Figures.BODY + Figures.TAKE_HOME);
  }

  /** The values of one row, packs before weight. */
  private String values(List<Change> changes, Function<Change, String> which) {
    var texts = new ArrayList<String>();
    for (var change : changes) {
      String value = which.apply(change);
      if (!value.isEmpty()) {
        boolean packs = change.name().startsWith(Figures.PACKS);
        texts.add(packs ? 0 : texts.size(), text(change, value));
      }
    }
    return texts.isEmpty() ? say("changes.nothing.was") : String.join(", ", texts);
  }

  private String label(String name) {
    int id = name.indexOf(':') + 1;
    String rest = name.substring(id);
    String kind = name.substring(0, id);
    return switch (kind) {
      case Figures.ITEM, Figures.PACKS -> itemName(rest);
      case Figures.BATCH -> batchName(rest);
      case Figures.BATCH_BODIES -> say("changes.bodies", batchName(rest));
      default -> {
        String key = "figure." + (kind.equals(Figures.BODY) ? "body." : "") + rest;
        yield wording.words().has(key) ? say(key) : rest;
      }
    };
  }

  private String text(Change change, String value) {
    String name = change.name();
    if (name.startsWith(Figures.PACKS)) {
      return wording.counted("changes.packs", Long.parseLong(value));
    }
    if (name.endsWith("_pct")) {
      return formats.percent(new BigDecimal(value));
    }
    if (PLAIN.contains(name) || name.startsWith(Figures.BATCH_BODIES)) {
      return value;
    }
    return value.equals(OPEN)
        ? say("changes.open")
        : formats.weight(Weight.of(new BigDecimal(value)), decimals(change));
  }

  /**
   * The decimals of a weight: those of the page for what goes home, else as many as the weight
   * needs.
   */
  private int decimals(Change change) {
    var weights =
        Stream.of(change.was(), change.now())
            .filter(value -> !value.isEmpty() && !value.equals(OPEN))
            .map(value -> Weight.of(new BigDecimal(value)))
            .toList();
    return WeightDecimals.fitting(
        change.name().startsWith(Figures.BODY) ? 0 : homeDecimals(), weights);
  }
}
