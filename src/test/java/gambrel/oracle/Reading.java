package gambrel.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a row says, checked against the shop folder; a row that fails is set aside. */
final class Reading {
  private final Setup setup;

  Reading(Setup setup) {
    this.setup = setup;
  }

  void read(Row row) {
    row.batch = filled(row, "batch");
    row.customer = filled(row, "customer");
    row.named = named(row);
    if (row.isVoidRow() && !row.struck) {
      return; // it cancels, whatever its other cells say
    }
    boolean fine = readOwners(row) && readCode(row) && readWeight(row) && hasOwner(row);
    if (!fine && row.mark == Row.Mark.USED) {
      row.mark = Row.Mark.SET_ASIDE;
    }
  }

  /** The cell, or what bench.csv says of that scale at that time. */
  private String filled(Row row, String column) {
    var cell = row.cell(column);
    return !cell.isEmpty() || row.time == null
        ? cell
        : inBench(row.cell("scale"), row.time, column);
  }

  private String inBench(String scale, Instant time, String column) {
    for (var line : setup.table("bench")) {
      boolean then =
          line.get("scale").equals(scale)
              && !time.isBefore(setup.moment(line.get("from")))
              && !time.isAfter(setup.moment(line.get("to")));
      if (then && !line.get(column).isEmpty()) {
        return line.get(column);
      }
    }
    return "";
  }

  /**
   * The bodies that a row may mean: by its body cell or bench.csv, for an unknown scale that of any
   * scale, for a time that cannot be read that of the rows around it; else by any other cell.
   */
  private List<Beast> named(Row row) {
    var own = row.cell("body");
    var texts = new TreeSet<String>();
    if (own.isEmpty()) {
      var known = setup.scales.containsKey(row.cell("scale"));
      for (var scale : known ? Set.of(row.cell("scale")) : setup.scales.keySet()) {
        for (var time : row.time == null ? row.around : List.of(row.time)) {
          texts.add(inBench(scale, time, "body"));
        }
      }
    } else {
      texts.add(own);
    }
    var named = texts.stream().flatMap(t -> candidates(t, row).stream()).distinct().toList();
    return named.isEmpty()
        ? row.cells.values().stream()
            .filter(cell -> !Num.isNumber(cell) && !isOtherId(cell))
            .flatMap(cell -> candidates(cell, row).stream())
            .distinct()
            .toList()
        : named;
  }

  private boolean isOtherId(String cell) {
    return setup.scales.containsKey(cell)
        || setup.customers.contains(cell)
        || setup.table("codes").stream().anyMatch(line -> line.get("code").equals(cell));
  }

  private List<Beast> candidates(String cell, Row row) {
    if (cell.isEmpty()) {
      return List.of();
    }
    var own = setup.bodies.get(cell);
    return own != null
        ? List.of(own)
        : setup.bodies.values().stream()
            .filter(b -> b.tags().contains(cell) && (row.date == null || isNear(b, row.date)))
            .toList();
  }

  private static boolean isNear(Beast beast, LocalDate date) {
    return beast.killed() != null
        && !beast.killed().isBefore(date.minusDays(60))
        && !beast.killed().isAfter(date.plusDays(2));
  }

  private boolean readOwners(Row row) {
    row.scale = setup.scales.get(row.cell("scale"));
    boolean namesBody = !filled(row, "body").isEmpty();
    row.body = namesBody && row.named.size() == 1 ? row.named.get(0) : null;
    return row.scale != null
        && row.time != null
        && (row.customer.isEmpty() || setup.customers.contains(row.customer))
        && (!namesBody || row.body != null);
  }

  private Csv.Line code(String code) {
    Csv.Line best = null;
    for (var line : setup.rows("codes")) {
      var pattern = line.get("code");
      if (pattern.equals(code)) {
        return line;
      }
      boolean begins =
          pattern.endsWith("*") && code.startsWith(pattern.substring(0, pattern.length() - 1));
      if (begins && (best == null || pattern.length() > best.get("code").length())) {
        best = line;
      }
    }
    return best;
  }

  /**
   * The item and step of a code. The contract has one item for a code; the program takes several,
   * parted by a bar, and of them the one that the body's species has.
   */
  private boolean readCode(Row row) {
    var code = code(row.cell("code"));
    if (code == null || setup.unread("codes").contains(code)) {
      return false;
    }
    row.step = code.get("step");
    row.nominal = Num.ofCell(code.get("nominal"));
    row.items = List.of(code.get("item").split("\\|"));
    var own = row.items.stream().filter(item -> isOf(trees(row), item)).toList();
    row.item = own.size() == 1 ? own.get(0) : "";
    return !row.movesMass()
        || own.size() == 1 && row.items.stream().allMatch(item -> isOf(setup.trees.keySet(), item));
  }

  private boolean isOf(Set<String> trees, String item) {
    return trees.stream().anyMatch(species -> setup.trees.get(species).has(item));
  }

  private Set<String> trees(Row row) {
    return row.body == null ? new TreeSet<>(setup.trees.keySet()) : Set.of(row.body.species());
  }

  private boolean hasOwner(Row row) {
    return switch (row.step) {
      case "hot", "cold", "aged", "block", "bin" -> row.body != null;
      case "pack", "tub" -> row.body != null || row.hasBatch();
      case "added" -> row.hasBatch();
      default -> true;
    };
  }

  private boolean readWeight(Row row) {
    var unit = row.cell("unit").isEmpty() ? row.scale.unit() : row.cell("unit");
    boolean numbers =
        Stream.of("net", "gross", "tare", "pieces")
            .map(row::cell)
            .allMatch(cell -> cell.isEmpty() || Num.isNumber(cell));
    if (!numbers || !Num.isUnit(unit) || row.cell("net").isEmpty() && row.cell("gross").isEmpty()) {
      return false;
    }
    var pieces = row.cell("pieces");
    row.pieces = pieces.isEmpty() ? null : Num.of(pieces).intValue();
    var gross = Num.ofCell(row.cell("gross"));
    var tare = Num.ofCell(row.cell("tare"));
    var net = Num.ofCell(row.cell("net"));
    row.exactNet = net(row, gross, tare, net, Num.factor(unit, setup.unit));
    row.net = Num.rounded(row.exactNet, 5);
    var ownUnit = Num.factor(unit, row.scale.unit());
    var load = gross == null ? net : gross;
    return row.net.signum() >= (row.is("test") ? 0 : 1)
        && agree(gross, tare, net, row.scale.division().divide(ownUnit))
        && fits(row.scale, load.multiply(ownUnit));
  }

  private static boolean agree(
      BigFraction gross, BigFraction tare, BigFraction net, BigFraction division) {
    return net == null
        || gross == null
        || tare == null
        || gross.subtract(tare).subtract(net).abs().compareTo(division) <= 0;
  }

  private BigFraction net(
      Row row, BigFraction gross, BigFraction tare, BigFraction net, BigFraction toShop) {
    if (net != null) {
      return net.multiply(toShop);
    }
    var off = tare == null ? codeTare(row) : tare.multiply(toShop);
    return gross.multiply(toShop).subtract(off);
  }

  private BigFraction codeTare(Row row) {
    var code = code(row.cell("code"));
    var tare = Num.ofCell(code.get("tare"));
    if (tare == null) {
      return BigFraction.ZERO;
    }
    boolean each = code.get("tare_each").equals("yes");
    return each && row.pieces != null ? tare.multiply(row.pieces) : tare;
  }

  private static boolean fits(ScaleInfo scale, BigFraction load) {
    return scale.capacity() == null
        || load.compareTo(scale.capacity().add(scale.division().multiply(9))) <= 0;
  }
}
