package chock.record;

import java.util.List;

/**
 * The workshop's register that a record was held against.
 *
 * @param digest of the register, {@code sha256:…}
 * @param unknown what the record names and the register does not know, or knows otherwise, each in words
 */
public record Registered(String digest, List<String> unknown) { }
