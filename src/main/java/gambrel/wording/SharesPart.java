package gambrel.wording;

import gambrel.measure.Weight;
import gambrel.owner.Entitlement;
import gambrel.shop.Outcome;
import gambrel.statement.SharesView;
import java.util.ArrayList;
import java.util.Optional;

/** What the whole body gave and what this household got of it. */
final class SharesPart {

  private SharesPart() {}

  /** Empty for a customer with no share, or with the whole body. */
  static Optional<SharesView> of(Subject subject) {
    if (!subject.isSharer() || subject.outputs().isEmpty() || subject.is(Outcome.CONDEMNED)) {
      return Optional.empty();
    }
    var wording = subject.wording();
    var outputs = subject.outputs().get();
    var own = subject.own();
    var rows = new ArrayList<SharesView.Row>();
    rows.add(row(subject, "shares.take_home", outputs.takeHome(), own.takeHome()));
    var named = named(subject);
    if (!named.isZero()) {
      rows.add(row(subject, "shares.outright", named, own.outright()));
    }
    if (!outputs.offal().isZero()) {
      rows.add(row(subject, "shares.offal", outputs.offal(), own.offal()));
    }
    String key = subject.is(Outcome.WHOLE) ? "shares.sentence.whole" : "shares.sentence";
    return Optional.of(
        new SharesView(
            wording.say(key, subject.share()), wording.say("shares.yours", subject.share()), rows));
  }

  private static SharesView.Row row(Subject subject, String label, Weight whole, Weight yours) {
    return new SharesView.Row(
        subject.wording().say(label), subject.home(whole), subject.home(yours));
  }

  /** All packs with a customer's name, the shop's own included. */
  private static Weight named(Subject subject) {
    return Weight.sum(
        subject.account().entitlements().values().stream().map(Entitlement::outright).toList());
  }
}
