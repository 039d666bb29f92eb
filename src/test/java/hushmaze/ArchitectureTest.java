package hushmaze;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shape of the code, as DEVELOPERS.md states it: which package may know which, and who may use which library. */
class ArchitectureTest {
    private static JavaClasses code;

    @BeforeAll
    static void read() {
        code = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("hushmaze");
    }

    @Test
    void knowledgeFlowsOneWay() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer("work")
                .definedBy("hushmaze.work..")
                .layer("quantity")
                .definedBy("hushmaze.quantity..")
                .layer("material")
                .definedBy("hushmaze.material..")
                .layer("project")
                .definedBy("hushmaze.project..")
                .layer("solid")
                .definedBy("hushmaze.solid..")
                .layer("sound")
                .definedBy("hushmaze.sound..")
                .layer("air")
                .definedBy("hushmaze.air..")
                .layer("build")
                .definedBy("hushmaze.build..")
                .layer("measure")
                .definedBy("hushmaze.measure..")
                .layer("assess")
                .definedBy("hushmaze.assess..")
                .layer("size")
                .definedBy("hushmaze.size..")
                .layer("mend")
                .definedBy("hushmaze.mend..")
                .layer("wording")
                .definedBy("hushmaze.wording..")
                .layer("drawing")
                .definedBy("hushmaze.drawing..")
                .layer("document")
                .definedBy("hushmaze.document..")
                .layer("store")
                .definedBy("hushmaze.store..")
                .layer("app")
                .definedBy("hushmaze.app..")
                .layer("cli")
                .definedBy("hushmaze.cli..")
                .whereLayer("work")
                .mayNotAccessAnyLayer()
                .whereLayer("quantity")
                .mayNotAccessAnyLayer()
                .whereLayer("material")
                .mayOnlyAccessLayers("quantity")
                .whereLayer("project")
                .mayOnlyAccessLayers("quantity", "material")
                .whereLayer("solid")
                .mayOnlyAccessLayers("quantity", "material", "project", "work")
                .whereLayer("sound")
                .mayOnlyAccessLayers("quantity", "material", "project", "solid", "work")
                .whereLayer("air")
                .mayOnlyAccessLayers("quantity", "material", "project", "solid", "work")
                .whereLayer("build")
                .mayOnlyAccessLayers("quantity", "material", "project", "solid", "work")
                .whereLayer("measure")
                .mayOnlyAccessLayers("quantity", "work")
                .whereLayer("assess")
                .mayOnlyAccessLayers(
                        "quantity", "material", "project", "solid", "sound", "air", "build", "measure", "work")
                .whereLayer("size")
                .mayOnlyAccessLayers(
                        "quantity", "material", "project", "solid", "sound", "air", "build", "assess", "work")
                .whereLayer("mend")
                .mayOnlyAccessLayers(
                        "quantity", "material", "project", "solid", "sound", "air", "build", "assess", "size", "work")
                .whereLayer("wording")
                .mayOnlyAccessLayers(
                        "quantity",
                        "material",
                        "project",
                        "solid",
                        "sound",
                        "air",
                        "build",
                        "assess",
                        "size",
                        "mend",
                        "work")
                .whereLayer("store")
                .mayOnlyAccessLayers(
                        "quantity",
                        "material",
                        "project",
                        "solid",
                        "sound",
                        "air",
                        "build",
                        "measure",
                        "assess",
                        "size",
                        "wording",
                        "work")
                .whereLayer("drawing")
                .mayOnlyAccessLayers(
                        "quantity",
                        "material",
                        "project",
                        "solid",
                        "sound",
                        "air",
                        "build",
                        "assess",
                        "size",
                        "wording",
                        "work")
                .whereLayer("document")
                .mayOnlyAccessLayers(
                        "quantity",
                        "material",
                        "project",
                        "solid",
                        "sound",
                        "air",
                        "build",
                        "assess",
                        "size",
                        "wording",
                        "drawing",
                        "work")
                .whereLayer("cli")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("app")
                .mayNotBeAccessedByAnyLayer()
                .check(code);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("hushmaze.(*)..").should().beFreeOfCycles().check(code);
    }

    @Test
    void librariesStayWhereTheyBelong() {
        onlyIn("javafx..", "hushmaze.app..");
        onlyIn("atlantafx..", "hushmaze.app..");
        onlyIn("org.apache.pdfbox..", "hushmaze.document..");
        onlyIn("org.apache.fontbox..", "hushmaze.document..");
        onlyIn("com.fasterxml.jackson..", "hushmaze.store..");
        onlyIn("picocli..", "hushmaze.cli..");
        onlyIn("java.awt..", "hushmaze.document..");
    }

    @Test
    void filesAreReadAndWrittenInFewPlaces() {
        noClasses()
                .that()
                .resideOutsideOfPackages("hushmaze.store..", "hushmaze.document..", "hushmaze.cli..", "hushmaze.app..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "touch files",
                        c -> c.getFullName().startsWith("java.nio.file")
                                || c.getFullName().equals("java.io.File")))
                .check(code);
    }

    @Test
    void theCoreHasNoClock() {
        noClasses()
                .that()
                .resideOutsideOfPackages("hushmaze.store..", "hushmaze.cli..", "hushmaze.app..")
                .should()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .check(code);
    }

    @Test
    void onlyKnownPackages() {
        classes()
                .should()
                .resideInAnyPackage(
                        "hushmaze.work..",
                        "hushmaze.quantity..",
                        "hushmaze.material..",
                        "hushmaze.project..",
                        "hushmaze.solid..",
                        "hushmaze.sound..",
                        "hushmaze.air..",
                        "hushmaze.build..",
                        "hushmaze.measure..",
                        "hushmaze.assess..",
                        "hushmaze.size..",
                        "hushmaze.mend..",
                        "hushmaze.wording..",
                        "hushmaze.store..",
                        "hushmaze.drawing..",
                        "hushmaze.document..",
                        "hushmaze.app..",
                        "hushmaze.cli..")
                .check(code);
    }

    private static void onlyIn(String library, String home) {
        noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(code);
    }
}
