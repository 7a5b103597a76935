package chock.rulebook;

import chock.quantity.Bounds;
import chock.record.Fault;
import chock.record.Spelling;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Holds a house book against the rule book it adds to: it may tighten and add, and never loosen, replace or take away. */
final class HouseLoader {
    static final String OWN = "house.";
    private static final String CURE = "A house may only tighten; ";

    private final RuleBook shipped;
    private final HouseBook house;
    private final Map<String, List<String>> places;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Limit> tightened = new ArrayList<>();
    private final List<Limit> own = new ArrayList<>();
    private final SortedMap<String, Card> cards = new TreeMap<>();
    private final List<Asking> askings = new ArrayList<>();

    HouseLoader(RuleBook shipped, HouseBook house) {
        this.shipped = shipped;
        this.house = house;
        this.places = shipped.library().places();
    }

    /**
     * The rule book with the house in force.
     *
     * @throws UnusableInput with everything that is wrong with the house; then none of it is in force
     */
    RuleBook load() {
        SortedMap<String, String> named = new TreeMap<>();
        house.files().forEach((name, text) -> named.put(house.shown(name), text));
        faults.addAll(Conflicts.leftOpen(named));
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        String limits = house.files().get(HouseBook.LIMITS);
        if (limits != null) {
            Sheet.list(house.shown(HouseBook.LIMITS), limits, faults).forEach(this::readLimit);
        }
        SortedMap<String, String> drl = drl();
        Set<String> rules = ruleNames(drl);
        String checks = house.files().get(HouseBook.CHECKS);
        if (checks != null) {
            Sheet.list(house.shown(HouseBook.CHECKS), checks, faults).forEach(sheet -> readCard(sheet, rules));
        }
        checkLimits();
        Set<String> known = new TreeSet<>(shipped.vocabulary().points());
        known.addAll(Conflicts.known(cards.values(), List.of(), places));
        Conflicts conflicts = new Conflicts(faults);
        if (faults.isEmpty()) {
            conflicts.limits(List.of(), shipped.codes().values(), tightened);
            conflicts.limits(own, List.of(), List.of());
        }
        conflicts.undoRows(cards.values(), known, places, "Mend the place; 'chock rules CHECK' names the places of a check.");
        Set<String> limitIds = own.stream().map(Limit::id).collect(Collectors.toCollection(TreeSet::new));
        shipped.limits().forEach(limit -> limitIds.add(limit.id()));
        conflicts.rules(drl, cards, shipped.cards(), limitIds, places);
        List<Limit> every = new ArrayList<>(own);
        every.addAll(shipped.limits());
        conflicts.units(cards.values(), every);
        Vocabulary vocabulary = vocabulary();
        Rules compiled = faults.isEmpty() && !drl.isEmpty() ? compiled(drl) : shipped.rules();
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return shipped.withHouse(new RuleBook.House(house, List.copyOf(tightened), List.copyOf(askings), !drl.isEmpty()), cards, own, vocabulary, compiled);
    }

    private SortedMap<String, String> drl() {
        SortedMap<String, String> drl = new TreeMap<>();
        house.files().forEach((name, text) -> {
            if (name.endsWith(".drl")) {
                drl.put(house.shown(name), text);
                if (text.lines().map(String::strip).noneMatch(line -> line.equals("package rules.house") || line.equals("package rules.house;"))) {
                    faults.add(new Fault(house.shown(name), 1, "", "rules of a house stand in a package of their own", "Begin the file with: package rules.house;"));
                }
            }
        });
        return drl;
    }

    private static Set<String> ruleNames(SortedMap<String, String> drl) {
        Set<String> names = new TreeSet<>();
        drl.values().forEach(text -> text.lines().filter(line -> line.startsWith("rule \"")).forEach(line -> names.add(line.replaceFirst("rule \"([^\"]*)\".*", "$1"))));
        return names;
    }

    // Numbers

