package gambrel.pages.render.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.xhtmlrenderer.css.constants.IdentValue;
import org.xhtmlrenderer.css.value.FontSpecification;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.FontDescription;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.render.FSFont;

/**
 * The fonts of all pages: IBM Plex Sans regular, semi-bold and italic, always embedded. They
 * replace every family that a style sheet names. They are loaded once for all documents.
 */
public final class Fonts {

  private static final String FOLDER = "gambrel/fonts/";
  private static final String REGULAR_FILE = FOLDER + "IBMPlexSans-Regular.ttf";
  private static final int[] LIGHT = {100, 200, 300, 400, 500};
  private static final int[] HEAVY = {600, 700, 800, 900};

  /** The font's own name, and the layout engine's names for its default and generic families. */
  private static final List<String> FAMILIES =
      List.of("IBM Plex Sans", "SansSerif", "Monospaced", "Serif");

  /** Regular weight. */
  public static final BaseFont REGULAR = load(REGULAR_FILE);

  /** The weight of bold text. */
  public static final BaseFont SEMI_BOLD = load(FOLDER + "IBMPlexSans-SemiBold.ttf");

  static final BaseFont ITALIC = load(FOLDER + "IBMPlexSans-Italic.ttf");

  private static final Pattern SUBSET =
      Pattern.compile("/(?:BaseFont|FontName) ?/([A-Z]{6})\\+IBMPlexSans");

  private static final Map<String, FontFamily> SHARED = new Registration().families();

  private Fonts() {}

  /** A resolver for one document over the shared fonts. */
  public static ITextFontResolver resolver() {
    return new SharedResolver();
  }

  /** Whether all three fonts can set the character. */
  public static boolean hasGlyph(int codePoint) {
    return REGULAR.charExists(codePoint)
        && SEMI_BOLD.charExists(codePoint)
        && ITALIC.charExists(codePoint);
  }

  /**
   * Replaces the random tags of subset font names (ISO 32000-1, 9.6.4) by AAAAAA, AAAAAB and so on
   * in order of appearance. Changes the array in place and returns it. Offsets in the file stay the
   * same.
   */
  public static byte[] fixTags(byte[] pdf) {
    var names = SUBSET.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    Map<String, byte[]> tags = new HashMap<>();
    while (names.find()) {
      var fixed = tags.computeIfAbsent(names.group(1), random -> tag(tags.size()));
      System.arraycopy(fixed, 0, pdf, names.start(1), fixed.length);
    }
    return pdf;
  }

  private static byte[] tag(int number) {
    return ("AAAAA" + (char) ('A' + number)).getBytes(StandardCharsets.US_ASCII);
  }

  private static BaseFont load(String resource) {
    try (var in = Fonts.class.getResourceAsStream("/" + resource)) {
      var bytes = in.readAllBytes();
      var font = BaseFont.createFont(resource, BaseFont.IDENTITY_H, true, false, bytes, null);
      font.setIncludeCidSet(false);
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (DocumentException e) {
      throw new IllegalStateException(resource, e);
    }
  }

  private record Wanted(List<String> families, float size, IdentValue weight, IdentValue style) {}

  private static final class SharedResolver extends ITextFontResolver {
    private final Map<Wanted, FSFont> resolved = new HashMap<>();

    @Override
    protected Map<String, FontFamily> loadFonts() {
      return new HashMap<>(SHARED);
    }

    /** Keeps fonts by a key that is faster to make than the engine's own. */
    @Override
    public FSFont resolveFont(SharedContext context, FontSpecification wanted) {
      var key =
          new Wanted(List.of(wanted.families), wanted.size, wanted.fontWeight, wanted.fontStyle);
      return resolved.computeIfAbsent(key, k -> super.resolveFont(context, wanted));
    }
  }

  /** Registers a font for every weight. Otherwise the engine imitates bold by thicker strokes. */
  private static final class Registration extends ITextFontResolver {

    Map<String, FontFamily> families() {
      for (var name : FAMILIES) {
        addFont(REGULAR, REGULAR_FILE, name);
        var family = getFonts().get(name);
        var measured = family.getFontDescriptions().get(0);
        family.getFontDescriptions().clear();
        add(family, REGULAR, IdentValue.NORMAL, LIGHT, measured);
        add(family, SEMI_BOLD, IdentValue.NORMAL, HEAVY, measured);
        add(family, ITALIC, IdentValue.ITALIC, LIGHT, measured);
      }
      return Map.copyOf(getFonts());
    }

    @Override
    protected Map<String, FontFamily> loadFonts() {
      return new HashMap<>();
    }

    private static void add(
        FontFamily family, BaseFont font, IdentValue style, int[] weights, FontDescription like) {
      for (int weight : weights) {
        var lines =
            new FontDescription.Decorations(
                weight,
                like.getYStrikeoutSize(),
                like.getYStrikeoutPosition(),
                like.getUnderlinePosition(),
                like.getUnderlineThickness());
        family.addFontDescription(new FontDescription(font, false, style, lines));
      }
    }
  }
}
