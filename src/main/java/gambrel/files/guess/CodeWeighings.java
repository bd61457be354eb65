package gambrel.files.guess;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Groups;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the weighings of a code show: of which species it is, and whether it is of the rail. */
final class CodeWeighings {
  /** The two sides of a body differ by less than this factor. */
  private static final BigDecimal MOST_UNLIKE = new BigDecimal("1.25");

  /** No code of the rail weighs less than half of another one of its body. */
  private static final BigDecimal TWICE = BigDecimal.valueOf(2);

  /** A code of the rail weighs at least so much of what all lighter ones of its body weigh. */
  private static final BigDecimal MOST_OF_IT = new BigDecimal("0.8");

  private final Map<String, Body> bodies;
  private final IdIndex ids;

  /** By tag the body that has it. */
  private final Map<String, String> tags = new HashMap<>();

  /** By body and code what was weighed, in kilograms. */
  private final Map<String, Map<String, BigDecimal>> weights = new HashMap<>();

  CodeWeighings(Shop shop) {
    this.bodies = shop.bodies();
    this.ids = new IdIndex(bodies.keySet());
    bodies.values().forEach(body -> body.tags().forEach(tag -> tags.put(tag, body.id())));
  }

  /** Adds a row, if its weight can be read. */
  void add(ReadRow row) {
    AsRead.weight(row)
        .flatMap(weight -> row.unit().map(unit -> unit.kilograms(weight)))
        .ifPresent(
            weight ->
                weights
                    .computeIfAbsent(body(row), body -> new HashMap<>())
                    .merge(row.row().get(Field.CODE), weight, BigDecimal::add));
  }

  /** Whether a row of any code names a body. */
  boolean nameBodies() {
    return weights.keySet().stream().anyMatch(body -> !body.isEmpty());
  }

  /** The species of the bodies that rows name. */
  Set<Species> species(List<ReadRow> rows) {
    return byBody(rows).keySet().stream()
        .flatMap(body -> species(body).stream())
        .collect(Collectors.toSet());
  }

  /**
   * What a code that says nothing may mean: a weight of sides, or of a carcase if each body has it
   * once.
   */
  List<Meaning> onRail(String code, List<ReadRow> rows) {
    boolean once = byBody(rows).values().stream().allMatch(own -> own.size() == 1);
    return areOfSides(code, rows)
        ? byDay(CutTree.SIDE, rows)
        : once && isHeavy(code, rows) ? byDay(CutTree.ROOT, rows) : List.of();
  }

  /** Whether most bodies of a species have two rows of the code as their two sides have. */
  boolean areOfSides(String code, List<ReadRow> rows) {
    return isHeavy(code, rows)
        && Groups.inOrder(byBody(rows).entrySet().stream(), body -> species(body.getKey()))
            .values()
            .stream()
            .anyMatch(
                ofSpecies ->
                    ofSpecies.stream().filter(body -> areSides(body.getValue())).count() * 2
                        > ofSpecies.size());
  }

  /** The id of the body that a row names by that or a tag; else what it names. */
  private String body(ReadRow row) {
    String text = row.row().get(Field.BODY);
    return ids.find(text).orElse(tags.getOrDefault(text, text));
  }

  private Map<String, List<ReadRow>> byBody(List<ReadRow> rows) {
    return Groups.inOrder(rows.stream(), this::body);
  }

  private Optional<Species> species(String body) {
    return Optional.ofNullable(bodies.get(body)).map(Body::species);
  }

  /**
   * Hot weights are taken on the day of the kill, cold ones later; by either if that is unknown.
   */
  private List<Meaning> byDay(String item, List<ReadRow> rows) {
    var fresh = rows.stream().map(this::isOfKillDay).distinct().toList();
    return Stream.of(Step.HOT, Step.COLD)
        .filter(
            step ->
                fresh.size() != 1 || fresh.get(0).filter(is -> is != (step == Step.HOT)).isEmpty())
        .map(step -> new Meaning(item, step))
        .toList();
  }

  /** Whether a row was weighed on the day on which its body was killed; empty if not known. */
  private Optional<Boolean> isOfKillDay(ReadRow row) {
    return Optional.ofNullable(bodies.get(body(row)))
        .flatMap(Body::killed)
        .flatMap(killed -> row.time().map(time -> time.toLocalDate().equals(killed)));
  }

  /** Whether a code may be of the rail by what it weighs of each body. */
  private boolean isHeavy(String code, List<ReadRow> rows) {
    return byBody(rows).keySet().stream()
        .map(body -> weights.getOrDefault(body, Map.of()))
        .allMatch(its -> isHeavy(its.getOrDefault(code, BigDecimal.ZERO), its.values()));
  }

  /** Whether a weight is not much less than another of its body, nor than all lighter ones. */
  private static boolean isHeavy(BigDecimal own, Collection<BigDecimal> all) {
    var lighter =
        all.stream()
            .filter(other -> other.compareTo(own.multiply(MOST_OF_IT)) < 0)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return all.stream().noneMatch(other -> own.multiply(TWICE).compareTo(other) < 0)
        && own.compareTo(lighter.multiply(MOST_OF_IT)) >= 0;
  }

  /** Whether rows are two, within an hour, and neither weighs a quarter more than the other. */
  private static boolean areSides(List<ReadRow> rows) {
    var times = rows.stream().flatMap(row -> row.time().stream()).sorted().toList();
    var weights = rows.stream().flatMap(row -> AsRead.weight(row).stream()).sorted().toList();
    return rows.size() == 2
        && times.size() == 2
        && weights.size() == 2
        && times.get(0).plusHours(1).isAfter(times.get(1))
        && weights.get(1).compareTo(weights.get(0).multiply(MOST_UNLIKE)) < 0;
  }
}
