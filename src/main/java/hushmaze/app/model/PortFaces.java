package hushmaze.app.model;

import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import java.util.Optional;

/** Puts an opening of the box into another face, and makes it smaller where that has not the room. */
public final class PortFaces {
    private final EditModel edit;

    public PortFaces(EditModel edit) {
        this.edit = edit;
    }

    /**
     * Gives back why not, if so.
     *
     * @param field the face of one of the two ports
     */
    public Optional<String> set(Field field, String label, PortFace face) {
        String name = field.name();
        Field port = Field.of(name.substring(0, name.lastIndexOf('.')));
        return edit.change(field, label, label, p -> {
            Box box = p.paths().get(edit.path()).box();
            Port old = (Port) port.get(p, edit.path());
            return port.with(p, edit.path(), fitted(old, face, box));
        });
    }

    private static Port fitted(Port port, PortFace face, Box box) {
        boolean end = face == PortFace.END;
        double along = end ? across(box) : box.clearLength();
        double width = Math.min(port.width(), along);
        double height = Math.min(port.height(), face.isBroad() ? across(box) : box.clearHeight());
        boolean anywhere = end && box.form() == Box.Form.MAZE;
        double distance = anywhere ? port.edgeDistance() : Math.min(port.edgeDistance(), along - width);
        return new Port(face, width, height, distance);
    }

    /** Room across a pass: a bare baffle's groove is wider than the baffle. */
    private static double across(Box box) {
        boolean beside = box.passes() > 1 && box.linedFaces().baffles() == 0;
        return box.clearWidth() - (beside ? box.joinery().fitClearance() : 0);
    }
}
