package gambrel.wording;

import gambrel.cuts.Species;
import gambrel.shop.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Short sentences for the end of the page. */
final class CautionPart {
  /** From this age on parts of cattle may not be eaten: 9 CFR 310.22 and its like elsewhere. */
  private static final int RISK_MONTHS = 30;

  private CautionPart() {}

  static List<String> of(Subject subject) {
    var wording = subject.wording();
    var cautions = new ArrayList<String>();
    String region = subject.settings().region().id();
    if (!subject.is(Outcome.CONDEMNED)) {
      cattle(subject, region, cautions);
      cautions.add(wording.say("caution.sale." + region));
      cautions.add(wording.say("caution.raw"));
    }
    cautions.add(wording.say("caution.label"));
    cautions.add(wording.say("caution.local"));
    return cautions;
  }

  private static void cattle(Subject subject, String region, List<String> cautions) {
    if (subject.body().species() != Species.BEEF) {
      return;
    }
    var wording = subject.wording();
    var age = subject.body().ageMonths();
    if (age.isPresent() && age.get() < RISK_MONTHS) {
      return;
    }
    String known =
        age.map(months -> wording.say("caution.cattle.age", subject.formats().count(months)))
            .orElseGet(() -> wording.say("caution.cattle.unknown"));
    cautions.add(known + " " + wording.say("caution.cattle." + region));
  }
}
