package yardloom.program.guide;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Word;
import yardloom.program.words.BuiltIn;
import yardloom.program.words.Help;

/** The pages of the guide as Markdown, by path; the same vocabulary gives the same pages. */
public final class GuidePages {
  private GuidePages() {}

  /**
   * A page for each word and an index of them.
   *
   * @param pictures the paths of the pictures that there are
   */
  public static Map<String, String> of(Lexicon lexicon, Set<String> pictures) {
    Map<String, String> pages = new TreeMap<>();
    StringBuilder index =
        new StringBuilder(
            "# Words of the plan language\n\nMade from the vocabulary; do not edit.\n");
    Map<String, StringBuilder> byBlock = new TreeMap<>();
    for (Word word : lexicon.all()) {
      String path = path(word);
      pages.put(path, page(word, pictures));
      byBlock
          .computeIfAbsent(block(word), b -> new StringBuilder())
          .append("- [`")
          .append(word.name())
          .append("`](")
          .append(path.substring("words/".length()))
          .append(") ")
          .append(Help.firstSentence(word.help()))
          .append('\n');
    }
    byBlock.forEach(
        (block, lines) -> index.append("\n## ").append(block).append("\n\n").append(lines));
    index.append("\n## Of the language itself\n\n");
    for (BuiltIn word : BuiltIn.ALL) {
      index.append("- `").append(word.signature()).append("` ").append(word.help()).append('\n');
    }
    pages.put("words/index.md", index.toString());
    return pages;
  }

  /** The example of a word as a plan that runs. */
  public static String example(Word word) {
    return ExamplePlan.of(word);
  }

  /** The same plan without what the word says; its drawing shows what the word adds. */
  public static String exampleWithout(Word word) {
    return ExamplePlan.of(word, false);
  }

  /** Where the picture of a word's example stands, if the word draws something. */
  public static String picture(Word word) {
    return path(word).replace("words/", "pictures/").replace(".md", ".svg");
  }

  /** Where the page of a word stands. */
  public static String path(Word word) {
    String scope = ExamplePlan.scope(word);
    return "words/"
        + (scope.isEmpty() ? "any" : scope.replace(' ', '-'))
        + "-"
        + word.name()
        + ".md";
  }

  private static String block(Word word) {
    String scope = ExamplePlan.scope(word);
    return scope.isEmpty() ? "In every block" : "In the block of " + scope;
  }

  private static String page(Word word, Set<String> pictures) {
    StringBuilder page = new StringBuilder();
    page.append("# ").append(word.name()).append("\n\n");
    page.append(block(word)).append("; plugin ").append(word.plugin()).append(".\n\n");
    page.append("`").append(word.signature()).append("`\n\n").append(word.help()).append("\n\n");
    if (!word.parameters().isEmpty()) {
      page.append("| name | what | without it |\n| --- | --- | --- |\n");
      for (Word.Parameter p : word.parameters()) {
        row(page, List.of(p.name(), Help.of(p), p.required() ? "(required)" : p.fallback()));
      }
      page.append('\n');
    }
    page.append("```groovy\n").append(ExamplePlan.of(word)).append("```\n");
    String picture = picture(word);
    page.append(
        pictures.contains(picture)
            ? "\n![The yard of the example](../" + picture + ")\n"
            : "\nIn this example it draws nothing; what it says is in tables, notes or findings.\n");
    return page.toString();
  }

  private static void row(StringBuilder page, List<String> cells) {
    cells.forEach(c -> page.append("| ").append(c.replace("|", "\\|")).append(' '));
    page.append("|\n");
  }
}
