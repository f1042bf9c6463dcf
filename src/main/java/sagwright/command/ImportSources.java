package sagwright.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.DocumentText;

/**
 * Where documents come from: files, folders of them, or standard input with one a line. One is read
 * at a time.
 */
final class ImportSources {
  /** The text of a document, once it is asked for. */
  interface Text {
    String read() throws BadDocumentException;
  }

  /**
   * One document.
   *
   * @param file as it was named; "-" for standard input
   * @param line of standard input, from 1; 0 for a file
   */
  record Source(String file, int line, Text text) {
    String inWords() {
      return line == 0 ? file : file + ", line " + line;
    }
  }

  private final InputStream in;

  ImportSources(InputStream in) {
    this.in = in;
  }

  void forEach(List<Path> files, Consumer<Source> use) {
    for (Path file : files) {
      if (file.toString().equals("-")) {
        forEachLine(use);
      } else if (Files.isDirectory(file)) {
        forEachIn(file, use);
      } else {
        use.accept(new Source(file.toString(), 0, () -> DocumentText.ofFile(file)));
      }
    }
  }

  private static void forEachIn(Path folder, Consumer<Source> use) {
    List<Path> documents;
    try (Stream<Path> entries = Files.list(folder)) {
      documents = entries.filter(ImportSources::isDocument).sorted().toList();
    } catch (IOException e) {
      use.accept(new Source(folder.toString(), 0, unreadable("the folder cannot be read")));
      return;
    }
    if (documents.isEmpty()) {
      use.accept(new Source(folder.toString(), 0, unreadable("the folder holds no .json file")));
    }
    for (Path document : documents) {
      use.accept(new Source(document.toString(), 0, () -> DocumentText.ofFile(document)));
    }
  }

  private static boolean isDocument(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json")
        && Files.isRegularFile(file);
  }

  private void forEachLine(Consumer<Source> use) {
    try {
      int number = 0;
      for (byte[] line = nextLine(); line != null; line = nextLine()) {
        number++;
        byte[] document = line;
        if (!new String(line, java.nio.charset.StandardCharsets.ISO_8859_1).isBlank()) {
          use.accept(new Source("-", number, () -> DocumentText.of(document)));
        }
      }
    } catch (IOException e) {
      use.accept(new Source("-", 0, unreadable("standard input cannot be read")));
    }
  }

  /**
   * The next line without its end; null after the last. One that is too long is cut and refused.
   */
  private byte[] nextLine() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    int next = in.read();
    if (next < 0) {
      return null;
    }
    for (; next >= 0 && next != '\n'; next = in.read()) {
      if (line.size() <= DocumentText.GREATEST_BYTES) {
        line.write(next);
      }
    }
    return line.toByteArray();
  }

  private static Text unreadable(String why) {
    return () -> {
      throw new BadDocumentException("", why);
    };
  }
}
