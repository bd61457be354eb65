package gambrel.oracle;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Which clauses of the contract a folder meets at a moment, to see that random shops meet all. */
final class ClausesMet {
  static final List<String> ALL =
      List.of(
          "part replaced whole",
          "surplus on the rail",
          "part beyond its count",
          "duplicate on an aged day replaced later",
          "fewer parts aged: trim",
          "fewer parts aged: product",
          "cut in part by the usual share",
          "home low of few bodies",
          "home low of five bodies",
          "usual share of twenty bodies",
          "whole and open",
          "whole and settled",
          "condemned on the rail",
          "condemned without a rail weight",
          "close with effect",
          "closed below its usual share",
          "close of nothing cut",
          "weighing after a close",
          "conflict with a later row",
          "code of several items",
          "later row set aside",
          "later row repeated",
          "scale failed through a batch",
          "row set aside through a batch",
          "minimum of nothing",
          "minimum of a charge",
          "quantity that is free",
          "charge for one body",
          "charge of a weight band",
          "credit in parts",
          "included tax in parts",
          "charges of an earlier night",
          "numbers that begin later",
          "statement that is a credit",
          "paid in part",
          "paid too much",
          "payment that names no body",
          "payment without a statement",
          "payment for a body without a statement",
          "payment given back",
          "oldest paid by what is spare",
          "unfinished of several owners",
          "unfinished without a kill",
          "unfinished without a boning weight",
          "unfinished with a batch that is due",
          "release of before",
          "reason after a release",
          "net of nothing",
          "export that ends in the middle",
          "column that stops",
          "code not read",
          "row of customers not read",
          "row of bodies not read",
          "row of shares not read",
          "row of charges not read",
          "row of payments not read",
          "row of corrections not read",
          "row of batches not read",
          "held as it would go out",
          "revision",
          "more revisions than allowed",
          "open batch of an issued body grows",
          "identity: equal rows",
          "identity: overlapping files",
          "identity: conflict",
          "identity: void of one");

  private final World world;
  private final Set<String> met = new TreeSet<>();

  private ClausesMet(World world) {
    this.world = world;
  }

  static Set<String> of(World world) {
    var clauses = new ClausesMet(world);
    world.yields.values().forEach(clauses::body);
    clauses.rows();
    clauses.unread();
    clauses.identity();
    return clauses.met;
  }

  private void met(boolean is, String clause) {
    if (is) {
      met.add(clause);
    }
  }

  private void body(Yield yield) {
    rail(yield.body);
    usual(yield);
    outcome(yield);
    releases(yield);
    batches(yield);
  }

  private void rail(BodyFigures body) {
    met(body.rail.replacedWhole, "part replaced whole");
    met(!body.rail.surplus.isEmpty(), "surplus on the rail");
    met(!body.standing.beyond.isEmpty(), "part beyond its count");
    var days = new HashMap<String, Integer>();
    body.standing.replaced.forEach(
        r -> days.merge(r.item + r.date, body.standing.number(r), Integer::sum));
    met(
        body.standing.replaced.stream()
            .anyMatch(r -> days.get(r.item + r.date) > body.tree.count(r.item) * body.beast.head()),
        "duplicate on an aged day replaced later");
    boolean fewer = !body.rail.agedAll && !body.rail.agedUsed().isEmpty();
    met(fewer && body.rows.stream().anyMatch(body::isTrimAfterCold), "fewer parts aged: trim");
    met(
        fewer && body.products().stream().anyMatch(body::isCutBeforeAged),
        "fewer parts aged: product");
  }

  private void usual(Yield yield) {
    var usual = new UsualShare(world);
    boolean judged = !world.setup.bins().equals("weighed") && UsualShare.share(yield) != null;
    met(judged && usual.others(yield) == 20, "usual share of twenty bodies");
    if (usual.isBelow(yield)) {
      var codes = world.verdicts.get(yield.body.beast.id()).codes;
      int others = usual.others(yield);
      met(codes.contains("part-cut"), "cut in part by the usual share");
      met(codes.contains("home-low") && others < 5, "home low of few bodies");
      met(codes.contains("home-low") && others >= 5, "home low of five bodies");
    }
  }

