package gambrel.laws;

import gambrel.pages.views.Answer;
import gambrel.pages.views.ChargesView;
import gambrel.pages.views.CutsView;
import gambrel.pages.views.FlowView;
import gambrel.pages.views.PrintedRows;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Adds up what a statement prints, as a reader with a pencil does. */
final class PrintedSums {
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(\\.\\d+)?");
  private static final int MOST_PLACES = 4;

  private final StatementView view;
  private final Wording wording;
  private final List<String> wrong = new ArrayList<>();
  private int added;

  PrintedSums(StatementView view, Wording wording) {
    this.view = view;
    this.wording = wording;
    view.boxes().ifPresent(this::boxes);
    view.boxes().ifPresent(this::headline);
    view.flow().ifPresent(this::picture);
    view.flow().ifPresent(flow -> view.boxes().ifPresent(boxes -> takeHome(boxes, flow)));
    view.charges().ifPresent(this::charges);
    owed();
  }

  /** The sums that do not add up. */
  List<String> wrong() {
    return wrong;
  }

  /** How many sums were added up. */
  int added() {
    return added;
  }

  private void same(String what, BigDecimal sum, BigDecimal parts) {
    added++;
    if (sum.compareTo(parts) != 0) {
      wrong.add(what + ": " + sum + " is printed, " + parts + " is their sum");
    }
  }

  /** A printed number; a minus may stand before its currency. */
  private static BigDecimal number(String text) {
    var found = NUMBER.matcher(text);
    if (!found.find()) {
      throw new AssertionError("no number in " + text);
    }
    var size = new BigDecimal(found.group().replace(",", ""));
    return text.contains("\u2212") ? size.negate() : size;
  }

