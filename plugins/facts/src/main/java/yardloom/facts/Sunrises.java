package yardloom.facts;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * When the sun rises, by the clock of the site with its summer time.
 *
 * @param earliest of each month, January to December; empty where it does not rise or never sets
 */
public record Sunrises(List<Optional<LocalTime>> earliest) {
  public Sunrises {
    earliest = List.copyOf(earliest);
    if (earliest.size() != 12) {
      throw new IllegalArgumentException(earliest.size() + " months");
    }
  }
}
