package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** What became of the rest of the whole body: bone, fat, waste, and what came off at slaughter. */
final class RestAnswer extends StatementPart {
  /** Whether the shop weighed the body alive or hot, so that offal can be expected. */
  private final boolean slaughtered = body.liveWeight().isPresent() || balance.hot().isPresent();

  RestAnswer(StatementPart statement) {
    super(statement);
  }

  /** Answers "Where is the rest?" where no picture does; empty if nothing is known of it. */
  Optional<Answer> answer() {
    var lines = new ArrayList<String>();
    if (is(Outcome.CONDEMNED)) {
      balance.boning().ifPresent(weight -> lines.add(say("rest.condemned", hung(weight))));
    } else {
      bins().ifPresent(lines::add);
      lines.addAll(slaughter());
    }
    String lead = say(is(Outcome.CONDEMNED) ? "rest.lead.condemned" : "rest.lead");
    return lines.isEmpty() ? Optional.empty() : Optional.of(answer("rest.question", lead, lines));
  }

  /** Bone, fat and waste, as far as the shop weighs them. */
  private Optional<String> bins() {
    var known = new ArrayList<String>();
    for (var kind : List.of(Kind.BONE, Kind.FAT, Kind.WASTE)) {
      var texts = new ArrayList<String>();
      weights(Step.PACK, pack -> weighings.kind(pack) == kind)
          .ifPresent(weight -> texts.add(say("rest.packed", weight)));
      weights(Step.BIN, bin -> weighings.binKind(bin) == kind && !weighings.isOffal(bin))
          .filter(weight -> settings.bins() != Bins.NO)
          .ifPresent(weight -> texts.add(say("rest.left", weight)));
      if (!texts.isEmpty()) {
        known.add(say("rest.fact", say(key(kind)), String.join(", ", texts)));
      }
    }
    String key = settings.bins() == Bins.WEIGHED ? "rest.bins" : "rest.bins.partly";
    return known.isEmpty() ? Optional.empty() : Optional.of(say(key, String.join(" · ", known)));
  }

  /**
   * Sentences on what came off at slaughter: what was weighed or bought of it, and what not. None
   * before the body has figures.
   */
  List<String> slaughter() {
    if (balance.outputs().isEmpty()) {
      return List.of();
    }
    var known = new ArrayList<String>();
    var unknown = new ArrayList<String>();
    var offal = account.sum(Entitlement::offal);
    if (!offal.isZero()) {
      known.add(say("rest.offal.packed", formats.fitting(offal, homeDecimals())));
    }
    for (var line : Offal.values()) {
      String name = say(key(line));
      var items = items(line);
      var left = weights(Step.BIN, bin -> items.contains(bin.item()));
      var became =
          isBought(line) ? Optional.of(say("rest.kept")) : left.map(w -> say("rest.left", w));
      became.ifPresent(text -> known.add(say("rest.fact", name, text)));
      var packed =
          weights(Step.PACK, w -> items.stream().anyMatch(item -> tree.isUnder(w.item(), item)));
      if (slaughtered && became.isEmpty() && packed.isEmpty() && isExpected(line)) {
        unknown.add(name);
      }
    }
    if (slaughtered) {
      unknown.add(say("rest.blood"));
    }
    var sentences = new ArrayList<String>();
    if (!known.isEmpty()) {
      sentences.add(say("rest.known", String.join(" · ", known)));
    }
    if (!unknown.isEmpty()) {
      boolean skinned = !items(Offal.HIDE).isEmpty() || !items(Offal.SKIN).isEmpty();
      boolean off = is(Outcome.CUT) && skinned;
      sentences.add(say(off ? "rest.unknown" : "rest.unknown.if", String.join(", ", unknown)));
    }
    return sentences;
  }

  private static String key(Enum<?> named) {
    return "rest." + named.name().toLowerCase(Locale.ROOT);
  }

  /** The offal of the species that the page names as one. */
  private List<String> items(Offal line) {
    return tree.items().stream()
        .filter(item -> item.kind() == Kind.OFFAL)
        .map(Item::id)
        .filter(item -> tree.facts(item).offalLine() == line)
        .toList();
  }

  /** Whether an animal of the species has it. Every animal has a skin, which may be left on. */
  private boolean isExpected(Offal line) {
    return switch (line) {
      case LIVER, OTHER -> true;
      case HIDE, HEAD -> !items(line).isEmpty();
      case SKIN -> items(Offal.HIDE).isEmpty();
    };
  }

  /** The printed weight of the weighings of one step; empty if there are none. */
  private Optional<String> weights(Step step, Predicate<Weighing> which) {
    return Optional.of(weighings.of(step, which)).filter(some -> !some.isEmpty()).map(this::total);
  }

  /** Whether the customer has a credit for the hide or skin, or one named after it. */
  private boolean isBought(Offal line) {
    return (line == Offal.HIDE || line == Offal.SKIN)
        && account.bill().credits().linesOf(own.customer()).stream()
            .map(Bill.Line::charge)
            .anyMatch(
                charge ->
                    items(line).stream()
                        .anyMatch(id -> charge.id().startsWith(id) || charge.item().equals(id)));
  }
}
