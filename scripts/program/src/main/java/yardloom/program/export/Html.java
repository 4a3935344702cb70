package yardloom.program.export;

/** Builds a page of HTML; all text is escaped. */
final class Html {
  private final StringBuilder page = new StringBuilder();

  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Opens an element; {@code attributes} are pairs of name and value. */
  Html open(String name, String... attributes) {
    page.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      page.append(' ').append(attributes[i]).append("=\"");
      page.append(escape(attributes[i + 1])).append('"');
    }
    page.append('>');
    return this;
  }

  Html close(String name) {
    page.append("</").append(name).append(">\n");
    return this;
  }

  Html text(String text) {
    page.append(escape(text));
    return this;
  }

  /** A whole element with text. */
  Html element(String name, String text, String... attributes) {
    return open(name, attributes).text(text).close(name);
  }

  /** Markup that is known to be well-formed. */
  Html raw(String markup) {
    page.append(markup);
    return this;
  }

  @Override
  public String toString() {
    return page.toString();
  }
}
