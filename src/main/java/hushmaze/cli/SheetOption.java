package hushmaze.cli;

import hushmaze.material.Sheet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a sheet size as typed: length x width in millimetres, then price and stock if given: 2440x1220@54.50:3. */
final class SheetOption {
    private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";
    private static final Pattern FORM =
            Pattern.compile(NUMBER + "[xX]" + NUMBER + "(?:@" + NUMBER + "?(?::([0-9]{1,6}))?)?");
    private static final String OPTION = "--sheet";

    private SheetOption() {}

    static Sheet parse(String text) {
        Matcher matcher = FORM.matcher(text.strip());
        if (!matcher.matches()) {
            throw new InvalidValue(
                    OPTION,
                    "\"" + text + "\"",
                    "LENGTHxWIDTH[@PRICE[:STOCK]] in millimetres, such as 2440x1220@54:3",
                    "");
        }
        try {
            return new Sheet(
                    text.strip(),
                    Unit.MILLIMETRE.toSi(Double.parseDouble(matcher.group(1))),
                    Unit.MILLIMETRE.toSi(Double.parseDouble(matcher.group(2))),
                    matcher.group(3) == null ? null : Double.valueOf(matcher.group(3)),
                    matcher.group(4) == null ? null : Integer.valueOf(matcher.group(4)),
                    "command line");
        } catch (InvalidValue e) {
            throw new InvalidValue(OPTION + " " + text + ", " + e.field(), e.given(), e.limit(), e.unit());
        }
    }
}
