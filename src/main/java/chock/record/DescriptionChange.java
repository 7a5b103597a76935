package chock.record;

import java.util.Objects;

/**
 * One field of the description that work changed, on the day it was done. The description itself says how the machine is now.
 *
 * @param at when the machine was so for the first time
 * @param by id of the person
 * @param field such as {@code front-brake.type}
 * @param from value before
 * @param to value after
 * @param because id of the entry of the work that made it so
 * @param line line of the file it stands on, from 1
 */
public record DescriptionChange(Moment at, String by, String field, String from, String to, String because, int line) {

    // Where it stands in a file is no part of what it says.
    @Override
    public boolean equals(Object other) {
        return other instanceof DescriptionChange c && Objects.equals(c.at, at) && Objects.equals(c.by, by) && Objects.equals(c.field, field) && Objects.equals(c.from, from)
                && Objects.equals(c.to, to) && Objects.equals(c.because, because);
    }

    @Override
    public int hashCode() {
        return Objects.hash(at, field, from, to, because);
    }
}
