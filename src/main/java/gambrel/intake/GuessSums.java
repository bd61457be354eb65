package gambrel.intake;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Consumer;

/** Finds columns of which gross less tare is net in every row: nothing could be surer. */
final class GuessSums {
  private static final int SURE = 100;

  private final GuessTable table;
  private final GuessNumbers numbers;

  GuessSums(GuessTable table, GuessNumbers numbers) {
    this.table = table;
    this.numbers = numbers;
  }

  /** Gives every such three columns to {@code found}. */
  void find(Consumer<GuessFields.Choice> found) {
    var columns = new LinkedHashMap<GuessTable.Column, List<BigDecimal>>();
    for (var column : table.columns()) {
      numbers.numbers(column).ifPresent(values -> columns.put(column, values));
    }
    for (var gross : columns.keySet()) {
      for (var tare : columns.keySet()) {
        for (var net : columns.keySet()) {
          if (isDifference(columns.get(gross), columns.get(tare), columns.get(net))) {
            String reason = "gross less tare is net";
            found.accept(new GuessFields.Choice("gross", gross, SURE, reason));
            found.accept(new GuessFields.Choice("tare", tare, SURE, reason));
            found.accept(new GuessFields.Choice("net", net, SURE, reason));
          }
        }
      }
    }
  }

  private static boolean isDifference(
      List<BigDecimal> gross, List<BigDecimal> tare, List<BigDecimal> net) {
    if (gross.size() < 2 || gross.size() != tare.size() || gross.size() != net.size()) {
      return false;
    }
    boolean tared = false;
    for (int i = 0; i < gross.size(); i++) {
      if (gross.get(i).subtract(tare.get(i)).compareTo(net.get(i)) != 0) {
        return false;
      }
      // Of the two that add up to gross, the tare is the lighter.
      tared |= tare.get(i).signum() != 0 && tare.get(i).compareTo(net.get(i)) < 0;
    }
    return tared;
  }
}
