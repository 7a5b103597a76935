package chock.rulebook;

import chock.record.Fault;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** One file of a rule book or of a house: text in UTF-8 of at most 1 MB. The largest shipped one has a fifth of that. */
final class RuleText {
    private static final int LARGEST = 1_000_000;

    private RuleText() { }

    /**
     * @param shown the file as it is named in messages
     * @param tooLarge what to do about one that is too large
     * @param faults takes what is wrong with the file
     * @return null after a fault
     */
    static String read(Path file, String shown, String tooLarge, List<Fault> faults) {
        try {
            if (Files.size(file) <= LARGEST) {
                return Files.readString(file, StandardCharsets.UTF_8);
            }
            faults.add(new Fault(shown, 0, "", "it is larger than 1 MB", tooLarge));
        } catch (CharacterCodingException e) {
            faults.add(new Fault(shown, 0, "", "it is not text in UTF-8", "Save it as UTF-8."));
        } catch (IOException e) {
            faults.add(new Fault(shown, 0, "", "it cannot be read", ""));
        }
        return null;
    }
}
