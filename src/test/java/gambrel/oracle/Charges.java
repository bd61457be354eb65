package gambrel.oracle;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** The charges on a body, in minor units of the currency. */
final class Charges {
  /** Ids of charges whose quantity is not known. */
  final List<String> unknown = new ArrayList<>();

  /** Clauses of the contract that the charges met. */
  final Set<String> met = new TreeSet<>();

  private record Line(
      Csv.Line charge, BigFraction quantity, BigInteger amount, BigInteger tax, boolean inFull) {}

  /** What is counted, not weighed. */
  private static final Set<String> COUNTED = Set.of("head", "pack", "day", "share");

  private final Setup setup;
  private final BodyFigures body;
  private final Shares shares;

  /** The day whose prices are asked; null for those of the body's own day. */
  private final LocalDate day;

  private final Long days;
  private final List<Line> lines = new ArrayList<>();

  Charges(Yield yield, Shares shares) {
    days = yield.daysHung();
    day = null;
    this.shares = shares;
    body = yield.body;
    setup = body.setup;
    if (!shares.onlyShop()) {
      setup.table("charges").stream().filter(this::applies).forEach(this::charge);
    }
  }

  /**
   * What the price list of a day asks for a body, without tax, as if one customer owned it, but for
   * charges of one body alone; null if a quantity is not known.
   */
  static BigInteger asked(Yield yield, LocalDate day) {
    var charges = new Charges(yield, day);
    if (!charges.unknown.isEmpty()) {
      return null;
    }
    var sum = BigInteger.ZERO;
    for (var line : charges.lines) {
      sum = sum.add(line.amount());
      sum = charges.included() ? sum.subtract(line.tax()) : sum;
    }
    return sum;
  }

  private Charges(Yield yield, LocalDate day) {
    days = yield.daysHung();
    this.day = day;
    shares = null;
    body = yield.body;
    setup = body.setup;
    setup.table("charges").stream()
        .filter(charge -> charge.get("body").isEmpty() && applies(charge))
        .forEach(this::charge);
  }

  private boolean applies(Csv.Line charge) {
    return fits(charge.get("species"), body.beast.species())
        && fits(charge.get("class"), body.beast.grade())
        && fits(charge.get("body"), body.beast.id())
        && inTime(charge);
  }

  private static boolean fits(String wanted, String value) {
    return wanted.isEmpty() || wanted.equals(value);
  }

  private boolean inTime(Csv.Line charge) {
    var from = charge.get("from");
    var to = charge.get("to");
    var date = date();
    return (from.isEmpty() || date != null && !date.isBefore(setup.date(from)))
        && (to.isEmpty() || date != null && !date.isAfter(setup.date(to)));
  }

  private LocalDate date() {
    return day != null
        ? day
        : body.rows.stream()
            .filter(Row::isPack)
            .map(r -> r.date)
            .findFirst()
            .orElse(body.dateOf(body.latest()));
  }

  private void charge(Csv.Line charge) {
    var from = Num.ofCell(charge.get("hot_from"));
    var to = Num.ofCell(charge.get("hot_to"));
    if (from != null || to != null) {
      if (body.hot == null) {
        unknown.add(charge.get("charge"));
        return;
      }
      if (from != null && body.hot.compareTo(from) < 0
          || to != null && body.hot.compareTo(to) >= 0) {
        return;
      }
    }
    var quantity = quantity(charge.get("basis"), charge.get("item"));
    if (quantity == null) {
      unknown.add(charge.get("charge"));
    } else {
      lines.add(line(charge, quantity));
    }
  }

  private BigFraction quantity(String basis, String item) {
    Predicate<Row> under = r -> item.isEmpty() || body.tree.isUnder(r.item, item);
    return switch (basis) {
      case "head" -> BigFraction.of(body.beast.head());
      case "live" -> body.beast.live();
      case "hot" -> body.hot == null ? null : sum(body.rail.hot.rows(), under);
      case "cold" -> body.cold == null ? null : sum(body.rail.cold.rows(), under);
      case "boning" -> body.boning == null ? null : sum(body.boningRows, under);
      case "tub" -> sum(body.rows, under.and(r -> r.is("tub") && r.hasBatch()));
      case "packed" -> sum(body.rows, under.and(Row::isPack));
      case "pack" ->
          BigFraction.of((int) body.rows.stream().filter(under.and(Row::isPack)).count());
      case "day" -> days == null ? null : BigFraction.of(days.intValue());
      case "share" -> BigFraction.ONE;
      default -> throw new IllegalArgumentException(basis);
    };
  }

