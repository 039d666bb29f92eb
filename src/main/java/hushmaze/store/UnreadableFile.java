package hushmaze.store;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything found wrong with it. The message has one line for each problem. */
public final class UnreadableFile extends RuntimeException {
    private static final long serialVersionUID = 1L;
    /** Most problems shown in the message; the rest are counted. */
    private static final int SHOWN = 20;

    private final transient List<FileProblem> problems;

    UnreadableFile(List<FileProblem> problems) {
        super(text(problems));
        this.problems = List.copyOf(problems);
    }

    UnreadableFile(FileProblem problem) {
        this(List.of(problem));
    }

    /** Everything found wrong, in the order of the file. */
    public List<FileProblem> problems() {
        return problems;
    }

    private static String text(List<FileProblem> problems) {
        String lines = problems.stream().limit(SHOWN).map(FileProblem::message).collect(Collectors.joining("\n"));
        return problems.size() <= SHOWN ? lines : lines + "\n... and " + (problems.size() - SHOWN) + " more";
    }
}
