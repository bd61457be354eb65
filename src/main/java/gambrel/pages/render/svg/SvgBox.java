package gambrel.pages.render.svg;

import com.lowagie.text.pdf.PdfContentByte;
import gambrel.pages.render.pdf.Fonts;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import org.xhtmlrenderer.pdf.EmptyReplacedElement;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** The box of a drawing in the layout, which paints it. */
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

  /** Paints the drawing as large as it fits into the box, centred and clipped. */
  @Override
  public void paint(RenderingContext c, ITextOutputDevice device, BlockBox box) {
    var page = device.getCurrentPage();
    var area = device.createLocalTargetArea(c, box);
    var view = drawing.view();
    var scale = Math.min(area.getWidth() / view.getWidth(), area.getHeight() / view.getHeight());
    var left = area.getLeft() + (area.getWidth() - view.getWidth() * scale) / 2;
    var top = area.getTop() - (area.getHeight() - view.getHeight() * scale) / 2;
    var toPage =
        new AffineTransform(
            scale, 0, 0, -scale, left - view.getX() * scale, top + view.getY() * scale);
    page.saveState();
    page.rectangle(area.getLeft(), area.getBottom(), area.getWidth(), area.getHeight());
    page.clip();
    page.newPath();
    var painter = new Painter(page, toPage, scale);
    drawing.marks().forEach(painter::paint);
    page.restoreState();
  }

  /**
   * Paints marks into a page's content: outlines as vector paths, words as text in the page's
   * fonts.
   *
   * @param toPage from the plane of the drawing to points of the page
   * @param scale points for a unit of the drawing
   */
  private record Painter(PdfContentByte page, AffineTransform toPage, double scale) {
    private void paint(SvgDrawing.Mark mark) {
      page.saveState();
      mark.style().fill().ifPresent(page::setColorFill);
      mark.style().stroke().ifPresent(page::setColorStroke);
      if (mark instanceof SvgDrawing.Shape shape) {
        paintShape(shape);
      } else if (mark instanceof SvgDrawing.Words words && words.style().fill().isPresent()) {
        paintWords(words);
      }
      page.restoreState();
    }

    private void paintShape(SvgDrawing.Shape shape) {
      var style = shape.style();
      var stroked = style.stroke().isPresent() && style.strokeWidth() > 0;
      if (stroked) {
        applyLine(style);
      }
      trace(shape.outline().getPathIterator(toPage));
      if (stroked && style.fill().isPresent()) {
        page.fillStroke();
      } else if (stroked) {
        page.stroke();
      } else if (style.fill().isPresent()) {
        page.fill();
      } else {
        page.newPath();
      }
    }

    private void applyLine(SvgDrawing.Style style) {
      page.setLineWidth((float) (style.strokeWidth() * scale));
      page.setLineCap(PdfContentByte.LINE_CAP_BUTT);
      if (style.dashes().length > 0) {
        var dashes = new float[style.dashes().length];
        for (var i = 0; i < dashes.length; i++) {
          dashes[i] = (float) (style.dashes()[i] * scale);
        }
        page.setLineDash(dashes, 0);
      }
    }

    private void trace(PathIterator path) {
      var p = new float[6];
      for (; !path.isDone(); path.next()) {
        switch (path.currentSegment(p)) {
          case PathIterator.SEG_MOVETO -> page.moveTo(p[0], p[1]);
          case PathIterator.SEG_LINETO -> page.lineTo(p[0], p[1]);
          case PathIterator.SEG_CUBICTO -> page.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
          case PathIterator.SEG_CLOSE -> page.closePath();
          default -> throw new IllegalStateException("shapes are made of lines and cubic curves");
        }
      }
    }

    private void paintWords(SvgDrawing.Words words) {
      var style = words.style();
      var font = style.bold() ? Fonts.SEMI_BOLD : Fonts.REGULAR;
      var width = font.getWidthPoint(words.text(), (float) style.fontSize());
      var start =
          switch (style.anchor()) {
            case "middle" -> -width / 2;
            case "end" -> -width;
            default -> 0f;
          };
      var matrix = new AffineTransform(toPage);
      matrix.translate(words.x(), words.y());
      matrix.translate(start, 0);
      matrix.scale(1, -1);
      page.beginText();
      page.setFontAndSize(font, (float) style.fontSize());
      page.setTextMatrix(
          (float) matrix.getScaleX(),
          (float) matrix.getShearY(),
          (float) matrix.getShearX(),
          (float) matrix.getScaleY(),
          (float) matrix.getTranslateX(),
          (float) matrix.getTranslateY());
      page.showText(words.text());
      page.endText();
    }
  }
}
