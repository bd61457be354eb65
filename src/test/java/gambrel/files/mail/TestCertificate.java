package gambrel.files.mail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A certificate that its maker signed himself, for a server on this machine. */
public final class TestCertificate {
  private static final char[] PASSWORD = "changeit".toCharArray();

  private final Path file;
  private final SSLContext tls;

  private TestCertificate(Path file) throws IOException, GeneralSecurityException {
    this.file = file;
    var store = KeyStore.getInstance(file.toFile(), PASSWORD);
    var keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    keys.init(store, PASSWORD);
    var trusted = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trusted.init(store);
    tls = SSLContext.getInstance("TLS");
    tls.init(keys.getKeyManagers(), trusted.getTrustManagers(), null);
  }

  /** A new certificate for a host name. */
  public static TestCertificate of(String host, Path folder) throws Exception {
    var file = folder.resolve(host + ".p12");
    if (!Files.exists(file)) {
      var command =
          List.of(
              Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
              "-genkeypair",
              "-keyalg",
              "EC",
              "-dname",
              "CN=" + host,
              "-ext",
              "san=dns:" + host,
              "-validity",
              "30",
              "-alias",
              "one",
              "-storetype",
              "PKCS12",
              "-storepass",
              new String(PASSWORD),
              "-keystore",
              file.toString());
      var tool = new ProcessBuilder(command).redirectErrorStream(true).start();
      var said = new String(tool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (tool.waitFor() != 0) {
        throw new AssertionError(said);
      }
    }
    return new TestCertificate(file);
  }

  /** The file with it; a process that trusts it is given this as its trust store. */
  public Path file() {
    return file;
  }

  /** Connections of a server that has it, and of a client that trusts it. */
  public SSLContext tls() {
    return tls;
  }
}
