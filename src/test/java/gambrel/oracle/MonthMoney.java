package gambrel.oracle;

import java.math.BigInteger;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The money of a month from the manual's definitions: the most to bid, what 100 g or 4 oz more on a
 * cut earns, what was charged by description, and the accounts. Statements, their lines and the
 * payments are read from the program's data files; everything else from the shop folder.
 */
final class MonthMoney {
  private static final BigFraction ENOUGH = BigFraction.of(9, 10);
  private static final int FEWEST = 3;

  private final Months months;
  private final YearMonth month;
  private final Path shop;
  private final Path data;
  private final Map<String, BigFraction> values = new HashMap<>();
  private final Map<String, String> figures = new TreeMap<>();

  private MonthMoney(Months months, YearMonth month, Path shop, Path data) {
    this.months = months;
    this.month = month;
    this.shop = shop;
    this.data = data;
  }

  /** The figures of all months, as {@code month figure species group} and value. */
  static Map<String, String> of(Months months, Path shop, Path data) {
    var all = new TreeMap<String, String>();
    for (var month : months.all()) {
      var money = new MonthMoney(months, month, shop, data);
      money.readValues();
      money.bids();
      money.more();
      money.statements();
      all.putAll(money.figures);
    }
    return all;
  }

  private void put(String figure, String species, String group, String value) {
    figures.put(String.join("|", month.toString(), figure, species, group), value);
  }

  private void readValues() {
    var day = month.atEndOfMonth();
    for (var line : Csv.read(shop.resolve("values.csv"))) {
      boolean begun = line.get("from").isEmpty() || !LocalDate.parse(line.get("from")).isAfter(day);
      boolean goesOn = line.get("to").isEmpty() || !LocalDate.parse(line.get("to")).isBefore(day);
      if (begun && goesOn) {
        values.put(line.get("item"), Num.of(line.get("value")));
      }
    }
  }

  /** The item or the nearest part above it that has a value, the carcase left out; or null. */
  private String carrier(Tree tree, String item) {
    for (var at = item; tree.has(at) && !at.equals(Tree.ROOT); at = tree.parent(at)) {
      if (values.containsKey(at)) {
        return at;
      }
    }
    return null;
  }

  /** Money, the weight that has a value, and all weight. */
  private static final class Worth {
    BigFraction money = BigFraction.ZERO;
    BigFraction valued = BigFraction.ZERO;
    BigFraction all = BigFraction.ZERO;

    boolean isEnough() {
      return all.signum() > 0 && valued.compareTo(all.multiply(ENOUGH)) >= 0;
    }
  }

  private Worth worth(Tree tree, List<Row> packs) {
    var worth = new Worth();
    for (var pack : packs) {
      var carrier = carrier(tree, pack.item);
      worth.all = worth.all.add(pack.net);
      if (carrier != null) {
        worth.valued = worth.valued.add(pack.net);
        worth.money = worth.money.add(values.get(carrier).multiply(pack.net));
      }
    }
    return worth;
  }

  private Worth worth(Months.Member member) {
    var body = member.yield().body;
    var packs = body.rows.stream().filter(r -> r.isPack() && !body.isOffal(r)).toList();
    var worth = worth(body.tree, packs);
    for (var batch : member.yield().batches) {
      var of = worth(body.tree, batch.rows.stream().filter(r -> r.is("pack")).toList());
      var part = batch.part(member.id());
      worth.all = worth.all.add(part);
      if (of.isEnough()) {
        worth.valued = worth.valued.add(part);
        worth.money = worth.money.add(of.money.divide(of.valued).multiply(part));
      }
    }
    return worth;
  }

  private void bids() {
    var bodies = new ArrayList<>(months.before(month, months::settled));
    bodies.addAll(months.settled(month));
    var byClass = new TreeMap<String, List<Months.Member>>();
    bodies.forEach(
        m ->
            byClass
                .computeIfAbsent(
                    m.species() + "|" + ("class " + m.yield().body.beast.grade()).strip(),
                    k -> new ArrayList<>())
                .add(m));
    byClass.forEach((key, like) -> bid(key.split("\\|"), like));
  }

  private void bid(String[] key, List<Months.Member> like) {
    var hot = BigFraction.ZERO;
    var home = BigFraction.ZERO;
    var worth = BigFraction.ZERO;
    var work = BigFraction.ZERO;
    int number = 0;
    for (var member : like) {
      var of = worth(member);
      var asked = Charges.asked(member.yield(), month.atEndOfMonth());
      var weight = member.number("hot");
      if (weight != null && weight.signum() > 0 && of.isEnough() && asked != null) {
        number++;
        hot = hot.add(weight);
        home = home.add(member.number("take_home"));
        worth = worth.add(of.money.multiply(of.all).divide(of.valued));
        work = work.add(Num.ofSteps(asked, months.world.setup.minorDigits()));
      }
    }
    if (number >= FEWEST) {
      put("bid_take_home_pct", key[0], key[1], Num.text(Num.percent(home, hot)));
      put("bid_worth_of_hot", key[0], key[1], Num.text(worth.divide(hot)));
      put("bid_work_of_hot", key[0], key[1], Num.text(work.divide(hot)));
      put("bid_of_hot", key[0], key[1], Num.text(worth.subtract(work).divide(hot)));
    }
  }

