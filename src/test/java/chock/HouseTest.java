package chock;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.Serializable;

/** The plan of the house, held against the code. */
@AnalyzeClasses(packages = "chock", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

    @ArchTest
    static final ArchRule data_flows_one_way = layeredArchitecture().consideringOnlyDependenciesInAnyPackage("chock..")
            .layer("quantity").definedBy("chock.quantity..")
            .layer("figure").definedBy("chock.figure..")
            .layer("record").definedBy("chock.record..")
            .layer("rulebook").definedBy("chock.rulebook..")
            .layer("assess").definedBy("chock.assess..")
            .layer("signoff").definedBy("chock.signoff..")
            .layer("report").definedBy("chock.report..")
            .layer("rehearse").definedBy("chock.rehearse..")
            .layer("note").definedBy("chock.note..")
            .layer("archive").definedBy("chock.archive..")
            .layer("board").definedBy("chock.board..")
            .layer("cli").definedBy("chock.cli..")
            .whereLayer("quantity").mayNotAccessAnyLayer()
            .whereLayer("figure").mayOnlyAccessLayers("quantity")
            .whereLayer("record").mayOnlyAccessLayers("quantity")
            .whereLayer("rulebook").mayOnlyAccessLayers("quantity", "record")
            .whereLayer("assess").mayOnlyAccessLayers("quantity", "figure", "record", "rulebook")
            .whereLayer("signoff").mayOnlyAccessLayers("quantity", "figure", "record", "rulebook", "assess")
            .whereLayer("note").mayOnlyAccessLayers("quantity", "record", "rulebook", "assess")
            .whereLayer("report").mayOnlyAccessLayers("quantity", "figure", "record", "rulebook", "assess", "signoff", "note")
            .whereLayer("rehearse").mayOnlyAccessLayers("quantity", "figure", "record", "rulebook", "assess")
            .whereLayer("archive").mayOnlyAccessLayers("quantity", "record", "rulebook", "assess", "signoff", "report")
            .whereLayer("archive").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("board").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("cli").mayNotBeAccessedByAnyLayer()
            .because("a verdict must be traceable from the record to the report without turning back");

    @ArchTest
    static final ArchRule no_cycles = SlicesRuleDefinition.slices().matching("chock.(*)..").should().beFreeOfCycles()
            .because("each line knows its room");

    @ArchTest
    static final ArchRule drools_stays_in_its_rooms = noClasses().that().resideOutsideOfPackages("chock.assess..", "chock.rulebook..")
            .and().resideInAPackage("chock..").should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..")
            .because("only the rule book and the assessment know the engine");

    @ArchTest
    static final ArchRule only_the_chart_draws = noClasses().that().doNotHaveFullyQualifiedName("chock.report.RunChart").and().doNotHaveFullyQualifiedName("chock.board.Picture")
            .should().dependOnClassesThat().resideInAnyPackage("org.jfree..", "org.apache.batik..", "java.awt..")
            .because("the drawing takes longer to load than a verdict takes to reach, and is loaded only where somebody asks for it");

    @ArchTest
    static final ArchRule only_the_sign_off_signs = noClasses().that().resideOutsideOfPackage("chock.signoff..")
            .should().dependOnClassesThat().resideInAnyPackage("org.jose4j..", "org.bouncycastle..", "org.erdtman..")
            .because("what is signed is made and looked at in one place");

    @ArchTest
    static final ArchRule only_notes_are_taken_apart = noClasses().that().resideOutsideOfPackage("chock.note..").and().resideInAPackage("chock..")
            .should().dependOnClassesThat().resideInAnyPackage("org.apache.lucene..").because("the tokenizer is loaded only where somebody speaks");

    @ArchTest
    static final ArchRule only_the_papers_are_set = noClasses().that().haveNameNotMatching("chock\\.report\\.(Papers|QrCode)(\\$.*)?").and().resideOutsideOfPackages("chock.report.page..", "chock.board..")
            .should().dependOnClassesThat().resideInAnyPackage("gg.jte..", "com.openhtmltopdf..", "org.apache.pdfbox..", "com.google.zxing..", "chock.report.page..")
            .because("templates and PDF take longer to load than a verdict takes to reach, and are loaded only where somebody asks for a paper");

    @ArchTest
    static final ArchRule server_and_database_stay_in_their_room = noClasses().that().resideOutsideOfPackage("chock.board..").and().resideInAPackage("chock..")
            .should().dependOnClassesThat().resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..", "java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "com.zaxxer..", "org.sqlite..", "org.postgresql..", "io.micrometer..", "org.springframework..")
            .because("only the board knows the web server and the database, and nothing of them is loaded where nobody asks for it");

    @ArchTest
    static final ArchRule only_the_store_knows_the_database = noClasses().that().resideInAPackage("chock.board")
            .should().dependOnClassesThat().resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "com.zaxxer..")
            .because("pages and API ask the store in the words of the shop");

    @ArchTest
    static final ArchRule no_engine_that_spreads_the_work = noClasses().that().resideInAPackage("chock..")
            .should().dependOnClassesThat().resideInAnyPackage("org.apache.spark..", "org.apache.hadoop..", "scala..")
            .because("an archive is judged by the same classes on one machine and on many; what spreads the work is a program of its own, under src/spark");

    @ArchTest
    static final ArchRule an_archive_is_lines_and_rows = noClasses().that().resideInAPackage("chock.archive..")
            .should().dependOnClassesThat(resideInAnyPackage("java.io..", "java.net..", "java.nio.file..").and(not(equivalentTo(Serializable.class))))
            .because("bytes go in and rows come out, whoever reads and writes them");

    @ArchTest
    static final ArchRule command_line_stays_in_its_room = noClasses().that().resideOutsideOfPackage("chock.cli..")
            .should().dependOnClassesThat().resideInAPackage("picocli..").because("only the commands know the command-line library");

    @ArchTest
    static final ArchRule nobody_below_looks_at_the_clock = noClasses().that().resideInAnyPackage("chock.quantity..", "chock.figure..", "chock.record..", "chock.rulebook..", "chock.assess..", "chock.signoff..", "chock.note..", "chock.report..", "chock.board..", "chock.archive..")
            .should().callMethod(java.time.Instant.class, "now").orShould().callMethod(java.time.LocalDate.class, "now")
            .orShould().callMethod(java.time.LocalDateTime.class, "now").orShould().callMethod(System.class, "currentTimeMillis")
            .because("the clock is a parameter: same inputs, same bytes out");

    @ArchTest
    static final ArchRule only_commands_print = noClasses().that().resideOutsideOfPackage("chock.cli..")
            .should().accessField(System.class, "out").orShould().accessField(System.class, "err")
            .because("results go to standard output through the commands alone");
}
