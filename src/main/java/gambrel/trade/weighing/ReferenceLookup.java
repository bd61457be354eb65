package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;

/**
 * Finds what the cells of a row name, and remembers what fitted only without leading zeros; for
 * several threads at once.
 */
final class ReferenceLookup {
  private final Shop shop;
  private final IdIndex bodies;
  private final Map<String, Body> byId;
  private final IdIndex customers;
  private final IdIndex scales;
  private final TagIndex tags;
  private final IdIndex batches;
  private final Map<String, ScaleCode> exactCodes = new HashMap<>();
  private final List<ScaleCode> prefixCodes = new ArrayList<>();
  private final IdIndex codes;
  private final Map<String, Notice> notices = new ConcurrentSkipListMap<>();

  ReferenceLookup(Shop shop) {
    this.shop = shop;
    bodies = new IdIndex(shop.bodies().keySet());
    byId = new HashMap<>(shop.bodies());
    customers = new IdIndex(shop.customers().keySet());
    scales = new IdIndex(shop.scales().keySet());
    batches = new IdIndex(shop.batches().keySet());
    tags = new TagIndex(shop.bodies().values());
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
          Notice.of(NoticeCode.ID_ZEROS, kind.toUpperCase(Locale.ROOT), Place.NONE)
              .with("written", written)
              .with("id", match.id()));
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
                        text.isEmpty()
                            ? Notice.of(NoticeCode.SCALE_UNKNOWN, "BLANK", Place.NONE)
                            : Notice.of(NoticeCode.SCALE_UNKNOWN, Place.NONE)));
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
                        text.isEmpty()
                            ? Notice.of(NoticeCode.CODE_UNKNOWN, "BLANK", Place.NONE)
                            : Notice.of(NoticeCode.CODE_UNKNOWN, Place.NONE).with("code", text)));
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
                        Notice.of(NoticeCode.CUSTOMER_UNKNOWN, Place.NONE).with("customer", text)));
    return taken("customer", text, match);
  }

  /** The batch as batches.csv writes it; an unlisted one as it stands. */
  String batch(String text) {
    return batches.find(text).map(match -> taken("batch", text, match)).orElse(text);
  }

  /** The body that a cell means on {@code date}; empty where the cell is blank. */
  Optional<Body> body(String text, LocalDate date) throws Refusal {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var candidates = candidates(text, date);
    if (candidates.isEmpty()) {
      throw new Refusal(
          tags.lost(text, date)
              .orElseGet(() -> Notice.of(NoticeCode.BODY_UNKNOWN, Place.NONE).with("named", text)));
    }
    if (candidates.size() > 1) {
      throw new Refusal(
          Notice.of(NoticeCode.BODY_AMBIGUOUS, Place.NONE)
              .with("number", text)
              .with("bodies", all(candidates)));
    }
    return Optional.of(candidates.get(0));
  }

  private static Value all(List<Body> bodies) {
    return bodies.stream()
        .map(body -> (Value) new Value.Text(body.id()))
        .reduce((one, other) -> Phrase.of("LIST.AND").with("one", one).with("other", other))
        .orElseThrow();
  }

  /**
   * Every body that a cell may mean: one by id, else by tag, each as written before without zeros.
   */
  List<Body> candidates(String text, LocalDate date) {
    var match = bodies.find(text);
    if (match.isPresent() && match.get().exact()) {
      return List.of(byId.get(text));
    }
    var tagged = tags.bodies(text, date);
    if (!tagged.isEmpty()) {
      return tagged;
    }
    if (match.isPresent()) {
      return List.of(byId.get(taken("body", text, match.get())));
    }
    var tag = tags.find(text);
    if (tag.isEmpty()) {
      return List.of();
    }
    var close = tags.bodies(tag.get().id(), date);
    if (close.size() == 1) {
      taken("body", text, tag.get());
    }
    return close;
  }
}
