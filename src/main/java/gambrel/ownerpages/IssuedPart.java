package gambrel.ownerpages;

import gambrel.measure.WeightUnit;
import gambrel.register.MorningReport;
import gambrel.register.RegisterRow;
import gambrel.statement.MorningView.Issued;
import gambrel.wording.Decimals;
import gambrel.wording.Wording;
import java.util.List;
import java.util.Optional;

/** The statements that went out last night. */
final class IssuedPart {
  private final MorningReport report;
  private final Wording wording;
  private final Named named;

  IssuedPart(MorningReport report, Wording wording) {
    this.report = report;
    this.wording = wording;
    this.named = new Named(report.night(), wording);
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
            .map(account -> Decimals.of(account.balance().weighings().out(), unit))
            .orElse(0);
    return Decimals.fitting(shown, List.of(row.takeHome()));
  }

  /** Who gets packs by name only has nothing to pay. */
  private boolean isCharged(RegisterRow row) {
    return Optional.ofNullable(report.night().bodies().get(row.body()))
        .map(account -> account.entitlements().get(row.customer()))
        .filter(entitlement -> entitlement.isOutrightOnly())
        .isEmpty();
  }
}
