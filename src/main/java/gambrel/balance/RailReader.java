package gambrel.balance;

import gambrel.cuts.CutTree;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads the rail weighings of one body: what stands at each step, and what each part weighed last.
 *
 * <p>Parts of parts replace the whole only where they cover all of it; weights of one step for
 * different sides of a body add up.
 */
final class RailReader {
  private final HungParts parts;
  private final Map<Step, Map<String, RailPiece>> weighed = new HashMap<>();
  private Optional<Rail.Ageing> ageing = Optional.empty();
  private boolean ageingKnown = true;

  private RailReader(CutTree tree, int head, List<Weighing> weighings) {
    parts = new HungParts(tree, head, weighings);
    for (var step : List.of(Step.HOT, Step.COLD, Step.AGED)) {
      var ofStep = weighings.stream().filter(w -> w.step() == step).toList();
      weighed.put(step, pieces(step, step == Step.AGED ? latest(ofStep) : ofStep));
    }
  }

  /**
   * Reads {@code weighings}, earliest first.
   *
   * @param rail the rail weights that the shop takes of the species
   */
  static Rail read(CutTree tree, int head, List<Weighing> weighings, Set<Step> rail) {
    return new RailReader(tree, head, weighings).read(rail);
  }

  private Rail read(Set<Step> rail) {
    var hot = standing(parts.root(), Step.HOT);
    var cold = standing(parts.root(), Step.COLD);
    var aged = standing(parts.root(), Step.AGED);
    var base = rail.contains(Step.COLD) ? cold : replace(parts.root(), hot, cold);
    ageing = Optional.empty();
    ageingKnown = true;
    var boning = replace(parts.root(), base, aged);
    boolean allUsed = boning.pieces().containsAll(aged.pieces());
    boolean fromCold = base.pieces().stream().allMatch(piece -> piece.step() == Step.COLD);
    return new Rail(
        hot,
        cold,
        aged,
        boning,
        ageingKnown && allUsed && fromCold ? ageing : Optional.empty(),
        coverage(hot).equals(coverage(cold)));
  }

  /** Of several days on which an aged part was weighed the latest stands. */
  private static List<Weighing> latest(List<Weighing> weighings) {
    var days = new HashMap<String, LocalDate>();
    for (var weighing : weighings) {
      days.merge(weighing.item(), weighing.date(), (a, b) -> a.isAfter(b) ? a : b);
    }
    return weighings.stream().filter(w -> w.date().equals(days.get(w.item()))).toList();
  }

  private Map<String, RailPiece> pieces(Step step, List<Weighing> weighings) {
    var byPart = new LinkedHashMap<String, List<Weighing>>();
    for (var weighing : weighings) {
      byPart.computeIfAbsent(parts.part(weighing), p -> new ArrayList<>()).add(weighing);
    }
    var pieces = new HashMap<String, RailPiece>();
    byPart.forEach(
        (part, list) -> {
          int most = parts.total(part);
          int number = list.stream().mapToInt(w -> w.number(most)).sum();
          pieces.put(part, new RailPiece(part, step, Math.min(number, most), list));
        });
    return pieces;
  }

  /** What stands of one step at {@code part} and below. */
  private RailCover standing(String part, Step step) {
    var below = RailCover.NONE;
    for (String child : parts.children(part)) {
      below = below.and(standing(child, step));
    }
    var own = weighed.get(step).get(part);
    if (own == null) {
      return below;
    }
    var whole = new RailCover(List.of(own));
    if (fits(whole.and(below))) {
      return whole.and(below);
    }
    return covers(below, whole) ? below : whole;
  }

  private boolean fits(RailCover cover) {
    return coverage(cover).entrySet().stream()
        .allMatch(e -> e.getValue().compareTo(BigFraction.of(parts.total(e.getKey()))) <= 0);
  }

  /** {@code earlier} at {@code part} and below, with {@code later} where it covers all of it. */
  private RailCover replace(String part, RailCover earlier, RailCover later) {
    if (later.isEmpty()) {
      return earlier;
    }
    if (covers(later, earlier)) {
      noteAgeing(earlier, later);
      return later;
    }
    if (earlier.pieces().stream().anyMatch(piece -> piece.item().equals(part))) {
      return earlier;
    }
    var replaced = RailCover.NONE;
    for (String child : parts.children(part)) {
      replaced = replaced.and(replace(child, under(child, earlier), under(child, later)));
    }
    return replaced;
  }

  private void noteAgeing(RailCover cold, RailCover aged) {
    if (cold.isEmpty() || !coverage(cold).equals(coverage(aged))) {
      ageingKnown = false;
      return;
    }
    var pair = new Rail.Ageing(cold.weight().orElseThrow(), aged.weight().orElseThrow());
    ageing = Optional.of(ageing.map(known -> known.and(pair)).orElse(pair));
  }

  private RailCover under(String part, RailCover cover) {
    return new RailCover(
        cover.pieces().stream().filter(piece -> parts.isUnder(piece.item(), part)).toList());
  }

  private boolean covers(RailCover cover, RailCover other) {
    var covered = coverage(cover);
    return coverage(other).entrySet().stream()
        .allMatch(
            e -> covered.getOrDefault(e.getKey(), BigFraction.ZERO).compareTo(e.getValue()) >= 0);
  }

  private Map<String, BigFraction> coverage(RailCover cover) {
    var coverage = new HashMap<String, BigFraction>();
    for (var piece : cover.pieces()) {
      parts
          .coverage(piece.item(), piece.number())
          .forEach((part, number) -> coverage.merge(part, number, BigFraction::add));
    }
    return coverage;
  }
}
