package gambrel.pages.owner.month;

import gambrel.insight.month.findings.Evidence;
import gambrel.insight.month.findings.Finding;
import gambrel.pages.owner.WeightPrinter;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Says a finding in plain sentences: what was seen, what to do, what it is worth and to whom. */
final class FindingWords {
  private static final int MOST_BODIES = 6;

  private final Wording wording;
  private final WeightPrinter places;

  FindingWords(Wording wording, WeightPrinter places) {
    this.wording = wording;
    this.places = places;
  }

  /** What was seen. */
  String seen(Finding finding) {
    var figures = new HashMap<String, String>();
    finding.evidence().forEach((name, value) -> figures.put(name, text(value)));
    return wording.words().say(finding.key("finding."), figures);
  }

  /** What to do next: the kind's own, unless the variant has a step of its own. */
  String next(Finding finding) {
    String own = finding.key("step.");
    return wording.say(wording.words().has(own) ? own : "step." + finding.kind().id());
  }

  /** How far to trust it. */
  String sure(Finding finding) {
    return wording.say("sure." + finding.sureness().id());
  }

  /** What it is worth, a line for each who bears it. */
  List<String> worth(Finding finding) {
    return finding.costs().stream()
        .map(cost -> wording.say("worth." + cost.whose().id(), money(cost.value())))
        .toList();
  }

  private String money(Money money) {
    return wording.formats().money(money);
  }

  private String text(Evidence evidence) {
    if (evidence instanceof Evidence.Percent percent) {
      return wording.say("number.percent", number(percent.value(), percent.decimals()));
    }
    if (evidence instanceof Evidence.Number number) {
      return number(number.value(), number.decimals());
    }
    if (evidence instanceof Evidence.Count count) {
      return wording.formats().count(count.value());
    }
    if (evidence instanceof Evidence.Mass mass) {
      return places.inProse(mass.value());
    }
    if (evidence instanceof Evidence.Borne borne) {
      return borne(borne);
    }
    if (evidence instanceof Evidence.Cash cash) {
      return money(cash.value());
    }
    return named(evidence);
  }

  private String named(Evidence evidence) {
    if (evidence instanceof Evidence.Rate rate) {
      var formats = wording.formats();
      return wording.say("number.rate", formats.money(rate.value()), formats.unit());
    }
    if (evidence instanceof Evidence.Day day) {
      return wording.formats().date(day.value());
    }
    if (evidence instanceof Evidence.Month month) {
      return wording.formats().month(month.value());
    }
    if (evidence instanceof Evidence.Kind kind) {
      return wording.say("summary.kind." + kind.value().id());
    }
    if (evidence instanceof Evidence.Bodies bodies) {
      return bodies(bodies.ids());
    }
    if (evidence instanceof Evidence.Cuts cuts) {
      return cuts.items().stream()
          .map(item -> wording.cut(cuts.species(), item))
          .collect(Collectors.joining(", "));
    }
    return ((Evidence.Name) evidence).value();
  }

  /** A weight for each who bears it, the last one after an "and". */
  private String borne(Evidence.Borne borne) {
    var parts = new ArrayDeque<String>();
    borne
        .weights()
        .forEach(
            (whose, weight) ->
                parts.add(wording.say("borne." + whose.id(), places.inProse(weight))));
    String last = parts.removeLast();
    return parts.isEmpty() ? last : wording.say("borne.and", String.join(", ", parts), last);
  }

  private String bodies(List<String> ids) {
    String first = ids.stream().limit(MOST_BODIES).collect(Collectors.joining(", "));
    int more = ids.size() - MOST_BODIES;
    return more > 0 ? wording.say("summary.more", first, wording.formats().count(more)) : first;
  }

  private String number(BigFraction value, int decimals) {
    BigDecimal shown = Exact.round(value, decimals);
    return wording.formats().number(shown.setScale(decimals, RoundingMode.UNNECESSARY));
  }
}
