package yardloom.language.compile;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The check sum that tells contents apart. */
public final class Sha256 {
  private Sha256() {}

  /** A fresh one to be fed. */
  public static MessageDigest begin() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
