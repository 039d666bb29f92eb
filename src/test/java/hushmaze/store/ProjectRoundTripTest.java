package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.project.Project;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: what is written and read back is the same project, to the last bit of every field. Seeded. */
class ProjectRoundTripTest {
    private static final int PROJECTS = 120;

    @TempDir
    Path folder;

    @Test
    void writtenAndReadIsTheSameProjectAndWrittenAgainTheSameBytes() throws IOException {
        RandomProjects projects = new RandomProjects(20261125);
        Path first = folder.resolve("first.json");
        Path second = folder.resolve("second.json");
        for (int i = 0; i < PROJECTS; i++) {
            Project project = projects.next();
            ProjectFile.write(project, first);
            Project read = ProjectFile.read(first);
            assertThat(read).isEqualTo(project);
            ProjectFile.write(read, second);
            assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
        }
    }

    @Test
    void everyFieldIsVariedByTheseProjects() {
        RandomProjects projects = new RandomProjects(20261125);
        Map<String, Set<Object>> seen = new HashMap<>();
        Set<String> optional = new HashSet<>();
        for (int i = 0; i < PROJECTS; i++) {
            collect(projects.next(), seen, optional);
        }
        List<String> same = new ArrayList<>();
        seen.forEach((field, values) -> {
            boolean leftOut = values.contains("nothing") || !optional.contains(field);
            if (values.size() < 2 || !leftOut) {
                same.add(field);
            }
        });
        assertThat(seen).hasSizeGreaterThan(90);
        // A box without joinery is given a plain one, so that it is never seen to be absent.
        assertThat(same).containsExactlyInAnyOrder("Project.formatVersion", "Box.joinery");
        assertThat(seen.get("Box.joinery")).hasSizeGreaterThan(10);
        assertThat(seen.get("Box.seams")).hasSizeGreaterThan(10);
    }

    @Test
    void numbersKeepTheirLastBitInEveryUnit() {
        Random random = new Random(7);
        for (Unit unit : new Unit[] {Unit.MILLIMETRE, Unit.LITRE_PER_SECOND, Unit.GIGAPASCAL, Unit.PARTS_PER_MILLION}) {
            for (int i = 0; i < 5_000; i++) {
                double si = Double.longBitsToDouble(random.nextLong());
                if (Double.isFinite(si)) {
                    assertThat(unit.toSi(unit.decimalFromSi(si))).isEqualTo(si);
                }
            }
        }
    }

    @Test
    void twoNeighbouringMetresThatAreOneNumberOfMillimetresAsDoublesStayApart() {
        double metres = 0.52;
        double next = metres;
        do {
            metres = next;
            next = Math.nextUp(metres);
        } while (Unit.MILLIMETRE.fromSi(metres) != Unit.MILLIMETRE.fromSi(next));
        assertThat(RecordWriter.number(metres, Unit.MILLIMETRE).toString())
                .isNotEqualTo(RecordWriter.number(next, Unit.MILLIMETRE).toString());
    }

    @Test
    void fileIsIndentedEndsWithANewlineAndKeepsTheOrderOfTheRecord() {
        String text = ProjectFile.text(TestProjects.read("trio-cellar"));
        assertThat(text).startsWith("{\n  \"formatVersion\": 1,\n  \"name\": ").endsWith("}\n");
        assertThat(text).doesNotContain("\r").doesNotContain("null");
        assertThat(text.indexOf("\"clearWidthMm\": 140")).isPositive().isLessThan(text.indexOf("\"clearHeightMm\""));
    }

    /** A list that may be left out is then empty. */
    private static boolean isNothing(Object value) {
        return value == null || value instanceof List<?> list && list.isEmpty();
    }

    private static void collect(Record owner, Map<String, Set<Object>> seen, Set<String> optional) {
        for (RecordField field : RecordShape.of(owner.getClass()).fields()) {
            String name = owner.getClass().getSimpleName() + "." + field.name();
            Object value = field.of(owner);
            seen.computeIfAbsent(name, key -> new HashSet<>()).add(isNothing(value) ? "nothing" : value);
            if (field.optional()) {
                optional.add(name);
            }
            if (value instanceof Record inner) {
                collect(inner, seen, optional);
            }
            if (value instanceof List<?> list) {
                list.stream()
                        .filter(Record.class::isInstance)
                        .forEach(element -> collect((Record) element, seen, optional));
            }
            if (value instanceof Spectrum levels) {
                seen.computeIfAbsent(name + ".bands", key -> new HashSet<>()).add(levels.bands());
            }
        }
    }
}