    private void readLimit(Sheet sheet) {
        String id = sheet.text("id");
        if (id == null) {
            sheet.keys();
            return;
        }
        boolean ofItsOwn = id.startsWith(OWN);
        List<Limit> bases = shipped.limits().stream().filter(l -> l.id().equals(id)).toList();
        if (!ofItsOwn && bases.isEmpty()) {
            sheet.fault("id", "the rule book has no limit '" + id + "' to tighten", near(id, shipped.vocabulary().limits().keySet(), "'chock rules CHECK' names the limits of a check.") + " A limit for a check of the house's own begins with " + OWN);
            sheet.keys();
            return;
        }
        Limit limit = LimitReader.ofHouse(sheet, id, house.name(), ofItsOwn ? null : bases.get(bases.size() - 1));
        if (limit == null) {
            return;
        }
        List<Limit> all = ofItsOwn ? own : tightened;
        all.stream().filter(l -> l.id().equals(id) && l.from().equals(limit.from())).findFirst().ifPresent(twin ->
                sheet.fault("id", "'" + id + "' stands twice from " + limit.from() + " (also " + Conflicts.at(twin) + ")", "Keep one of them, or give the later one its own from date."));
        all.add(limit);
        if (!ofItsOwn) {
            limit.impossible(shipped.vocabulary().plausible()).ifPresent(why -> sheet.fault("value", why, "Check the unit and the decimal point."));
            bases.stream().filter(base -> meets(base, bases, limit)).forEach(base -> tightens(sheet, limit, base));
        }
    }

    // The one in force when the house's begins, and every later one.
    private static boolean meets(Limit base, List<Limit> bases, Limit limit) {
        return bases.stream().noneMatch(next -> next.from().isAfter(base.from()) && !next.from().isAfter(limit.from()));
    }

    private void tightens(Sheet sheet, Limit limit, Limit base) {
        String shippedOne = Conflicts.words(base) + " (" + Conflicts.at(base) + ")";
        if (base.sense() == Limit.Sense.MAKER_ONLY) {
            sheet.fault("id", "'" + limit.id() + "' has no number to tighten: it is the maker's (" + Conflicts.at(base) + ")", "Leave it out, or add a check of the house's own.");
        } else if (limit.sense() != base.sense()) {
            sheet.fault("sense", limit.sense().key() + " " + limit.value() + " turns round " + shippedOne, "Write sense: " + base.sense().key() + ". Another side is a check of its own.");
        } else if (limit.value().unit().dimension() != base.value().unit().dimension() || limit.upper() != null && limit.upper().unit().dimension() != base.value().unit().dimension()) {
            sheet.fault("value", limit.value() + " is of another kind than " + shippedOne, "Give it in a unit of " + base.value().unit().dimension().words() + ", such as " + base.value() + ".");
        } else if (looser(limit, base)) {
            sheet.fault("value", Conflicts.words(limit) + " is looser than " + shippedOne, CURE + "write " + words(base) + ", or leave it out.");
        }
    }

    private static boolean looser(Limit limit, Limit base) {
        return base.sense() == Limit.Sense.WITHIN ? limit.value().compareTo(base.value()) > 0 : !allows(base.bounds(), limit.bounds());
    }

    private static boolean allows(Bounds outer, Bounds inner) {
        Bounds both = inner.and(outer);
        return same(both.low(), inner.low()) && same(both.high(), inner.high()) && both.lowPasses() == inner.lowPasses() && both.highPasses() == inner.highPasses();
    }

    private static boolean same(chock.quantity.Quantity a, chock.quantity.Quantity b) {
        return a == null || b == null ? a == b : a.compareTo(b) == 0;
    }

    private static String words(Limit base) {
        return switch (base.sense()) {
            case AT_LEAST -> base.value() + " or more";
            case AT_MOST, WITHIN -> base.value() + " or less";
            default -> "two numbers from " + base.value() + " to " + base.upper();
        } + (base.passesAtLimit() || base.sense() == Limit.Sense.WITHIN ? "" : " with at-limit: fails");
    }

    private static String near(String id, Set<String> known, String otherwise) {
        List<String> near = Spelling.nearest(id, known);
        return near.isEmpty() ? otherwise : "Did you mean " + String.join(" or ", near) + "?";
    }

