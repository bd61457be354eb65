package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.pages.views.FlowView;
import gambrel.pages.views.FlowView.Kind;
import gambrel.pages.views.TableView;
import gambrel.pages.words.PrintedShares;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The picture of all weight of the month, as on a statement, and the same in sums of owners. */
record KilosPart(MonthPart.Page page) implements MonthPart {
  /** What is taken off before the boning room, in the order of the way. */
  private static final Map<FigureName, Kind> BEFORE = new EnumMap<>(FigureName.class);

  /** What the weight into the boning room divides into. */
  private static final Map<FigureName, Kind> AFTER = new EnumMap<>(FigureName.class);

  static {
    BEFORE.put(FigureName.ROOM_CHILL, Kind.LOST);
    BEFORE.put(FigureName.ROOM_HANGING, Kind.LOST);
    BEFORE.put(FigureName.ROOM_TRIM, Kind.LEFT);
    BEFORE.put(FigureName.ROOM_WHOLE, Kind.HOME);
    AFTER.put(FigureName.ROOM_HOME, Kind.HOME);
    AFTER.put(FigureName.ROOM_BONE, Kind.LEFT);
    AFTER.put(FigureName.ROOM_FAT, Kind.LEFT);
    AFTER.put(FigureName.ROOM_WASTE, Kind.LEFT);
    AFTER.put(FigureName.ROOM_UNWEIGHED, Kind.LOST);
    AFTER.put(FigureName.ROOM_HUNG_UNWEIGHED, Kind.LOST);
    AFTER.put(FigureName.ROOM_BENCH, Kind.LOST);
    AFTER.put(FigureName.ROOM_BATCH, Kind.LOST);
  }

  /** A part of the first weight as it is printed, and its share in tenths of a per cent. */
  private record Part(FigureName name, Kind kind, Weight weight, long tenths) {}

  /** The picture; empty without a body that was cut or left whole. */
  Optional<FlowView> picture() {
    var first = ofAll(FigureName.ROOM_FIRST);
    var parts = parts();
    return first
        .filter(figure -> !parts.isEmpty() && sum(parts).compareTo(Weight.ZERO) > 0)
        .map(figure -> picture(parts, figure.bodies()));
  }

  /** A figure of all owners' bodies together; empty if it is of none. */
  private Optional<MonthFigure> ofAll(FigureName name) {
    return report().find(name, Optional.empty(), Optional.empty(), BodyGroup.ALL);
  }

  private FlowView picture(List<Part> parts, int bodies) {
    var first = sum(parts);
    var bars = new ArrayList<FlowView.Row>();
    bars.add(bar(first, stage(FigureName.ROOM_FIRST, parts), Weight.ZERO));
    var left = first;
    for (var part : of(BEFORE, parts)) {
      left = left.minus(part.weight());
      bars.add(bar(first, part, left));
    }
    var after = of(AFTER, parts);
    if (!after.isEmpty()) {
      bars.add(bar(first, stage(FigureName.ROOM_BONING, after), Weight.ZERO));
      var at = Weight.ZERO;
      for (var part : after) {
        bars.add(bar(first, part, at));
        at = at.plus(part.weight());
      }
    }
    return new FlowView(bars, List.of(wording().counted("kilos.note", bodies)));
  }

  private static Weight sum(List<Part> parts) {
    return Weight.sum(parts.stream().map(Part::weight).toList());
  }

  /** A weight that is divided into parts. */
  private static Part stage(FigureName name, List<Part> parts) {
    return new Part(name, Kind.STAGE, sum(parts), parts.stream().mapToLong(Part::tenths).sum());
  }

  private static List<Part> of(Map<FigureName, Kind> names, List<Part> parts) {
    return parts.stream().filter(part -> names.containsKey(part.name())).toList();
  }

  /** The parts that the month has; as printed they add up to their whole and to 100.0 %. */
  private List<Part> parts() {
    var kinds = new EnumMap<FigureName, Kind>(BEFORE);
    kinds.putAll(AFTER);
    var known = new EnumMap<FigureName, Weight>(FigureName.class);
    for (var name : kinds.keySet()) {
      ofAll(name).flatMap(MonthFigure::value).ifPresent(v -> known.put(name, Weight.of(v)));
    }
    var weights = List.copyOf(known.values());
    var whole = Weight.sum(weights);
    if (whole.isZero()) {
      return List.of();
    }
    var printed = PrintedShares.weights(weights, weights().prose());
    var tenths = PrintedShares.tenths(1000, weights, whole);
    var parts = new ArrayList<Part>();
    for (var name : known.keySet()) {
      int place = parts.size();
      parts.add(new Part(name, kinds.get(name), printed.get(place), tenths.get(place)));
    }
    return parts;
  }

  private FlowView.Row bar(Weight first, Part part, Weight from) {
    return FlowView.Row.between(
        part.kind(),
        say("kilos." + part.name().id()),
        place(from, first),
        place(from.plus(part.weight()), first),
        formats().weight(part.weight(), weights().prose()),
        formats().percentTenths(part.tenths()));
  }

  private static int place(Weight weight, Weight first) {
    return Exact.round(weight.percentOf(first).multiply(FlowView.FULL / 100), 0).intValueExact();
  }

  /** A row for each owner; a column of which no owner has a weight is left out. */
  List<TableView> sums() {
    var lines =
        report().figures(FigureName.ROOM_FIRST).filter(sum -> sum.whose().isPresent()).toList();
    var table =
        new TableBuilder<MonthFigure>("sums figures even short")
            .first("", line -> owner(line.whose().orElseThrow()), "kinds")
            .number(say("number"), line -> count(line.bodies()));
    Stream.of(
            FigureName.ROOM_FIRST,
            FigureName.ROOM_WHOLE,
            FigureName.ROOM_BONING,
            FigureName.ROOM_HOME,
            FigureName.ROOM_OFFAL)
        .filter(name -> lines.stream().anyMatch(line -> !sum(name, line).isEmpty()))
        .forEach(
            name -> table.number(label("kilos." + name.id(), unit()), line -> sum(name, line)));
    return table.rows(lines).table();
  }

  private String sum(FigureName name, MonthFigure line) {
    return report()
        .value(name, line)
        .map(sum -> formats().bareWeight(Weight.of(sum), weights().prose()))
        .orElse("");
  }
}