  private void outcome(Yield yield) {
    boolean open = world.verdicts.get(yield.body.beast.id()).state.equals("open");
    boolean hung = !yield.body.standing.rows().isEmpty();
    if (yield.body.beast.condemned()) {
      met(!open && hung, "condemned on the rail");
      met(!open && !hung, "condemned without a rail weight");
    } else if (yield.body.beast.uncut()) {
      met(open && hung, "whole and open");
      met(!open, "whole and settled");
    }
  }

  private void releases(Yield yield) {
    var verdict = world.verdicts.get(yield.body.beast.id());
    var progress = new Progress(yield.body, world.asOf);
    boolean close = !progress.releases("close").isEmpty();
    boolean cut = yield.body.cuts().stream().anyMatch(r -> !r.is("block"));
    met(close && progress.closed(), "close with effect");
    met(verdict.closedLow, "closed below its usual share");
    met(close && !cut, "close of nothing cut");
    met(close && cut && !progress.closed(), "weighing after a close");
    boolean before =
        progress.releases("release").stream()
            .anyMatch(l -> world.setup.moment(l.get("on")).isBefore(world.asOf));
    met(before && verdict.releasedSome, "release of before");
    met(before && verdict.state.equals("held"), "reason after a release");
  }

  private void batches(Yield yield) {
    Predicate<Row> doubted = world.tests::doubts;
    met(
        yield.body.rows.stream().noneMatch(doubted)
            && yield.batches.stream().anyMatch(b -> b.rows.stream().anyMatch(doubted)),
        "scale failed through a batch");
    met(
        world.setAside(yield).stream().anyMatch(r -> !r.named.contains(yield.body.beast)),
        "row set aside through a batch");
  }

  private void rows() {
    var now = new HashMap<String, String>();
    for (var row : world.exports.rows) {
      if (row.counts() && !row.isVoidRow()) {
        now.put(Marking.key(row), Marking.content(row));
      }
      boolean aside = row.mark == Row.Mark.SET_ASIDE;
      met(row.later && aside && !row.unfinished, "later row set aside");
      met(row.later && row.mark == Row.Mark.REPEAT, "later row repeated");
      met(aside && row.net != null && row.net.signum() == 0, "net of nothing");
      met(row.counts() && row.movesMass() && row.items.size() > 1, "code of several items");
    }
    for (var row : world.exports.rows) {
      var other = now.get(Marking.key(row));
      boolean later = row.later && row.mark == Row.Mark.USED && !row.isVoidRow();
      met(
          later && other != null && !other.equals(Marking.content(row)),
          "conflict with a later row");
    }
  }

  private void unread() {
    met(world.exports.unfinished, "export that ends in the middle");
    met(world.setup.columns.stopped(), "column that stops");
    met(!world.setup.unread("codes").isEmpty(), "code not read");
    var unread = new Unread(world);
    for (var verdict : world.verdicts.values()) {
      met(verdict.goingOut, "held as it would go out");
      unread.holding(verdict).forEach(place -> met(true, "row of " + place.table() + " not read"));
      unread
          .holdingWhatGoesOut(verdict)
          .forEach(place -> met(true, "row of " + place.table() + " not read"));
    }
  }

  private void identity() {
    var seen = new HashSet<String>();
    var used = new HashSet<String>();
    var voided = new HashSet<String>();
    for (var row : world.exports.rows) {
      if (!row.identity.isEmpty() && !row.later) {
        var key = Marking.key(row);
        if (!row.isVoidRow()) {
          met(!seen.add(row.file + key) && row.counts(), "identity: equal rows");
          met(row.mark == Row.Mark.REPEAT, "identity: overlapping files");
          met(row.mark == Row.Mark.SET_ASIDE && row.net != null, "identity: conflict");
          (row.counts() ? used : voided).add(row.mark == Row.Mark.REPEAT ? "" : key);
        }
      }
    }
    voided.retainAll(used);
    met(!voided.isEmpty(), "identity: void of one");
  }
}
