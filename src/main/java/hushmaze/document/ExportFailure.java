package hushmaze.document;

import java.nio.file.Path;

/** A document could not be written; the message names the file or folder and the reason. */
public final class ExportFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Path path;

    ExportFailure(Path path, String reason, Throwable cause) {
        super(path + ": " + reason, cause);
        this.path = path;
    }

    /** The file or folder. */
    public Path path() {
        return path;
    }
}
