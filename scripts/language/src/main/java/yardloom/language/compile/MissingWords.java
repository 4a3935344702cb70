package yardloom.language.compile;

import java.util.Optional;

/** The words of shipped plugins that are not loaded, for one helpful message. */
@FunctionalInterface
public interface MissingWords {
  /** The plugin that offers {@code word} in blocks called {@code scopeName}, if any does. */
  Optional<String> pluginOf(String scopeName, String word);
}
