package hushmaze.app.window;

import hushmaze.app.model.SettingsModel;
import hushmaze.store.Settings;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window comes back where it was and as large as it was. */
final class WindowPlace {
    /** Of the window's top, that must be on a screen, so that it can be taken hold of, pixels. */
    private static final double HOLD = 80;

    private WindowPlace() {}

    /** Puts a window that is not shown yet to its place, and remembers that when it is closed. */
    static void remember(Stage stage, SettingsModel settings) {
        Settings.Place place = settings.settings().place();
        if (place != null && isOnAScreen(place)) {
            stage.setX(place.x());
            stage.setY(place.y());
            stage.setWidth(Math.max(stage.getMinWidth(), place.width()));
            stage.setHeight(Math.max(stage.getMinHeight(), place.height()));
            stage.setMaximized(place.whole());
        }
        stage.setOnHiding(e -> settings.setPlace(of(stage, settings.settings().place())));
    }

    private static boolean isOnAScreen(Settings.Place place) {
        return place.width() > 0
                && place.height() > 0
                && Screen.getScreens().stream().map(Screen::getVisualBounds).anyMatch(screen -> holds(screen, place));
    }

    private static boolean holds(Rectangle2D screen, Settings.Place place) {
        return place.y() >= screen.getMinY() - 1
                && place.y() + HOLD <= screen.getMaxY()
                && place.x() + place.width() - HOLD >= screen.getMinX()
                && place.x() + HOLD <= screen.getMaxX();
    }

    /** Of a window that fills the screen, the place it had before is kept. */
    private static Settings.Place of(Stage stage, Settings.Place before) {
        if (stage.isMaximized() && before != null) {
            return new Settings.Place(before.x(), before.y(), before.width(), before.height(), true);
        }
        return new Settings.Place(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight(), stage.isMaximized());
    }
}