    private void checkLimits() {
        Set<String> used = cards.values().stream().map(Card::limit).collect(Collectors.toSet());
        own.stream().filter(limit -> !used.contains(limit.id()) && house.files().entrySet().stream().noneMatch(f -> f.getKey().endsWith(".drl") && f.getValue().contains("\"" + limit.id() + "\"")))
                .forEach(limit -> faults.add(new Fault(limit.file(), limit.line(), limit.id(), "no check of the house uses this limit", "Name it under limit: on a card in " + house.shown(HouseBook.CHECKS) + ", or leave it out.")));
        for (Card card : cards.values()) {
            if (card.limit() != null && own.stream().noneMatch(l -> l.id().equals(card.limit())) && shipped.limits().stream().noneMatch(l -> l.id().equals(card.limit()))) {
                faults.add(new Fault(card.file(), card.line(), card.id(), "its limit '" + card.limit() + "' stands nowhere", "Add it to " + house.shown(HouseBook.LIMITS) + "."));
            }
        }
    }

    // Checks

    private void readCard(Sheet sheet, Set<String> rules) {
        int before = faults.size();
        String with = sheet.optional("asked-with");
        String at = sheet.optional("asked-at");
        String of = sheet.optional("asked-of");
        CardReader reader = new CardReader(places, shipped.library().works(), shipped.library().dangers(), true);
        Place places = at == null ? null : reader.placeOf(sheet, "asked-at", at);
        Card card = reader.read(sheet);
        if (card == null) {
            return;
        }
        if (shipped.cards().containsKey(card.id()) || !card.id().startsWith(OWN)) {
            Card theirs = shipped.cards().get(card.id());
            sheet.fault("id", theirs == null ? "'" + card.id() + "' is not the id of a check of a house" : "'" + card.id() + "' is a check of the rule book (" + theirs.file() + ":" + theirs.line() + "), and no house replaces one",
                    "Begin the id with " + OWN + " such as " + OWN + card.id().substring(card.id().indexOf('.') + 1));
            return;
        }
        Card twin = cards.put(card.id(), card);
        if (twin != null) {
            sheet.fault("id", "'" + card.id() + "' stands twice (also " + twin.file() + ":" + twin.line() + ")", "Ids are never reused; choose another.");
        }
        wantsOnePlace(card);
        if (faults.size() == before) {
            asking(sheet, card, with, places, of, rules.contains(card.id()));
        }
    }

    private void wantsOnePlace(Card card) {
        card.wants().stream().filter(want -> want.place() != null && !card.place().names().containsAll(want.place().names())).forEach(want ->
                faults.add(new Fault(card.file(), card.line(), card.id(), "the place " + want.place() + " of '" + want.name() + "' means several points", "Use only the names in braces of " + card.place() + ".")));
    }

    private void asking(Sheet sheet, Card card, String with, Place at, String of, boolean ruled) {
        int ways = (with == null ? 0 : 1) + (of == null ? 0 : 1) + (ruled ? 1 : 0);
        if (ways != 1) {
            sheet.fault("id", card.id() + (ways == 0 ? " does not say when it is asked" : " says in more than one way when it is asked"),
                    "Write one of: asked-with: and a shipped check; asked-of: every machine; or a rule \"" + card.id() + "\" in a DRL file of this folder.");
        } else if (of != null) {
            if (!of.equals("every machine")) {
                sheet.fault("asked-of", "'" + of + "'", "Write every machine; for some machines only, write asked-with: and a shipped check that is asked of them.");
            } else if (!card.place().names().isEmpty()) {
                sheet.fault("place", card.place() + " means several places, and not every machine has them all", "Name one place that every machine has, or write asked-with: and a shipped check.");
            } else {
                askings.add(new Asking(card, null, null));
            }
        } else if (with != null) {
            Card shippedOne = shipped.cards().get(with);
            if (shippedOne == null) {
                sheet.fault("asked-with", "the rule book has no check '" + with + "'", near(with, shipped.cards().keySet(), "'chock rules' lists them all."));
            } else {
                with(sheet, new Asking(card, shippedOne, at));
            }
        }
        if (with == null && at != null) {
            sheet.fault("asked-at", "it belongs to asked-with", "Add asked-with: and a shipped check, or leave it out.");
        }
    }

