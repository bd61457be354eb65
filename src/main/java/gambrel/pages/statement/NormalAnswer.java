package gambrel.pages.statement;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.usual.Comparison;
import gambrel.insight.usual.Comparison.Compared;
import gambrel.insight.usual.Comparison.Verdict;
import gambrel.pages.views.Answer;
import gambrel.trade.measure.Exact;
import gambrel.trade.shop.PublishedRanges.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Answers "Is that normal?": with like bodies of the shop, else with published ranges. These are
 * printed beside the figures; what lies outside them may still be sound, so they decide nothing.
 */
final class NormalAnswer extends StatementPart {
  /** The figures of which ranges are published. */
  private static final List<BodyFigure> PUBLISHED = List.of(BodyFigure.CHILL, BodyFigure.DRESSING);

  private final Optional<Comparison> comparison;

  NormalAnswer(StatementPart statement, Optional<Comparison> comparison) {
    super(statement);
    this.comparison = comparison;
  }

  /** The answer; it says so if there is nothing to compare with. */
  Answer answer() {
    if (!account.decision().released().isEmpty()) {
      return answer(say("normal.lead.released"), List.of());
    }
    return comparison
        .map(of -> answer(lead(of), own(of)))
        .or(this::published)
        .orElseGet(() -> answer(say("normal.lead.few"), List.of()));
  }

  private Answer answer(String lead, List<String> lines) {
    return answer("normal.question", lead, lines);
  }

  private String lead(Comparison of) {
    String bodies = formats.count(of.bodies());
    if (of.isOutside()) {
      return say("normal.lead.outside", bodies, category());
    }
    return of.usual().isEmpty()
        ? say("normal.lead.within", bodies, category())
        : say("normal.lead.usual", names(of.usual()), bodies, category());
  }

  /** The class; the species where the shop writes no class. */
  private String category() {
    return body.category().isEmpty() ? wording.kind(body.species()) : wording.category(body);
  }

  private String names(List<BodyFigure> figures) {
    return figures.stream()
        .map(of -> say("normal.name." + of.id()))
        .collect(Collectors.joining(", "));
  }

  private List<String> own(Comparison comparison) {
    var lines = new ArrayList<String>();
    comparison.figures().forEach(of -> lines.add(own(of, comparison.bodies())));
    lines.add(say("normal.like"));
    return lines;
  }

  /** A figure with its range, and of how many bodies that is if not of all that are alike. */
  private String own(Compared of, int alike) {
    String low = formats.percent(Exact.fraction(of.range().low()));
    String high = formats.percent(Exact.fraction(of.range().high()));
    boolean none = of.range().low().signum() <= 0;
    String ours = none ? say("normal.ours.most", high) : say("normal.ours", low, high);
    String range =
        of.bodies() < alike
            ? say("normal.ours.some", ours, formats.count(of.bodies()), formats.count(alike))
            : ours;
    String line = line(of.figure(), formats.percent(of.share().percent()), range);
    return of.isOutside()
        ? line + " " + say(of.verdict() == Verdict.BELOW ? "normal.below" : "normal.above")
        : line;
  }

  private String line(BodyFigure figure, String percent, String range) {
    return say("normal." + figure.id(), percent, range);
  }

  private Optional<Answer> published() {
    var lines = PUBLISHED.stream().flatMap(figure -> published(figure).stream()).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(answer(say("normal.lead.published"), lines));
  }

  private Optional<String> published(BodyFigure figure) {
    var range = night.shop().ranges().of(body, settings.region(), figure.id(), balance.daysHung());
    return figure
        .of(balance)
        .flatMap(
            share ->
                range.map(of -> line(figure, formats.percent(share.percent()), published(of))));
  }

  private String published(Range range) {
    return say(
        "normal.published",
        formats.percent(range.low()),
        formats.percent(range.high()),
        wording.source(range));
  }
}
