package hushmaze.build;

import hushmaze.material.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A job in whole nanometres with one kerf added to the sides of every piece and of every sheet. In these sizes a row of
 * pieces fits exactly when their sum does, so that the search itself needs no kerf: a row of n pieces has n - 1 cuts, or n
 * when a rest remains, and the rest beyond the last cut is what is left minus one kerf.
 */
final class NestTask {
    /** Nanometres in a metre; a rounding of half a nanometre is below any saw. */
    static final double PER_METRE = 1e9;
    /** Added to the cost of every sheet that is bought, or that there is no end of. */
    private static final double TRIFLE = 1e-7;

    private final NestJob job;
    private final long kerf;
    private final boolean priced;
    /** Whether some sheets have a price or are bought as needed: where there is nothing but leftovers, areas count. */
    private final boolean boughtToo;

    private final List<SheetKind> kinds;
    private final List<Piece> pieces = new ArrayList<>();
    private final Map<String, NestPart> byMark = new HashMap<>();
    private final List<Piece> tooLarge = new ArrayList<>();

    NestTask(NestJob job) {
        this.job = job;
        kerf = nanometres(job.kerf());
        boughtToo = !job.sheets().stream().allMatch(sheet -> sheet.isOnHand() && sheet.price() == null);
        priced = job.sheets().stream().allMatch(sheet -> sheet.price() != null || boughtToo && sheet.isOnHand());
        int sheets = job.sheets().size();
        Stream<SheetKind> bought = IntStream.range(0, sheets)
                .mapToObj(i -> kind(i, job.sheets().get(i), cost(job.sheets().get(i))));
        Stream<SheetKind> kept = IntStream.range(0, job.offcuts().size())
                .mapToObj(i -> kind(sheets + i, job.offcuts().get(i), TRIFLE));
        kinds = Stream.concat(bought, kept).filter(kind -> kind.stock() > 0).toList();
        for (int i = 0; i < job.parts().size(); i++) {
            addPart(i, job.parts().get(i));
            byMark.put(job.parts().get(i).mark(), job.parts().get(i));
        }
    }

    static long nanometres(double metres) {
        return Math.round(metres * PER_METRE);
    }

    NestJob job() {
        return job;
    }

    NestPart part(String mark) {
        return byMark.get(mark);
    }

    /** Width of a cut, nm. */
    long kerf() {
        return kerf;
    }

    List<SheetKind> kinds() {
        return kinds;
    }

    /** Pieces that fit on some sheet. */
    List<Piece> pieces() {
        return pieces;
    }

    /** Pieces that fit on none. */
    List<Piece> tooLarge() {
        return tooLarge;
    }

    /** What the search counts for one sheet. */
    private double cost(Sheet sheet) {
        boolean free = sheet.price() != null && sheet.price() == 0;
        if (sheet.isOnHand() && (free || boughtToo)) {
            return 0;
        }
        return TRIFLE + (priced || free ? sheet.price() : sheet.length() * sheet.width());
    }

    private SheetKind kind(int number, Sheet sheet, double cost) {
        long trims = 2 * nanometres(job.trim());
        return new SheetKind(
                number,
                sheet,
                nanometres(sheet.length()) - trims + kerf,
                nanometres(sheet.width()) - trims + kerf,
                cost,
                sheet.stock() == null ? Integer.MAX_VALUE : sheet.stock());
    }

    private void addPart(int number, NestPart part) {
        long length = nanometres(part.length()) + kerf;
        long width = nanometres(part.width()) + kerf;
        Piece piece = new Piece(number, length, width, !part.grain() && length != width);
        List<Piece> list = kinds.stream().anyMatch(piece::fits) ? pieces : tooLarge;
        for (int i = 0; i < part.quantity(); i++) {
            list.add(piece);
        }
    }
}
