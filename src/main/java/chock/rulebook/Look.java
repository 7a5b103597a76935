package chock.rulebook;

import java.util.List;

/**
 * What somebody does at one place that honestly answers several questions.
 *
 * @param name what is done, as an instruction without an end: {@code turn the chain round}
 * @param point where one stands for it
 * @param says what to do, in sentences
 * @param answers place and aspect of each question, with a blank between
 */
public record Look(String name, String point, String says, List<String> answers) { }
