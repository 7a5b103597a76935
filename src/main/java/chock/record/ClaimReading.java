package chock.record;

import java.time.Year;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads what is claimed of the machine. Whether a claim is true is not asked here. */
final class ClaimReading {
    private final Reading read;
    private final Set<String> entries;

    /** @param entries ids of the entries, or null when not all are known */
    ClaimReading(Reading read, Set<String> entries) {
        this.read = read;
        this.entries = entries;
    }

    List<Claim> claims(List<Raw.Claim> raw) {
        List<Claim> claims = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            if (raw.get(i) != null) {
                claims.add(claim("claims[" + i + "]", raw.get(i)));
            }
        }
        return claims;
    }

    private Claim claim(String path, Raw.Claim raw) {
        List<String> named = raw.supportedBy() == null ? List.of() : raw.supportedBy();
        Set<String> known = new LinkedHashSet<>();
        for (int i = 0; i < named.size(); i++) {
            String at = path + ".supported-by[" + i + "]";
            String id = read.known(at, named.get(i), "an entry of this record", entries);
            if (id != null && !known.add(id)) {
                read.faults.add(at, id + " stands here twice", "Keep one");
            }
        }
        Claim.Kind kind = read.choice(path + ".claim", raw.claim(), Claim.Kind.class);
        if (kind != null && !Reading.blank(raw.says()) && read.isNew(path)) {
            Year latest = read.today() == null ? null : Year.from(read.today());
            ClaimedFigure.refused(kind, raw.says(), read.words.plausible(), latest).ifPresent(why -> read.faults.add(path + ".says", why, "Ask again what was meant, and check the unit"));
        }
        return new Claim(kind, read.point(path + ".about", raw.about()), raw.says(), raw.by(), List.copyOf(known));
    }
}
