package chock.board.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.assess.Assessor;
import chock.board.Bench;
import chock.board.Judging;
import chock.board.Shop;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.report.JsonReport;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every store must do; run against each kind for real. */
abstract class StoreSuite {
    private Store store;
    private Shop shop;

    /** Where an empty store is, a new one for each test. */
    abstract String where() throws Exception;

    private String where;

    @BeforeEach
    void open() throws Exception {
        where = where();
        store = Store.open(where);
        shop = Bench.shop(store);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Kept kept(String id) {
        return shop.find(id).orElseThrow();
    }

    private Shop.Done lark() {
        return shop.take("lark.yaml", Bench.example("lark-released.yaml"), "ida", null);
    }

    private static ObjectNode caliperOff() {
        return Bench.entry("at", "2026-11-25 11:00", "point", "front-brake/caliper", "done", "removed");
    }

    @Test
    void a_photo_is_kept_once_and_never_changed() {
        String id = lark().machine();
        byte[] bytes = {1, 2, 3};
        String digest = store.keepPhoto(bytes);
        assertThat(store.keepPhoto(bytes)).isEqualTo(digest).hasSize(64);
        assertThat(store.photo(digest)).hasValueSatisfying(kept -> assertThat(kept).containsExactly(1, 2, 3));
        assertThat(store.photo("0".repeat(64))).isEmpty();
        assertThat(store.photo("../../" + digest)).isEmpty();
        Photos.Photo photo = new Photos.Photo(id, "e1", digest, 4, 3, 3, "ida", Bench.NOON);
        assertThat(store.<Boolean>write(lines -> lines.photos().add(photo))).isTrue();
        assertThat(store.<Boolean>write(lines -> lines.photos().add(photo))).as("again").isFalse();
        List<Photos.Photo> all = store.read(lines -> lines.photos().of(id));
        assertThat(all).containsExactly(photo);
        assertThatThrownBy(() -> store.write(lines -> lines.photos().add(new Photos.Photo(id, "no-such", digest, 4, 3, 3, "ida", Bench.NOON)))).as("an entry that is not there").isInstanceOf(RuntimeException.class);
        for (String change : List.of("UPDATE photo SET entry = 'e2'", "DELETE FROM photo")) {
            assertThatThrownBy(() -> store.change(lines -> lines.handle().execute(change))).as(change).hasMessageContaining("never changed");
        }
        store.close();
        store = Store.open(where);
        java.util.Optional<Photos.Photo> found = store.read(lines -> lines.photos().find(id, digest));
        assertThat(found).contains(photo);
        assertThat(store.photo(digest)).isPresent();
    }

    @Test
    void every_example_comes_back_with_the_same_verdicts_as_json_and_as_yaml() throws Exception {
        List<Path> examples;
        try (Stream<Path> files = Files.list(Path.of("docs/examples"))) {
            examples = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
        assertThat(examples).hasSizeGreaterThanOrEqualTo(9);
        for (Path example : examples) {
            byte[] bytes = Files.readAllBytes(example);
            JobRecord before = RecordReader.read("before", bytes, Bench.book().vocabulary(), Bench.NOON);
            shop.take(example.toString(), bytes, "ida", null);
            ObjectNode out = kept(before.id()).record();
            assertThat(verdicts(out.toString().getBytes(StandardCharsets.UTF_8))).as(example.toString()).isEqualTo(verdicts(bytes));
            if (example.toString().contains("gaps") || example.toString().contains("merle")) {
                assertThat(verdicts(new YAMLMapper().writeValueAsBytes(out))).as(example.toString()).isEqualTo(verdicts(bytes));
            }
        }
    }

    private static String verdicts(byte[] bytes) {
        JobRecord record = RecordReader.read("record", bytes, Bench.book().vocabulary(), Bench.NOON);
        return JsonReport.of(List.of(Assessor.assess(record, Bench.book(), List.of(chock.record.Gate.values()), Bench.NOON)));
    }

    @Test
    void an_entry_changes_the_standing_in_the_same_write() {
        Shop.Done taken = lark();
        assertThat(taken.after().gates()).extracting(Summary.OfGate::released).containsOnly(true);
        Shop.Done done = shop.write(taken.machine(), 1, List.of(caliperOff()), Bench.TOM, null);
        assertThat(done.version()).isEqualTo(2);
        assertThat(done.after().gates()).extracting(Summary.OfGate::released).containsOnly(false);
        Floor.Row row = store.read(lines -> lines.floor().list(Floor.Sieve.ALL, Floor.Order.ID, 0, 10, new Judging(Bench.book()).key(), Bench.NOON)).get(0);
        assertThat(row.gates().get(0).released()).isFalse();
        assertThat(row.gates().get(0).held()).isNotEmpty().hasSizeLessThanOrEqualTo(3);
        assertThat(store.read(lines -> lines.events().find(done.event())).orElseThrow().detail()).contains("released, now held by");
    }

    @Test
    void what_would_be_refused_in_a_file_is_refused_here_and_nothing_is_kept() {
        String id = lark().machine();
        int before = kept(id).entries().size();
        assertThatThrownBy(() -> shop.write(id, 1, List.of(caliperOff(), Bench.entry("point", "front-brake/caliper", "done", "removd")), Bench.TOM, null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("'removd' is not work this rule book knows. Nearest: removed");
        assertThatThrownBy(() -> shop.write(id, 1, List.of(Bench.entry("by", "ida", "point", "front-brake/caliper", "done", "removed")), Bench.TOM, null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("written in the name of who signed in");
        assertThat(kept(id).version()).isEqualTo(1);
        assertThat(kept(id).entries()).hasSize(before);
    }

    @Test
    void entries_that_the_board_dates_keep_their_order_within_one_minute() {
        String id = lark().machine();
        shop.write(id, 1, List.of(Bench.entry("point", "front-brake/hydraulic", "done", "bled"), Bench.entry("point", "front-brake/hydraulic", "done", "filled")), Bench.IDA, null);
        shop.write(id, 2, List.of(Bench.entry("at", "2026-11-25 12:00", "point", "front-brake/hydraulic", "done", "topped-up"), Bench.entry("point", "front-brake/hydraulic", "done", "bled")), Bench.IDA, null);
        List<ObjectNode> entries = kept(id).entries();
        List<ObjectNode> written = entries.subList(entries.size() - 4, entries.size());
        assertThat(written).extracting(e -> e.get("at").textValue()).containsOnly("2026-11-25 12:00");
        assertThat(written).extracting(e -> e.path("seq").asInt()).as("typed by hand: no number").containsExactly(1, 2, 0, 3);
        List<chock.record.Entry> read = RecordReader.read(id, kept(id).record().toString().getBytes(StandardCharsets.UTF_8), Bench.book().vocabulary(), Bench.NOON).entries();
        chock.record.Moment bled = read.get(read.size() - 4).at();
        chock.record.Moment filled = read.get(read.size() - 3).at();
        assertThat(filled.surelyAfter(bled)).isTrue();
        assertThat(bled.surelyAfter(filled)).isFalse();
        assertThatThrownBy(() -> shop.write(id, 3, List.of(Bench.entry("seq", "9", "point", "front-brake/hydraulic", "done", "bled")), Bench.IDA, null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("seq is given by the board to entries that it dates itself");
    }

    @Test
    void a_correction_names_the_earlier_entry_and_both_stay() {
        String id = lark().machine();
        String wrong = shop.write(id, 1, List.of(caliperOff()), Bench.TOM, null).entries().get(0);
        shop.write(id, 2, List.of(Bench.entry("at", "2026-11-25 11:30", "corrects", wrong, "reason", "the other machine", "point", "front-brake/caliper/bolts", "done", "torqued")), Bench.IDA, null);
        List<ObjectNode> entries = kept(id).entries();
        assertThat(entries.get(entries.size() - 2).get("done").textValue()).isEqualTo("removed");
        assertThat(entries.get(entries.size() - 1).get("corrects").textValue()).isEqualTo(wrong);
    }

    @Test
    void the_database_itself_refuses_to_change_or_drop_what_was_written() throws Exception {
        lark();
        for (String table : List.of("entry", "sheet", "event")) {
            for (String sql : List.of("DELETE FROM " + table, "UPDATE " + table + (table.equals("event") ? " SET detail = 'x'" : " SET json = '{}'"))) {
                assertThatThrownBy(() -> store.change(lines -> lines.handle().execute(sql))).as(sql).hasMessageContaining("this line is never changed");
            }
        }
    }

    private static Signings.Line signed(int number, String gate, Instant at) {
        return new Signings.Line("id" + number, "HV-0142", 1, gate, at, at.plusSeconds(3600), "Ida Marrow", "inspector", "key", "ida", number, "sha256:" + number, null, null);
    }

    @Test
    void sign_offs_are_added_and_never_changed() {
        lark();
        store.change(lines -> {
            Signings signings = lines.signings();
            assertThat(signings.add(signed(1, "road-test", Bench.NOON), "seal1", "a.b.c")).isTrue();
            assertThat(signings.add(signed(1, "road-test", Bench.NOON), "seal1", "x.y.z")).as("the same again").isFalse();
            assertThat(signings.add(signed(2, "hand-over", Bench.NOON), "seal2", "d.e.f")).isTrue();
            assertThat(signings.add(signed(3, "road-test", Bench.NOON), "seal3", "g.h.i")).isTrue();
            signings.undo("id1", Bench.NOON.plusSeconds(60), "entry e300 is about front-brake");
            signings.undo("id1", Bench.NOON.plusSeconds(90), "another reason");
        });
        assertThat(store.<String>read(lines -> lines.signings().text("id1"))).isEqualTo("a.b.c");
        Signings.Line gone = store.read(lines -> lines.signings().byDigest("seal1")).orElseThrow();
        assertThat(gone).isEqualTo(store.read(lines -> lines.signings().byDigest("sha256:1")).orElseThrow()).isEqualTo(store.read(lines -> lines.signings().find("id1")).orElseThrow());
        assertThat(gone.why()).as("the first reason stays").isEqualTo("entry e300 is about front-brake");
        assertThat(gone.voidedAt()).isEqualTo(Bench.NOON.plusSeconds(60));
        assertThat(store.<List<Signings.Line>>read(lines -> lines.signings().newest(List.of("HV-0142", "none")))).extracting(Signings.Line::id).containsExactly("id2", "id3");
        assertThat(store.<List<Signings.Line>>read(lines -> lines.signings().newest(List.of()))).isEmpty();
        assertThat(store.<List<Signings.Line>>read(lines -> lines.signings().standing("HV-0142"))).extracting(Signings.Line::id).containsExactly("id2", "id3");
        assertThat(store.<List<Signings.Line>>read(lines -> lines.signings().voided())).extracting(Signings.Line::id).containsExactly("id1");
        assertThat(listed("", "", Bench.NOON)).containsExactly("id3", "id2", "id1");
        assertThat(listed("HV-0142", "void", Bench.NOON)).containsExactly("id1");
        assertThat(listed("", "stands", Bench.NOON.plusSeconds(3600))).containsExactly("id3", "id2");
        assertThat(listed("", "lapsed", Bench.NOON.plusSeconds(3601))).containsExactly("id3", "id2");
        assertThat(listed("' OR '1'='1", "", Bench.NOON)).isEmpty();
        for (String table : List.of("sign_off", "sign_off_void")) {
            for (String sql : List.of("DELETE FROM " + table, "UPDATE " + table + (table.equals("sign_off") ? " SET jws = 'x'" : " SET why = 'x'"))) {
                assertThatThrownBy(() -> store.change(lines -> lines.handle().execute(sql))).as(sql).hasMessageContaining("this line is never changed");
            }
        }
    }

    private List<String> listed(String machine, String state, Instant now) {
        return store.read(lines -> lines.signings().list(new Signings.Sieve(machine, state), now, 0, 50)).stream().map(Signings.Line::id).toList();
    }

    @Test
    void each_person_signs_with_one_key_and_no_key_is_two_persons() {
        store.change(lines -> {
            lines.accounts().add(Bench.IDA, Bench.NOON);
            lines.accounts().add(Bench.TOM, Bench.NOON);
            lines.signings().bind("ida", "key-1");
            lines.signings().bind("ida", "key-2");
        });
        assertThat(store.<java.util.Optional<String>>read(lines -> lines.signings().key("ida"))).contains("key-2");
        assertThat(store.<java.util.Optional<String>>read(lines -> lines.signings().holder("key-2"))).contains("ida");
        assertThat(store.<java.util.Optional<String>>read(lines -> lines.signings().holder("key-1"))).isEmpty();
        assertThatThrownBy(() -> store.change(lines -> lines.signings().bind("tom", "key-2"))).isInstanceOf(RuntimeException.class);
        store.change(lines -> lines.signings().bind("ida", null));
        assertThat(store.<java.util.Optional<String>>read(lines -> lines.signings().key("ida"))).isEmpty();
    }

    @Test
    void who_holds_a_machine_keeps_others_from_writing_to_it() throws Exception {
        String id = lark().machine();
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        var other = Executors.newSingleThreadExecutor();
        Future<?> write = store.write(lines -> {
            assertThat(lines.records().hold(id)).isEqualTo(1);
            Future<?> started = other.submit(() -> {
                shop.write(id, 1, List.of(caliperOff()), Bench.TOM, null);
                order.add("entry");
            });
            try {
                Thread.sleep(700);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            order.add("held");
            return started;
        });
        write.get(60, TimeUnit.SECONDS);
        other.shutdown();
        assertThat(order).containsExactly("held", "entry");
    }

    @Test
    void who_did_not_see_the_newest_writes_nothing() {
        String id = lark().machine();
        shop.write(id, 1, List.of(caliperOff()), Bench.TOM, null);
        assertThatThrownBy(() -> shop.write(id, 1, List.of(caliperOff()), Bench.IDA, null)).isInstanceOf(Shop.WrittenSince.class);
        assertThat(kept(id).version()).isEqualTo(2);
    }

    @Test
    void a_taken_id_is_refused_and_the_first_record_stays() {
        lark();
        assertThatThrownBy(this::lark).isInstanceOf(Shop.Taken.class);
        assertThat(kept("HV-0142").version()).isEqualTo(1);
    }

    @Test
    void two_writers_at_once_lose_nothing() throws Exception {
        String id = lark().machine();
        int before = kept(id).entries().size();
        Set<String> acknowledged = Collections.synchronizedSet(new TreeSet<>());
        // A store of their own each, as two programs have.
        try (Store other = Store.open(where)) {
            var two = Executors.newFixedThreadPool(2);
            List<Future<Integer>> done = new ArrayList<>();
            for (Store one : List.of(store, other)) {
                Shop theirs = Bench.shop(one);
                done.add(two.submit((Callable<Integer>) () -> {
                    int refused = 0;
                    for (int written = 0; written < 8; ) {
                        try {
                            long seen = theirs.find(id).orElseThrow().version();
                            acknowledged.addAll(theirs.write(id, seen, List.of(Bench.entry("at", "2026-11-25 11:00", "point", "front-brake/caliper/bolts", "done", "torqued")), Bench.TOM, null).entries());
                            written++;
                        } catch (Shop.WrittenSince e) {
                            refused++;
                        }
                    }
                    return refused;
                }));
            }
            for (Future<Integer> one : done) {
                one.get(60, TimeUnit.SECONDS);
            }
            two.shutdown();
        }
        assertThat(acknowledged).hasSize(16);
        assertThat(kept(id).entries()).hasSize(before + 16);
        assertThat(kept(id).entries().stream().map(e -> e.get("id").textValue())).containsAll(acknowledged);
        assertThat(kept(id).version()).isEqualTo(17);
    }

    @Test
    void a_kept_answer_is_there_once_and_only_with_its_write() {
        String id = lark().machine();
        Shop.Once once = new Shop.Once("tom", "k1", "d", done -> "answer " + done.version());
        shop.write(id, 1, List.of(caliperOff()), Bench.TOM, once);
        assertThat(store.read(lines -> lines.replies().find("tom", "k1")).orElseThrow().body()).isEqualTo("answer 2");
        assertThatThrownBy(() -> shop.write(id, 2, List.of(caliperOff()), Bench.TOM, once)).isInstanceOf(Shop.WrittenSince.class);
        assertThat(kept(id).version()).isEqualTo(2);
        store.change(lines -> lines.replies().forgetBefore(Bench.NOON.plusSeconds(1)));
        assertThat(store.<Boolean>read(lines -> lines.replies().find("tom", "k1").isEmpty())).isTrue();
    }

    @Test
    void the_database_sieves_sorts_and_pages() {
        for (String example : List.of("lark-released", "lark-faults", "lark-gaps", "harrow-prewar-single", "merle-released")) {
            shop.take(example, Bench.example(example + ".yaml"), "ida", null);
        }
        assertThat(ids(Floor.Sieve.ALL, Floor.Order.ID)).isSorted().hasSize(5);
        assertThat(ids(new Floor.Sieve("tarnbeck LARK", "", null, "", null, null), Floor.Order.ID)).hasSize(3);
        assertThat(ids(new Floor.Sieve("%", "", null, "", null, null), Floor.Order.ID)).isEmpty();
        assertThat(ids(new Floor.Sieve("' OR 1=1 --", "' OR '1'='1", null, "x' OR 1=1", null, null), Floor.Order.ID)).isEmpty();
        List<String> held = ids(new Floor.Sieve("", "road-test", false, "", null, null), Floor.Order.ID);
        assertThat(held).isNotEmpty().doesNotContain("HV-0142");
        assertThat(ids(new Floor.Sieve("", "", true, "", Bench.NOON, Bench.NOON.plusSeconds(31 * 86_400)), Floor.Order.LAPSES)).isNotEmpty();
        assertThat(ids(new Floor.Sieve("", "", true, "", Bench.NOON.plusSeconds(40 * 86_400), null), Floor.Order.LAPSES)).isEmpty();
        List<Floor.Row> nearest = store.read(lines -> lines.floor().list(Floor.Sieve.ALL, Floor.Order.NEAREST, 0, 50, new Judging(Bench.book()).key(), Bench.NOON));
        assertThat(nearest.get(4).gates()).as("nothing open: last").allMatch(Summary.OfGate::released);
        assertThat(nearest.get(0).gates()).as("few things open: first").anyMatch(gate -> !gate.released());
        String check = store.read(lines -> lines.floor().blockers("", 5)).get(0).check();
        assertThat(ids(new Floor.Sieve("", "", null, check, null, null), Floor.Order.ID)).isNotEmpty();
        List<String> paged = new ArrayList<>();
        for (int from = 0; from < 5; from += 2) {
            int at = from;
            paged.addAll(store.read(lines -> lines.floor().list(Floor.Sieve.ALL, Floor.Order.LATEST, at, 2, "", Bench.NOON)).stream().map(Floor.Row::id).toList());
        }
        assertThat(paged).doesNotHaveDuplicates().hasSize(5);
        assertThat(store.<Long>read(lines -> lines.floor().count(Floor.Sieve.ALL))).isEqualTo(5);
    }

    private List<String> ids(Floor.Sieve sieve, Floor.Order order) {
        return store.read(lines -> lines.floor().list(sieve, order, 0, 50, new Judging(Bench.book()).key(), Bench.NOON)).stream().map(Floor.Row::id).toList();
    }

    @Test
    void what_has_run_out_by_itself_is_judged_again() {
        lark();
        Instant later = Bench.NOON.plusSeconds(400L * 86_400);
        assertThat(store.<List<String>>read(lines -> lines.records().toJudgeAgain(new Judging(Bench.book()).key(), Bench.NOON, 9))).isEmpty();
        assertThat(store.<List<String>>read(lines -> lines.records().toJudgeAgain(new Judging(Bench.book()).key(), later, 9))).containsExactly("HV-0142");
        assertThat(store.<List<String>>read(lines -> lines.records().toJudgeAgain("another book", Bench.NOON, 9))).containsExactly("HV-0142");
        assertThat(store.read(lines -> lines.floor().list(Floor.Sieve.ALL, Floor.Order.ID, 0, 9, new Judging(Bench.book()).key(), later)).get(0).judged()).as("an old release is not shown as one").isFalse();
    }

    @Test
    void a_store_opened_again_holds_what_was_written() {
        String id = lark().machine();
        store.close();
        store = Store.open(where);
        shop = Bench.shop(store);
        assertThat(kept(id).entries()).isNotEmpty();
    }

    @Test
    void accounts_sessions_and_habits_are_kept() {
        store.change(lines -> {
            Accounts accounts = lines.accounts();
            assertThat(accounts.none()).isTrue();
            assertThat(accounts.add(Bench.IDA, Bench.NOON)).isTrue();
            assertThat(accounts.add(new Accounts.Account("ida", "Another", "lead", "", false, true), Bench.NOON)).isFalse();
            assertThat(accounts.add(new Accounts.Account("ida2", "Ida Marrow", "lead", "", false, true), Bench.NOON)).isFalse();
            accounts.begin(new Accounts.Session("t", "ida", "f", Bench.NOON, Bench.NOON));
            assertThat(accounts.session("t")).isPresent();
            accounts.standing("ida", "technician", true);
            assertThat(accounts.session("t")).as("a changed role signs out").isEmpty();
            accounts.habit("ida", "thickness", "cal-1");
            accounts.habit("ida", "thickness", "mic-1");
            assertThat(accounts.habit("ida", "thickness")).contains("mic-1");
        });
    }
}
