package hushmaze.app.window;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import hushmaze.app.model.SettingsModel;
import hushmaze.store.Settings;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import javafx.application.Application;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Scene;

/** Light or dark, and how large the texts are; as it was in the last run. */
public final class Theme {
    /** Of texts of the normal size, pixels; as in {@code window.css}. */
    private static final double TEXT_PX = 14;

    private final Scene scene;
    private final SettingsModel settings;
    private final BooleanProperty dark = new SimpleBooleanProperty();

    Theme(Scene scene, SettingsModel settings) {
        this.scene = scene;
        this.settings = settings;
        dark.set(settings.settings().dark());
        dark.addListener((p, before, after) -> {
            settings.setDark(after);
            apply();
        });
        settings.settingsProperty().addListener((p, before, after) -> {
            if (before.textPercent() != after.textPercent()) {
                apply();
            }
        });
        apply();
    }

    public BooleanProperty darkProperty() {
        return dark;
    }

    /** How many times as large as normal the texts are. */
    double textFactor() {
        return (double) settings.settings().textPercent() / Settings.NORMAL;
    }

    private void apply() {
        Application.setUserAgentStylesheet(
                dark.get() ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        scene.getStylesheets().setAll(sheet("window.css"), sheet(dark.get() ? "dark.css" : "light.css"));
        if (settings.settings().textPercent() != Settings.NORMAL) {
            scene.getStylesheets().add(textSize());
        }
    }

    /** A style sheet after the others, because menus and tips have windows of their own and take over the sheets alone. */
    private String textSize() {
        String css = String.format(
                Locale.ROOT,
                ".root { -fx-font-size: %.2fpx; } .page-canvas { -lettering: %.2f; }",
                TEXT_PX * textFactor(),
                textFactor());
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
    }

    private static String sheet(String name) {
        return Theme.class.getResource("/hushmaze/app/" + name).toExternalForm();
    }
}
