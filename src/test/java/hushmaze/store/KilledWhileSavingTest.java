package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.project.Project;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Property: whenever a process that saves is killed, the user's file is the whole project of before or of after the save that
 * was under way, the side file is whole or absent, and what is left of the save that was broken off goes with the next one.
 */
class KilledWhileSavingTest {
    private static final int KILLS = 20;
    private static final int LONGEST_MS = 60;

    @TempDir
    Path folder;

    /** How far the other process came. */
    private record Progress(int begun, int saved) {}

    @Test
    void theFileIsAlwaysWhole() throws Exception {
        Project sample = SampleProjects.read(SampleProjects.DEFAULT);
        Path file = folder.resolve("project.json");
        Random random = new Random(20261126);
        int next = 1;
        for (int kill = 0; kill < KILLS; kill++) {
            Progress came = saveUntilKilled(file, next, random.nextInt(LONGEST_MS));
            Project kept = ProjectFile.read(file);
            assertThat(kept)
                    .as("kill %d, %s", kill, came)
                    .isIn(SavingLoop.named(sample, came.saved()), SavingLoop.named(sample, came.begun()));
            if (Autosave.find(file).isPresent()) {
                // The side file of the next save may be there before its number is said.
                assertThat(Autosave.restore(file))
                        .as("side file, kill %d, %s", kill, came)
                        .isIn(
                                SavingLoop.named(sample, came.saved()),
                                SavingLoop.named(sample, came.begun()),
                                SavingLoop.named(sample, came.begun() + 1));
            }
            assertThat(leftovers()).as("kill %d", kill).hasSizeLessThanOrEqualTo(1);
            next = came.begun() + 1;
        }
        Autosave.save(sample, file);
        ProjectFile.write(sample, file);
        assertThat(leftovers()).isEmpty();
    }

    @Test
    void onlyWhatAProcessThatIsGoneHasLeftIsRemoved() throws Exception {
        Path file = folder.resolve("project.json");
        Project sample = SampleProjects.read(SampleProjects.DEFAULT);
        String of = ".hushmaze-" + Integer.toHexString("project.json".hashCode()) + "-";
        Process gone = new ProcessBuilder(java(), "-version").start();
        gone.waitFor();
        Path left = Files.createFile(folder.resolve(of + gone.pid() + "-1.tmp"));
        Path written =
                Files.createFile(folder.resolve(of + ProcessHandle.current().pid() + "-1.tmp"));
        Path other = Files.createFile(folder.resolve(".hushmaze-other-" + gone.pid() + "-1.tmp"));
        Path strange = Files.createFile(folder.resolve(of + "x.tmp"));
        ProjectFile.write(sample, file);
        assertThat(left).doesNotExist();
        assertThat(List.of(written, other, strange))
                .allSatisfy(one -> assertThat(one).exists());
    }

    /** Kills the process some time after its first save. */
    private static Progress saveUntilKilled(Path file, int next, int afterMs) throws Exception {
        Process process = new ProcessBuilder(
                        java(),
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SavingLoop.class.getName(),
                        file.toString(),
                        String.valueOf(next))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int begun = 0;
        int saved = 0;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            boolean asked = false;
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                int number = Integer.parseInt(line.substring(line.indexOf(' ') + 1));
                begun = line.startsWith("begun") ? number : begun;
                saved = line.startsWith("saved") ? number : saved;
                if (saved > 0 && !asked) {
                    asked = true;
                    TimeUnit.MILLISECONDS.sleep(afterMs);
                    // Not by the process itself, which would close what is still to be read.
                    process.toHandle().destroyForcibly();
                }
            }
        } finally {
            process.destroyForcibly();
            process.waitFor();
        }
        assertThat(saved).as("the other process saved").isPositive();
        return new Progress(begun, saved);
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private List<Path> leftovers() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".tmp")).toList();
        }
    }
}
