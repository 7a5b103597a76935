package chock.report;

import chock.signoff.LedgerLine;

/** Tells a line of the ledger in words. */
public final class LedgerWords {
    private LedgerWords() { }

    /** One line, without its number and time. */
    public static String says(LedgerLine line) {
        return switch (line.kind()) {
            case "signed" -> "signed: " + line.text("record") + " at " + line.text("gate") + " by " + line.said().path("signer").path("name").asText() + ", until " + line.text("holdsUntil") + ", " + line.text("file");
            case "refused" -> "refused: " + line.text("record") + " at " + line.text("gate") + ": " + line.text("why");
            case "voided" -> "voided: a sign-off of " + line.text("record") + ": " + line.text("why");
            case "key-trusted" -> "key trusted: " + line.said().path("key").path("name").asText() + " (" + line.said().path("key").path("role").asText() + "), " + line.said().path("key").path("kid").asText();
            case "key-revoked" -> "key revoked: " + line.text("name") + ", " + line.text("keyId") + ": " + line.text("reason");
            case "rule-book-kept" -> "rule book kept: " + line.text("ruleBook") + " by " + line.text("name") + ", packed with " + line.text("madeBy");
            case "withdrawn" -> "withdrawn: " + withdrawn(line) + " by " + line.text("name") + ": " + line.text("reason");
            default -> line.kind() + ": a torn line of " + line.text("bytes") + " bytes, kept in " + line.text("kept");
        };
    }

    private static String withdrawn(LedgerLine line) {
        String book = line.text("ruleBook").isEmpty() ? "every rule book until then" : "rule book " + line.text("ruleBook");
        return !line.said().has("checks") ? "the " + book
                : "the check " + line.said().path("checks").path(0).asText() + " of " + book + (line.said().path("alsoNotAsked").asBoolean() ? ", also where it was not asked," : "");
    }
}
