package gambrel.pages.render.pdf;

import com.lowagie.text.pdf.PdfAction;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfBorderArray;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Shape;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.extend.FSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineText;
import org.xhtmlrenderer.render.JustificationInfo;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * Paints a page and tags its content for screen readers (PDF/UA, ISO 14289-1). Text and drawings of
 * the page's source are content. Lines, backgrounds, running heads and repeated table heads are
 * artifacts, which screen readers skip.
 */
public final class TaggingDevice extends ITextOutputDevice {
  private static final PdfName ARTIFACT = new PdfName("Artifact");

  private final Set<Object> painted = Collections.newSetFromMap(new IdentityHashMap<>());
  private Box root;
  private Node source;
  private StructureTree tree;
  private PdfWriter writer;
  private boolean marked;

  /** A device with the given resolution. */
  public TaggingDevice(float dotsPerPoint) {
    super(dotsPerPoint);
  }

  @Override
  public void setRoot(Box root) {
    super.setRoot(root);
    this.root = root;
  }

  @Override
  public void start(Document page) {
    super.start(page);
    source = page.getDocumentElement();
  }

  @Override
  public void setWriter(PdfWriter writer) {
    super.setWriter(writer);
    this.writer = writer;
    tree = new StructureTree(writer, source);
  }

  @Override
  public void finish(RenderingContext c, Box box) {
    super.finish(c, box);
    tree.sort();
  }

  @Override
  public void drawText(RenderingContext c, InlineText text) {
    var node = text.getTextNode();
    if (node == null || !isOfSource(text.getParent()) || !painted.add(text)) {
      super.drawText(c, text);
    } else if (!text.isEmpty()) {
      var element = tree.ofText(node);
      as(element, () -> super.drawText(c, text));
      StructureTree.link(node).ifPresent(link -> addLink(c, text, link, element));
    }
  }

  /** Makes the area of a text a link, which readers can follow and screen readers announce. */
  private void addLink(
      RenderingContext c, InlineText text, Element link, PdfStructureElement element) {
    var area = createLocalTargetArea(c, text.getParent());
    var annotation =
        new PdfAnnotation(
            writer,
            area.getLeft(),
            area.getBottom(),
            area.getRight(),
            area.getTop(),
            new PdfAction(link.getAttribute("href")));
    annotation.put(PdfName.SUBTYPE, PdfName.LINK);
    annotation.put(PdfName.CONTENTS, new PdfString(link.getTextContent(), PdfObject.TEXT_UNICODE));
    annotation.setFlags(PdfAnnotation.FLAGS_PRINT);
    annotation.setBorder(new PdfBorderArray(0, 0, 0));
    tree.addArea(element, annotation, writer);
    writer.addAnnotation(annotation);
    writer.setTabs(PdfName.S);
  }

  @Override
  public void paintReplacedElement(RenderingContext c, BlockBox box) {
    var area = createLocalTargetArea(c, box);
    var figure =
        isOfSource(box) && painted.add(box)
            ? tree.ofFigure(box.getElement(), area)
            : Optional.<PdfStructureElement>empty();
    if (figure.isPresent()) {
      as(figure.get(), () -> super.paintReplacedElement(c, box));
    } else {
      asArtifact(() -> super.paintReplacedElement(c, box));
    }
  }

  /** Whether a box is part of the source, not a repeated one in the page margins. */
  private boolean isOfSource(Box box) {
    var parent = box.getParent();
    return !box.getStyle().isRunning() && (parent == null ? box == root : isOfSource(parent));
  }

  private void as(PdfStructureElement element, Runnable painting) {
    getCurrentPage().beginMarkedContentSequence(element);
    mark(painting);
  }

  private void asArtifact(Runnable painting) {
    if (marked) {
      painting.run();
    } else {
      getCurrentPage().beginMarkedContentSequence(ARTIFACT);
      mark(painting);
    }
  }

  private void mark(Runnable painting) {
    marked = true;
    painting.run();
    marked = false;
    getCurrentPage().endMarkedContentSequence();
  }

  @Override
  public void drawString(String text, float x, float y, JustificationInfo justification) {
    asArtifact(() -> super.drawString(text, x, y, justification));
  }

  @Override
  public void draw(Shape shape) {
    asArtifact(() -> super.draw(shape));
  }

  @Override
  public void fill(Shape shape) {
    asArtifact(() -> super.fill(shape));
  }

  @Override
  public void drawImage(FSImage image, int x, int y) {
    asArtifact(() -> super.drawImage(image, x, y));
  }
}
