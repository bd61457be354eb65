package gambrel.trade.notice;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Makes the sentences of notices, reasons and likely causes in one language.
 *
 * <p>The key of a phrase is the key of its words. A {@code {name}} in the words is replaced by the
 * value of that name. A phrase may have two forms, {@code KEY.one} and {@code KEY.many}, for its
 * value {@code count}; without that value the first is used. The advice has the key {@code
 * KEY.advice}, or {@code CODE.advice} for all variants of a code.
 *
 * @param texts words by key
 * @param format prints values
 * @param parts gives the name of a part of a body in the middle of a sentence
 */
public record NoticeWords(
    Map<String, String> texts, ValueFormat format, Function<Value.Part, String> parts) {
  /** The pattern of {@code {name}}; group 1 is the name. */
  public static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");

  /** The built-in English words, with values as data files print them. */
  public static final NoticeWords ENGLISH =
      new NoticeWords(builtIn(), ValueFormat.PLAIN, part -> small(part.item().name()));

  /** The greatest length of a message; longer ones come from a fault in an export. */
  private static final int LONGEST = 2_000;

  /** Copies the words. */
  public NoticeWords {
    texts = Map.copyOf(texts);
  }

  private static Map<String, String> builtIn() {
    var bundle = ResourceBundle.getBundle("gambrel.templates.notices_en", Locale.ROOT);
    var texts = new TreeMap<String, String>();
    bundle.keySet().forEach(key -> texts.put(key, bundle.getString(key)));
    return texts;
  }

  /** A name with a small first letter, unless it is an abbreviation. */
  private static String small(String name) {
    boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
    return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
  }

  /** The message of a notice, cut off at 2000 characters. */
  public String message(Notice notice) {
    String text = fill(text(notice.saying()), values(notice));
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + '…';
  }

  /** The advice of a notice; empty if its code has none. */
  public String advice(Notice notice) {
    return notice.advice().isEmpty()
        ? advice(new Phrase(notice.saying().key(), values(notice)))
        : advice(new Phrase(notice.code().name() + '.' + notice.advice(), values(notice)));
  }

  /** The advice of a phrase or, if it has none, of its code; empty if neither has one. */
  public String advice(Phrase phrase) {
    String code = phrase.key().replaceFirst("\\..*", "");
    var ofCode = texts.getOrDefault(code + ".advice", "");
    return fill(texts.getOrDefault(phrase.key() + ".advice", ofCode), phrase.values());
  }

  /** The words of a phrase. */
  public String of(Phrase phrase) {
    return fill(text(phrase), phrase.values());
  }

  private String text(Phrase phrase) {
    var text = texts.get(phrase.key());
    if (text == null) {
      boolean many = phrase.values().get("count") instanceof Value.Count c && c.number() != 1;
      text = texts.get(phrase.key() + (many ? ".many" : ".one"));
    }
    assert text != null : phrase;
    return text == null ? phrase.key() : text;
  }

  /** A notice's own values, and its place, scale, ticket and body by their usual names. */
  private static Map<String, Value> values(Notice notice) {
    var values = new HashMap<String, Value>();
    values.put("file", new Value.Text(notice.place().file()));
    values.put("line", new Value.Count(notice.place().line()));
    values.put("scale", new Value.Text(notice.scale()));
    values.put("ticket", new Value.Text(notice.ticket()));
    values.put("body", new Value.Text(notice.body()));
    values.putAll(notice.saying().values());
    return values;
  }

  private String fill(String text, Map<String, Value> values) {
    return PLACE
        .matcher(text)
        .replaceAll(place -> Matcher.quoteReplacement(value(place.group(1), values, text)));
  }

  private String value(String name, Map<String, Value> values, String text) {
    var value = values.get(name);
    assert value != null : text + " names " + name + ", which is not among " + values;
    return value == null ? "" : print(value);
  }

  private String print(Value value) {
    if (value instanceof Phrase phrase) {
      return of(phrase);
    } else if (value instanceof Value.Phrases list) {
      return list.phrases().stream().map(this::of).collect(Collectors.joining(list.separator()));
    } else if (value instanceof Value.Text text) {
      return text.text();
    } else if (value instanceof Value.Names names) {
      return String.join(", ", names.names());
    } else if (value instanceof Value.Count count) {
      return format.count(count.number());
    } else if (value instanceof Value.Mass mass) {
      return format.weight(mass.weight(), mass.unit());
    } else if (value instanceof Value.Shown shown) {
      return shown
          .unit()
          .map(unit -> format.number(shown.number(), unit))
          .orElseGet(() -> format.number(shown.number()));
    } else if (value instanceof Value.Percent percent) {
      return format.percent(percent.percent());
    } else if (value instanceof Value.Ratio ratio) {
      return ratio.ratio().toString().replace(" ", "");
    } else if (value instanceof Value.Day day) {
      return format.date(day.date());
    } else if (value instanceof Value.Moment moment) {
      return format.moment(moment.time());
    }
    return parts.apply((Value.Part) value);
  }
}
