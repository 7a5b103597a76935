package chock.rulebook;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.MakerFigure;
import chock.record.Vocabulary;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.kie.api.KieBase;

/** All checks, limits, local codes and reasoning in force, with a version and a digest. */
public final class RuleBook {
    private static final String TRIAL = "changed for trial, from ";

    private final String version;
    private final String digest;
    private final Library library;
    private final SortedMap<String, Card> cards;
    private final List<Limit> limits;
    private final SortedMap<String, LocalCode> codes;
    private final Vocabulary vocabulary;
    private final RideSheet ride;
    private final RunSheet run;
    private final Set<Gate> complete;
    private final KieBase rules;
    private final Set<String> without;
    private final Map<String, LaidOut> laidOut = new ConcurrentHashMap<>();

    RuleBook(String version, String digest, Library library, SortedMap<String, Card> cards, List<Limit> limits,
             SortedMap<String, LocalCode> codes, Vocabulary vocabulary, RideSheet ride, RunSheet run, Set<Gate> complete, KieBase rules) {
        this(version, digest, library, cards, limits, codes, vocabulary, ride, run, complete, rules, Set.of());
    }

    private RuleBook(String version, String digest, Library library, SortedMap<String, Card> cards, List<Limit> limits,
                     SortedMap<String, LocalCode> codes, Vocabulary vocabulary, RideSheet ride, RunSheet run, Set<Gate> complete, KieBase rules, Set<String> without) {
        this.version = version;
        this.digest = digest;
        this.library = library;
        this.cards = cards;
        this.limits = limits;
        this.codes = codes;
        this.vocabulary = vocabulary;
        this.ride = ride;
        this.run = run;
        this.complete = complete;
        this.rules = rules;
        this.without = without;
    }

    /**
     * The rule book inside the program.
     *
     * @throws chock.record.UnusableInput when it is not sound; it never loads half
     */
    public static RuleBook shipped() {
        return RuleBookLoader.shipped();
    }

    public String version() {
        return version;
    }

    /**
     * This rule book with other limits, for trying what a change would do; it says so in its digest.
     *
     * @param change gives for each limit, local codes' included, the one to take its place: itself when unchanged
     */
    public RuleBook with(UnaryOperator<Limit> change) {
        SortedMap<String, LocalCode> changed = new TreeMap<>();
        codes.forEach((name, code) -> changed.put(name, code.with(change)));
        return new RuleBook(version, trial(), library, cards, limits.stream().map(change).toList(), changed, vocabulary, ride, run, complete, rules, without);
    }

    /**
     * This rule book with one rule asleep, for trying whether anybody would notice; it says so in its digest.
     *
     * @param rule name of a rule; one that is not there changes nothing
     */
    public RuleBook without(String rule) {
        Set<String> asleep = new TreeSet<>(without);
        asleep.add(rule);
        return new RuleBook(version, trial(), library, cards, limits, codes, vocabulary, ride, run, complete, rules, asleep);
    }

    private String trial() {
        return digest.startsWith(TRIAL) ? digest : TRIAL + digest;
    }

    /** Names of the rules that sleep; empty unless this is a rule book for trying. */
    public Set<String> asleep() {
        return without;
    }

    /** {@code sha256:} over every file of the rule book, in order of name. */
    public String digest() {
        return digest;
    }

    public Library library() {
        return library;
    }

    /** Every check, by id. */
    public SortedMap<String, Card> cards() {
        return cards;
    }

    /** Every limit that is not a local code's. */
    public List<Limit> limits() {
        return limits;
    }

