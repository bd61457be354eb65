package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.UnreadRow;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;

/** Decides the disposition of every row and makes the weighings. */
record RowClassifier(WeighingFactory factory, RowComparison comparison, OffsetDateTime asOf) {
  /**
   * Classifies all rows.
   *
   * @param done receives 1 for each row
   */
  List<ClassifiedRow> classify(List<ReadRow> rows, LongConsumer done) {
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

  private ClassifiedRow partTwice(ClassifiedRow row) {
    var weighing = row.weighing().orElseThrow();
    return setAside(
        row.row(),
        row.row()
            .about(Notice.of(NoticeCode.PART_TWICE))
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
        Optional.of(
            new SetAside(
                reason,
                bodies(row, filled.get(Field.BODY)),
                factory.references().batch(filled.get(Field.BATCH)),
                row.effective(asOf))));
  }

  /** The row with what the bench book fills, so that the body named there counts as its own. */
  private ExportRow filled(ReadRow row) {
    return row.time()
        .map(t -> factory.bench().fill(row.row(), row.scale(), t).row())
        .orElse(row.row());
  }

  private List<String> bodies(ReadRow row, String named) {
    var date = row.time().map(OffsetDateTime::toLocalDate);
    return factory.references().candidates(named, date).stream().map(Body::id).toList();
  }

  /** What the rows are about that a correction names which cannot be read. */
  Ledger.NamedBodies named(UnreadRow correction, List<ReadRow> rows) {
    String field = correction.named("field").orElse(Field.BODY.id());
    String value = field.equals(Field.BODY.id()) ? correction.named("value").orElse("") : "";
    var bodies = new HashSet<String>();
    var batches = new HashSet<String>();
    boolean fits = false;
    for (var row : rows) {
      if (row.isNamedBy(correction)) {
        fits = true;
        var filled = filled(row);
        bodies.addAll(bodies(row, filled.get(Field.BODY)));
        bodies.addAll(bodies(row, value));
        batches.add(factory.references().batch(filled.get(Field.BATCH)));
      }
    }
    batches.remove("");
    return new Ledger.NamedBodies(bodies, batches, fits && bodies.isEmpty() && batches.isEmpty());
  }
}