  private static BigDecimal sum(Stream<String> texts) {
    return texts.map(PrintedSums::number).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** What stands in the places of a sentence if {@code text} is one; empty if it is another. */
  private Optional<List<String>> read(String key, String text) {
    if (!wording.words().has(key)) {
      throw new AssertionError("no words " + key);
    }
    var places = new String[MOST_PLACES];
    Arrays.setAll(places, i -> "<" + i + ">");
    var order = new ArrayList<Integer>();
    var pattern = new StringBuilder();
    var place = Pattern.compile("<(\\d)>").matcher(wording.say(key, places));
    int from = 0;
    var said = wording.say(key, places);
    while (place.find()) {
      pattern.append(Pattern.quote(said.substring(from, place.start()))).append("(.+)");
      order.add(Integer.valueOf(place.group(1)));
      from = place.end();
    }
    pattern.append(Pattern.quote(said.substring(from)));
    var found = Pattern.compile(pattern.toString()).matcher(text);
    if (!found.matches()) {
      return Optional.empty();
    }
    var texts = new ArrayList<>(List.of("", "", "", ""));
    for (int i = 0; i < order.size(); i++) {
      texts.set(order.get(i), found.group(i + 1));
    }
    return Optional.of(texts);
  }

  private Optional<List<String>> readCounted(String key, String text) {
    return read(key + ".one", text).or(() -> read(key + ".many", text));
  }

  private Optional<Answer> answer(String key) {
    return view.answers().stream().filter(answer -> answer.key().equals(key)).findFirst();
  }

  private void boxes(CutsView boxes) {
    var rows = PrintedRows.of(boxes);
    boxes
        .total()
        .ifPresent(
            total -> {
              same("boxes", number(total.weight()), sum(rows.stream().map(CutsView.Row::weight)));
              if (!total.packs().isEmpty()) {
                same("packs", number(total.packs()), sum(rows.stream().map(CutsView.Row::packs)));
              }
            });
  }

  /** The first line rounds the total of the boxes; its kinds add up to that total. */
  private void headline(CutsView boxes) {
    var packs = answer("packs").orElseThrow();
    var lead =
        readCounted("packs.lead.all", packs.lead())
            .or(() -> readCounted("packs.lead.some", packs.lead()))
            .or(() -> read("packs.share.lead", packs.lead()).map(said -> List.of("", said.get(0))))
            .or(() -> read("packs.whole.lead", packs.lead()).map(said -> List.of("", said.get(0))));
    if (lead.isEmpty()) {
      return;
    }
    var weight = number(lead.get().get(1));
    // A list without a sum has one line.
    var total = number(boxes.total().orElse(PrintedRows.of(boxes).get(0)).weight());
    var shown = total.subtract(onTop());
    same("headline", weight, shown.setScale(weight.scale(), RoundingMode.HALF_UP));
    boxes
        .total()
        .filter(row -> !row.packs().isEmpty())
        .ifPresent(
            row -> same("packs of the headline", number(lead.get().get(0)), number(row.packs())));
    packs.lines().stream()
        .map(line -> List.of(line.replaceFirst("\\.$", "").split(", ")))
        .filter(kinds -> kinds.stream().allMatch(this::isKind))
        .forEach(kinds -> same("kinds", total, sum(kinds.stream())));
  }

  /**
   * List and picture have one take-home: its kind in the list, or all of the list. A customer who
   * has a part of the body reads his part in the list and the whole in the picture.
   */
  private void takeHome(CutsView boxes, FlowView flow) {
    var texts = view.answers().stream().flatMap(answer -> answer.lines().stream()).toList();
    boolean part =
        texts.stream()
            .anyMatch(
                line ->
                    read("why.yours", line).isPresent()
                        || read("mine.elsewhere", line).isPresent());
    // The picture leaves out what was trimmed off on the rail.
    var trim = wording.say("flow.trim", "#").split("#")[0];
    boolean trimmed = flow.notes().stream().anyMatch(note -> note.contains(trim));
    if (part || trimmed || boxes.total().isEmpty()) {
      return;
    }
    var kinds =
        texts.stream()
            .flatMap(line -> Stream.of(line.replaceFirst("\\.$", "").split(", ")))
            .filter(this::isKind)
            .toList();
    var home =
        flow.rows().stream().filter(row -> row.label().equals(wording.say("flow.home"))).toList();
    var list =
        kinds.isEmpty()
            ? number(boxes.total().orElseThrow().weight()).subtract(onTop())
            : number(kinds.get(0));
    same("take-home of list and picture", number(home.get(0).weight()), list);
    var packed =
        flow.notes().stream().flatMap(note -> offal(wording.say("rest.offal.packed", "#"), note));
    // What the boxes hold is told twice: in the first answer, and on top of the take-home.
    var listed = kinds.stream().flatMap(k -> read("packs.part.offal", k).stream()).limit(1);
    var offal = sum(listed.map(said -> said.get(0))).add(onTop());
    packed.forEach(weight -> same("offal of list and picture", weight, offal));
  }

  /** The weight in a note that says how much offal was packed; none if it says nothing of it. */
  private static Stream<BigDecimal> offal(String said, String note) {
    var pattern = said.replace("#", "(" + NUMBER.pattern() + "\\S*)");
    return Pattern.compile(pattern).matcher(note).results().map(found -> number(found.group(1)));
  }

  /** The offal that comes on top of a body left whole. */
  private BigDecimal onTop() {
    return answer("packs").orElseThrow().lines().stream()
        .flatMap(line -> read("packs.offal", line).stream())
        .map(said -> number(said.get(0)))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private boolean isKind(String part) {
    return Stream.of("meat", "bone", "fat", "offal", "added")
        .anyMatch(kind -> read("packs.part." + kind, part).isPresent());
  }

  /**
   * Each weight of the body is what is taken off it and what is left of it. Where no loss stands
   * between two weights, nothing is said of it: parts were not weighed at both.
   */
  private void picture(FlowView flow) {
    var rows = flow.rows();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).kind() == FlowView.Kind.STAGE) {
        int next = i + 1;
        while (next < rows.size() && rows.get(next).kind() != FlowView.Kind.STAGE) {
          next++;
        }
        var parts = new ArrayList<>(rows.subList(i + 1, next));
        boolean whole = parts.size() == 1 && parts.get(0).kind() == FlowView.Kind.HOME;
        if (!parts.isEmpty() && !whole) {
          parts.addAll(rows.subList(next, Math.min(next + 1, rows.size())));
          add("picture, " + rows.get(i).label(), rows.get(i), parts);
        }
      }
    }
  }

  private void add(String what, FlowView.Row whole, Collection<FlowView.Row> parts) {
    same(what, number(whole.weight()), sum(parts.stream().map(FlowView.Row::weight)));
    same(what + ", %", number(whole.share()), sum(parts.stream().map(FlowView.Row::share)));
  }

  private void charges(ChargesView charges) {
    var left = BigDecimal.ZERO;
    for (var section : charges.sections()) {
      var rows = sum(section.rows().stream().map(ChargesView.Row::amount));
      var total = rows;
      for (var line : section.sums()) {
        var amount = number(line.amount());
        if (line.label().equals(wording.say("charges.net"))) {
          same("charges without tax", amount, rows);
        } else if (line.label().equals(wording.say("charges.total"))) {
          same("charges", amount, total);
        } else if (read("charges.paid", line.label()).isPresent()) {
          left = left.add(amount);
        } else if (line.label().equals(wording.say("charges.due.credit"))) {
          same("credit", amount.negate(), left);
        } else if (line.strong()) {
          same("still to pay", amount, left);
        } else if (read("charges.tax.included", line.label()).isEmpty()) {
          total = total.add(amount);
        }
      }
      left = section.rows().isEmpty() ? left : left.add(total);
    }
  }

  /** What is owed is the last sum; with other statements and payments it is what is owed in all. */
  private void owed() {
    var owe = answer("owe").orElseThrow();
    var due =
        read("owe.by.lead", owe.lead())
            .or(() -> read("owe.due.lead", owe.lead()))
            .map(said -> number(said.get(0)))
            .or(
                () ->
                    read("owe.credit.lead", owe.lead()).map(said -> number(said.get(0)).negate()));
    view.charges()
        .ifPresent(
            charges -> {
              var sums = PrintedRows.sums(charges);
              var last = sums.get(sums.size() - 1);
              boolean credit = last.label().equals(wording.say("charges.due.credit"));
              var amount = credit ? number(last.amount()).negate() : number(last.amount());
              due.ifPresent(d -> same("what is owed", d, amount));
              owe.lines().forEach(line -> account(line, amount));
            });
  }

  private void account(String line, BigDecimal due) {
    var all = read("owe.all", line);
    var credit = read("owe.all.credit", line);
    if (all.isPresent() || credit.isPresent()) {
      var said = all.or(() -> credit).orElseThrow();
      var sum = number(said.get(1));
      var parts = due;
      var amounts = Pattern.compile("\\(([^)]*\\d[^)]*)\\)").matcher(said.get(0));
      while (amounts.find()) {
        parts = parts.add(number(amounts.group(1)));
      }
      same("account", all.isPresent() ? sum : sum.negate(), parts);
    }
  }
}
