package gambrel.files.export;

import gambrel.files.layout.Layout;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.Status;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows by which some scales cancel the weighing before: void, or with a weight below zero. */
final class CancelledBefore {
  private CancelledBefore() {}

  /**
   * The rows of a file, in order. A row that cancels by the layout becomes one that voids the
   * nearest row before it that has this weight above zero, the same scale, body, code, batch and
   * customer, and is not voided yet. If there is no such row it stays as it is. Where the layout
   * says that a void row cancels the last row, it voids the one just above it of its scale that is
   * neither void nor a reprint; if another void row did so, or there is none, it cannot be used.
   */
  static List<ExportRow> in(List<ExportRow> rows, Layout layout) {
    boolean voidsBefore = layout.voids(Layout.Voided.BEFORE);
    boolean voidsLast = layout.voids(Layout.Voided.LAST);
    if (!layout.negativesVoid() && !voidsBefore && !voidsLast) {
      return rows;
    }
    var standing = new HashMap<String, Deque<ExportRow>>();
    var last = new HashMap<String, ExportRow>();
    var result = new ArrayList<ExportRow>();
    for (var row : rows) {
      var weight =
          DecimalText.of(row.get(row.get(Field.NET).isEmpty() ? Field.GROSS : Field.NET))
              .orElse(BigDecimal.ZERO);
      var alike = standing.computeIfAbsent(key(row, weight.abs()), key -> new ArrayDeque<>());
      var status = Status.of(row.get(Field.STATUS));
      boolean isVoid = status.isVoid() && status.voids().isEmpty();
      boolean isNegative = layout.negativesVoid() && weight.signum() < 0;
      boolean cancels = isNegative || voidsBefore && isVoid;
      if (weight.signum() > 0 && !isVoid && !status.isRepeat()) {
        alike.push(row);
      }
      if (voidsLast && isVoid) {
        result.add(
            Optional.ofNullable(last.remove(row.get(Field.SCALE)))
                .map(row::voiding)
                .orElseGet(() -> row.unfit(Phrase.of("FAULT.VOIDS_NONE"))));
        continue;
      }
      if (!status.isVoid() && !status.isRepeat() && !isNegative) {
        last.put(row.get(Field.SCALE), row);
      }
      result.add(cancels && !alike.isEmpty() ? row.voiding(alike.pop()) : row);
    }
    return result;
  }

  private static String key(ExportRow row, BigDecimal weight) {
    return Stream.of(Field.SCALE, Field.BODY, Field.CODE, Field.BATCH, Field.CUSTOMER, Field.UNIT)
        .map(row::get)
        .collect(Collectors.joining("\n", weight.stripTrailingZeros().toPlainString() + '\n', ""));
  }
}
