package gambrel.pages.render;

import com.lowagie.text.Image;
import gambrel.pages.render.template.TemplateFiles;
import gambrel.pages.render.template.TemplateProblem;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import org.xhtmlrenderer.pdf.ITextFSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.resource.ImageResource;
import org.xhtmlrenderer.resource.XMLResource;

/** Loads for a page what lies among the templates, and nothing from anywhere else. */
final class ClosedUserAgent extends ITextUserAgent {

  /**
   * The invented folder that all addresses of a page are in, because the layout engine resolves
   * style sheets against each other only as URLs that it knows. Nothing is ever opened by it.
   */
  static final String BASE = "file:/templates/";

  private static final String DATA_PNG = "data:image/png;base64,";
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  private final String template;
  private final TemplateFiles files;
  private final int dotsPerPixel;
  private TemplateProblem first;

  ClosedUserAgent(
      String template, TemplateFiles files, ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
    this.template = template;
    this.files = files;
    this.dotsPerPixel = dotsPerPixel;
  }

  /**
   * Throws the first problem again, since the layout engine swallows those of background pictures.
   */
  void check() {
    if (first != null) {
      throw first;
    }
  }

  /** The full address of a reference made by a page; an unreadable one stays as it is. */
  static String address(String reference) {
    try {
      return URI.create(BASE).resolve(reference.replace(" ", "%20")).toString();
    } catch (IllegalArgumentException e) {
      return reference;
    }
  }

  /** The template file that a full address names, or empty for any other place. */
  private static Optional<String> named(String address) {
    return address.startsWith(BASE)
        ? Optional.of(address.substring(BASE.length()).replace("%20", " "))
        : Optional.empty();
  }

  @Override
  public String resolveURI(String uri) {
    return uri == null ? null : address(uri);
  }

  /** Style sheets come through here. */
  @Override
  protected InputStream resolveAndOpenStream(String uri) {
    var name = named(resolveURI(uri)).orElseThrow(() -> outside(uri));
    var text = files.text(name).orElseThrow(() -> TemplateProblem.missingFile(template, name));
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public ImageResource getImageResource(String uri) {
    try {
      return new ImageResource(uri, image(uri));
    } catch (TemplateProblem problem) {
      first = first == null ? problem : first;
      throw problem;
    }
  }

  @Override
  public byte[] getBinaryResource(String uri) {
    throw TemplateProblem.of(template, "a page cannot bring fonts of its own: " + brief(uri));
  }

  @Override
  public XMLResource getXMLResource(String uri) {
    throw outside(uri);
  }

  private ITextFSImage image(String uri) {
    var bytes = picture(uri);
    try {
      var image = Image.getInstance(bytes);
      image.scaleAbsolute(
          image.getPlainWidth() * dotsPerPixel, image.getPlainHeight() * dotsPerPixel);
      return new ITextFSImage(image);
    } catch (IOException | RuntimeException e) {
      throw unreadable(uri, e);
    }
  }

  private byte[] picture(String uri) {
    var bytes = uri.startsWith(DATA_PNG) ? embedded(uri) : file(uri);
    if (bytes.length < PNG.length || !Arrays.equals(PNG, Arrays.copyOf(bytes, PNG.length))) {
      throw TemplateProblem.of(template, "the picture " + brief(uri) + " is not a PNG");
    }
    return bytes;
  }

  private byte[] embedded(String uri) {
    try {
      return Base64.getMimeDecoder().decode(uri.substring(DATA_PNG.length()));
    } catch (IllegalArgumentException e) {
      throw unreadable(uri, e);
    }
  }

  private byte[] file(String uri) {
    var name = named(resolveURI(uri)).orElseThrow(() -> outside(uri));
    return files.bytes(name).orElseThrow(() -> TemplateProblem.missingFile(template, name));
  }

  private TemplateProblem unreadable(String uri, Exception e) {
    return TemplateProblem.of(template, "the picture " + brief(uri) + " cannot be read", e);
  }

  private TemplateProblem outside(String uri) {
    return TemplateProblem.of(
        template, "a page may load only what lies in the templates folder, not " + brief(uri));
  }

  private static String brief(String uri) {
    return uri.length() > 60 ? uri.substring(0, 60) + "…" : uri;
  }
}
