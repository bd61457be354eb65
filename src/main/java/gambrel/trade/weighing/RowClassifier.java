package gambrel.trade.weighing;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.UnreadRow;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.stream.Stream;

/**
 * Decides the disposition of every row and makes the weighings.
 *
 * @param rows all rows, in file and line order
 * @param nearby for each row whose time cannot be read, the times of the rows before and after it
 *     in its file
 */
record RowClassifier(
    WeighingFactory factory,
    RowComparison comparison,
    OffsetDateTime asOf,
    List<ReadRow> rows,
    Map<Place, List<OffsetDateTime>> nearby) {

  static RowClassifier of(
      WeighingFactory factory, RowComparison comparison, OffsetDateTime asOf, List<ReadRow> rows) {
    var nearby = new HashMap<Place, List<OffsetDateTime>>();
    Groups.inOrder(rows.stream(), row -> row.place().file()).values().stream()
        .filter(file -> file.stream().anyMatch(row -> row.time().isEmpty()))
        .forEach(file -> addNearby(file, nearby));
    return new RowClassifier(factory, comparison, asOf, rows, nearby);
  }

  private static void addNearby(List<ReadRow> file, Map<Place, List<OffsetDateTime>> nearby) {
    var waiting = new ArrayList<List<OffsetDateTime>>();
    Optional<OffsetDateTime> before = Optional.empty();
    for (var row : file) {
      if (row.time().isPresent()) {
        before = row.time();
        waiting.forEach(times -> times.add(row.time().get()));
        waiting.clear();
      } else {
        waiting.add(new ArrayList<>(before.stream().toList()));
        nearby.put(row.place(), waiting.get(waiting.size() - 1));
      }
    }
  }

  /**
   * Classifies all rows.
   *
   * @param done receives 1 for each row
   */
  List<ClassifiedRow> classify(LongConsumer done) {
    var classified = rows.parallelStream().map(this::classify).peek(row -> done.accept(1)).toList();
    var weighings = classified.stream().flatMap(row -> row.weighing().stream());
    var beyond = RailLimit.beyond(factory.shop(), weighings);
    return classified.stream()
        .map(row -> beyond.contains(row.row().place()) ? partTwice(row) : row)
        .toList();
  }

  private ClassifiedRow classify(ReadRow row) {
    var disposition = comparison.disposition(row);
    return switch (disposition) {
      case REPEAT, VOID -> ClassifiedRow.of(row, disposition);
      case SET_ASIDE -> setAside(row, comparison.conflict(row));
      case USED -> use(row);
    };
  }

  /** A weighing or void row that is dated after {@code asOf} is used but has no effect yet. */
  private ClassifiedRow use(ReadRow row) {
    if (row.status().isVoid()) {
      return ClassifiedRow.of(row, RowDisposition.USED);
    }
    try {
      var weighing = Optional.of(factory.weighing(row)).filter(w -> row.effective(asOf));
      return new ClassifiedRow(row, RowDisposition.USED, weighing, Optional.empty());
    } catch (Refusal refusal) {
      return setAside(row, row.about(refusal.notice()));
    }
  }

  /** Sets a weighing aside that is beyond its part's count; its code may mean a smaller part. */
  private ClassifiedRow partTwice(ClassifiedRow row) {
    var weighing = row.weighing().orElseThrow();
    var shop = factory.shop();
    var smaller =
        shop.cuts().of(shop.bodies().get(weighing.body()).species()).children(weighing.item());
    var parts = smaller.stream().filter(i -> i.kind() == Kind.CARCASE).map(Item::id).toList();
    return setAside(
        row.row(),
        row.row()
            .about(Notice.of(NoticeCode.PART_TWICE).advising(parts.isEmpty() ? "" : "PARTS"))
            .with("parts", parts)
            .with("named", weighing.body())
            .with("item", weighing.item())
            .with("step", weighing.step().id()));
  }

  private ClassifiedRow setAside(ReadRow row, Notice reason) {
    var filled = filled(row);
    return new ClassifiedRow(
        row,
        RowDisposition.SET_ASIDE,
        Optional.empty(),
        Optional.of(new SetAside(reason, bodies(row, filled), batch(filled), row.effective(asOf))));
  }

  private String batch(List<ExportRow> filled) {
    return factory.references().batch(filled.get(0).get(Field.BATCH));
  }

  /**
   * The row with what the bench book fills, so that the body named there counts as its own. Where
   * the scale is unknown, any scale's entry may be meant; where the time cannot be read, that of
   * the row before or after in its file.
   */
  private List<ExportRow> filled(ReadRow row) {
    var scales = factory.references().scales(row.scale());
    var times = row.time().map(List::of).orElse(nearby.getOrDefault(row.place(), List.of()));
    var filled =
        times.stream()
            .flatMap(
                time -> scales.stream().map(scale -> factory.bench().fill(row.row(), scale, time)))
            .map(BenchLookup.Filled::row)
            .distinct()
            .toList();
    return filled.isEmpty() ? List.of(row.row()) : filled;
  }

  /** The bodies that the body cell may name; if it names none, those that any other cell names. */
  private List<String> bodies(ReadRow row, List<ExportRow> filled) {
    var bodies = bodies(row, filled.stream().map(cells -> cells.get(Field.BODY)));
    return bodies.isEmpty() ? bodies(row, factory.references().bodyWords(row.row())) : bodies;
  }

  private List<String> bodies(ReadRow row, Stream<String> named) {
    var date = row.time().map(OffsetDateTime::toLocalDate);
    return named
        .flatMap(name -> factory.references().candidates(name, date).stream())
        .map(Body::id)
        .distinct()
        .toList();
  }

  /** What the rows are about that a correction names which cannot be read. */
  Ledger.NamedBodies named(UnreadRow correction) {
    String field = correction.named("field").orElse(Field.BODY.id());
    String value = field.equals(Field.BODY.id()) ? correction.named("value").orElse("") : "";
    var bodies = new HashSet<String>();
    var batches = new HashSet<String>();
    boolean fits = false;
    for (var row : rows) {
      if (row.isNamedBy(correction)) {
        fits = true;
        var filled = filled(row);
        bodies.addAll(bodies(row, filled));
        bodies.addAll(bodies(row, Stream.of(value)));
        batches.add(batch(filled));
      }
    }
    batches.remove("");
    return new Ledger.NamedBodies(bodies, batches, fits && bodies.isEmpty() && batches.isEmpty());
  }
}
