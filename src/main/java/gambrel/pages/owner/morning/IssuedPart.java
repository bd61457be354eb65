package gambrel.pages.owner.morning;

import gambrel.pages.owner.Names;
import gambrel.pages.views.MorningView.Issued;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.register.RegisterRow;
import java.util.List;
import java.util.Optional;

/** The statements that went out last night. */
final class IssuedPart {
  private final MorningReport report;
  private final Wording wording;
  private final Names named;

  IssuedPart(MorningReport report, Wording wording) {
    this.report = report;
    this.wording = wording;
    this.named = new Names(report.night(), wording);
  }

  List<Issued> of(List<RegisterRow> rows) {
    return rows.stream().map(this::issued).toList();
  }

  private Issued issued(RegisterRow row) {
    String revision =
        row.revision() == 1
            ? ""
            : wording.say("morning.revision", wording.formats().count(row.revision()));
    return new Issued(
        named.customer(row.customer()),
        row.body(),
        revision,
        wording.formats().weight(row.takeHome(), decimals(row)),
        isCharged(row) ? wording.formats().money(row.due()) : "");
  }

  /** Those of the packs' scales, or more where a share was divided finer. */
  private int decimals(RegisterRow row) {
    WeightUnit unit = report.night().shop().settings().unit();
    int shown =
        Optional.ofNullable(report.night().bodies().get(row.body()))
            .map(account -> WeightDecimals.of(account.balance().weighings().out(), unit))
            .orElse(0);
    return WeightDecimals.fitting(shown, List.of(row.takeHome()));
  }

  /** Who gets packs by name only has nothing to pay. */
  private boolean isCharged(RegisterRow row) {
    return Optional.ofNullable(report.night().bodies().get(row.body()))
        .map(account -> account.entitlements().get(row.customer()))
        .filter(entitlement -> entitlement.isOutrightOnly())
        .isEmpty();
  }
}
