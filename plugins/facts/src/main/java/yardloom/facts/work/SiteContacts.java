package yardloom.facts.work;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where the yard is and whom to call about it, as the plan says.
 *
 * @param address of the yard, one line
 * @param people in the order in which the plan names them
 */
public record SiteContacts(Optional<String> address, List<Contact> people) {
  /** Nobody and nowhere. */
  public static final SiteContacts NONE = new SiteContacts(Optional.empty(), List.of());

  public SiteContacts {
    people = List.copyOf(people);
  }

  /**
   * Someone to call.
   *
   * @param role what for; may be empty
   * @param isOnSite whether drivers reach this one in the yard
   */
  public record Contact(String name, String phone, String role, boolean isOnSite) {}

  /** Name and number of each who is on the site; empty if nobody is said to be. */
  public Optional<String> onSite() {
    String all =
        people.stream()
            .filter(Contact::isOnSite)
            .map(c -> c.name() + ", " + c.phone())
            .collect(Collectors.joining("; "));
    return all.isEmpty() ? Optional.empty() : Optional.of(all);
  }
}
