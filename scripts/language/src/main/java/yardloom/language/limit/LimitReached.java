package yardloom.language.limit;

/** Ends a script that used up a limit. An error, so that no word can catch it by accident. */
public final class LimitReached extends Error {
  private static final long serialVersionUID = 1L;

  LimitReached(String message) {
    super(message);
  }
}
