package sagwright.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Documents as bytes and as lines, before anything is read from them. */
public final class DocumentText {
  /** More than half an hour at a thousand readings a second; more is no run. */
  public static final int GREATEST_BYTES = 64 * 1024 * 1024;

  private DocumentText() {}

  /** The text of a file. */
  public static String ofFile(Path file) throws BadDocumentException {
    try {
      if (Files.isDirectory(file)) {
        throw new BadDocumentException("", "is a folder, not a document");
      }
      try (InputStream in = Files.newInputStream(file)) {
        return of(in.readNBytes(GREATEST_BYTES + 1)); // a device tells no size, and may never end
      }
    } catch (NoSuchFileException e) {
      throw new BadDocumentException("", "there is no such file");
    } catch (IOException e) {
      throw new BadDocumentException("", "cannot be read");
    }
  }

  /** The text of a file's bytes; a byte order mark is dropped. */
  public static String of(byte[] bytes) throws BadDocumentException {
    if (bytes.length > GREATEST_BYTES) {
      throw tooLong();
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new BadDocumentException("", "is not UTF-8 text");
    }
  }

  private static BadDocumentException tooLong() {
    return new BadDocumentException("", "is longer than " + GREATEST_BYTES / 1024 / 1024 + " MB");
  }

  /**
   * A JSON document on one line, its numbers as they were written: white space between values is
   * dropped, nothing else changes.
   */
  static String onOneLine(String json) {
    StringBuilder line = new StringBuilder(json.length());
    boolean inText = false;
    for (int i = 0; i < json.length(); i++) {
      char c = json.charAt(i);
      if (inText && c == '\\') {
        line.append(c).append(json.charAt(++i));
        continue;
      }
      if (c == '"') {
        inText = !inText;
      }
      if (inText || !Character.isWhitespace(c)) {
        line.append(c);
      }
    }
    return line.toString();
  }
}
