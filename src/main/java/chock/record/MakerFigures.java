package chock.record;

import java.util.List;
import java.util.Optional;

/**
 * The maker's figures, and those that were looked for and not found.
 *
 * @param figures found
 * @param noneFound limit ids, each alone or as {@code limit @ point}, for which the manual was searched in vain
 */
public record MakerFigures(List<MakerFigure> figures, List<String> noneFound) {

    /** The figure for a limit at a place: one for that place or a part above it first, else one for every place. */
    public Optional<MakerFigure> figure(String limit, String point) {
        return figures.stream().filter(f -> f.limit().equals(limit) && f.point() != null && Entry.covers(f.point(), point)).findFirst()
                .or(() -> figures.stream().filter(f -> f.limit().equals(limit) && f.point() == null).findFirst());
    }

    /** True when the record says that no figure was found for this limit at this place. */
    public boolean saysNone(String limit, String point) {
        return noneFound.stream().anyMatch(none -> {
            int at = none.indexOf('@');
            return at < 0 ? none.strip().equals(limit) : none.substring(0, at).strip().equals(limit) && Entry.covers(none.substring(at + 1).strip(), point);
        });
    }
}
