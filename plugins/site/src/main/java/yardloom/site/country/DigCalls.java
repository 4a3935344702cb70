package yardloom.site.country;

import java.util.Arrays;
import java.util.Optional;
import yardloom.facts.DigCall;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/**
 * The services that mark buried lines, by country: of the plan's own word, else of its site's time
 * zone. Where neither names a country of the table nobody is named, since a call number of another
 * country misleads.
 */
public final class DigCalls {
  /** On the plan: the country, two letters. */
  static final AttributeKey<String> COUNTRY = new AttributeKey<>("site.country", String.class);

  private static final DataTable CALLS = DataTable.shipped(DigCalls.class, "dig-call.csv");

  private DigCalls() {}

  /** Whom to ask there, if that is known. */
  public static Optional<DigCall> of(Plan plan) {
    Optional<String> said = plan.attributes().get(COUNTRY);
    return CALLS.rows().stream()
        .filter(row -> said.map(row.text("country")::equals).orElseGet(() -> holds(row, plan)))
        .findFirst()
        .map(row -> new DigCall(row.text("call"), row.source()));
  }

  /** {@code (call 811 …)} after "have lines marked", or nothing. */
  public static String inBrackets(Plan plan) {
    return DigCall.inBrackets(of(plan));
  }

  private static boolean holds(DataRow row, Plan plan) {
    return plan.site().map(s -> s.zone().getId()).stream()
        .anyMatch(
            zone ->
                Arrays.stream(row.text("zones").split(";"))
                    .anyMatch(z -> z.endsWith("/") ? zone.startsWith(z) : zone.equals(z)));
  }
}
