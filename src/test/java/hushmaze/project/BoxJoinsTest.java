package hushmaze.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.material.Board;
import hushmaze.quantity.InvalidValue;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a box refuses of its boards and joints, with field, value, limit and unit; and what goes through a door. */
class BoxJoinsTest {
    private static Board board(double thickness) {
        return new Board("board", thickness, 700, 3e9, 0.02, false, "test");
    }

    private static Box box(double clearWidth, Board shell, Board baffle) {
        Port port = new Port(PortFace.END, clearWidth, 0.2, 0);
        return new Box(
                Box.Form.MAZE,
                2,
                clearWidth,
                0.2,
                0.6,
                0.1,
                List.of(shell),
                baffle,
                1,
                null,
                LinedFaces.NONE,
                port,
                port);
    }

    @Test
    void aBoardThickerThanThePassIsRefused() {
        assertThatThrownBy(() -> box(0.04, board(0.018), board(0.05)))
                .isInstanceOf(InvalidValue.class)
                .hasMessage(
                        "baffleBoard.thickness: 50 mm is not accepted; it must be no thicker than the clear width of the pass, 40 mm");
        assertThat(box(0.04, board(0.04), board(0.04)).passes()).isEqualTo(2);
    }

    @Test
    void aGrooveTakesHalfTheBoardAtMost() {
        Box box = box(0.1, board(0.018), board(0.018));
        assertThat(box.joined(new Joinery(0, 0, 0.009), List.of()).joinery().groove())
                .isEqualTo(0.009);
        assertThatThrownBy(() -> box.joined(new Joinery(0, 0, 0.0091), List.of()))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("joinery.groove")
                .hasMessageContaining("9 mm");
    }

    @Test
    void aPlainBoxHasNoAllowances() {
        assertThat(box(0.1, board(0.018), board(0.018)).joinery()).isEqualTo(Joinery.PLAIN);
        assertThat(box(0.1, board(0.018), board(0.018)).seams()).isEmpty();
    }

    /** By hand: 700 x 2000 lets 690 x 1900 x 3000 through, standing or lying, but not 710 x 750 x 900. */
    @Test
    void throughTheDoor() {
        Doorway door = new Doorway(0.7, 2);
        assertThat(door.lets(3, 0.69, 1.9)).isTrue();
        assertThat(door.lets(1.9, 3, 0.69)).isTrue();
        assertThat(door.lets(0.71, 0.75, 0.9)).isFalse();
        assertThat(door.lets(0.5, 2.1, 2.2)).isFalse();
    }
}
