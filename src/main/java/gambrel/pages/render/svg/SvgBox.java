package gambrel.pages.render.svg;

import java.awt.Point;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** The box of a drawing in the layout. */
public final class SvgBox implements ITextReplacedElement {

  private final SvgDrawing drawing;
  private final int width;
  private final int height;
  private Point location = new Point();

  private SvgBox(SvgDrawing drawing, int width, int height) {
    this.drawing = drawing;
    this.width = width;
    this.height = height;
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
  public int getIntrinsicWidth() {
    return width;
  }

  @Override
  public int getIntrinsicHeight() {
    return height;
  }

  @Override
  public Point getLocation() {
    return location;
  }

  @Override
  public void setLocation(int x, int y) {
    location = new Point(x, y);
  }

  @Override
  public void paint(RenderingContext c, ITextOutputDevice device, BlockBox box) {
    SvgPainter.paint(drawing, device.getCurrentPage(), device.createLocalTargetArea(c, box));
  }

  @Override
  public void detach(LayoutContext c) {
    // has no resources
  }

  @Override
  public boolean isRequiresInteractivePaint() {
    return false;
  }

  @Override
  public boolean hasBaseline() {
    return false;
  }

  @Override
  public int getBaseline() {
    return 0;
  }
}
