package gambrel.pages.render.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.List;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Makes the file conform to PDF/A-3a (ISO 19005-3): it adds a colour profile, metadata and
 * attachments. All dates and ids come from the input.
 */
public final class ArchiveListener extends DefaultPDFCreationListener {

  /** The colour profile, compressed once for all documents. */
  private static final PdfStream SRGB = profile();

  private final DocumentInfo info;
  private final List<Attachment> attachments;
  private final String id;

  /**
   * A listener for one document.
   *
   * @param id 32 hexadecimal digits that identify the input
   */
  public ArchiveListener(DocumentInfo info, List<Attachment> attachments, String id) {
    this.info = info;
    this.attachments = attachments;
    this.id = id;
  }

  @Override
  public void preOpen(ITextRenderer renderer) {
    renderer.getWriter().setTagged();
    renderer.getWriter().setXmpMetadata(Xmp.packet(info));
  }

  /** Adds title and author last, since the engine sets its own from the page before. */
  @Override
  public void onClose(ITextRenderer renderer) {
    var writer = renderer.getWriter();
    try {
      writer.getExtraCatalog().put(PdfName.LANG, text(info.language()));
      writer.setViewerPreferences(PdfWriter.DisplayDocTitle);
      defineColours(writer);
      describe(writer.getInfo());
      attach(writer);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void defineColours(PdfWriter writer) throws IOException {
    var intent = new PdfDictionary(PdfName.OUTPUTINTENT);
    intent.put(PdfName.S, PdfName.GTS_PDFA1);
    intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB"));
    intent.put(PdfName.INFO, new PdfString("sRGB IEC 61966-2-1"));
    intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(SRGB).getIndirectReference());
    writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
  }

  private void describe(PdfDictionary about) {
    about.put(PdfName.TITLE, text(info.title()));
    about.put(PdfName.AUTHOR, text(info.author()));
    about.put(PdfName.SUBJECT, text(info.subject()));
    about.remove(PdfName.KEYWORDS);
    about.put(PdfName.CREATIONDATE, date());
    about.put(PdfName.MODDATE, date());
    about.put(PdfName.FILEID, new PdfLiteral("[<" + id + "><" + id + ">]"));
  }

  private void attach(PdfWriter writer) throws IOException {
    var related = new PdfArray();
    for (var attachment : attachments) {
      var dates = new PdfDictionary();
      dates.put(PdfName.MODDATE, date());
      var file =
          PdfFileSpecification.fileEmbedded(
              writer,
              null,
              attachment.fileName(),
              attachment.content(),
              true,
              attachment.mimeType(),
              dates);
      file.put(new PdfName("AFRelationship"), new PdfName("Data"));
      writer.addFileAttachment(attachment.description(), file);
      related.add(file.getReference());
    }
    if (!attachments.isEmpty()) {
      writer.getExtraCatalog().put(PdfName.AF, related);
    }
  }

  private PdfDate date() {
    return new PdfDate(GregorianCalendar.from(info.created().atZone(ZoneOffset.UTC)));
  }

  private static PdfString text(String words) {
    return new PdfString(words, PdfObject.TEXT_UNICODE);
  }

  /** The profile from the class path. Java's own profile differs between versions. */
  private static PdfStream profile() {
    try (var in = ArchiveListener.class.getResourceAsStream("/gambrel/icc/srgb.icc")) {
      var profile = new PdfStream(in.readAllBytes());
      profile.put(PdfName.N, new PdfNumber(3));
      profile.flateCompress();
      return profile;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The metadata packet of a PDF/A-3a and PDF/UA-1 file (ISO 19005-3, 6.6; ISO 14289-1, 5). */
  private static final class Xmp {

    private static final String PACKET =
        """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
            xmlns:dc="http://purl.org/dc/elements/1.1/"
            xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
            xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
            xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
            xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
            xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
            xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#"
            xmlns:xmp="http://ns.adobe.com/xap/1.0/">
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
        <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>
        <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:description>
        <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
        <pdf:Producer>%s</pdf:Producer>
        <xmp:CreateDate>%6$s</xmp:CreateDate>
        <xmp:ModifyDate>%6$s</xmp:ModifyDate>
        <pdfaid:part>3</pdfaid:part>
        <pdfaid:conformance>A</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
        <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
        <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name>
        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category>
        <pdfaProperty:description>The part of ISO 14289 that it follows</pdfaProperty:description>
        </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="r"?>
        """;

    private Xmp() {}

    static byte[] packet(DocumentInfo info) {
      return PACKET
          .formatted(
              escape(info.title()),
              escape(info.author()),
              escape(info.subject()),
              escape(info.language()),
              escape(Document.getVersion()),
              info.created().truncatedTo(ChronoUnit.SECONDS).toString())
          .getBytes(StandardCharsets.UTF_8);
    }

    private static String escape(String text) {
      return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
  }
}
