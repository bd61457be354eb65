package gambrel.pages.statement;

import gambrel.pages.views.TextTable;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Place;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Figures.Change;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Release;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The revision that a statement replaces, with a table of the changed figures, and why. */
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

  /** Weights from before the cutting, with the decimals that they need. */
  private static final Set<String> HUNG =
      Set.of(
          Figures.BODY + "live",
          Figures.BODY + "hot",
          Figures.BODY + "cold",
          Figures.BODY + "boning");

  /** The part of the take-home that is meat. The page prints what of the rest is bone or fat. */
  private static final String MEAT = Figures.BODY + "meat_home";

  /** Weights that the page does not print. */
  private static final Set<String> UNPRINTED = Set.of(MEAT, Figures.BODY + "tub");

  private static final String PERCENT = "_pct";

  /** The one percentage that the page prints as such: take-home of the hanging weight. */
  private final String hanging =
      Figures.BODY + "take_home_of_" + (balance.cold().isPresent() ? "cold" : "hot") + PERCENT;

  ChangesPart(StatementPart statement) {
    super(statement);
  }

  /**
   * The table; empty for a first statement.
   *
   * @param changes the figures that differ from the replaced statement; empty if unknown
   */
  Optional<TextTable> table(Optional<List<Change>> changes) {
    if (planned.replaces().isEmpty()) {
      return Optional.empty();
    }
    var replaced = planned.replaces().get();
    var rows = rows(changes.orElse(List.of()));
    var lead = new ArrayList<String>();
    lead.add(replaces(wording, planned.revision(), replaced));
    reasons(replaced.issued()).forEach(reason -> lead.add(say("changes.why", reason)));
    if (rows.isEmpty()) {
      boolean none = changes.filter(List::isEmpty).isPresent();
      lead.add(
          say(none ? "changes.none" : changes.isEmpty() ? "changes.unknown" : "changes.unprinted"));
    }
    var heads = List.of(say("changes.item"), say("changes.was"), say("changes.now"));
    return Optional.of(new TextTable(String.join(" ", lead), heads, rows, ""));
  }

  /** Says which revision a statement is, and which one it replaces. */
  static String replaces(Wording wording, int revision, RegisterRow replaced) {
    var formats = wording.formats();
    return wording.say(
        "changes.sentence",
        formats.count(revision),
        formats.count(replaced.revision()),
        formats.date(replaced.issued().toLocalDate()));
  }

  /** Why the shop corrected a weighing of the body, or released it, since {@code issued}. */
  private List<String> reasons(LocalDateTime issued) {
    var weighed = new HashMap<Place, Weighing>();
    balance.batches().forEach(batch -> batch.weighings().forEach(w -> weighed.put(w.place(), w)));
    weighings.all().forEach(w -> weighed.put(w.place(), w));
    var corrections =
        night.ledger().corrections().stream()
            .filter(one -> weighed.containsKey(one.row().place()) || one.takesFrom(body))
            .filter(one -> isSince(one.correction().on(), issued))
            .map(
                one ->
                    Optional.ofNullable(weighed.get(one.row().place()))
                        .map(weighing -> reason(one.correction(), weighing))
                        .orElse(one.correction().reason()));
    var releases =
        night.shop().releases().stream()
            .filter(one -> one.body().equals(body.id()) && !one.on().isAfter(night.asOf()))
            .filter(one -> isSince(one.on(), issued))
            .map(Release::reason);
    return Stream.concat(corrections, releases)
        .map(reason -> reason.endsWith(".") ? reason : reason + '.')
        .distinct()
        .toList();
  }

  /** Why a weighing was corrected, and which. */
  private String reason(Correction correction, Weighing weighing) {
    String reason = correction.reason().replaceFirst("\\.$", "");
    return weighing.ticket().isEmpty()
        ? reason
        : say("changes.weighing", reason, itemName(weighing.item()), weighing.ticket());
  }

  /**
   * Whether a decision may be younger than a statement: one without a time is as old as its day.
   */
  private boolean isSince(OffsetDateTime decided, LocalDateTime issued) {
    var local = decided.atZoneSameInstant(settings.zone()).toLocalDateTime();
    return local.isAfter(issued) || local.equals(issued.toLocalDate().atStartOfDay());
  }

  /**
   * One row for each name: packs and weight of a cut share a row. Meat has a row where the
   * take-home is as it was, so that some of it counts as another kind.
   */
  private List<List<String>> rows(List<Change> changes) {
    var names = changes.stream().map(Change::name).collect(Collectors.toSet());
    boolean recounted = !names.contains(Figures.BODY + Figures.TAKE_HOME);
    var byLabel =
        changes.stream()
            .filter(change -> isPrinted(change) || recounted && change.name().equals(MEAT))
            .collect(
                Collectors.groupingBy(
                    change -> label(change.name()), LinkedHashMap::new, Collectors.toList()));
    var rows = new ArrayList<List<String>>();
    byLabel.forEach(
        (label, list) ->
            rows.add(List.of(label, values(list, Change::was), values(list, Change::now))));
    rows.removeIf(row -> row.get(1).equals(row.get(2)));
    return rows;
  }

  /** Whether the page prints a figure. A sole owner's take-home is that of the body. */
  private boolean isPrinted(Change change) {
    String name = change.name();
    boolean twice = own.isSoleOwner() && name.equals(Figures.BODY + Figures.TAKE_HOME);
    return !twice && !UNPRINTED.contains(name) && (!name.endsWith(PERCENT) || name.equals(hanging));
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
      case Figures.BATCH -> say("changes.batch", batchName(rest));
      case Figures.BATCH_BODIES -> say("changes.bodies", batchName(rest));
      default -> {
        String key = "figure." + (kind.equals(Figures.BODY) ? "body." : "") + rest;
        yield say(wording.words().has(key) ? key : "flow." + rest);
      }
    };
  }

  private String text(Change change, String value) {
    String name = change.name();
    if (name.startsWith(Figures.PACKS)) {
      return wording.counted("changes.packs", Long.parseLong(value));
    }
    if (name.endsWith(PERCENT)) {
      return formats.percent(Exact.fraction(new BigDecimal(value)));
    }
    if (PLAIN.contains(name) || name.startsWith(Figures.BATCH_BODIES)) {
      return value;
    }
    return value.equals(OPEN)
        ? say("changes.open")
        : formats.weight(Weight.of(new BigDecimal(value)), decimals(change));
  }

  /** The decimals of a weight on the page, or as many as it needs. */
  private int decimals(Change change) {
    var weights =
        Stream.of(change.was(), change.now())
            .filter(value -> !value.isEmpty() && !value.equals(OPEN))
            .map(value -> Weight.of(new BigDecimal(value)))
            .toList();
    int least = Math.max(decimals(weighings.out()), homeDecimals());
    return WeightDecimals.fitting(HUNG.contains(change.name()) ? 0 : least, weights);
  }
}
