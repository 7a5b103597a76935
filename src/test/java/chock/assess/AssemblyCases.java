package chock.assess;

import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The files of cases under {@code src/test/resources/assembly}: work on a machine, the proofs it takes away and those it leaves. */
final class AssemblyCases {
    static final Path FOLDER = Path.of("src/test/resources/assembly");
    private static final List<String> ANY = List.of("removed", "refitted", "replaced", "repaired", "stripped", "opened");
    private static final Map<String, Proofs> KNOWN = new HashMap<>();

    private AssemblyCases() { }

    /**
     * Lines that belong together.
     *
     * @param machines each of them is a case
     * @param works each a place and a work; they are done one after the other
     */
    record Block(String file, int line, List<String> machines, List<String> works, List<String> dies, List<String> stands) {
        @Override
        public String toString() {
            return file + ":" + line + " " + String.join(" ", machines) + ": " + String.join(", ", works);
        }
    }

    static List<Block> read(Path file) throws IOException {
        List<Block> blocks = new ArrayList<>();
        Map<String, List<String>> means = new HashMap<>();
        List<String> machines = List.of();
        int number = 0;
        for (String line : Files.readAllLines(file)) {
            number++;
            String[] words = line.strip().split(" +");
            List<String> rest = List.of(words).subList(1, words.length);
            Block open = blocks.isEmpty() ? null : blocks.get(blocks.size() - 1);
            switch (words[0]) {
                case "means" -> means.put(rest.get(0), proofs(rest.subList(1, rest.size()), means));
                case "machine" -> machines = rest;
                case "work" -> {
                    if (open == null || !open.dies.isEmpty() || !open.stands.isEmpty()) {
                        open = new Block(file.getFileName().toString(), number, machines, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
                        blocks.add(open);
                    }
                    open.works.add(String.join(" ", rest));
                }
                case "dies" -> open.dies.addAll(proofs(rest, means));
                case "stands" -> open.stands.addAll(proofs(rest, means));
                default -> {
                    if (!line.matches("#.*|\\s*")) {
                        throw new IllegalArgumentException(file + ":" + number + " cannot be read: " + line);
                    }
                }
            }
        }
        return blocks;
    }

    private static List<String> proofs(List<String> words, Map<String, List<String>> means) {
        List<String> all = new ArrayList<>();
        for (String word : words) {
            if (word.startsWith("$") && !means.containsKey(word.substring(1))) {
                throw new IllegalArgumentException(word + " means nothing");
            }
            all.addAll(word.startsWith("$") ? means.get(word.substring(1)) : List.of(word));
        }
        return all;
    }

    /** The single works of "place|place work|work", in which "any" stands for six of them. */
    static List<String> single(String work) {
        String[] at = work.split(" ");
        List<String> all = new ArrayList<>();
        for (String place : at[0].split("\\|")) {
            for (String word : at[1].split("\\|")) {
                (word.equals("any") ? ANY : List.of(word)).forEach(one -> all.add(place + " " + one));
            }
        }
        return all;
    }

    /** Everything asked of a machine, at all gates, and what else its checks could be asked for. */
    record Proofs(Conclusions concluded, RuleBook book) {
        static Proofs ofMachine(String machine) {
            return KNOWN.computeIfAbsent(machine, name -> {
                JobRecord one = ReadyMachine.bare(CaseMachines.named(name), ZoneId.of("Europe/London"), "GB", false, ReadyMachine.Manual.WHAT_IS_NEEDED, Gate.HAND_OVER);
                JobRecord all = new JobRecord(one.id(), one.workshop(), one.zone(), one.territory(), one.onePerson(), List.of(Gate.values()), one.machine(), one.maker(), one.people(),
                        one.instruments(), one.entries(), one.claims(), one.form());
                return new Proofs(Assessor.conclude(ReadyMachine.ready(all), Examples.BOOK, Examples.DAY), Examples.BOOK);
            });
        }

        /** The evidence behind "check", "check@place" or "check@place#want"; a check that is not asked now has to name its place. */
        List<Wanted> of(String proof) {
            String check = proof.replaceFirst("[@#].*", "");
            String place = proof.contains("@") ? proof.replaceFirst(".*@", "").replaceFirst("#.*", "") : null;
            String want = proof.contains("#") ? proof.replaceFirst(".*#", "") : null;
            Set<Required> asked = new LinkedHashSet<>(concluded.required(check).stream().filter(r -> place == null || r.point().equals(place)).toList());
            if (asked.isEmpty() && place != null && book.cards().containsKey(check)) {
                asked.add(new Required(check, place));
            }
            return asked.stream().flatMap(r -> wanted(r).stream()).filter(w -> want == null || w.name().equals(want)).toList();
        }

        private List<Wanted> wanted(Required required) {
            return concluded.requirements().wantedFor(required);
        }
    }

    /** What is not as the block says, each in words. */
    static List<String> wrong(Block block) {
        List<String> wrong = new ArrayList<>();
        // A row may hold for machines of several kinds, and then each proof for one of them at least.
        Stream.concat(block.dies.stream(), block.stands.stream()).filter(proof -> block.machines.stream().allMatch(machine -> Proofs.ofMachine(machine).of(proof).isEmpty()))
                .forEach(proof -> wrong.add(proof + " is asked of none of these machines"));
        for (String machine : block.machines) {
            Proofs proofs = Proofs.ofMachine(machine);
            for (String work : block.works.stream().flatMap(w -> single(w).stream()).toList()) {
                String[] at = work.split(" ");
                if (!proofs.book.vocabulary().points().contains(at[0]) || !proofs.book.library().works().containsKey(at[1])) {
                    wrong.add(work + " cannot be written");
                    continue;
                }
                Entry entry = new Entry("", null, "", Deed.DONE, at[0], at[1], null, null, null, null, null, 0);
                block.dies.stream().flatMap(proof -> byPlace(proofs.of(proof)).stream()).filter(wants -> wants.stream().noneMatch(w -> w.isUndoneBy(entry)))
                        .forEach(wants -> wrong.add(machine + ", " + work + ": " + words(wants.get(0)) + " stands, and has to be proven again"));
                block.stands.stream().flatMap(proof -> proofs.of(proof).stream()).filter(w -> w.isUndoneBy(entry))
                        .forEach(w -> wrong.add(machine + ", " + work + ": " + words(w) + "#" + w.name() + " is undone, and has nothing to do with it"));
            }
        }
        return wrong.stream().distinct().toList();
    }

    /** A check is proven again as a whole at a place, as soon as one of its wants is undone there. */
    private static List<List<Wanted>> byPlace(List<Wanted> wants) {
        Map<String, List<Wanted>> places = new HashMap<>();
        wants.forEach(w -> places.computeIfAbsent(w.required().point(), p -> new ArrayList<>()).add(w));
        return List.copyOf(places.values());
    }

    private static String words(Wanted wanted) {
        return wanted.required().check() + "@" + wanted.required().point();
    }
}
