package hushmaze.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** How a command ended, and what it printed. */
record Outcome(int code, String out, String err) {
    static Outcome run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Outcome(code, out.toString(), err.toString());
    }
}
