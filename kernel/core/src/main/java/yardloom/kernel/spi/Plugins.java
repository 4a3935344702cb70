package yardloom.kernel.spi;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.vocab.Lexicon;

/** Plugins that work together, sorted by id, with all their words and calculators. */
public record Plugins(List<YardPlugin> all, Lexicon lexicon, FactGraph graph) {
  public Plugins {
    all = List.copyOf(all);
  }

  /** What each of them offers, such as {@code YardPlugin::tables}, one plugin after the other. */
  public <T> Stream<T> each(Function<YardPlugin, ? extends Collection<T>> offers) {
    return all.stream().flatMap(p -> offers.apply(p).stream());
  }
}
