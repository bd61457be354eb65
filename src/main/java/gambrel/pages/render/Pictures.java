package gambrel.pages.render;

import gambrel.pages.render.svg.SvgBox;
import gambrel.pages.render.svg.SvgDrawing;
import gambrel.pages.render.svg.SvgReader;
import java.util.IdentityHashMap;
import java.util.Map;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextImageElement;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElementFactory;
import org.xhtmlrenderer.render.BlockBox;

/**
 * Makes pictures of {@code img} elements and drawings of {@code svg} elements. Forms are not
 * supported.
 */
final class Pictures extends ITextReplacedElementFactory {

  private final String template;
  private final int dotsPerPixel;

  /** Drawings by element: the layout engine asks for each several times. */
  private final Map<Element, SvgDrawing> drawings = new IdentityHashMap<>();

  Pictures(String template, ITextOutputDevice device, int dotsPerPixel) {
    super(device);
    this.template = template;
    this.dotsPerPixel = dotsPerPixel;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext c, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
    var element = box.getElement();
    return switch (element == null ? "" : element.getNodeName()) {
      case "img" -> {
        var image = agent.getImageResource(element.getAttribute("src")).getImage();
        var sized = cssWidth >= 0 || cssHeight >= 0 ? image.scale(cssWidth, cssHeight) : image;
        yield new ITextImageElement(sized);
      }
      case "svg" -> {
        var drawing = drawings.computeIfAbsent(element, e -> SvgReader.read(template, e));
        yield SvgBox.of(drawing, cssWidth, cssHeight, dotsPerPixel);
      }
      default -> null;
    };
  }
}
