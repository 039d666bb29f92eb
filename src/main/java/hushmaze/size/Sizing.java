package hushmaze.size;

import hushmaze.assess.AskedFlows;
import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.assess.SoundMargins;
import hushmaze.build.Supply;
import hushmaze.project.Project;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import hushmaze.quantity.Energy;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the boxes for a project: for every path a few that differ in kind, each assessed as documents are.
 *
 * <p>Paths that leave their share of the target open are sized together: shares are set so that the boxes recommended cost least in all.
 * The same project gives the same boxes.
 */
public final class Sizing {
    /** Steps of a limit that is relaxed, and halvings of the first that helps. */
    private static final int STEPS = 6;

    private static final int HALVINGS = 3;
    /** Shares closer than this to equal ones are left equal. */
    private static final double SAME_SHARE = 0.02;
    /** Shares are given to so many parts of the whole, rounded down. */
    private static final double SHARE_PARTS = 1000;

    private final Project asked;
    private final Project settled;
    private final int keep;
    private final Methods confirming;
    private final Progress progress;
    private final Watch watch;
    private Project shared;

    /** Is told of designs as they are found; what it was told last is the best so far when the work is cancelled. */
    public interface Watch {
        /** Looks away. */
        Watch NOBODY = (path, designs) -> {};

        /**
         * @param path number of the path
         * @param designs found for it so far, the recommended one first
         */
        void found(int path, List<Design> designs);
    }

    private Sizing(Project asked, int keep, Methods confirming, Progress progress, Watch watch) {
        this.confirming = confirming;
        this.asked = asked;
        this.settled = AskedFlows.settled(asked);
        this.shared = settled;
        this.keep = keep;
        this.progress = progress;
        this.watch = watch;
    }

    /**
     * Sizes every path of a project.
     *
     * @param project may have boxes already; they are not looked at
     * @param keep most designs per path; with 1, only the recommended one is looked for
     */
    public static Sized of(Project project, int keep, Progress progress, Watch watch) {
        return of(project, keep, Methods.ALL, progress, watch);
    }

    /** The same with other methods to confirm designs by than those of documents. */
    static Sized of(Project project, int keep, Methods confirming, Progress progress, Watch watch) {
        return new Sizing(project, keep, confirming, progress, watch).sized(null);
    }

    /** Sizes one path of a project; the others and all shares stay as they are. */
    public static PathDesigns ofPath(Project project, int path, int keep, Progress progress, Watch watch) {
        return new Sizing(project, keep, Methods.ALL, progress, watch)
                .sized(path)
                .paths()
                .get(0);
    }

    /** Whether costs are in the user's currency; else, where a sheet to be bought has no price, in m² of sheets. */
    public static boolean inMoney(Stock stock) {
        return new Prices(Supply.of(stock)).inMoney();
    }

