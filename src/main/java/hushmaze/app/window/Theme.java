package hushmaze.app.window;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Scene;

/** Light or dark. */
public final class Theme {
    private final Scene scene;
    private final BooleanProperty dark = new SimpleBooleanProperty();

    public Theme(Scene scene) {
        this.scene = scene;
        dark.addListener((p, before, after) -> apply());
        apply();
    }

    public BooleanProperty darkProperty() {
        return dark;
    }

    private void apply() {
        Application.setUserAgentStylesheet(
                dark.get() ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        scene.getStylesheets().setAll(sheet("window.css"), sheet(dark.get() ? "dark.css" : "light.css"));
    }

    private static String sheet(String name) {
        return Theme.class.getResource("/hushmaze/app/" + name).toExternalForm();
    }
}
