package chock.record;

import java.util.List;

/**
 * Something somebody says of the machine, such as a seller. It proves nothing by itself.
 *
 * @param kind what sort of claim
 * @param about the place on the machine
 * @param says the claim in the words it was made in
 * @param by who made it; need not be one of the people of the record
 * @param supportedBy ids of the entries it is said to rest on; may be empty
 */
public record Claim(Kind kind, String about, String says, String by, List<String> supportedBy) {

    /** What is claimed. */
    public enum Kind {
        NEW, REBUILT, ORIGINAL, MILEAGE, TREAD, YEAR;

        /** As written in a record. */
        public String word() {
            return Reading.spelled(this);
        }
    }
}