  /** What a little more on each cut of the month is worth, against mince or sausages. */
  private void more() {
    var small = months.world.setup.unit.equals("lb") ? BigFraction.of(1, 4) : BigFraction.of(1, 10);
    for (var species : months.world.setup.trees.keySet()) {
      var own = months.settled(month).stream().filter(m -> m.species().equals(species)).toList();
      var tree = months.world.setup.trees.get(species);
      var cuts = new TreeSet<String>();
      var made = new HashSet<String>();
      for (var member : own) {
        var body = member.yield().body;
        body.rows.stream()
            .filter(r -> r.isOut() && !r.is("bin"))
            .filter(r -> Set.of("meat", "trim").contains(tree.kind(r.item)))
            .forEach(
                r -> {
                  var part = carrier(tree, r.item);
                  if (part == null && tree.kind(r.item).equals("trim")) {
                    part = carrier(tree, "mince");
                  }
                  if (part != null) {
                    cuts.add(part);
                  }
                });
        member.yield().batches.stream()
            .flatMap(batch -> batch.rows.stream())
            .filter(r -> r.is("pack"))
            .forEach(r -> made.add(r.item));
      }
      made.addAll(cuts);
      var instead =
          Stream.of("mince", "sausages")
              .filter(item -> made.contains(item) && carrier(tree, item) != null)
              .findFirst();
      for (var cut : instead.isEmpty() ? List.<String>of() : List.copyOf(cuts)) {
        if (!cut.equals("mince") && !cut.equals("sausages") && !tree.kind(cut).equals("trim")) {
          var over =
              values.get(cut).subtract(values.get(carrier(tree, instead.get()))).multiply(small);
          put(
              "more_on_cut",
              species,
              cut + " as " + instead.get(),
              Num.text(over, months.world.setup.minorDigits()));
        }
      }
    }
  }

  /** A statement in force. */
  private record Statement(
      String customer,
      String body,
      YearMonth month,
      LocalDate since,
      BigInteger charges,
      BigInteger tax) {
    BigInteger total() {
      return charges.add(tax);
    }
  }

  private BigInteger minor(String cell) {
    return Num.steps(Num.of(cell), months.world.setup.minorDigits());
  }

  /** The latest revisions; a statement is of the month of its body's last cut, or kill. */
  private List<Statement> inForce() {
    var latest = new LinkedHashMap<String, Map<String, String>>();
    var first = new HashMap<String, LocalDate>();
    for (var line : Csv.read(data.resolve("statements.csv"))) {
      var key = line.get("customer") + "|" + line.get("body");
      var issued = LocalDateTime.parse(line.get("issued")).toLocalDate();
      first.merge(key, issued, (a, b) -> a.isBefore(b) ? a : b);
      latest.put(key, line.cells());
    }
    var all = new ArrayList<Statement>();
    latest.forEach(
        (key, cells) ->
            all.add(
                new Statement(
                    bare(cells.get("customer")),
                    bare(cells.get("body")),
                    monthOf(bare(cells.get("body"))),
                    first.get(key),
                    minor(cells.get("charges")),
                    minor(cells.get("tax")))));
    all.sort(
        Comparator.comparing(Statement::since).thenComparing(Statement::body, Split.byBytes()));
    return all;
  }

  /** A text without the mark before a sign that a spreadsheet would compute. */
  private static String bare(String cell) {
    return cell.matches("'[=+@-].*") ? cell.substring(1) : cell;
  }

  private YearMonth monthOf(String body) {
    var beast = months.world.setup.bodies.get(body);
    // A body that was cancelled later has no figures.
    var yield = months.world.yields.get(body);
    var cuts =
        yield != null
            ? yield.body.cuts()
            : months.world.exports.rows.stream()
                .filter(r -> r.counts() && beast.equals(r.body) && (r.isOut() || r.is("block")))
                .sorted(Row.BY_TIME)
                .toList();
    return YearMonth.from(cuts.isEmpty() ? beast.killed() : cuts.get(cuts.size() - 1).date);
  }

