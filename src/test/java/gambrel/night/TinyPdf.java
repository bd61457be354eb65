package gambrel.night;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes the smallest PDF with an attached file; its words are a comment at the end. */
final class TinyPdf {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final List<Integer> offsets = new ArrayList<>();

  private TinyPdf() {}

  static byte[] of(String words, String name, byte[] attachment) {
    var pdf = new TinyPdf();
    pdf.text("%PDF-1.7\n");
    pdf.object("<< /Type /Catalog /Pages 2 0 R /Names << /EmbeddedFiles 4 0 R >> >>");
    pdf.object("<< /Type /Pages /Kids [3 0 R] /Count 1 >>");
    pdf.object("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] >>");
    pdf.object("<< /Names [(" + name + ") 5 0 R] >>");
    pdf.object("<< /Type /Filespec /F (" + name + ") /EF << /F 6 0 R >> >>");
    pdf.stream(attachment);
    pdf.end(words);
    return pdf.out.toByteArray();
  }

  private void text(String text) {
    out.writeBytes(text.getBytes(StandardCharsets.UTF_8));
  }

  private void object(String content) {
    offsets.add(out.size());
    text(offsets.size() + " 0 obj\n" + content + "\nendobj\n");
  }

  private void stream(byte[] bytes) {
    offsets.add(out.size());
    text(offsets.size() + " 0 obj\n");
    text("<< /Type /EmbeddedFile /Length " + bytes.length + " >>\nstream\n");
    out.writeBytes(bytes);
    text("\nendstream\nendobj\n");
  }

  private void end(String words) {
    int start = out.size();
    int size = offsets.size() + 1;
    text("xref\n0 " + size + "\n0000000000 65535 f \n");
    offsets.forEach(o -> text(String.format(Locale.ROOT, "%010d 00000 n \n", o)));
    text("trailer\n<< /Size " + size + " /Root 1 0 R >>\nstartxref\n" + start + "\n%%EOF\n");
    text("% " + words.replace("\n", "\n% ") + "\n");
  }
}
