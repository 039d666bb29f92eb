package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Project;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: a file in which a face was lined or not is read as one in which it has one layer of liner or none. */
class OlderFilesTest {
    @Test
    void yesAndNoAreReadAsLayers() {
        RandomProjects projects = new RandomProjects(7);
        int changed = 0;
        for (int i = 0; i < 40; i++) {
            Project project = withoutKept(projects.next());
            String now = ProjectFile.text(project);
            String old = now;
            for (String face : new String[] {"walls", "baffles", "ends", "broad"}) {
                old = old.replaceAll("\"" + face + "\": 1", "\"" + face + "\": true")
                        .replaceAll("\"" + face + "\": 0", "\"" + face + "\": false");
            }
            assertThat(ProjectFile.parse("old", old)).isEqualTo(project);
            changed += old.equals(now) ? 0 : 1;
        }
        assertThat(changed).isGreaterThan(10);
    }

    /** Files of that time knew no boxes put by. */
    private static Project withoutKept(Project project) {
        Project plain = project;
        for (int i = 0; i < project.paths().size(); i++) {
            plain = plain.withPath(i, plain.paths().get(i).keeping(List.of()));
        }
        return plain;
    }

    @Test
    void aSampleKeepsItsLinings() {
        Box box = TestProjects.read("trio-cellar").paths().get(1).box();
        assertThat(box.linedFaces()).isEqualTo(LinedFaces.FOLD_PLANE);
    }
}
