package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** Reads the maker's figures and those that were looked for in vain. */
final class MakerReading {
    private final Reading read;
    private final Set<String> people;
    private final Set<String> seen = new HashSet<>();

    MakerReading(Reading read, Set<String> people) {
        this.read = read;
        this.people = people;
    }

    MakerFigures maker(Raw.Maker raw) {
        List<MakerFigure> figures = new ArrayList<>();
        if (raw.figures() != null) {
            for (int i = 0; i < raw.figures().size(); i++) {
                if (raw.figures().get(i) != null) {
                    figures.add(figure("maker.figures[" + i + "]", raw.figures().get(i), figures));
                }
            }
        }
        List<String> none = new ArrayList<>();
        if (raw.noneFound() != null) {
            for (int i = 0; i < raw.noneFound().size(); i++) {
                noneFound("maker.none-found[" + i + "]", raw.noneFound().get(i), figures, none);
            }
        }
        return new MakerFigures(List.copyOf(figures), List.copyOf(none));
    }

    private MakerFigure figure(String path, Raw.Figure raw, List<MakerFigure> before) {
        String limit = read.known(path + ".for", raw.forLimit(), "a limit of this rule book", read.words.limits().keySet());
        String point = read.point(path + ".at", raw.at());
        Unit.Dimension kind = limit == null ? null : read.words.limits().get(limit);
        Quantity atLeast = read.amount(path + ".at-least", raw.atLeast(), kind);
        Quantity atMost = read.amount(path + ".at-most", raw.atMost(), kind);
        Quantity is = read.amount(path + ".is", raw.is(), kind);
        boolean range = read.isWritten(path + ".at-least") || read.isWritten(path + ".at-most");
        if (range == read.isWritten(path + ".is")) {
            read.faults.add(path, range ? "a range and a single figure" : "no figure is given",
                    "Write at-least, at-most or both, or else is for a figure to be met");
        }
        if (atLeast != null && atMost != null && atLeast.unit().dimension() == atMost.unit().dimension() && atLeast.compareTo(atMost) > 0) {
            read.faults.add(path + ".at-most", "at least " + atLeast + ", but at most " + atMost, "Look at both again in the manual");
        }
        if (limit != null && read.isNew(path)) {
            refuse(path + ".at-least", limit, atLeast);
            refuse(path + ".at-most", limit, atMost);
            refuse(path + ".is", limit, is);
        }
        String by = read.known(path + ".by", raw.by(), "one of the people of this record", people);
        String second = read.known(path + ".seconded-by", raw.secondedBy(), "one of the people of this record", people);
        if (by != null && by.equals(second)) {
            read.faults.add(path + ".seconded-by", by + " seconds a figure that " + by + " read", "Let a second person read it, or leave the key out");
        }
        boolean placed = read.isWritten(path + ".at");
        if (limit != null && before.stream().anyMatch(f -> limit.equals(f.limit()) && Objects.equals(point, f.point())) && (point != null || !placed)) {
            read.faults.add(path, "a second figure for " + limit + place(point), "Keep one; when they are for different places, name each with at");
        }
        // A place that is not known must not turn into "every place" in the checks that follow.
        return new MakerFigure(limit, placed && point == null ? "?" : point, atLeast, atMost, is, raw.document(), raw.page(), by, second);
    }

    private void refuse(String path, String limit, Quantity figure) {
        if (figure != null) {
            read.words.plausible().refusesOfMaker(limit, figure).ifPresent(why -> read.faults.add(path, why, "Look at the manual again: check the unit, the decimal point, and at least against at most"));
        }
    }

    private void noneFound(String path, String text, List<MakerFigure> figures, List<String> none) {
        if (Reading.blank(text) || read.faults.at(path)) {
            return;
        }
        String[] parts = text.split("\\s*@\\s*", 2);
        Set<String> ids = new TreeSet<>(read.words.limits().keySet());
        read.words.tooled().values().forEach(tooled -> ids.add(tooled.noneFound()));
        String limit = read.known(path, parts[0], "a limit of this rule book", ids);
        String point = parts.length == 1 ? null : parts[1].isEmpty() ? noPoint(path) : read.point(path, parts[1]);
        if (limit == null || parts.length == 2 && point == null) {
            return;
        }
        String tidy = point == null ? limit : limit + " @ " + point;
        if (!seen.add(tidy)) {
            read.faults.add(path, tidy + " stands here twice", "Keep one");
        }
        none.add(tidy);
        figures.stream().filter(f -> limit.equals(f.limit()) && overlap(point, f.point())).findFirst().ifPresent(f -> contradiction(path, limit, point, f));
    }

    private String noPoint(String path) {
        read.faults.add(path, "no place stands behind the @", "Name the place, or leave the @ out");
        return null;
    }

    private void contradiction(String path, String limit, String point, MakerFigure figure) {
        if (point == null && figure.point() != null) {
            read.faults.add(path, "none found for " + limit + ", but a figure is given for " + figure.point(), "Name the place where none was found: " + limit + " @ place");
        } else {
            read.faults.add(path, "none found for " + limit + place(point) + ", but a figure is given" + place(figure.point()), "Keep one of the two");
        }
    }

    private static boolean overlap(String none, String figure) {
        return none == null || figure == null || Entry.covers(none, figure) || Entry.covers(figure, none);
    }

    private static String place(String point) {
        return point == null ? " for every place" : " at " + point;
    }
}