    /** Local codes by ISO 3166 code. */
    public SortedMap<String, LocalCode> codes() {
        return codes;
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    /** The run under a roof with its caution, or empty when this rule book has no plan of it. */
    public Optional<RunSheet> run() {
        return Optional.ofNullable(run);
    }

    /** The road test as a ride, or empty when this rule book has no plan of it. */
    public Optional<RideSheet> ride() {
        return Optional.ofNullable(ride);
    }

    /** A card laid out at a point; worked out once and kept, for it is the same for every machine. */
    public LaidOut laidOut(Card card, String point) {
        return laidOut.computeIfAbsent(card.id() + " " + point, key -> LaidOut.of(card, point, library.places()));
    }

    /** The gates this rule book is complete for; it releases at no other. */
    public Set<Gate> gates() {
        return complete;
    }

    /** The compiled reasoning. */
    public KieBase rules() {
        return rules;
    }

    /** A limit under all its dates and territories. */
    public List<Limit> limitsNamed(String id) {
        List<Limit> all = new ArrayList<>(limits.stream().filter(l -> l.id().equals(id)).toList());
        codes.values().forEach(code -> code.limits().stream().filter(l -> l.id().equals(id)).forEach(all::add));
        return all;
    }

    /** The days after the first up to and with the last on which some limit, a local code's included, comes into force. */
    public SortedSet<LocalDate> limitsFrom(LocalDate after, LocalDate last) {
        SortedSet<LocalDate> days = new TreeSet<>();
        Stream.concat(limits.stream(), codes.values().stream().flatMap(code -> code.limits().stream())).map(Limit::from)
                .filter(from -> from.isAfter(after) && !from.isAfter(last)).forEach(days::add);
        return days;
    }

    /** The local codes that cover a territory. */
    public List<LocalCode> codesOf(String territory) {
        return codes.values().stream().filter(c -> c.covers(territory)).toList();
    }

    /**
     * Which limit applies: the maker's figure replaces common practice, the law where the machine will be ridden always
     * applies as well, and the stricter decides. Nothing applies when something asked for is not there.
     *
     * @param id id of the limit
     * @param point the place
     * @param record the job record, for the maker's figures, the territory and the first registration
     * @param day the day of judgement
     */
    public LimitFor limitFor(String id, String point, JobRecord record, LocalDate day) {
        Optional<Limit> inForce = limits.stream().filter(l -> l.id().equals(id) && !l.from().isAfter(day))
                .max(java.util.Comparator.comparing(Limit::from));
        if (inForce.isEmpty()) {
            return new LimitFor(null, "the rule book has no limit '" + id + "' in force on " + day);
        }
        Limit base = inForce.get();
        List<LocalCode> local = codesOf(record.territory());
        if (base.local() && local.stream().noneMatch(c -> c.speaksOf(id))) {
            return new LimitFor(null, "no local code for it in this rule book (territory " + record.territory() + "); ask the licensed inspector");
        }
        Optional<MakerFigure> maker = record.maker().figure(id, point);
        if (base.maker() != Limit.Maker.NONE && maker.isEmpty()) {
            if (!record.maker().saysNone(id, point)) {
                return new LimitFor(null, "the record gives no maker's figure for " + id + " and does not say that none was found");
            }
            if (base.maker() == Limit.Maker.NEEDED) {
                return new LimitFor(null, "no maker's figure for " + id + ", and nothing else can stand in for it");
            }
        }
        List<Candidate> candidates = new ArrayList<>();
        List<String> others = new ArrayList<>();
        if (maker.isEmpty()) {
            candidates.add(new Candidate(base.bounds(), base.source()));
        } else {
            withMaker(base, maker.get(), candidates, others);
        }
        local.forEach(code -> code.limits().stream().filter(l -> l.id().equals(id) && !l.from().isAfter(day) && registered(l, record))
                .forEach(l -> candidates.add(new Candidate(l.bounds(), l.source()))));
        return new LimitFor(strictest(id, base.sense(), candidates, others), null);
    }

    /** True when local codes set this limit, and none of them for a machine of this date of first registration. */
    public boolean exemptByRegistration(String id, JobRecord record) {
        List<Limit> rows = codesOf(record.territory()).stream().flatMap(c -> c.limits().stream()).filter(l -> l.id().equals(id)).toList();
        return !rows.isEmpty() && rows.stream().noneMatch(l -> registered(l, record));
    }

    private record Candidate(Bounds bounds, Source source) {
        String words() {
            return bounds.words() + " (" + source.words() + ")";
        }
    }

    private static boolean registered(Limit limit, JobRecord record) {
        LocalDate first = record.machine().firstRegistered();
        return (limit.registeredFrom() == null || !first.isBefore(limit.registeredFrom()))
                && (limit.registeredBefore() == null || first.isBefore(limit.registeredBefore()));
    }

    private static void withMaker(Limit base, MakerFigure figure, List<Candidate> candidates, List<String> others) {
        Source source = new Source(Source.Kind.MAKER, figure.document(), figure.page(), Source.Known.READ);
        Candidate makers = new Candidate(makersBounds(base, figure), source);
        if (base.sense() == Limit.Sense.WITHIN || base.sense() == Limit.Sense.MAKER_ONLY) {
            candidates.add(makers);
            return;
        }
        Candidate own = new Candidate(base.bounds(), base.source());
        boolean looser = !makers.bounds.within(own.bounds);
        if (base.source().kind() != Source.Kind.PRACTICE) {
            candidates.add(own);
            candidates.add(makers);
        } else if (looser && figure.secondedBy() == null) {
            candidates.add(own);
            others.add(makers.words() + " is looser and was read by one person only");
        } else {
            candidates.add(makers);
            others.add("in place of " + own.words());
        }
    }

    // A manual that gives one end of a range says nothing of the other: there our own end stays.
    private static Bounds makersBounds(Limit base, MakerFigure figure) {
        if (base.sense() == Limit.Sense.WITHIN && figure.nominal() != null) {
            BigDecimal share = base.value().value().movePointLeft(2);
            return new Bounds(figure.nominal().times(BigDecimal.ONE.subtract(share)), true, figure.nominal().times(BigDecimal.ONE.add(share)), true);
        }
        Quantity low = figure.nominal() != null ? figure.nominal() : figure.atLeast();
        Quantity high = figure.nominal() != null ? figure.nominal() : figure.atMost();
        return switch (base.sense()) {
            case AT_LEAST -> low == null ? base.bounds().and(new Bounds(null, false, high, true)) : new Bounds(low, true, figure.atMost(), true);
            case AT_MOST -> high == null ? base.bounds().and(new Bounds(low, true, null, false)) : new Bounds(figure.atLeast(), true, high, true);
            case BETWEEN -> new Bounds(low == null ? base.value() : low, true, high == null ? base.upper() : high, true);
            case WITHIN, MAKER_ONLY -> new Bounds(low, true, high, true);
        };
    }

    private static Applied strictest(String id, Limit.Sense sense, List<Candidate> candidates, List<String> others) {
        Bounds all = candidates.get(0).bounds;
        Candidate decides = candidates.get(0);
        for (Candidate next : candidates.subList(1, candidates.size())) {
            Bounds both = all.and(next.bounds);
            boolean weightier = next.source.kind() == Source.Kind.LAW && decides.source.kind() != Source.Kind.LAW && next.bounds.equals(all);
            if (!both.equals(all) || weightier) {
                decides = next;
            }
            all = both;
        }
        Source source = decides.source;
        for (Candidate candidate : candidates) {
            if (candidate != decides) {
                others.add("also " + candidate.words());
            }
        }
        return new Applied(id, all, sense, source, List.copyOf(others));
    }
}
