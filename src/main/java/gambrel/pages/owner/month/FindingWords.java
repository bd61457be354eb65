package gambrel.pages.owner.month;

import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.pages.views.FirstPage;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Puts a finding into sentences: what was seen, what to do next, what it is worth and to whom. */
record FindingWords(Wording wording, WeightPrinter weights) {
  private static final int MOST_BODIES = 6;

  FirstPage.Row row(Finding finding) {
    String ownStep = finding.key("step.");
    var worth =
        finding.costs().stream()
            .map(cost -> wording.say("worth." + cost.whose().id(), money(cost.value())))
            .toList();
    return new FirstPage.Row(
        seen(finding),
        wording.say("sure." + finding.sureness().id()),
        wording.say(wording.words().has(ownStep) ? ownStep : "step." + finding.kind().id()),
        worth);
  }

  /** What was seen. */
  String seen(Finding finding) {
    var figures = new HashMap<String, String>();
    finding.evidence().forEach((name, value) -> figures.put(name, text(value)));
    boolean one = finding.kind() == Finding.Kind.CHILLER && !finding.accused().isEmpty();
    String seen = wording.words().say(finding.key("finding.") + (one ? ".named" : ""), figures);
    return figures.containsKey("explained")
        ? seen + ' ' + wording.words().say("finding.explained", figures)
        : seen;
  }

  private String money(Money money) {
    return wording.formats().money(money);
  }

  private String text(Evidence evidence) {
    var formats = wording.formats();
    if (evidence instanceof Evidence.Percent percent) {
      return wording.say("number.percent", number(percent.value(), percent.decimals()));
    } else if (evidence instanceof Evidence.Number number) {
      return number(number.value(), number.decimals());
    } else if (evidence instanceof Evidence.Count count) {
      return formats.count(count.value());
    } else if (evidence instanceof Evidence.Mass mass) {
      return weights.inProse(mass.value());
    } else if (evidence instanceof Evidence.Borne borne) {
      return borne(borne);
    } else if (evidence instanceof Evidence.Cash cash) {
      return money(cash.value());
    } else if (evidence instanceof Evidence.Rate rate) {
      return wording.say("number.rate", formats.money(rate.value()), formats.unit());
    } else if (evidence instanceof Evidence.Day day) {
      return formats.date(day.value());
    } else if (evidence instanceof Evidence.Kind kind) {
      return wording.kind(kind.value());
    } else if (evidence instanceof Evidence.Kinds kinds) {
      return list("borne.and", kinds.values().stream().map(wording::kind).toList());
    } else if (evidence instanceof Evidence.Bodies bodies) {
      return wording.names(bodies.ids(), MOST_BODIES);
    } else if (evidence instanceof Evidence.Cuts cuts) {
      return cuts.items().stream()
          .map(item -> wording.cut(cuts.species(), item))
          .collect(Collectors.joining(", "));
    }
    return evidence instanceof Evidence.Names names
        ? list("borne.or", names.values())
        : ((Evidence.Name) evidence).value();
  }

  /** A weight for each owner. */
  private String borne(Evidence.Borne borne) {
    var parts = new ArrayList<String>();
    borne
        .weights()
        .forEach(
            (whose, weight) ->
                parts.add(wording.say("borne." + whose.id(), weights.inProse(Weight.of(weight)))));
    return list("borne.and", parts);
  }

  /** Several things, with "and" or "or" before the last. */
  private String list(String key, Collection<String> all) {
    var parts = new ArrayDeque<>(all);
    String last = parts.removeLast();
    return parts.isEmpty() ? last : wording.say(key, String.join(", ", parts), last);
  }

  private String number(BigFraction value, int decimals) {
    return wording.formats().number(Exact.round(value, decimals));
  }
}
