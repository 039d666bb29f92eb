package hushmaze.app;

/** Starts the designer from a plain class path, where a class that extends Application cannot be the main class. */
public final class Launcher {
    private Launcher() {}

    /** As {@link DesignerApp#main}. */
    public static void main(String[] args) {
        DesignerApp.main(args);
    }
}
