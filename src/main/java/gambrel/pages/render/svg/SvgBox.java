package gambrel.pages.render.svg;

import org.xhtmlrenderer.pdf.EmptyReplacedElement;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** The box of a drawing in the layout. */
public final class SvgBox extends EmptyReplacedElement {
  private final SvgDrawing drawing;

  private SvgBox(SvgDrawing drawing, int width, int height) {
    super(width, height);
    this.drawing = drawing;
  }

  /**
   * A box with the size from the style sheet. If that gives one side only, the drawing keeps its
   * proportions; if it gives none, its natural size.
   *
   * @param cssWidth in dots; -1 if not given
   * @param cssHeight in dots; -1 if not given
   */
  public static SvgBox of(SvgDrawing drawing, int cssWidth, int cssHeight, int dotsPerPixel) {
    var ratio = drawing.width() / drawing.height();
    var width = cssWidth >= 0 ? cssWidth : drawing.width() * dotsPerPixel;
    if (cssWidth < 0 && cssHeight >= 0) {
      width = cssHeight * ratio;
    }
    var height = cssHeight >= 0 ? cssHeight : width / ratio;
    return new SvgBox(drawing, (int) Math.round(width), (int) Math.round(height));
  }

  @Override
  public void paint(RenderingContext c, ITextOutputDevice device, BlockBox box) {
    SvgPainter.paint(drawing, device.getCurrentPage(), device.createLocalTargetArea(c, box));
  }
}
