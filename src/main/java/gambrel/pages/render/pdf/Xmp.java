package gambrel.pages.render.pdf;

import com.lowagie.text.Document;
import java.nio.charset.StandardCharsets;
import java.time.temporal.ChronoUnit;

/** The metadata packet of a PDF/A-3a and PDF/UA-1 file (ISO 19005-3, 6.6; ISO 14289-1, 5). */
final class Xmp {

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
