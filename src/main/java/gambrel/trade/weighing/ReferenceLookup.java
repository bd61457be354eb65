package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds what the cells of a row name, and collects the ids that fit only without their leading
 * zeros. Safe for several threads.
 */
final class ReferenceLookup {
  /** Parts the cells of a row, whatever delimiter or quotes it has. */
  private static final Pattern WORDS = Pattern.compile("[,;|\t\"]+");

  private final Shop shop;
  private final IdIndex bodies;
  private final IdIndex customers;
  private final IdIndex scales;
  private final IdIndex batches;
  private final TagIndex tags;
  private final Map<String, ScaleCode> codes = new HashMap<>();
  private final CodeIndex patterns;

  /** By kind, what was written with other leading zeros and the id that was taken for it. */
  private final Map<String, Map<String, String>> zeros = new ConcurrentSkipListMap<>();

  ReferenceLookup(Shop shop) {
    this.shop = shop;
    bodies = new IdIndex(shop.bodies().keySet());
    customers = new IdIndex(shop.customers().keySet());
    scales = new IdIndex(shop.scales().keySet());
    batches = new IdIndex(shop.batches().keySet());
    tags = new TagIndex(shop.bodies().values());
    shop.codes().forEach(code -> codes.putIfAbsent(code.pattern(), code));
    var all = new HashSet<>(codes.keySet());
    shop.unread().stream().flatMap(row -> row.named("code").stream()).forEach(all::add);
    patterns = new CodeIndex(all);
  }

  /** A notice for each kind of ids of which some fit only without their leading zeros. */
  List<Notice> notices() {
    return zeros.entrySet().stream().map(kind -> notice(kind.getKey(), kind.getValue())).toList();
  }

  private static Notice notice(String kind, Map<String, String> ids) {
    return Notice.of(NoticeCode.ID_ZEROS, kind.toUpperCase(Locale.ROOT))
        .with("ids", ids.entrySet().stream().map(Map.Entry::toString).toList());
  }

  /** The id that was found; notes if it was written with other leading zeros. */
  private String id(String kind, String written, String id) {
    if (!id.equals(written)) {
      zeros.computeIfAbsent(kind, k -> new ConcurrentSkipListMap<>()).put(written, id);
    }
    return id;
  }

  private Optional<String> find(String kind, IdIndex index, String text) {
    return index.find(text).map(id -> id(kind, text, id));
  }

  Scale scale(String text) throws Refusal {
    var id =
        find("scale", scales, text)
            .orElseThrow(() -> new Refusal(unknown(NoticeCode.SCALE_UNKNOWN, text)));
    return shop.scales().get(id);
  }

  /** The scale that a text means, or all scales if it means none. */
  Collection<String> scales(String text) {
    return scales.find(text).<Collection<String>>map(List::of).orElse(shop.scales().keySet());
  }

  /**
   * The cells of a row that stand for a body and for nothing else: written as its id or tag is, and
   * neither a number nor the id of a code, scale or customer. Of a broken row, the words of its
   * text.
   */
  Stream<String> bodyWords(ExportRow row) {
    boolean broken = row.broken().isPresent();
    return (broken ? WORDS.splitAsStream(row.raw()).map(String::strip) : row.values().stream())
        .filter(word -> shop.bodies().containsKey(word) || tags.find(word).isPresent())
        .filter(word -> DecimalText.of(word).isEmpty() && !codes.containsKey(word))
        .filter(word -> !shop.scales().containsKey(word) && !shop.customers().containsKey(word));
  }

  /**
   * The code as it is written, else the longest beginning that fits. One whose row cannot be read
   * is unknown, whatever shorter one would fit.
   */
  ScaleCode code(String text) throws Refusal {
    String pattern = pattern(text);
    var unread = shop.unread("codes.csv", "code", pattern);
    if (!unread.isEmpty()) {
      throw new Refusal(unread(NoticeCode.CODE_UNKNOWN, unread.get(0).place()).with("code", text));
    }
    return codes.get(pattern);
  }

  private String pattern(String text) throws Refusal {
    String pattern =
        patterns
            .find(text)
            .orElseThrow(
                () -> new Refusal(unknown(NoticeCode.CODE_UNKNOWN, text).with("code", text)));
    return CodeIndex.isBeginning(pattern) ? pattern : id("code", text, pattern);
  }

  /** A notice of what is unknown because its row in the shop folder cannot be read. */
  static Notice unread(NoticeCode code, Place row) {
    return Notice.of(code, "UNREAD").with("table", row.file()).with("at", row.line());
  }

  /** The id of a customer or of the shop; empty if the cell is blank. */
  String customer(String text) throws Refusal {
    return text.isEmpty() || text.equals(Customer.SHOP)
        ? text
        : find("customer", customers, text)
            .orElseThrow(() -> new Refusal(NoticeCode.CUSTOMER_UNKNOWN, "customer", text));
  }

  /** The id of a batch that batches.csv lists, else the text itself. */
  String batch(String text) {
    return find("batch", batches, text).orElse(text);
  }

  private static Notice unknown(NoticeCode code, String text) {
    return text.isEmpty() ? Notice.of(code, "BLANK") : Notice.of(code);
  }

  /** The body that a cell means on {@code date}; empty if the cell is blank. */
  Optional<Body> body(String text, LocalDate date) throws Refusal {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var candidates = candidates(text, Optional.of(date));
    if (candidates.isEmpty()) {
      throw tags.outOfTime(text, date).map(Refusal::new).orElseGet(() -> unknownBody(text));
    }
    if (candidates.size() > 1) {
      throw new Refusal(
          Notice.of(NoticeCode.BODY_AMBIGUOUS)
              .with("number", text)
              .with("bodies", all(candidates)));
    }
    return Optional.of(candidates.get(0));
  }

  private Refusal unknownBody(String text) {
    return new Refusal(
        shop.unread("bodies.csv", "body", text).stream()
            .findFirst()
            .map(row -> unread(NoticeCode.BODY_UNKNOWN, row.place()))
            .orElseGet(() -> Notice.of(NoticeCode.BODY_UNKNOWN))
            .with("named", text));
  }

  private static Value all(List<Body> bodies) {
    return bodies.stream()
        .map(body -> (Value) new Value.Text(body.id()))
        .reduce((one, other) -> Phrase.of("LIST.AND").with("one", one).with("other", other))
        .orElseThrow();
  }

  /**
   * Every body that a cell may mean on {@code date}, or on any if that is unknown. The order of the
   * search is: the id as written, tags as written, the id without leading zeros, tags without
   * leading zeros.
   */
  List<Body> candidates(String text, Optional<LocalDate> date) {
    var match = bodies.find(text);
    if (match.equals(Optional.of(text))) {
      return List.of(shop.bodies().get(text));
    }
    var tagged = tags.bodies(text, date);
    if (!tagged.isEmpty()) {
      return tagged;
    }
    if (match.isPresent()) {
      return List.of(shop.bodies().get(id("body", text, match.get())));
    }
    var tag = tags.find(text);
    var close = tag.map(found -> tags.bodies(found, date)).orElse(List.of());
    if (close.size() == 1) {
      id("body", text, tag.orElseThrow());
    }
    return close;
  }
}
