package chock.signoff;

/** This program, as it names itself in what it makes. */
public final class Program {
    private Program() { }

    /** The version in the manifest of the program file, or that there is none. */
    public static String version() {
        String version = Program.class.getPackage().getImplementationVersion();
        return version == null ? "(built here, not packaged)" : version;
    }

    /** Such as {@code chock 0.2.0}. */
    public static String name() {
        return "chock " + version();
    }
}
