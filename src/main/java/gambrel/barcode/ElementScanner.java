package gambrel.barcode;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Takes one barcode apart into application identifiers and their values. */
final class ElementScanner {
  /** What stands for FNC1 in a transmission. */
  private static final char SEPARATOR = '\u001D';

  private static final int LONGEST = 500;
  private static final int SYMBOLOGY_LENGTH = 3;

  /**
   * GS1-128, DataBar and composites, DataMatrix, QR as in the GS1 Syntax Engine (GS1 AISBL); and
   * DotCode, of which no published source is at hand.
   */
  private static final Set<String> GS1_SYMBOLOGIES = Set.of("]C1", "]e0", "]d2", "]Q3", "]J1");

  private static final Pattern BRACKETED = Pattern.compile("\\((\\d{2,4})\\)");

  private final String text;
  private final Map<String, String> values = new LinkedHashMap<>();

  ElementScanner(String text) throws BadBarcode {
    if (text.length() > LONGEST) {
      throw new BadBarcode("is too long");
    }
    this.text = withoutSymbology(text);
  }

  private static String withoutSymbology(String text) throws BadBarcode {
    if (!text.startsWith("]")) {
      return text;
    }
    if (text.length() < SYMBOLOGY_LENGTH
        || !GS1_SYMBOLOGIES.contains(text.substring(0, SYMBOLOGY_LENGTH))) {
      throw new BadBarcode("is none of GS1 element strings");
    }
    return text.substring(SYMBOLOGY_LENGTH);
  }

  Map<String, String> values() throws BadBarcode {
    if (text.startsWith("(")) {
      readBracketed();
    } else {
      readTransmitted();
    }
    return values;
  }

  private void readBracketed() throws BadBarcode {
    var brackets = BRACKETED.matcher(text);
    if (!brackets.lookingAt()) {
      throw new BadBarcode("has no identifier in its first brackets");
    }
    boolean more = true;
    while (more) {
      String ai = brackets.group(1);
      int start = brackets.end();
      more = brackets.find();
      put(known(ai), text.substring(start, more ? brackets.start() : text.length()));
    }
  }

  private static ApplicationIdentifier known(String ai) throws BadBarcode {
    return ApplicationIdentifiers.of(ai)
        .orElseThrow(() -> new BadBarcode("has the identifier (" + ai + "), which is not known"));
  }

  private void readTransmitted() throws BadBarcode {
    for (int at = 0; at < text.length(); ) {
      if (text.charAt(at) == SEPARATOR) {
        at++;
      } else {
        at = readOne(at);
      }
    }
  }

  private int readOne(int at) throws BadBarcode {
    var identifier =
        ApplicationIdentifiers.at(text, at)
            .orElseThrow(() -> new BadBarcode("has no known identifier at character " + (at + 1)));
    int start = at + identifier.ai().length();
    int separator = text.indexOf(SEPARATOR, start);
    int end = separator < 0 ? text.length() : separator;
    if (identifier.predefined()) {
      end = Math.min(end, start + identifier.most());
    }
    put(identifier, text.substring(start, end));
    return end;
  }

  private void put(ApplicationIdentifier identifier, String value) throws BadBarcode {
    String before = values.put(identifier.ai(), identifier.checked(value));
    if (before != null && !before.equals(value)) {
      throw new BadBarcode("gives (" + identifier.ai() + ") twice");
    }
  }
}