    private void with(Sheet sheet, Asking asking) {
        Card theirs = asking.with();
        Set<String> unbound = new TreeSet<>(asking.card().place().names());
        unbound.removeAll(theirs.place().names());
        if (!unbound.isEmpty()) {
            sheet.fault("place", asking.card().place() + " means several places for one of " + theirs.id() + ", which is asked at " + theirs.place() + " (" + theirs.file() + ":" + theirs.line() + ")",
                    theirs.place().names().isEmpty() ? "Write the place without braces." : "Use only its names in braces: {" + String.join("}, {", theirs.place().names()) + "}.");
            return;
        }
        List<String> all = theirs.place().points(Map.of(), places);
        List<String> asked = all.stream().filter(point -> asking.at() == null || asking.at().match(point, places).isPresent()).toList();
        if (asked.isEmpty()) {
            sheet.fault("asked-at", theirs.id() + " is never asked at " + asking.at(), "It is asked at " + theirs.place() + " (" + theirs.file() + ":" + theirs.line() + "): write one of " + all.stream().limit(4).collect(Collectors.joining(", ")) + ".");
            return;
        }
        // A drum in front must not bring up a question about the one behind.
        Set<String> parts = all.stream().map(HouseLoader::part).collect(Collectors.toCollection(TreeSet::new));
        Optional<String> astray = asked.stream().filter(point -> asking.points(point, places).stream().map(HouseLoader::part).anyMatch(part -> parts.contains(part) && !part.equals(part(point)))).findFirst();
        if (astray.isPresent()) {
            sheet.fault("place", theirs.id() + " is asked at " + astray.get() + " as well, and would bring up " + asking.card().place() + " there",
                    "Write asked-at: " + all.stream().filter(p -> asking.points(p, places).stream().anyMatch(q -> part(q).equals(part(p)))).findFirst().orElse(all.get(0)) + " to ask it there alone, or a place in braces as " + theirs.place() + ".");
            return;
        }
        askings.add(asking);
    }

    private static String part(String point) {
        return point.contains("/") ? point.substring(0, point.indexOf('/')) : point;
    }

    private Vocabulary vocabulary() {
        try {
            return new Words(places).and(shipped.vocabulary()).and(cards.values(), own).vocabulary(shipped.library().works(), shipped.vocabulary().instruments(), shipped.vocabulary().plausible(), shipped.vocabulary().tooled(), shipped.vocabulary().formerly(), shipped.vocabulary().fields(), shipped.vocabulary().law());
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return null;
        }
    }

    // Reasoning

    // The compiler does not always say where; then the words it quotes are looked for.
    private int line(RuleCompiler.Wrong wrong) {
        String text = house.files().getOrDefault(wrong.file(), "");
        String quoted = wrong.text().substring(wrong.text().lastIndexOf(": ") + 1).strip();
        int at = wrong.line() > 0 || quoted.isEmpty() ? -1 : text.indexOf(quoted);
        return at < 0 ? Math.max(0, wrong.line()) : (int) text.substring(0, at).lines().count();
    }

    private Rules compiled(SortedMap<String, String> drl) {
        Map<String, String> sources = new LinkedHashMap<>();
        drl.forEach((shown, text) -> sources.put("house/" + shown.substring(shown.lastIndexOf('/') + 1), text));
        try {
            return RuleBookLoader.with(shipped.rules(), RuleCompiler.compile(sources));
        } catch (RuleCompiler.NotCompiled e) {
            e.messages().forEach(m -> faults.add(new Fault(house.shown(m.file()), line(m), "", m.text(), "Mend the rule; chock.assess.facts holds what it may speak of.")));
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(house.folder(), 0, "", e.getMessage(), "Write a rule, or take the file away."));
        }
        return null;
    }
}
