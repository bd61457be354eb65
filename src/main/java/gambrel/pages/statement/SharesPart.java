package gambrel.pages.statement;

import gambrel.pages.views.TextTable;
import gambrel.trade.account.Entitlement;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The weights of the whole body beside those of the customer. */
final class SharesPart {

  private SharesPart() {}

  /** The table; empty for a customer who has no share, or the whole body. */
  static Optional<TextTable> of(StatementContext subject) {
    if (!subject.isSharer() || subject.outputs().isEmpty() || subject.is(Outcome.CONDEMNED)) {
      return Optional.empty();
    }
    var wording = subject.wording();
    var outputs = subject.outputs().get();
    var own = subject.own();
    var rows = new ArrayList<List<String>>();
    rows.add(row(subject, "shares.take_home", outputs.takeHome(), own.takeHome()));
    var named = named(subject);
    if (!named.isZero()) {
      rows.add(row(subject, "shares.outright", named, own.outright()));
    }
    if (!outputs.offal().isZero()) {
      rows.add(row(subject, "shares.offal", outputs.offal(), own.offal()));
    }
    String key = subject.is(Outcome.WHOLE) ? "shares.sentence.whole" : "shares.sentence";
    String share = subject.share();
    var heads = List.of("", wording.say("shares.in_all"), wording.say("shares.yours", share));
    return Optional.of(new TextTable(wording.say(key, share), heads, rows, ""));
  }

  private static List<String> row(
      StatementContext subject, String label, Weight whole, Weight yours) {
    return List.of(subject.wording().say(label), subject.home(whole), subject.home(yours));
  }

  /** The weight of all packs that name a customer or the shop. */
  private static Weight named(StatementContext subject) {
    return Weight.sum(
        subject.account().entitlements().values().stream().map(Entitlement::outright).toList());
  }
}
