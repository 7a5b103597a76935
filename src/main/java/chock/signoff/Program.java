package chock.signoff;

/** This program, as it names itself in what it makes. */
final class Program {
    private Program() { }

    /** Such as {@code chock 0.2.0}. */
    static String name() {
        String version = Program.class.getPackage().getImplementationVersion();
        return "chock " + (version == null ? "(built here, not packaged)" : version);
    }
}
