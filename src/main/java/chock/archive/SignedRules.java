package chock.archive;

import chock.signoff.RulePack;
import chock.signoff.TrustList;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * A packed rule book and the trust list to check its signature with, as they are sent to another machine. The text is that of the
 * files, so that the signature is checked again wherever the rules are compiled: they are code.
 *
 * @param file name of the packed rule book, for messages
 * @param pack its text
 * @param trustFile name of the trust list, for messages
 * @param trust its text
 * @param at the key has to be valid at this moment, that of the command, wherever and whenever it is checked
 */
public record SignedRules(String file, String pack, String trustFile, String trust, Instant at) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Checks the signature, the key and its role, and only then reads what is packed.
     *
     * @throws chock.record.UnusableInput when the trust list cannot be used, or the rule book is not signed with a trusted key of
     *         a rule author or a lead
     */
    public RulePack open() {
        return RulePack.open(file, pack.getBytes(StandardCharsets.ISO_8859_1), TrustList.read(trustFile, trust.getBytes(StandardCharsets.ISO_8859_1)), at);
    }
}
