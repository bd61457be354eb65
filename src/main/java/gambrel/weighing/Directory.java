package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Body;
import gambrel.shop.Customer;
import gambrel.shop.IdIndex;
import gambrel.shop.Scale;
import gambrel.shop.ScaleCode;
import gambrel.shop.Shop;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds what the cells of a row name, and remembers what fitted only without leading zeros. */
final class Directory {
  /** A tag counts for bodies killed up to so many days before the weighing. */
  private static final int TAG_DAYS_BEFORE = 60;

  /** A tag counts for bodies killed up to so many days after the weighing. */
  private static final int TAG_DAYS_AFTER = 2;

  private final Shop shop;
  private final IdIndex bodies;
  private final IdIndex customers;
  private final IdIndex scales;
  private final IdIndex tags;
  private final IdIndex batches;
  private final Map<String, List<Body>> byTag = new HashMap<>();
  private final Map<String, ScaleCode> exactCodes = new HashMap<>();
  private final List<ScaleCode> prefixCodes = new ArrayList<>();
  private final IdIndex codes;
  private final Map<String, Notice> notices = new TreeMap<>();

  Directory(Shop shop) {
    this.shop = shop;
    bodies = new IdIndex(shop.bodies().keySet());
    customers = new IdIndex(shop.customers().keySet());
    scales = new IdIndex(shop.scales().keySet());
    batches = new IdIndex(shop.batches().keySet());
    for (var body : shop.bodies().values()) {
      body.tags().forEach(tag -> byTag.computeIfAbsent(tag, t -> new ArrayList<>()).add(body));
    }
    tags = new IdIndex(byTag.keySet());
    for (var code : shop.codes()) {
      if (code.pattern().endsWith("*")) {
        prefixCodes.add(code);
      } else {
        exactCodes.putIfAbsent(code.pattern(), code);
      }
    }
    prefixCodes.sort(Comparator.comparing((ScaleCode c) -> c.pattern().length()).reversed());
    codes = new IdIndex(exactCodes.keySet());
  }

  /** A note for every id that fitted only without its leading zeros. */
  Collection<Notice> notices() {
    return notices.values();
  }

  private String taken(String kind, String written, IdIndex.Match match) {
    if (!match.exact()) {
      notices.putIfAbsent(
          kind + '\n' + written,
          Notice.of(
              NoticeCode.ID_ZEROS,
              Place.NONE,
              "The " + kind + " " + written + " of the exports is taken as " + match.id() + "."));
    }
    return match.id();
  }

  Scale scale(String text) throws Refusal {
    var match =
        scales
            .find(text)
            .orElseThrow(
                () ->
                    new Refusal(
                        NoticeCode.SCALE_UNKNOWN,
                        text.isEmpty()
                            ? "The row names no scale."
                            : "scales.csv has no scale " + text + "."));
    return shop.scales().get(taken("scale", text, match));
  }

  ScaleCode code(String text) throws Refusal {
    var exact = exactCodes.get(text);
    if (exact != null) {
      return exact;
    }
    for (var code : prefixCodes) {
      if (text.startsWith(code.pattern().substring(0, code.pattern().length() - 1))) {
        return code;
      }
    }
    var match =
        codes
            .find(text)
            .orElseThrow(
                () ->
                    new Refusal(
                        NoticeCode.CODE_UNKNOWN,
                        text.isEmpty()
                            ? "The row has no code."
                            : "codes.csv has no code " + text + "."));
    return exactCodes.get(taken("code", text, match));
  }

  String customer(String text) throws Refusal {
    if (text.isEmpty() || text.equals(Customer.SHOP)) {
      return text;
    }
    var match =
        customers
            .find(text)
            .orElseThrow(
                () ->
                    new Refusal(
                        NoticeCode.CUSTOMER_UNKNOWN,
                        "customers.csv has no customer " + text + "."));
    return taken("customer", text, match);
  }

  /** The batch as batches.csv writes it; an unlisted one as it stands. */
  String batch(String text) {
    return batches
        .find(text)
        .map(match -> taken("batch", text, match))
        .orElse(text);
  }

  /** The body that a cell means on {@code date}; empty where the cell is blank. */
  Optional<Body> body(String text, LocalDate date) throws Refusal {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var candidates = candidates(text, date);
    if (candidates.isEmpty()) {
      throw new Refusal(NoticeCode.BODY_UNKNOWN, unknown(text, date));
    }
    if (candidates.size() > 1) {
      throw new Refusal(
          NoticeCode.BODY_AMBIGUOUS,
          "The number "
              + text
              + " is a tag of the bodies "
              + String.join(" and ", candidates.stream().map(Body::id).toList())
              + ".");
    }
    return Optional.of(candidates.get(0));
  }

  /** Names the body of a tag that is too old or too new to be meant. */
  private String unknown(String text, LocalDate date) {
    var tag = tags.find(text).map(IdIndex.Match::id).orElse(text);
    return byTag.getOrDefault(tag, List.of()).stream()
        .min(Comparator.comparing(body -> distance(body, date)))
        .map(body -> lost(text, body, date))
        .orElse("bodies.csv has no body " + text + ".");
  }

  private static long distance(Body body, LocalDate date) {
    return body.killed().map(k -> Math.abs(ChronoUnit.DAYS.between(k, date))).orElse(Long.MAX_VALUE);
  }

  private static String lost(String text, Body body, LocalDate date) {
    String when =
        body.killed()
            .map(k -> ChronoUnit.DAYS.between(k, date))
            .map(days -> days < 0 ? "killed " + -days + " days later" : "killed " + days + " days before")
            .orElse("whose kill date is not known");
    return "The tag " + text + " belongs to body " + body.id() + ", " + when
        + ": another animal's is likely.";
  }

  /** Every body that a cell may mean: one by id, else by tag, each as written before without zeros. */
  List<Body> candidates(String text, LocalDate date) {
    var byId = bodies.find(text);
    if (byId.isPresent() && byId.get().exact()) {
      return List.of(shop.bodies().get(text));
    }
    var tagged = tagged(text, date);
    if (!tagged.isEmpty()) {
      return tagged;
    }
    if (byId.isPresent()) {
      return List.of(shop.bodies().get(taken("body", text, byId.get())));
    }
    var tag = tags.find(text);
    if (tag.isEmpty()) {
      return List.of();
    }
    var close = tagged(tag.get().id(), date);
    if (close.size() == 1) {
      taken("body", text, tag.get());
    }
    return close;
  }

  private List<Body> tagged(String tag, LocalDate date) {
    return byTag.getOrDefault(tag, List.of()).stream()
        .filter(
            body ->
                body.killed()
                    .filter(
                        killed ->
                            !killed.isBefore(date.minusDays(TAG_DAYS_BEFORE))
                                && !killed.isAfter(date.plusDays(TAG_DAYS_AFTER)))
                    .isPresent())
        .toList();
  }
}
