package hushmaze.app.model;

import hushmaze.project.Project;
import hushmaze.project.VentPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** More vent paths, or fewer. */
public final class PathsModel {
    private final EditModel edit;

    public PathsModel(EditModel edit) {
        this.edit = edit;
    }

    /** Whether one more path may be had. */
    public boolean mayAdd() {
        return edit.project().paths().size() < Project.MAX_PATHS;
    }

    /** Whether a path may go: one has to stay. */
    public boolean mayRemove() {
        return edit.project().paths().size() > 1;
    }

    /** A path with the wishes and the box of the one looked at, without its fan, fittings, listeners and shared duct; it is looked at next. */
    public void add() {
        if (!mayAdd()) {
            return;
        }
        VentPath like = edit.project().paths().get(edit.path());
        VentPath more = new VentPath(freeName(), like.purpose(), like.brief().plain(), like.box());
        edit.edit(Texts.of("edit.path.add", more.name()), p -> {
            List<VentPath> paths = new ArrayList<>(p.paths());
            paths.add(more);
            return p.withPaths(paths);
        });
        edit.pathProperty().set(edit.project().paths().size() - 1);
    }

    private String freeName() {
        Set<String> taken = edit.project().paths().stream().map(VentPath::name).collect(Collectors.toSet());
        String name = Texts.of("paths.newName");
        for (int number = 2; taken.contains(name); number++) {
            name = Texts.of("paths.newName.numbered", String.valueOf(number));
        }
        return name;
    }

    /** Takes away the path looked at. */
    public void remove() {
        if (!mayRemove()) {
            return;
        }
        int number = edit.path();
        String name = edit.project().paths().get(number).name();
        edit.edit(Texts.of("edit.path.remove", name), p -> {
            List<VentPath> paths = new ArrayList<>(p.paths());
            paths.remove(number);
            return p.withPaths(paths);
        });
    }
}
