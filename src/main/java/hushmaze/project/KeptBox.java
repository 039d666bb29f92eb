package hushmaze.project;

import hushmaze.quantity.InvalidValue;

/**
 * A box that is put by, to be compared with others for the same path.
 *
 * @param name to tell it by, 1 to 40 characters
 * @param box itself
 */
public record KeptBox(String name, Box box) {
    public KeptBox {
        InvalidValue.text("name", name, 40);
        InvalidValue.present("box", box);
    }
}
