package yardloom.program.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.language.compile.MissingWords;

/**
 * The words of all shipped plugins, loaded or not, for one message: which plugin a missing word
 * belongs to. The list is generated; a test keeps it current.
 */
final class ShippedWords implements MissingWords {
  static final String RESOURCE = "shipped-words.txt";

  private final Map<String, String> pluginByWord;

  private ShippedWords(Map<String, String> pluginByWord) {
    this.pluginByWord = pluginByWord;
  }

  static ShippedWords read() {
    Map<String, String> words = new TreeMap<>();
    try (InputStream in = ShippedWords.class.getResourceAsStream(RESOURCE)) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(line -> line.split(" ", 2))
          .forEach(parts -> words.put(parts[1], parts[0]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new ShippedWords(words);
  }

  @Override
  public Optional<String> pluginOf(String scopeName, String word) {
    return Optional.ofNullable(pluginByWord.get(scopeName + " " + word));
  }
}
