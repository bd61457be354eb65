package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.shop.Shop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A shop folder under construction, with one owner and one body to start from. */
public final class ShopFiles {
  public static final String SETTINGS =
      """
      name=Hollow Lane Meats
      currency=AUD
      unit=kg
      zone=Australia/Sydney
      """;

  private final Path folder;

  public ShopFiles(Path folder) {
    this.folder = folder;
    with("shop.properties", SETTINGS);
    with("customers.csv", "customer,name\nash,Ash Dorrin\nbea,Bea Tallow\n");
    with("bodies.csv", "body,species\nB1,beef\n");
  }

  public ShopFiles with(String file, String text) {
    return with(file, text.getBytes(StandardCharsets.UTF_8));
  }

  public ShopFiles with(String file, byte[] bytes) {
    try {
      Files.createDirectories(folder.resolve(file).getParent());
      Files.write(folder.resolve(file), bytes);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public ShopFiles without(String file) {
    try {
      Files.delete(folder.resolve(file));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public Path folder() {
    return folder;
  }

  /** A shop and the notices of its reading. */
  record Reading(Shop shop, List<Notice> notices) {}

  Reading read() {
    var notices = new ArrayList<Notice>();
    return new Reading(ShopReader.read(folder, notices), notices);
  }

  /** The shop, read without any notice. */
  public Shop clean() {
    var ok = read();
    assertEquals(List.of(), ok.notices());
    return ok.shop();
  }

  /** The one notice of the reading. */
  Notice onlyNotice() {
    var notices = read().notices();
    assertEquals(1, notices.size(), notices::toString);
    assertTrue(!NoticeWords.ENGLISH.advice(notices.get(0)).isEmpty(), notices::toString);
    assertTrue(!NoticeWords.ENGLISH.message(notices.get(0)).isEmpty(), notices::toString);
    return notices.get(0);
  }

  /** Checks that there is one notice, of this code and line of this file. */
  Notice refuses(NoticeCode code, String file, int line) {
    var notice = onlyNotice();
    assertEquals(code + " " + file + ":" + line, notice.code() + " " + notice.place());
    return notice;
  }

  /** Why the folder is no shop. */
  String whyUnreadable() {
    return assertThrows(UnreadableShop.class, this::read).getMessage();
  }
}
