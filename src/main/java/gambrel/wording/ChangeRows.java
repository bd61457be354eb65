package gambrel.wording;

import gambrel.measure.Weight;
import gambrel.register.FigureNames;
import gambrel.register.Figures;
import gambrel.statement.ChangesView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Changed figures in words: cuts by their names, weights and percentages as the page prints them. */
final class ChangeRows {
  private static final String OPEN = "open";

  private final Subject subject;
  private final Wording wording;
  private final Formats formats;

  ChangeRows(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
    this.formats = subject.formats();
  }

  /** One row a thing: packs and weight of a cut stand together. */
  List<ChangesView.Row> of(List<Figures.Change> changes) {
    Map<String, List<Figures.Change>> byLabel = new LinkedHashMap<>();
    for (var change : changes) {
      if (!isTwice(change)) {
        byLabel.computeIfAbsent(label(change.name()), l -> new ArrayList<>()).add(change);
      }
    }
    var rows = new ArrayList<ChangesView.Row>();
    byLabel.forEach((label, list) -> rows.add(row(label, list)));
    return rows;
  }

  /** The only owner's take-home is the body's. */
  private boolean isTwice(Figures.Change change) {
    return subject.own().isSoleOwner()
        && change.name().equals(FigureNames.BODY + FigureNames.TAKE_HOME);
  }

  private ChangesView.Row row(String label, List<Figures.Change> changes) {
    var was = new ArrayList<String>();
    var now = new ArrayList<String>();
    for (var change : changes) {
      var kind = Kind.of(change.name());
      boolean counted = kind == Kind.PACKS;
      int decimals = kind == Kind.WEIGHT ? decimals(change) : 0;
      was.add(counted ? 0 : was.size(), text(kind, change.was(), decimals));
      now.add(counted ? 0 : now.size(), text(kind, change.now(), decimals));
    }
    was.removeIf(String::isEmpty);
    now.removeIf(String::isEmpty);
    return new ChangesView.Row(label, joined(was), joined(now));
  }

  /** What goes home is printed here as everywhere on the page; the rest as finely as it needs. */
  private int decimals(Figures.Change change) {
    var weights = new ArrayList<Weight>();
    for (var value : List.of(change.was(), change.now())) {
      if (!value.isEmpty() && !value.equals(OPEN)) {
        weights.add(Weight.of(new BigDecimal(value)));
      }
    }
    int least = change.name().startsWith(FigureNames.BODY) ? 0 : subject.homeDecimals();
    return Decimals.fitting(least, weights);
  }

  private String joined(List<String> texts) {
    return texts.isEmpty() ? wording.say("changes.nothing.was") : String.join(", ", texts);
  }

  private String label(String name) {
    String id = name.substring(name.indexOf(':') + 1);
    if (name.startsWith(FigureNames.ITEM) || name.startsWith(FigureNames.PACKS)) {
      return subject.itemName(id);
    }
    if (name.startsWith(FigureNames.BATCH)) {
      return batch(id);
    }
    if (name.startsWith(FigureNames.BATCH_BODIES)) {
      return wording.say("changes.bodies", batch(id));
    }
    String key = "figure." + (name.startsWith(FigureNames.BODY) ? "body." : "") + id;
    return wording.words().has(key) ? wording.say(key) : id;
  }

  private String batch(String id) {
    var batch = subject.night().batches().get(id);
    return batch == null
        ? wording.say("batch.unnamed", id)
        : new BatchMeat(subject, batch, Weight.ZERO).name();
  }

  private String text(Kind kind, String value, int decimals) {
    if (value.isEmpty()) {
      return "";
    }
    return switch (kind) {
      case WEIGHT ->
          value.equals(OPEN)
              ? wording.say("changes.open")
              : formats.weight(Weight.of(new BigDecimal(value)), decimals);
      case PACKS ->
          wording.count("changes.packs", Long.parseLong(value), formats.count(Long.parseLong(value)));
      case PERCENT -> formats.percent(new BigDecimal(value));
      case PLAIN -> value;
    };
  }

  /** What a figure is. */
  private enum Kind {
    WEIGHT,
    PACKS,
    PERCENT,
    PLAIN;

    static Kind of(String name) {
      if (name.startsWith(FigureNames.PACKS)) {
        return PACKS;
      }
      if (name.endsWith("_pct")) {
        return PERCENT;
      }
      boolean plain =
          name.startsWith(FigureNames.BATCH_BODIES)
              || name.equals("share")
              || name.equals(FigureNames.UNIT)
              || name.equals(FigureNames.CURRENCY)
              || name.equals(FigureNames.BODY + "head")
              || name.equals(FigureNames.BODY + "days_hung");
      return plain ? PLAIN : WEIGHT;
    }
  }
}
