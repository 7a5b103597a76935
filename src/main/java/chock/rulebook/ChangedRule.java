package chock.rulebook;

/**
 * A rule with one of its conditions changed.
 *
 * @param rule name of the rule
 * @param what what was changed, in a few words that no other change of the rule has
 * @param file name of its file, such as {@code evidence/evidence.drl}
 * @param line line of the condition
 * @param text the changed rule, under a name of its own
 * @param name that name
 */
public record ChangedRule(String rule, String what, String file, int line, String text, String name) { }
