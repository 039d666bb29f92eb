package hushmaze.app.model;

/**
 * Where to look for what a notice is about: at an entry, in a view, or at the drawing of a part. One of the three is given.
 *
 * @param entry where it can be changed
 * @param view name of the view that shows it
 * @param mark of a part in the cut list
 */
public record Cause(EntryPlace entry, String view, String mark) {
    public Cause {
        int given = (entry == null ? 0 : 1) + (view == null ? 0 : 1) + (mark == null ? 0 : 1);
        if (given != 1) {
            throw new IllegalArgumentException("an entry, a view or a part");
        }
    }

    static Cause at(EntryPlace entry) {
        return new Cause(entry, null, null);
    }

    static Cause in(String view) {
        return new Cause(null, view, null);
    }

    static Cause of(String mark) {
        return new Cause(null, null, mark);
    }

    /** What a link to it says. */
    public String words() {
        if (entry != null) {
            return Texts.of("cause.entry", entry.words());
        }
        return view != null ? Texts.of("cause.view." + view) : Texts.of("cause.part", mark);
    }
}
