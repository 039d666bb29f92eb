package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import java.time.LocalDate;

/**
 * What is written on every drawing. The fields and their lengths follow ISO 7200 (as read in a copy of its field table).
 *
 * @param owner who owns the drawings
 * @param number identification of the set, up to 16 characters
 * @param date of issue; part of the project, so that the same project always prints the same
 * @param creator who made it
 * @param approver who approved it; absent until someone has
 */
public record TitleBlock(
        String owner,
        String number,
        LocalDate date,
        String creator,
        @MayBeAbsent String approver) {
    public TitleBlock {
        InvalidValue.text("owner", owner, 60);
        InvalidValue.text("number", number, 16);
        InvalidValue.within("date.year", InvalidValue.present("date", date).getYear(), 1, 9999);
        InvalidValue.text("creator", creator, 20);
        if (approver != null) {
            InvalidValue.text("approver", approver, 20);
        }
    }
}
