package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.solid.PortPlace;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Property tests of the ways from notices to what they are about. */
class CausesTest {
    private static final Set<String> VIEWS = Set.of("spectra", "air", "sections", "pages");

    @ParameterizedTest
    @EnumSource(NoticeKind.class)
    void everyNoticeLeadsSomewhereAndSaysWhere(NoticeKind kind) {
        assertThat(Causes.of(Notice.of(kind, Severity.NOTE, "")))
                .isNotEmpty()
                .allSatisfy(cause -> assertThat(cause.words()).isNotBlank())
                .allSatisfy(cause -> assertThat(cause.view() == null || VIEWS.contains(cause.view()))
                        .isTrue());
    }

    @ParameterizedTest
    @CsvSource({"width, SPACE_WIDTH", "height, SPACE_HEIGHT", "depth, SPACE_DEPTH"})
    void aBoxTooLargeLeadsToTheSideItIsTooLargeFor(String side, EntryPlace place) {
        assertThat(Causes.of(Notice.of(NoticeKind.DOES_NOT_FIT, Severity.STOP, side)))
                .containsExactly(Cause.at(place));
    }

    @Test
    void partsLeadToTheirDrawing() {
        assertThat(Causes.of(Notice.of(NoticeKind.PANEL_LARGER_THAN_SHEET, Severity.STOP, "P3, P4")))
                .contains(Cause.of("P3"));
        assertThat(Cause.of("P3").words()).isEqualTo("Drawing of P3…");
    }

    /** A place nobody is sent to would be a line that no test sees. */
    @Test
    void everyPlaceIsWhereSomeNoticeLeads() {
        EnumSet<EntryPlace> left = EnumSet.allOf(EntryPlace.class);
        for (NoticeKind kind : NoticeKind.values()) {
            for (String part : List.of("", "height", "depth", PortPlace.IN_ROOM)) {
                Causes.of(Notice.of(kind, Severity.NOTE, part)).forEach(cause -> left.remove(cause.entry()));
            }
        }
        assertThat(left).isEmpty();
    }

    @Test
    void aCauseIsOneThing() {
        assertThatThrownBy(() -> new Cause(null, null, null)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Cause(EntryPlace.FLOW, "air", null)).isInstanceOf(IllegalArgumentException.class);
    }
}
