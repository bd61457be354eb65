package gambrel.pages.render;

import com.lowagie.text.Image;
import gambrel.pages.render.template.TemplateFiles;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import org.xhtmlrenderer.pdf.ITextFSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;
import org.xhtmlrenderer.resource.ImageResource;
import org.xhtmlrenderer.resource.XMLResource;

/** Loads style sheets and pictures for a page from the templates and from nowhere else. */
final class ClosedUserAgent extends ITextUserAgent {

  /**
   * The base of all addresses of a page. The layout engine resolves addresses only against a URL
   * with a protocol that Java knows. No file is opened by this address.
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
   * Throws the first problem with a picture, if there is one. The layout engine swallows problems
   * with background pictures.
   */
  void check() {
    if (first != null) {
      throw first;
    }
  }

  /** The full address of a reference in a page; the reference itself if it is no valid URI. */
  static String address(String reference) {
    try {
      return URI.create(BASE).resolve(reference.replace(" ", "%20")).toString();
    } catch (IllegalArgumentException e) {
      return reference;
    }
  }

  /** The template file of a full address; empty for an address outside the templates. */
  private static Optional<String> named(String address) {
    return address.startsWith(BASE)
        ? Optional.of(address.substring(BASE.length()).replace("%20", " "))
        : Optional.empty();
  }

  @Override
  public String resolveURI(String uri) {
    return uri == null ? null : address(uri);
  }

  /** Opens a style sheet. */
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
    throw problem(Fault.FONT, "address", uri);
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
      throw problem(Fault.NOT_PNG, "picture", uri);
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
    return TemplateProblem.of(template, Fault.PICTURE, Map.of("picture", brief(uri)), e);
  }

  private TemplateProblem outside(String uri) {
    return problem(Fault.OUTSIDE, "address", uri);
  }

  private TemplateProblem problem(Fault fault, String name, String uri) {
    return TemplateProblem.of(template, fault, Map.of(name, brief(uri)));
  }

  private static String brief(String uri) {
    return uri.length() > 60 ? uri.substring(0, 60) + "…" : uri;
  }
}
