package yardloom.site.contact;

import java.util.regex.Pattern;
import yardloom.facts.work.SiteContacts;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/**
 * The words for where a driver finds the yard and whom to call.
 *
 * <p>References: [1] ITU-T E.164, the international public telecommunication numbering plan: at
 * most 15 digits, as the help pages of several telephone services have it; the standard itself was
 * not read. The least, 3, is that of a service number such as 811 (common practice).
 */
public final class ContactWords {
  private static final int LEAST_DIGITS = 3;
  private static final int MOST_DIGITS = 15;
  private static final int LONGEST_ROLE = 60;
  private static final int LONGEST_ADDRESS = 120;

  /** A number as people write it; an extension is not part of what E.164 counts. */
  private static final Pattern PHONE =
      Pattern.compile("(\\+?[0-9 ()./-]+?)( ?(?:x|ext\\.?) ?[0-9]{1,6})?");

  private ContactWords() {}

  @Verb(
      help = "Names someone to call, on the cover and in the crew's booklet.",
      example = "contact('Digging service', phone: '811', role: 'marks buried lines')")
  public static void contact(
      PlanScope plan,
      @Arg(name = "name", help = "a person, a firm or a service") String name,
      @Opt(
              name = "phone",
              help = "digits with spaces, brackets, dots or hyphens, such as 217 555 0142 ext 3",
              required = true)
          String phone,
      @Opt(name = "role", help = "what for, at most 60 letters", fallback = "none") String role,
      @Opt(name = "onSite", help = "whether drivers reach this one in the yard", fallback = "false")
          Boolean onSite) {
    Making.name("contact", name);
    String what =
        role == null ? "" : Making.line(plan, "the role of a contact", role, LONGEST_ROLE);
    Making.once(
        plan, ContactCalculator.CONTACT, c -> c.name().equals(name), "contact '" + name + "'");
    plan.draft()
        .attributes()
        .add(
            ContactCalculator.CONTACT,
            new SiteContacts.Contact(name, phone(plan, phone), what, Limits.or(onSite, false)),
            plan.place());
  }

  @Verb(
      help = "Says the address of the yard, for crews and drivers.",
      example = "siteAddress('14 Linden Walk, Urbana, Illinois')")
  public static void siteAddress(
      PlanScope plan,
      @Arg(name = "address", help = "in one line, at most 120 letters") String address) {
    String said = Making.line(plan, "the address", address, LONGEST_ADDRESS);
    Making.once(plan, ContactCalculator.ADDRESS, a -> true, "the address of the yard");
    plan.draft().attributes().add(ContactCalculator.ADDRESS, said, plan.place());
  }

  private static String phone(PlanScope plan, String said) {
    var read = PHONE.matcher(said.strip());
    long digits =
        read.matches() ? read.group(1).chars().filter(c -> c >= '0' && c <= '9').count() : 0;
    if (digits < LEAST_DIGITS || digits > MOST_DIGITS) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "'"
              + said
              + "' is not a phone number; it has "
              + LEAST_DIGITS
              + " to "
              + MOST_DIGITS
              + " digits, spaces, brackets, dots or hyphens between them, a + before and an"
              + " extension behind if need be: '+1 217 555 0142 ext 3'");
    }
    return said.strip();
  }
}