    private Sized sized(Integer only) {
        if (only == null) {
            // Boxes there are already take no sheets from those that are looked for.
            shared = settled.withPaths(
                    settled.paths().stream().map(path -> path.withBox(null)).toList());
        }
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < settled.paths().size(); i++) {
            if (only == null || only == i) {
                numbers.add(i);
            }
        }
        List<BoxSearch> searches = new ArrayList<>(Collections.nCopies(numbers.size(), null));
        Supply left = only == null
                ? Supply.of(settled.stock())
                : Assessor.supply(settled, only, confirming.sheets(), progress);
        List<Integer> open = withoutShare();
        if (only == null && open.size() > 1) {
            for (int n = 0; n < numbers.size(); n++) {
                BoxSearch search = search(n, left, part(0.3 * n / numbers.size(), 0.3 / numbers.size()));
                search.beginWide();
                search.settle(List.of(Kind.RECOMMENDED, Kind.QUIETEST, Kind.CHEAPEST), Level.LINERS);
                search.offerCheaper();
                searches.set(n, search);
            }
            share(searches, open);
        }
        List<PathDesigns> paths = designs(searches, numbers, left);
        return new Sized(withBoxes(numbers, paths), paths, only != null || enoughAir(numbers, paths));
    }

    /** All recommended ones first, each cut from what those before it leave, then kind by kind. */
    private List<PathDesigns> designs(List<BoxSearch> searches, List<Integer> numbers, Supply whole) {
        List<Chosen> chosen = searches.stream().map(search -> new Chosen(keep)).toList();
        List<Kind> kinds = keep == 1 ? List.of(Kind.RECOMMENDED) : List.of(Kind.values());
        double parts = kinds.size() * (double) searches.size();
        List<HeldAgainst> held = new ArrayList<>();
        Supply left = whole;
        for (Kind kind : kinds) {
            for (int n = 0; n < searches.size(); n++) {
                double done = (kind.ordinal() * searches.size() + n) / parts;
                Progress ours = part(0.3 + 0.7 * done, 0.7 / parts);
                if (kind == Kind.RECOMMENDED) {
                    cutFrom(left, searches, n, numbers.get(n), ours);
                }
                searches.get(n).report(ours);
                if (chosen.get(n).add(kind, searches.get(n))) {
                    watch.found(numbers.get(n), chosen.get(n).designs());
                }
                if (kind == Kind.RECOMMENDED) {
                    held.add(chosen.get(n).hold(searches.get(n)));
                    watch.found(numbers.get(n), chosen.get(n).designs());
                }
                if (kind == Kind.RECOMMENDED && !chosen.get(n).designs().isEmpty()) {
                    PathResult first = chosen.get(n).designs().get(0).result();
                    left = left.after(first.layouts(), first.path().name());
                }
            }
        }
        List<PathDesigns> paths = new ArrayList<>();
        for (int n = 0; n < searches.size(); n++) {
            // The offcuts of the recommended box were counted with for the paths after it.
            chosen.get(n).rename(n == searches.size() - 1);
            watch.found(numbers.get(n), chosen.get(n).designs());
            paths.add(designs(searches.get(n), chosen.get(n), held.get(n), numbers.get(n)));
        }
        return paths;
    }

    /**
     * A search of what can be cut from the sheets that are left. One that was begun before they were taken begins anew where there
     * are only so many of them: boxes put aside for want of sheets may do with offcuts now.
     */
    private void cutFrom(Supply left, List<BoxSearch> searches, int n, int path, Progress ours) {
        BoxSearch begun = searches.get(n);
        if (begun == null || n > 0 && left.isLimited()) {
            BoxSearch search = search(path, left, ours);
            search.beginWide();
            searches.set(n, search);
        } else if (n > 0) {
            begun.cutFrom(left);
        }
    }

    private BoxSearch search(int path, Supply left, Progress ours) {
        Freedom freedom = Freedom.of(shared.paths().get(path).brief());
        return new BoxSearch(shared, path, confirming, freedom, left, ours);
    }

    private Progress part(double from, double share) {
        return (fraction, doing) -> progress.check(from + share * fraction, doing);
    }

    /** Numbers of the paths that leave their share of the target open. */
    private List<Integer> withoutShare() {
        return IntStream.range(0, settled.paths().size())
                .filter(i -> settled.paths().get(i).brief().noiseShare() == null)
                .boxed()
                .toList();
    }

    /** Splits the target anew among the paths that leave their share open. */
    private void share(List<BoxSearch> searches, List<Integer> open) {
        double whole = 1
                - settled.paths().stream()
                        .map(path -> path.brief().noiseShare())
                        .filter(Objects::nonNull)
                        .mapToDouble(Double::doubleValue)
                        .sum();
        double equal = whole / open.size();
        SharedSheets sheets = new SharedSheets(
                Supply.of(settled.stock()),
                open.stream()
                        .map(i -> new SharedSheets.Path(settled.paths().get(i).name(), searches.get(i)))
                        .toList());
        for (double inHand : new double[] {Kind.IN_HAND, Kind.DOUBT}) {
            List<List<TargetShares.Offer<Candidate>>> offers = open.stream()
                    .map(i -> offers(searches.get(i), equal, inHand))
                    .toList();
            Optional<double[]> shares = TargetShares.of(offers, whole, sheets::cost);
            if (shares.isPresent()) {
                reshare(searches, open, shares.get(), equal);
                return;
            }
        }
    }

    private static List<TargetShares.Offer<Candidate>> offers(BoxSearch search, double equal, double inHand) {
        return search.pool().known(Level.QUICK).stream()
                .filter(c -> c.othersMargin() >= inHand)
                .map(c -> new TargetShares.Offer<>(c, c.cost(), TargetShares.needed(equal, c.targetMargin(), inHand)))
                .toList();
    }

    private void reshare(List<BoxSearch> searches, List<Integer> open, double[] shares, double equal) {
        boolean same = true;
        for (double share : shares) {
            same &= Math.abs(share - equal) < SAME_SHARE;
        }
        if (same) {
            return;
        }
        for (int i = 0; i < shares.length; i++) {
            VentPath path = shared.paths().get(open.get(i));
            double share = Math.max(1, Math.floor(shares[i] * SHARE_PARTS)) / SHARE_PARTS;
            shared = shared.withPath(open.get(i), path.withBrief(path.brief().withNoiseShare(share)));
        }
        for (int number : open) {
            double share = shared.paths().get(number).brief().noiseShare();
            searches.get(number).share(shared, Energy.db(share / equal));
        }
    }

    private PathDesigns designs(BoxSearch search, Chosen chosen, HeldAgainst held, int path) {
        boolean money = inMoney(settled.stock());
        List<Design> designs = chosen.designs();
        if (designs.isEmpty()) {
            return new PathDesigns(
                    path,
                    designs,
                    search.tally(),
                    held,
                    money,
                    PathDesigns.Shortfall.NONE,
                    helping(search, path).toFindABox(STEPS, HALVINGS));
        }
        Candidate quietest = chosen.quietest();
        SoundMargins margins = quietest.result().soundMargins();
        if (margins.least() >= 0) {
            return new PathDesigns(path, designs, search.tally(), held, money, PathDesigns.Shortfall.NONE, List.of());
        }
        double estimate = quietest.margin(Level.ESTIMATE) - quietest.margin(Level.ASSESSED);
        return new PathDesigns(
                path,
                designs,
                search.tally(),
                held,
                money,
                new PathDesigns.Shortfall(Math.max(0, -margins.target()), Math.max(0, -margins.others())),
                helping(search, path).toBeQuiet(quietest.pattern(), estimate, STEPS, HALVINGS));
    }

    private WhatHelps helping(BoxSearch search, int path) {
        return new WhatHelps(shared, path, Freedom::of, search.appraiser().supply(), progress);
    }

    private Project withBoxes(List<Integer> numbers, List<PathDesigns> designs) {
        List<VentPath> paths = new ArrayList<>();
        for (int i = 0; i < asked.paths().size(); i++) {
            VentPath path = asked.paths().get(i);
            Double share = shared.paths().get(i).brief().noiseShare();
            path = path.withBrief(path.brief().withNoiseShare(share));
            int found = numbers.indexOf(i);
            Optional<Design> design =
                    found < 0 ? Optional.empty() : designs.get(found).recommended();
            paths.add(design.isPresent() ? design.get().placed(path) : path);
        }
        return asked.withPaths(paths);
    }

    private boolean enoughAir(List<Integer> numbers, List<PathDesigns> designs) {
        Project whole = withBoxes(numbers, designs);
        if (whole.paths().stream().anyMatch(p -> p.box() == null)) {
            return false;
        }
        Assessment assessment = Assessor.assess(whole, Methods.ESTIMATE, progress);
        return assessment.paths().stream().allMatch(p -> p.air().ok());
    }
}
