package sagwright.sheet;

import sagwright.wood.SpeciesTable;

/** Reads a document that may be a sheet or an order, by what its {@code format} says. */
public final class DocumentReader {
  private final SheetReader sheets;

  public DocumentReader(SpeciesTable species) {
    this.sheets = new SheetReader(species);
  }

  public Document read(String text) throws BadDocumentException {
    JsonFormat format = new JsonFormat(JsonDocument.parse(text));
    switch (format.name()) {
      case SheetReader.FORMAT:
        return sheets.read(text);
      case OrderReader.FORMAT:
        return OrderReader.readDocument(text);
      default:
        throw format.wrong("\"" + SheetReader.FORMAT + "\" or \"" + OrderReader.FORMAT + "\"");
    }
  }
}