  private static BigFraction sum(List<Row> rows, Predicate<Row> which) {
    return BodyFigures.sum(rows.stream().filter(which).toList());
  }

  private Line line(Csv.Line charge, BigFraction measured) {
    var free = Num.ofCell(charge.get("free"));
    var minimum = Num.ofCell(charge.get("minimum"));
    var quantity = free == null ? measured : measured.subtract(free);
    quantity = quantity.signum() < 0 ? BigFraction.ZERO : quantity;
    boolean below = minimum != null && quantity.compareTo(minimum) < 0;
    boolean nothing =
        measured.signum() == 0 && List.of("tub", "packed", "pack").contains(charge.get("basis"));
    note(charge, quantity.compareTo(measured) < 0, below, nothing);
    quantity = below && !nothing ? minimum : quantity;
    int digits = setup.minorDigits();
    var amount = Num.rounded(quantity.multiply(Num.of(charge.get("price"))), digits);
    var rate = Num.ofCell(charge.get("tax_percent"));
    var tax = BigFraction.ZERO;
    if (rate != null) {
      tax = amount.multiply(rate).divide(included() ? Num.HUNDRED.add(rate) : Num.HUNDRED);
    }
    return new Line(
        charge,
        quantity,
        Num.steps(amount, digits),
        Num.steps(tax, digits),
        charge.get("basis").equals("share"));
  }

  private void note(Csv.Line charge, boolean free, boolean below, boolean nothing) {
    met(free, "quantity that is free");
    met(below, nothing ? "minimum of nothing" : "minimum of a charge");
    met(!charge.get("body").isEmpty(), "charge for one body");
    met(!charge.get("hot_from").isEmpty(), "charge of a weight band");
    if (shares == null) {
      return;
    }
    met(charge.get("price").startsWith("-") && shares.all().size() > 1, "credit in parts");
    met(
        included() && !charge.get("tax_percent").isEmpty() && shares.all().size() > 1,
        "included tax in parts");
  }

  private void met(boolean is, String clause) {
    if (is) {
      met.add(clause);
    }
  }

  /**
   * Each of a customer's lines as in {@code charges.csv}, from its charge to its tax. A charge that
   * comes to nothing for the whole body is no line.
   */
  List<List<String>> lines(String customer) {
    return shares.all().containsKey(customer)
        ? lines.stream()
            .filter(line -> line.amount().signum() != 0)
            .map(line -> cells(line, customer))
            .toList()
        : List.of();
  }

  private List<String> cells(Line line, String customer) {
    var basis = line.charge().get("basis");
    boolean counted = COUNTED.contains(basis);
    var tax = part(line, line.tax(), customer);
    var amount = part(line, line.amount(), customer);
    return List.of(
        Print.text(line.charge().get("charge")),
        Print.text(line.charge().get("description")),
        counted ? plain(line.quantity()) : Num.text(line.quantity()),
        counted ? basis : setup.unit,
        new BigDecimal(line.charge().get("price")).toPlainString(),
        setup.money(included() ? amount.subtract(tax) : amount),
        rate(line),
        setup.money(tax));
  }

  /** The rate of tax; where there is none it is 0, as a blank would mean that it is not known. */
  private static String rate(Line line) {
    var rate = line.charge().get("tax_percent");
    return rate.isEmpty() ? "0" : new BigDecimal(rate).toPlainString();
  }

  private static String plain(BigFraction count) {
    return Num.round(count, 3).stripTrailingZeros().toPlainString();
  }

  private boolean included() {
    return setup.setting("tax_included", "no").equals("yes");
  }

  /** Whether nothing is charged, or not all that is charged is known. */
  boolean isUnsettled() {
    return lines.isEmpty() || !unknown.isEmpty();
  }

  /** A customer's charges without tax. */
  BigInteger net(String customer) {
    var sum = BigInteger.ZERO;
    for (var line : lines) {
      sum = sum.add(part(line, line.amount(), customer));
    }
    return included() ? sum.subtract(tax(customer)) : sum;
  }

  /** A customer's tax. */
  BigInteger tax(String customer) {
    var sum = BigInteger.ZERO;
    for (var line : lines) {
      sum = sum.add(part(line, line.tax(), customer));
    }
    return sum;
  }

  private BigInteger part(Line line, BigInteger whole, String customer) {
    SortedMap<String, BigFraction> owners = new TreeMap<>(shares.all());
    if (!owners.containsKey(customer)) {
      return BigInteger.ZERO;
    }
    return line.inFull() ? whole : Split.of(whole, owners).get(customer);
  }
}