  /** What is left to pay on each statement: what is spare pays the oldest first. */
  private Map<Statement, BigInteger> left(List<Statement> all) {
    var left = new LinkedHashMap<Statement, BigInteger>();
    var customers = new TreeSet<String>();
    all.forEach(statement -> customers.add(statement.customer()));
    var today = months.world.setup.localDate(months.world.asOf);
    for (var customer : customers) {
      var own = all.stream().filter(s -> s.customer().equals(customer)).toList();
      var spare = BigInteger.ZERO;
      var due = new LinkedHashMap<Statement, BigInteger>();
      own.forEach(statement -> due.put(statement, statement.total()));
      for (var line : months.world.setup.table("payments")) {
        boolean counts =
            line.get("customer").equals(customer)
                && !months.world.setup.date(line.get("date")).isAfter(today);
        if (counts) {
          var amount = minor(line.get("amount"));
          var named = own.stream().filter(s -> s.body().equals(line.get("body"))).findFirst();
          if (named.isPresent()) {
            due.merge(named.get(), amount.negate(), BigInteger::add);
          } else {
            spare = spare.add(amount);
          }
        }
      }
      for (var open : due.values()) {
        spare = open.signum() < 0 ? spare.subtract(open) : spare;
      }
      for (var statement : own) {
        var open = due.get(statement).max(BigInteger.ZERO);
        if (open.signum() > 0) {
          // What was paid back, a negative spare, is due on the oldest.
          var pays = spare.min(open);
          left.put(statement, open.subtract(pays));
          spare = spare.subtract(pays);
        }
      }
      if (spare.signum() < 0) {
        left.merge(own.get(0), spare.negate(), BigInteger::add);
      }
    }
    return left;
  }

  private void statements() {
    var all = inForce();
    var left = left(all);
    var mine = all.stream().filter(s -> s.month().equals(month)).toList();
    var net = BigInteger.ZERO;
    var tax = BigInteger.ZERO;
    var owed = BigInteger.ZERO;
    for (var statement : mine) {
      net = net.add(statement.charges());
      tax = tax.add(statement.tax());
      owed = owed.add(left.getOrDefault(statement, BigInteger.ZERO));
    }
    if (!mine.isEmpty()) {
      put("statements_net", "", "", money(net));
      put("statements_tax", "", "", money(tax));
      put("statements_owed", "", "", money(owed));
      put("statements_received", "", "", money(net.add(tax).subtract(owed)));
      lines(mine);
    }
    ages(left, !mine.isEmpty());
  }

  private String money(BigInteger minor) {
    return months.world.setup.money(minor);
  }

  private void lines(List<Statement> mine) {
    var rates = new TreeMap<String, BigInteger[]>();
    var kinds = new TreeMap<String, BigInteger>();
    var charged = new TreeMap<String, Set<String>>();
    for (var line : Csv.read(data.resolve("charges.csv"))) {
      boolean own =
          mine.stream()
              .anyMatch(
                  s ->
                      s.customer().equals(bare(line.get("customer")))
                          && s.body().equals(bare(line.get("body"))));
      if (own) {
        var rate = Num.of(line.get("tax_percent"));
        var sums =
            rates.computeIfAbsent(
                "tax " + Num.round(rate, 6).stripTrailingZeros().toPlainString(),
                r -> new BigInteger[] {BigInteger.ZERO, BigInteger.ZERO});
        var amount = minor(line.get("amount"));
        sums[0] = sums[0].add(amount);
        sums[1] = sums[1].add(minor(line.get("tax")));
        for (var kind : List.of(line.get("description"), "")) {
          kinds.merge(kind, amount, BigInteger::add);
          charged.computeIfAbsent(kind, k -> new TreeSet<>()).add(bare(line.get("body")));
        }
      }
    }
    rates.forEach(
        (rate, sums) -> {
          put("statements_net", "", rate, money(sums[0]));
          put("statements_tax", "", rate, money(sums[1]));
        });
    kinds.forEach(
        (kind, sum) -> {
          put("charged", "", kind, money(sum));
          var weight = BigFraction.ZERO;
          boolean all = true;
          for (var body : charged.get(kind)) {
            if (!months.world.yields.containsKey(body)) {
              all = false;
              continue;
            }
            var boning = months.world.yields.get(body).body.boning;
            var own = months.world.verdicts.get(body).shares().all();
            all &= boning != null;
            weight =
                boning == null
                    ? weight
                    : weight.add(
                        boning.multiply(
                            BigFraction.ONE.subtract(own.getOrDefault("shop", BigFraction.ZERO))));
          }
          if (all && weight.signum() > 0) {
            var money = Num.ofSteps(sum, months.world.setup.minorDigits());
            put("charged_of_boning", "", kind, Num.text(money.divide(weight)));
          }
        });
  }

  private void ages(Map<Statement, BigInteger> left, boolean issued) {
    var end = month.atEndOfMonth();
    var today = months.world.setup.localDate(months.world.asOf);
    var day = today.isBefore(end) ? today : end;
    var sums = new BigInteger[5];
    Arrays.fill(sums, BigInteger.ZERO);
    boolean some = false;
    for (var of : left.entrySet()) {
      if (!of.getKey().month().isAfter(month) && of.getValue().signum() > 0) {
        long days = ChronoUnit.DAYS.between(of.getKey().since(), day);
        int age = days <= 30 ? 0 : days <= 60 ? 1 : days <= 90 ? 2 : 3;
        sums[age] = sums[age].add(of.getValue());
        sums[4] = sums[4].add(of.getValue());
        some = true;
      }
    }
    if (issued || some) {
      var names = List.of("days 0-30", "days 31-60", "days 61-90", "days 91-", "");
      for (int i = 0; i < names.size(); i++) {
        put("owed", "", names.get(i), money(sums[i]));
      }
    }
  }
}
